/** One step of the guided record. Everything works without script; each step is one form that saves. */
import type { PhotoCodeView } from "../../contract/pictures.ts";
import type { GuidedRecord } from "../../operations/records/guided-record.ts";
import { oddMassOf } from "../../operations/records/parcel-mass.ts";
import { checksThatStop, hadPower, powerStop } from "../../operations/records/power-stop.ts";
import type { Shortcoming } from "../../records/shortcoming.ts";
import { say } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";
import { Caution, ErrorSummary, type FieldErrors, Form, type FormValues, Submit } from "../components/form.tsx";
import { Layout } from "../layout.tsx";
import { checkName } from "../record-form/check-control.tsx";
import { ClockControl, FieldControl } from "../record-form/field-control.tsx";
import type { ReadFile } from "../record-form/file-lines.tsx";
import { offsetIn } from "../record-form/fill-form.ts";
import { Photos, type RefusedFile } from "../record-form/photos.tsx";
import { DiagnosticFile } from "./diagnostic-file.tsx";
import { isOtherItem, mayHavePower, titleOf } from "./may-have-power.ts";
import { PlatformNote } from "./platform-note.tsx";
import { isEntered } from "./progress.ts";
import { Review } from "./review.tsx";
import { StepChecks } from "./step-checks.tsx";
import { type Step, stepsOf } from "./steps.ts";
import { ASSUMED_HUMIDITY_PERCENT, type Wait, waitOf } from "./wait.ts";
import { WaitNote } from "./wait-note.tsx";

export interface StepPageProps {
	readonly guided: GuidedRecord;
	readonly step: Step;
	readonly values: FormValues;
	readonly errors: FieldErrors;
	/** What sealing would refuse; looked for at the review alone. */
	readonly shortcomings: readonly Shortcoming[];
	readonly refused: readonly RefusedFile[];
	/** What became of a file that was just brought. */
	readonly notices: readonly string[];
	/** Files that were just read, to be shown line by line. */
	readonly read: readonly ReadFile[];
	/** The draft was saved elsewhere since this form was opened. */
	readonly stale: boolean;
	/** Null where the step asks for no photos. */
	readonly photoCode: PhotoCodeView | null;
	readonly formToken: string;
	readonly now: Date;
}

/** The address of a step. */
export function stepPath(recordId: string, step: Pick<Step, "id">): string {
	return `/guided/${recordId}/${step.id}`;
}

export function StepPage(props: StepPageProps) {
	const { guided, step, values, errors, now } = props;
	const { record, order } = guided;
	const content = record.content ?? {};
	const hasPower = mayHavePower(guided);
	const instead = hasPower ? undefined : step.insteadOfPower;
	const steps = stepsOf(record.stage);
	const place = steps.findIndex((candidate) => candidate.id === step.id);
	const before = steps[place - 1];
	const wait = waitOf(content, now);
	const photos = step.views.length > 0 && (
		<Photos
			views={step.views}
			content={content}
			recordId={record.id}
			files={guided.files}
			code={props.photoCode}
			refused={props.refused}
			errors={errors}
		/>
	);
	return (
		<Layout title={say(titleOf(step, guided))}>
			<p class="step-of">
				{say("arrival.step-of", { number: place + 1, count: steps.length })} ·{" "}
				{say(record.stage === "departure" ? "arrival.title-departure" : "arrival.title")}: {order.item.maker}{" "}
				{order.item.model}
			</p>
			<ErrorSummary errors={errors} />
			{props.stale && (
				<div class="error-summary" role="alert">
					<p>{say("arrival.stale")}</p>
				</div>
			)}
			<Banners guided={guided} />
			{instead === undefined ? <Guidance step={step} /> : <p class="note">{say(instead)}</p>}
			{step.parts.includes("power-time") && hasPower && <PowerTime wait={wait} now={now} offset={offsetIn(content)} />}
			{step.parts.includes("wait") && <WaitNote wait={wait} content={content} now={now} />}
			{step.parts.includes("platform") && <PlatformNote content={content} />}
			<Form action={stepPath(record.id, step)} formToken={props.formToken} upload>
				<input type="hidden" name="version" value={record.version} />
				<DefaultSubmit />
				{step.photosFirst === true && photos}
				{step.fields.map((field) => (
					<FieldControl
						key={field.name}
						field={field}
						values={values}
						errors={errors}
						hintValues={{ percent: ASSUMED_HUMIDITY_PERCENT }}
					/>
				))}
				{step.fields.some((field) => field.kind === "time") && (
					<ClockControl values={values} errors={errors} now={now} />
				)}
				<StepChecks guided={guided} step={step} values={values} errors={errors} />
				{step.parts.includes("file") && (
					<DiagnosticFile
						guided={guided}
						errors={errors}
						refused={props.refused}
						notices={props.notices}
						read={props.read}
					/>
				)}
				{step.parts.includes("review") && (
					<Review guided={guided} shortcomings={props.shortcomings} errors={errors} values={values} />
				)}
				{step.photosFirst !== true && photos}
				<Buttons step={step} />
			</Form>
			{before !== undefined && (
				<p>
					<a href={stepPath(record.id, before)}>
						‹ {say("arrival.back")}: {say(titleOf(before, guided))}
					</a>
				</p>
			)}
			<AllSteps guided={guided} step={step} />
			<Form action={`/guided/${record.id}/continue`} formToken={props.formToken}>
				<Submit kind="quiet" label={say("arrival.continue")} />
			</Form>
		</Layout>
	);
}

