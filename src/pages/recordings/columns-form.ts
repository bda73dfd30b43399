/** How a recorder's file is to be read, between the form's fields and the request. */
import type { RecorderMapping, RecordingPreview, RecordingReading } from "../../contract/transit-recordings.ts";
import { say } from "../../texts/say.ts";
import type { FormValues } from "../components/form.tsx";
import type { Form } from "../record-form/field.ts";
import { formReader, given } from "../record-form/form-reader.ts";

export const AXES = ["x", "y", "z"] as const;
const MINUTE_S = 60;

/** What stands in the fields at first: as it was read, else as files of this header were, else as the columns tell. */
export function columnsForm(preview: RecordingPreview, reading: RecordingReading | null): FormValues {
	const mapping = reading?.mapping ?? preview.remembered;
	const fields = mapping === null ? guessed(preview) : mappingFields(mapping);
	if (reading === null) return { device: "recorder", ...fields };
	return {
		...fields,
		place: reading.place,
		device: reading.device,
		startsAt: reading.startsAt === undefined ? "" : new Date(reading.startsAt).toISOString().slice(0, 19),
		clockMinutes: reading.clockUncertaintyS === undefined ? "" : String(reading.clockUncertaintyS / MINUTE_S),
		fullScaleGn: String(reading.fullScaleGn ?? ""),
		thresholdGn: String(reading.thresholdGn ?? ""),
	};
}

function mappingFields({ time, axes, temperature, humidity }: RecorderMapping): FormValues {
	return {
		time: String(time.column),
		timeUnit: time.unit,
		sampleRateHz: String(time.sampleRateHz ?? ""),
		offsetMinutes: String(time.offsetMinutes ?? ""),
		...Object.fromEntries(axes.map(({ column }, axis) => [AXES[axis], String(column)])),
		accelerationUnit: axes[0]?.unit ?? "",
		temperature: String(temperature?.column ?? ""),
		temperatureUnit: temperature?.unit ?? "degC",
		humidity: String(humidity?.column ?? ""),
	};
}

const ACCELERATION_OF: Readonly<Record<string, string>> = {
	g: "Gn",
	gn: "Gn",
	mg: "mGn",
	"m/s2": "m/s2",
	"m/s²": "m/s2",
	"m/s^2": "m/s2",
	"mm/s2": "mm/s2",
};

/** A unit that is not told stays open, since it must be asked. */
function guessed({ columns, rows }: RecordingPreview): FormValues {
	const of = (quantity: string) => columns.filter((column) => column.quantity === quantity);
	const [time = of("count")[0]] = of("time");
	const [temperature] = of("temperature");
	const [humidity] = of("humidity");
	const axes = of("acceleration").slice(0, 3);
	const firstTime = time === undefined ? "" : (rows[0]?.[time.column - 1] ?? "");
	const unit = time?.quantity === "count" ? "count" : firstTime.includes(":") ? "date-time" : (time?.unit ?? "");
	return {
		time: String(time?.column ?? ""),
		timeUnit: ["s", "ms", "us", "count", "date-time"].includes(unit) ? unit : "",
		...Object.fromEntries(axes.map(({ column }, axis) => [AXES[axis], String(column)])),
		accelerationUnit: ACCELERATION_OF[(axes[0]?.unit ?? "").toLowerCase()] ?? "",
		temperature: String(temperature?.column ?? ""),
		temperatureUnit: /f$/i.test(temperature?.unit ?? "") ? "degF" : "degC",
		humidity: String(humidity?.column ?? ""),
	};
}

export function readColumnsForm(form: Form): {
	readonly reading: unknown;
	readonly errors: Readonly<Record<string, string>>;
	readonly fieldOf: Readonly<Record<string, string>>;
} {
	const reader = formReader(form);
	const column = (field: string, pointer: string) => reader.number(field, `${pointer}/column`);
	const chosen = AXES.flatMap((axis) => (reader.text(axis) === "" ? [] : [axis]));
	if (chosen.length === 0) reader.wrong("x", say("recording.no-axis"));
	if (!reader.ticked("unitsConfirmed")) reader.wrong("unitsConfirmed", say("recording.not-confirmed"));
	const temperature = column("temperature", "/mapping/temperature");
	const humidity = column("humidity", "/mapping/humidity");
	const startsAt = reader.text("startsAt", "/startsAt");
	reader.fills("place", "/place");
	reader.fills("device", "/device");
	reader.fills("timeUnit", "/mapping/time/unit");
	reader.fills("x", "/mapping/axes");
	chosen.forEach((_, axis) => {
		reader.fills("accelerationUnit", `/mapping/axes/${axis}/unit`);
	});
	reader.fills("temperatureUnit", "/mapping/temperature/unit");
	return {
		errors: reader.errors,
		fieldOf: { ...reader.fieldOf, "/file": "form" },
		reading: given({
			place: optional(reader.text("place")),
			device: optional(reader.text("device")),
			unitsConfirmed: true,
			mapping: given({
				time: given({
					column: column("time", "/mapping/time"),
					unit: optional(reader.text("timeUnit")),
					sampleRateHz: reader.number("sampleRateHz", "/mapping/time/sampleRateHz"),
					offsetMinutes: reader.number("offsetMinutes", "/mapping/time/offsetMinutes"),
				}),
				axes: chosen.map((axis, index) =>
					given({
						column: column(axis, `/mapping/axes/${index}`),
						unit: optional(reader.text("accelerationUnit")),
					}),
				),
				temperature:
					temperature === undefined ? undefined : { column: temperature, unit: reader.text("temperatureUnit") },
				humidity: humidity === undefined ? undefined : { column: humidity },
			}),
			startsAt: startsAt === "" ? undefined : `${startsAt.length === 16 ? `${startsAt}:00` : startsAt}Z`,
			clockUncertaintyS: reader.number("clockMinutes", "/clockUncertaintyS", MINUTE_S),
			fullScaleGn: reader.number("fullScaleGn", "/fullScaleGn"),
			thresholdGn: reader.number("thresholdGn", "/thresholdGn"),
		}),
	};
}

function optional(text: string): string | undefined {
	return text === "" ? undefined : text;
}
