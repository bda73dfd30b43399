/** Everything that the record will say, with what is still missing, and the seal. */
import type { RecordContentInput } from "../../contract/records.ts";
import type { GuidedRecord } from "../../operations/records/guided-record.ts";
import type { Shortcoming } from "../../records/shortcoming.ts";
import { quantityWords, readingWords } from "../../texts/reading-words.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";
import { CheckField, type FieldErrors, type FormValues, Submit } from "../components/form.tsx";
import { checkName } from "../record-form/check-control.tsx";
import { readingOf } from "../record-form/checks-form.ts";
import { answerAt, type Field } from "../record-form/field.ts";
import { ExhibitList } from "../record-form/photos.tsx";
import { titleOf } from "./may-have-power.ts";
import { ownChecksAsked } from "./own-checks-asked.ts";
import { PlatformNote } from "./platform-note.tsx";
import { type Step, stepsOf } from "./steps.ts";
import { StillNeeded } from "./still-needed.tsx";

/** Name of the box that must be ticked to seal. */
export const CONFIRM = "confirm";

export function Review({
	guided,
	shortcomings,
	values,
	errors,
}: {
	readonly guided: GuidedRecord;
	readonly shortcomings: readonly Shortcoming[];
	readonly values: FormValues;
	readonly errors: FieldErrors;
}) {
	const { record } = guided;
	const content = record.content ?? {};
	const steps = stepsOf(record.stage).filter((step) => !step.parts.includes("review"));
	return (
		<>
			{shortcomings.length > 0 && (
				<p class="note" role="status">
					<a href="#still-needed">{say("arrival.review.missing-below", { count: shortcomings.length })}</a>
				</p>
			)}
			<PlatformNote content={content} />
			{steps.map((step) => (
				<Part key={step.id} step={step} guided={guided} />
			))}
			{shortcomings.length > 0 ? (
				<StillNeeded guided={guided} shortcomings={shortcomings} />
			) : (
				<section>
					<CheckField name={CONFIRM} label={say("arrival.review.confirm")} values={values} errors={errors} />
					<p class="buttons">
						<Submit label={say("arrival.review.seal")} name="act" value="seal" />
					</p>
				</section>
			)}
		</>
	);
}

function Part({ step, guided }: { readonly step: Step; readonly guided: GuidedRecord }) {
	const { record, checks, files: shown } = guided;
	const content = record.content ?? {};
	const views = step.parts.includes("file") ? ["diagnostic-output"] : step.views;
	const files = (content.exhibits ?? []).filter((exhibit) => views.includes(exhibit.view));
	const own = checks.filter((check) => step.checks?.(check) === true);
	return (
		<section class="review-part">
			<h2>
				{say(titleOf(step, guided))}{" "}
				<a
					class="change"
					href={`/guided/${record.id}/${step.id}`}
					aria-label={`${say("arrival.review.change")}: ${say(titleOf(step, guided))}`}
				>
					{say("arrival.review.change")}
				</a>
			</h2>
			<dl class="facts">
				{step.fields.map((field) => (
					<Fact key={field.name} term={say(field.label)} told={answerWords(field, content)} />
				))}
				{own.map((check) => {
					const reading = readingOf(check, content);
					const told =
						reading === undefined
							? null
							: [readingWords(reading, check.kind), reading.remark].filter(Boolean).join(". ");
					return <Fact key={check.id} term={checkName(check)} told={told} />;
				})}
				{(step.parts.includes("own-checks") ? ownChecksAsked(guided) : []).map(({ id, definition }) => {
					const reading = content.readings?.find((one) => one.check === id);
					return (
						<Fact
							key={id}
							term={definition.name}
							told={reading === undefined ? null : readingWords(reading, definition.kind)}
						/>
					);
				})}
			</dl>
			{step.fields.length === 0 && own.length === 0 && files.length === 0 && (
				<p class="hint">{say("arrival.review.gap")}</p>
			)}
			<ExhibitList views={views} content={content} recordId={record.id} files={shown} />
		</section>
	);
}

function Fact({ term, told }: { readonly term: string; readonly told: string | null }) {
	return (
		<>
			<dt>{term}</dt>
			<dd>{told ?? <span class="hint">{say("arrival.review.gap")}</span>}</dd>
		</>
	);
}

/** An answer in words; null where there is none. */
export function answerWords(field: Field, content: RecordContentInput): string | null {
	const answer = answerAt(content, field.name);
	if (answer === undefined) return null;
	switch (field.kind) {
		case "yes-no":
			return say(answer === true ? "arrival.yes" : "arrival.no");
		case "choice":
			return say(`${field.options}.${String(answer)}` as TextKey);
		case "choices":
			return (answer as readonly string[]).map((code) => say(`${field.options}.${code}` as TextKey)).join("; ");
		case "lines":
			return (answer as readonly string[]).join("; ");
		case "quantity":
			return quantityWords(answer as Parameters<typeof quantityWords>[0]);
		case "time":
			return showTime(String(answer), /[+-]\d\d:\d\d$/.exec(String(answer))?.[0]);
		default:
			return String(answer);
	}
}
