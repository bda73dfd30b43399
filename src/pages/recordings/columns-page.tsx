/** The first rows of a recorder's file, what was understood of its columns and what was not, and the form that says how to read it. */
import type { FastifyRequest } from "fastify";
import { formTokenFor } from "../../access/callers.ts";
import type { OrderView } from "../../contract/orders.ts";
import {
	ACCELERATION_UNITS,
	RECORDER_DEVICES,
	type RecordingPreview,
	type RecordingView,
	TEMPERATURE_UNITS,
	TIME_UNITS,
} from "../../contract/transit-recordings.ts";
import { say, type TextKey } from "../../texts/say.ts";
import {
	CheckField,
	ChoiceField,
	ErrorSummary,
	type FieldErrors,
	Form,
	type FormValues,
	SelectField,
	Submit,
	TextField,
} from "../components/form.tsx";
import { AXES } from "./columns-form.ts";
import { RecordingLayout } from "./recording-layout.tsx";

const PLACES = ["on-item", "on-inner-box", "on-outer-box", "in-cushion", "not-known"] as const;

export function ColumnsPage(props: {
	readonly request: FastifyRequest;
	readonly order: OrderView;
	readonly recording: RecordingView;
	readonly preview: RecordingPreview;
	readonly address: string;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}) {
	const { request, order, recording, preview, address, ...field } = props;
	const columns = preview.columns.map(({ column, name }) => ({ value: String(column), label: `${column}: ${name}` }));
	const units = (codes: readonly string[]) =>
		codes.map((value) => ({ value, label: say(`recording.unit-${value}` as TextKey) }));
	const choose = { ...field, empty: say("recording.choose") };
	const crumbs = [{ href: address.split("/").slice(0, -1).join("/"), label: say("recording.title") }];
	return (
		<RecordingLayout request={request} order={order} title={say("recording.columns-title")} crumbs={crumbs}>
			<ErrorSummary errors={field.errors} />
			<p>{say(preview.remembered === null ? "recording.columns-text" : "recording.columns-remembered")}</p>
			<Understood preview={preview} />
			<FirstRows preview={preview} name={recording.fileName} />
			<Form action={`${address}/columns`} formToken={formTokenFor(request)}>
				<ChoiceField
					{...field}
					name="place"
					label={say("recording.place")}
					hint={say("recording.place-hint")}
					choices={PLACES.map((value) => ({ value, label: say(`recording.where-${value}`) }))}
				/>
				<ChoiceField
					{...field}
					name="device"
					label={say("recording.device")}
					choices={RECORDER_DEVICES.map((value) => ({ value, label: say(`recording.device-${value}`) }))}
				/>
				<div class="row">
					<SelectField {...choose} name="time" label={say("recording.time-column")} choices={columns} />
					<SelectField {...choose} name="timeUnit" label={say("recording.time-unit")} choices={units(TIME_UNITS)} />
					<TextField
						{...field}
						name="sampleRateHz"
						label={say("recording.sample-rate")}
						hint={say("recording.sample-rate-hint")}
						unit="Hz"
						inputMode="decimal"
					/>
					<TextField
						{...field}
						name="offsetMinutes"
						label={say("recording.offset")}
						hint={say("recording.offset-hint")}
						unit="min"
						inputMode="decimal"
					/>
				</div>
				<div class="row">
					{AXES.map((axis) => (
						<SelectField key={axis} {...choose} name={axis} label={say("recording.axis", { axis })} choices={columns} />
					))}
					<SelectField
						{...choose}
						name="accelerationUnit"
						label={say("recording.acceleration-unit")}
						choices={units(ACCELERATION_UNITS)}
					/>
				</div>
				<div class="row">
					<SelectField {...choose} name="temperature" label={say("recording.temperature")} choices={columns} />
					<SelectField
						{...field}
						name="temperatureUnit"
						label={say("recording.temperature-unit")}
						choices={units(TEMPERATURE_UNITS)}
					/>
					<SelectField {...choose} name="humidity" label={say("recording.humidity")} choices={columns} />
				</div>
				<CheckField {...field} name="unitsConfirmed" label={say("recording.confirm")} />
				<TextField
					{...field}
					name="startsAt"
					label={say("recording.starts")}
					hint={say("recording.starts-hint")}
					type="datetime-local"
				/>
				<TextField
					{...field}
					name="clockMinutes"
					label={say("recording.clock")}
					hint={say("recording.clock-hint")}
					unit="min"
					inputMode="decimal"
					width="short"
				/>
				<div class="row">
					<TextField
						{...field}
						name="fullScaleGn"
						label={say("recording.full-scale")}
						hint={say("recording.full-scale-hint")}
						unit="gₙ"
						inputMode="decimal"
					/>
					<TextField
						{...field}
						name="thresholdGn"
						label={say("recording.threshold")}
						hint={say("recording.threshold-hint")}
						unit="gₙ"
						inputMode="decimal"
					/>
				</div>
				<Submit label={say("recording.read")} />
			</Form>
		</RecordingLayout>
	);
}

function Understood({ preview }: { readonly preview: RecordingPreview }) {
	return (
		<table class="stacked">
			<caption>{say("recording.understood")}</caption>
			<thead>
				<tr>
					<th scope="col">{say("recording.column")}</th>
					<th scope="col">{say("recording.taken-for")}</th>
					<th scope="col">{say("recording.its-unit")}</th>
				</tr>
			</thead>
			<tbody>
				{preview.columns.map(({ column, name, quantity, unit, unitFrom }) => (
					<tr key={column}>
						<th scope="row">
							{column}: {name}
						</th>
						<td data-label={say("recording.taken-for")}>
							{say(quantity === null ? "recording.not-understood" : `recording.quantity-${quantity}`)}
						</td>
						<td data-label={say("recording.its-unit")}>
							{unit === null
								? say("recording.unit-open")
								: `${unit} (${say(unitFrom === "rest" ? "recording.from-rest" : "recording.from-header")})`}
						</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}

function FirstRows({ preview, name }: { readonly preview: RecordingPreview; readonly name: string }) {
	return (
		// biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reached by keys to be scrolled by them.
		<section class="scroll" tabIndex={0} aria-label={say("recording.first-rows", { name })}>
			<table class="rows">
				<caption>{say("recording.first-rows", { name })}</caption>
				<thead>
					<tr>
						{preview.columns.map((column) => (
							<th key={column.column} scope="col">
								{column.name}
							</th>
						))}
					</tr>
				</thead>
				<tbody>
					{preview.rows.map((fields, row) => (
						<tr key={row}>
							{fields.map((cell, place) => (
								<td key={place}>{cell}</td>
							))}
						</tr>
					))}
				</tbody>
			</table>
		</section>
	);
}
