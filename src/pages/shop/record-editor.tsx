/** The page on which the shop fills a record in. */
import type { FastifyRequest } from "fastify";
import { formTokenFor } from "../../access/callers.ts";
import type { BenchView, InstrumentView } from "../../contract/benches.ts";
import type { PhotoCodeView } from "../../contract/pictures.ts";
import type { GuidedRecord } from "../../operations/records/guided-record.ts";
import { openQuestions } from "../../operations/records/open-questions.ts";
import { oddMassOf } from "../../operations/records/parcel-mass.ts";
import { soakSoFar } from "../../operations/records/soak-so-far.ts";
import { itemName } from "../../texts/item-name.ts";
import { say, type TextKey } from "../../texts/say.ts";
import {
	CheckField,
	ErrorSummary,
	type FieldErrors,
	Form,
	type FormValues,
	SelectField,
	Submit,
	TextArea,
} from "../components/form.tsx";
import { UploadingField } from "../components/uploading-field.tsx";
import { PhotoCodeNote } from "../pictures/photo-code-note.tsx";
import { CheckControl, checkName } from "../record-form/check-control.tsx";
import { controlName } from "../record-form/checks-form.ts";
import { Collectors } from "../record-form/collectors.tsx";
import type { Field } from "../record-form/field.ts";
import { ClockControl, FieldControl } from "../record-form/field-control.tsx";
import { FileLines, type ReadFile } from "../record-form/file-lines.tsx";
import { offeredIn } from "../record-form/own-checks-form.ts";
import { ExhibitList, viewWords } from "../record-form/photos.tsx";
import { LinkNote } from "./link-note.tsx";
import { OwnChecks } from "./own-checks.tsx";
import { BENCH, usesInstrument } from "./read-record-form.ts";
import {
	ARRIVED_FIELDS,
	IDENTITY_FIELDS,
	PARCEL_FIELDS,
	REPORTED_FIELDS,
	SET_UP_FIELDS,
	STATE_FIELDS,
} from "./record-fields.ts";
import { ShopLayout } from "./shop-layout.tsx";

/** The guided photos, in the order in which they are taken. */
const GUIDED_VIEWS = ["item-front", "item-back", "connectors", "serial-label", "pack-open", "parcel-closed"] as const;
const FURTHER_VIEWS = ["damage", "message"] as const;

export interface RecordEditorProps {
	readonly request: FastifyRequest;
	readonly guided: GuidedRecord;
	readonly instruments: readonly InstrumentView[];
	readonly benches: readonly BenchView[];
	readonly values: FormValues;
	readonly errors: FieldErrors;
	readonly notes: readonly string[];
	/** A diagnostic output that was just read. */
	readonly read: ReadFile | null;
	readonly photoCode: PhotoCodeView;
	readonly now: Date;
}

