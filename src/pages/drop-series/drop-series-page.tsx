/** The form of a series of drops, and what was judged of it. */
import type { FastifyRequest } from "fastify";
import { formTokenFor } from "../../access/callers.ts";
import type { DropGroup, DropSeries } from "../../calculations/cushioning/drop-series.ts";
import type { Judged } from "../../calculations/judged.ts";
import { RECORDER_DEVICES } from "../../contract/transit-recordings.ts";
import { say, type TextKey, writeNumber } from "../../texts/say.ts";
import {
	Caution,
	ChoiceField,
	ErrorSummary,
	type FieldErrors,
	FileField,
	Form,
	type FormValues,
	Submit,
	TextArea,
	TextField,
} from "../components/form.tsx";
import { numberFields } from "../components/number-fields.tsx";
import { ShopLayout } from "../shop/shop-layout.tsx";

export function DropSeriesPage(props: {
	readonly request: FastifyRequest;
	readonly judged: Judged<DropSeries> | null;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}) {
	const { request, judged, ...field } = props;
	const number = numberFields(field, { width: "short" });
	return (
		<ShopLayout request={request} title={say("drops.title")} crumbs={[{ href: "/stock", label: say("stock.title") }]}>
			<ErrorSummary errors={field.errors} />
			<p>{say("drops.text")}</p>
			<Caution>{say("drops.caution")}</Caution>
			<p>{say("drops.rules")}</p>
			{judged !== null && <Outcome judged={judged} formToken={formTokenFor(request)} />}
			<Form action="/foam-drops" formToken={formTokenFor(request)} upload>
				<FileField {...field} name="file" label={say("drops.file")} hint={say("drops.file-hint")} />
				<ChoiceField
					{...field}
					name="device"
					label={say("recording.device")}
					choices={RECORDER_DEVICES.map((value) => ({ value, label: say(`recording.device-${value}`) }))}
				/>
				<div class="row">
					{number("thicknessMm", "drops.thickness", "mm")}
					{number("lengthMm", "drops.length", "mm")}
					{number("widthMm", "drops.width", "mm")}
					{number("temperatureDegC", "drops.temperature-of-foam", "°C")}
					{number("fullScaleGn", "drops.full-scale", "gₙ")}
				</div>
				<TextArea {...field} name="lines" label={say("drops.lines")} hint={say("drops.lines-hint")} rows={8} />
				<Submit label={say("drops.judge")} />
			</Form>
		</ShopLayout>
	);
}

function Outcome({ judged, formToken }: { readonly judged: Judged<DropSeries>; readonly formToken: string }) {
	if (judged.status === "not-assessed") return <p class="lead">{words(judged.reason.message)}</p>;
	const { drops, first, later } = judged.result;
	return (
		<section class="result" id="outcome">
			<table class="stacked">
				<caption>{say("drops.table")}</caption>
				<thead>
					<tr>
						<th scope="col">{say("recording.number")}</th>
						{(["stress", "peak", "samples", "outcome"] as const).map((head) => (
							<th key={head} scope="col">
								{say(`drops.${head}`)}
							</th>
						))}
					</tr>
				</thead>
				<tbody>
					{drops.map((drop, index) => (
						<tr key={index}>
							<th scope="row">{index + 1}</th>
							<td data-label={say("drops.stress")}>{writeNumber(drop.staticStressKPa)} kPa</td>
							<td data-label={say("drops.peak")}>{writeNumber(drop.peakGn ?? Number.NaN)} gₙ</td>
							<td data-label={say("drops.samples")}>{writeNumber(Math.floor(drop.samplesInPulse ?? 0))}</td>
							<td data-label={say("drops.outcome")}>
								{drop.refusal === null ? say("drops.taken") : words(drop.refusal)}
							</td>
						</tr>
					))}
				</tbody>
			</table>
			<Group group={first} title="drops.first" formToken={formToken} />
			<Group group={later} title="drops.later" formToken={formToken} />
			{judged.validity.notes.map((note) => (
				<p key={note.sentence} class="hint">
					{words(note)}
				</p>
			))}
		</section>
	);
}

/** Names of the field for a foam's name: two stand on one page. */
export type FoamName = "first" | "later";

interface KeepFoamProps {
	readonly sheet: string;
	readonly name: FoamName;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

/** The foam that was judged, while its name is not one that the stock takes. */
export function KeepFoamPage(props: KeepFoamProps & { readonly request: FastifyRequest }) {
	return (
		<ShopLayout
			request={props.request}
			title={say("drops.keep")}
			crumbs={[
				{ href: "/stock", label: say("stock.title") },
				{ href: "/foam-drops", label: say("drops.title") },
			]}
		>
			<ErrorSummary errors={props.errors} />
			<KeepFoam {...props} formToken={formTokenFor(props.request)} />
		</ShopLayout>
	);
}

function KeepFoam({ sheet, name, formToken, ...field }: KeepFoamProps & { readonly formToken: string }) {
	return (
		<Form action="/foam-drops/keep" formToken={formToken}>
			<input type="hidden" name="sheet" value={sheet} />
			<TextField {...field} name={name} label={say("stock.name")} hint={say("stock.name-hint")} />
			<Submit label={say("drops.keep")} kind="quiet" />
		</Form>
	);
}

function Group({
	group,
	title,
	formToken,
}: {
	readonly group: DropGroup;
	readonly title: "drops.first" | "drops.later";
	readonly formToken: string;
}) {
	const { fit, points } = group;
	const [point] = points;
	return (
		<section>
			<h2>{say(title)}</h2>
			{fit.status === "not-assessed" || point === undefined ? (
				<p>{words(fit.status === "not-assessed" ? fit.reason.message : { sentence: "drops.no-shock" })}</p>
			) : (
				<>
					<p>
						{say("drops.fit", {
							count: points.length,
							a: fit.result.aKPa,
							b: fit.result.bPerKPa,
							least: fit.result.minimumCushionFactor,
						})}
					</p>
					<KeepFoam
						sheet={JSON.stringify({ foam: { points }, thicknessM: point.thicknessM })}
						name={title === "drops.first" ? "first" : "later"}
						formToken={formToken}
						values={{}}
						errors={{}}
					/>
				</>
			)}
		</section>
	);
}

function words({
	sentence,
	values,
}: {
	readonly sentence: string;
	readonly values?: Readonly<Record<string, number | string>>;
}) {
	return say(sentence as TextKey, values);
}