/** What to do on this step, and what to take care of. */
function Guidance({ step }: { readonly step: Step }) {
	return (
		<>
			{step.texts.map((key) => (
				<p key={key}>{say(key)}</p>
			))}
			{step.cautions.map((key) => (
				<Caution key={key}>{say(key)}</Caution>
			))}
		</>
	);
}

/** Pressing Enter in a control sends the form through its first button; this one saves, and removes no photo. */
function DefaultSubmit() {
	return <button type="submit" name="act" value="stay" class="unseen" tabIndex={-1} aria-hidden="true" />;
}

function Buttons({ step }: { readonly step: Step }) {
	if (step.parts.includes("review")) return null;
	if (step.parts.includes("wait")) {
		return (
			<p class="buttons">
				<Submit label={say("arrival.wait-compute")} name="act" value="stay" />
				<Submit label={say("arrival.save")} name="act" value="next" kind="quiet" />
			</p>
		);
	}
	return (
		<>
			<p class="hint">{say("arrival.skip-note")}</p>
			<p class="buttons">
				<Submit label={say("arrival.save")} name="act" value="next" />
			</p>
		</>
	);
}

/** What must be seen on every step once it is known. */
function Banners({ guided }: { readonly guided: GuidedRecord }) {
	const content = guided.record.content ?? {};
	const stop = powerStop(content);
	const odd = oddMassOf(content, guided.order.item);
	const points = guided.allChecks
		.filter(({ id }) => checksThatStop(content).includes(id))
		.map((check) => say("general.quoted", { text: checkName(check) }));
	const title = hadPower(content) ? "arrival.stop-title-again" : "arrival.stop-title";
	return (
		<>
			{stop !== null && (
				<Caution>
					<strong>{say(stop === "wet" ? "arrival.stop-wet-title" : title)}</strong>{" "}
					{say(stop === "wet" ? "arrival.stop-wet-text" : "arrival.stop-text")}
					{stop === "cell" && <> {say("arrival.stop-cell")}</>}
					{points.length > 0 && <> {say("arrival.stop-points", { checks: points.join(", ") })}</>}
				</Caution>
			)}
			{odd !== null && <p class="note">{say(`arrival.odd-mass.${odd}`)}</p>}
			{isOtherItem(guided) && (
				<Caution>
					<strong>{say("arrival.identity.mismatch-title")}.</strong>{" "}
					{say("arrival.identity.mismatch", { entered: content.identity?.serialNumber ?? "" })}
				</Caution>
			)}
		</>
	);
}

function PowerTime({ wait, now, offset }: { readonly wait: Wait; readonly now: Date; readonly offset: string | null }) {
	if (wait.kind !== "wait" || wait.powerAt === null || !(now < wait.powerAt)) return null;
	return <Caution>{say("arrival.first-power-on.wait", { time: showTime(wait.powerAt, offset ?? undefined) })}</Caution>;
}

function AllSteps({ guided, step }: { readonly guided: GuidedRecord; readonly step: Step }) {
	const { record, checks } = guided;
	return (
		<details>
			<summary>{say("arrival.steps")}</summary>
			<ol class="steps-list">
				{stepsOf(record.stage).map((other) => (
					<li key={other.id}>
						<a href={stepPath(record.id, other)} aria-current={other.id === step.id ? "step" : undefined}>
							{say(titleOf(other, guided))}
						</a>
						{other.id === step.id && ` (${say("arrival.step-here")})`}
						{isEntered(other, record.content ?? {}, checks) && ` ✓ ${say("arrival.step-done")}`}
					</li>
				))}
			</ol>
		</details>
	);
}