export function RecordEditor(props: RecordEditorProps) {
	const { request, guided, values, errors, notes } = props;
	const { record, order } = guided;
	const content = record.content ?? {};
	const odd = oddMassOf(content, order.item);
	const short = guided.allChecks.filter((check) => check.short);
	const further = guided.allChecks.filter((check) => !check.short);
	const field = { values, errors };
	const fields = (list: readonly Field[]) => list.map((one) => <FieldControl key={one.name} field={one} {...field} />);
	const exhibits = { content, recordId: record.id, files: guided.files };
	const views = [...GUIDED_VIEWS, ...FURTHER_VIEWS];
	return (
		<ShopLayout
			request={request}
			title={say(`record.title-${record.stage}` as TextKey)}
			crumbs={[
				{ href: "/", label: say("shop.orders") },
				{ href: `/orders/${order.id}`, label: itemName(order.item) },
			]}
		>
			{odd !== null && <p class="note">{say(`arrival.odd-mass.${odd}`)}</p>}
			<p class="hint">{say(record.depth === "short" ? "record.short-text" : "record.full-text")}</p>
			<ErrorSummary errors={errors} />
			{notes.length > 0 && (
				<div class="note" role="status">
					<ul>
						{notes.map((note) => (
							<li key={note}>{note}</li>
						))}
					</ul>
				</div>
			)}
			{props.read !== null && <FileLines file={props.read} />}
			<Form action={`/records/${record.id}`} formToken={formTokenFor(request)} upload>
				<input type="hidden" name="version" value={record.version} />
				<button type="submit" name="act" value="save" class="unseen" tabIndex={-1} aria-hidden="true" />
				{record.provenance === "reported-to" && (
					<>
						<h2>{say("record.reported")}</h2>
						<p>{say("record.reported-text")}</p>
						{fields(REPORTED_FIELDS)}
					</>
				)}
				<h2>{say("record.identity")}</h2>
				{order.item.serialNumber !== undefined && (
					<p class="hint">{say("record.order-says", { serial: order.item.serialNumber })}</p>
				)}
				{fields(IDENTITY_FIELDS)}

				<h2>{say("record.photos")}</h2>
				<PhotoCodeNote code={props.photoCode} />
				<ExhibitList views={[...views]} {...exhibits} removable />
				<div class="row">
					{views.map((view) => (
						<UploadingField
							target={{ record: record.id }}
							key={view}
							{...field}
							name={`photo.${view}`}
							label={`${viewWords(view)}${content.exhibits?.some((exhibit) => exhibit.view === view) ? " ✓" : ""}`}
							accept="image/*,video/mp4,application/pdf"
							multiple
						/>
					))}
				</div>

				<h2>{say("record.file")}</h2>
				<p>{say("record.file-text")}</p>
				<Collectors checks={guided.allChecks} />
				<ExhibitList views={["diagnostic-output"]} {...exhibits} removable />
				<UploadingField
					target={{ record: record.id }}
					{...field}
					name="file.upload"
					label={say("record.file-upload")}
				/>
				<TextArea values={{}} errors={errors} name="file.paste" label={say("record.file-paste")} rows={3} />
				<SelectField
					{...field}
					name="file.load"
					label={say("record.file-load")}
					choices={["load", "idle", "unknown"].map((value) => ({
						value,
						label: say(`arrival.file.load.${value}` as TextKey),
					}))}
				/>
				<Submit name="act" value="save" kind="quiet" label={say("record.file-read")} />
				{content.link !== undefined && <LinkNote link={content.link} />}

				<h2>{say("record.set-up")}</h2>
				<SelectField
					{...field}
					name={BENCH}
					label={say("record.bench")}
					empty={say("record.no-bench")}
					choices={props.benches.map((bench) => ({ value: bench.id, label: bench.label }))}
				/>
				{fields(SET_UP_FIELDS)}

				<h2>{say("record.checks")}</h2>
				{short.map((check) => (
					<ShopCheck key={check.id} check={check} {...props} />
				))}
				{further.length > 0 && (
					<details open={record.depth === "full"}>
						<summary>{say("record.further-checks", { count: further.length })}</summary>
						{further.map((check) => (
							<ShopCheck key={check.id} check={check} {...props} />
						))}
					</details>
				)}
				<OwnChecks
					{...field}
					instruments={props.instruments}
					offered={offeredIn(content, guided.ownChecks)}
					open={order.item.class !== "graphics-card" && guided.ownChecks.length === 0}
				/>

				{record.stage !== "bench" && (
					<>
						<h2>{say("record.parcel")}</h2>
						{record.stage === "arrival" && fields(ARRIVED_FIELDS)}
						{fields(PARCEL_FIELDS)}
					</>
				)}

				<h2>{say("record.state")}</h2>
				{fields(STATE_FIELDS)}
				<ClockControl {...field} now={props.now} />
				<OpenQuestions guided={guided} />
				<p class="buttons">
					<Submit name="act" value="seal" label={say("record.to-seal")} />
					<Submit name="act" value="save" kind="quiet" label={say("record.save")} />
					<Submit name="act" value="discard" kind="quiet" label={say("record.discard")} />
				</p>
			</Form>
			<p>
				<a href={`/records/${record.id}/link`}>{say("record.give-link")}</a>
			</p>
		</ShopLayout>
	);
}

/** A check with, where it is read off one, its instrument. */
function ShopCheck({
	check,
	guided,
	instruments,
	values,
	errors,
}: RecordEditorProps & { readonly check: GuidedRecord["allChecks"][number] }) {
	const field = { values, errors };
	return (
		<>
			<CheckControl check={check} content={guided.record.content ?? {}} {...field} />
			{usesInstrument(check) && (
				<div class="row">
					<SelectField
						{...field}
						name={controlName(check, "instrument")}
						label={say("record.instrument", { check: checkName(check) })}
						empty={say("record.no-instrument")}
						choices={instruments.map((instrument) => ({ value: instrument.id, label: instrument.label }))}
					/>
					{check.readThroughLeads === true && (
						<CheckField {...field} name={controlName(check, "leadsNulled")} label={say("record.leads-nulled")} />
					)}
				</div>
			)}
		</>
	);
}

/** What this record cannot exclude as it stands. */
function OpenQuestions({ guided }: { readonly guided: GuidedRecord }) {
	const content = guided.record.content ?? {};
	const { bounds, untested } = openQuestions(content, guided.allChecks);
	const soFar = Object.entries(soakSoFar(content.readings ?? [])).map(([name, value]) => [name, String(value)]);
	return (
		<div class="note">
			<h3>{say("open.title")}</h3>
			<ul>
				{bounds.map((bound) => (
					<li key={bound.sentence}>{say(bound.sentence as TextKey, bound.values)}</li>
				))}
				{untested.length > 0 && <li>{say("open.untested", { names: untested.map(checkName).join(", ") })}</li>}
			</ul>
			<p>
				<a href={`/soak?${new URLSearchParams(soFar)}`}>{say("soak-page.link")}</a>
			</p>
		</div>
	);
}
