/** Checks of the catalogue as form controls, both ways. Controls of a check are named `check.<id>.<part>`. */
import type { RecordContentInput } from "../../contract/records.ts";
import type { GuidedCheck } from "../../operations/records/guided-record.ts";
import { say } from "../../texts/say.ts";
import type { Form, Problem } from "./field.ts";
import { ITEM_MOST } from "./masses.ts";
import type { ReadForm } from "./read-form.ts";
import { isCount, readNumber } from "./read-number.ts";

type Reading = NonNullable<RecordContentInput["readings"]>[number];

/** Reasons that may be chosen; `not-recorded` is set at sealing where nothing was chosen. */
export const REASONS = [
	"no-instrument",
	"no-equipment",
	"no-time",
	"unsafe",
	"stop-sign",
	"not-applicable",
	"does-not-start",
	"other",
] as const;

/** The instrument that a typed mass is measured with. */
const OWN_SCALE = "meter-1";
const MOST_VALUES = 10;

/** Name of a control. */
export function controlName(check: Pick<GuidedCheck, "id">, part: string): string {
	return `check.${check.id}.${part}`;
}

/** Whether the reading came out of a file: shown, but not to be typed over. */
export function isFromFile(reading: Reading | undefined): boolean {
	return reading?.importSha256 !== undefined;
}

/** Values of the controls of these checks. */
export function fillChecks(checks: readonly GuidedCheck[], content: RecordContentInput): Form {
	const form: Record<string, string> = {};
	for (const check of checks) {
		const reading = readingOf(check, content);
		if (reading === undefined) continue;
		const set = (part: string, value: string | number | undefined) => {
			if (value !== undefined) form[controlName(check, part)] = String(value);
		};
		if (check.kind === "visual" && reading.trials !== undefined)
			set("result", reading.successes === 1 ? "good" : "bad");
		else {
			set("trials", reading.trials);
			set("successes", reading.successes);
		}
		set("count", reading.count);
		set("exposure", reading.exposure?.typed ?? reading.exposure?.value);
		set("exposure.unit", reading.exposure?.unit);
		set("value", reading.values?.map((value) => value.typed ?? value.value).join("; "));
		set("value.unit", reading.values?.[0]?.unit);
		set("reason", reading.notTested?.reason);
		set("remark", reading.remark);
		if (reading.instrumentId === OWN_SCALE) {
			set("resolution", content.ownInstruments?.find((instrument) => instrument.id === OWN_SCALE)?.resolution);
		}
	}
	return form;
}

/** After a stop sign: the reason, for each check that has no reading yet. */
export function fillStopped(checks: readonly GuidedCheck[], content: RecordContentInput): Form {
	const open = checks.filter((check) => readingOf(check, content) === undefined);
	return Object.fromEntries(open.map((check) => [controlName(check, "reason"), "stop-sign"]));
}

/** The content with the readings of these checks as the form says. Readings from files stay. */
export function readChecks(checks: readonly GuidedCheck[], form: Form, content: RecordContentInput): ReadForm {
	const problems: Problem[] = [];
	let readings: readonly Reading[] = content.readings ?? [];
	let ownInstruments = content.ownInstruments;
	for (const check of checks) {
		const before = readingOf(check, content);
		if (isFromFile(before)) continue;
		const answer = readCheck(check, (part) => (form[controlName(check, part)] ?? "").trim());
		if ("code" in answer) {
			problems.push(answer);
			continue;
		}
		readings = readings.filter((reading) => reading !== before);
		if (answer.reading !== null) readings = [...readings, answer.reading];
		if (answer.scale !== undefined) {
			const scale = { id: OWN_SCALE, label: say("arrival.own-scale"), ...answer.scale };
			ownInstruments = [scale, ...(ownInstruments ?? []).filter((instrument) => instrument.id !== OWN_SCALE)];
		}
	}
	const { readings: _, ownInstruments: __, ...others } = content;
	return {
		content: {
			...others,
			...(readings.length === 0 ? {} : { readings: [...readings] }),
			...(ownInstruments === undefined ? {} : { ownInstruments }),
		},
		problems,
	};
}

/** The reading of a check under the check's own condition. */
export function readingOf(check: GuidedCheck, content: RecordContentInput): Reading | undefined {
	return content.readings?.find(
		(reading) => reading.check === check.id && (check.condition === undefined || reading.condition === check.condition),
	);
}

type Unit = GuidedCheck["typedUnits"][number];
type CheckAnswer =
	| { readonly reading: Reading | null; readonly scale?: { readonly unit: Unit; readonly resolution: number } }
	| Problem;

function readCheck(check: GuidedCheck, typed: (part: string) => string): CheckAnswer {
	const problem = (part: string, code: string, facts?: Problem["facts"]): Problem => ({
		name: controlName(check, part),
		code,
		...(facts === undefined ? {} : { facts }),
	});
	const remark = typed("remark");
	if (remark.length > 1000) return problem("remark", "too-long", { maximum: 1000 });
	if (remark.includes("\u0000") || !remark.isWellFormed()) return problem("remark", "text");
	const common = {
		check: check.id,
		...(check.condition === undefined ? {} : { condition: check.condition }),
		...(remark === "" ? {} : { remark }),
	};
	const reason = typed("reason");
	const tried = ["result", "trials", "successes", "count", "value"].some((part) => typed(part) !== "");
	if (reason !== "") {
		if (tried) return problem("reason", "both");
		const known = REASONS.find((code) => code === reason);
		if (known === undefined) return problem("reason", "choice");
		return { reading: { ...common, notTested: { reason: known } } };
	}
	if (!tried) {
		return remark === "" ? { reading: null } : { reading: { ...common, notTested: { reason: "other" } } };
	}
	switch (check.kind) {
		case "visual": {
			const result = typed("result");
			if (result !== "good" && result !== "bad") return problem("result", "choice");
			return { reading: { ...common, trials: 1, successes: result === "good" ? 1 : 0 } };
		}
		case "outcome": {
			const trials = readNumber(typed("trials"));
			const successes = readNumber(typed("successes"));
			if (trials === null || !isCount(trials.value) || trials.value < 1) return problem("trials", "whole");
			if (trials.value > 10_000) return problem("trials", "too-large", { maximum: 10_000 });
			if (successes === null || !isCount(successes.value)) return problem("successes", "whole");
			if (successes.value > trials.value) return problem("successes", "tries");
			return { reading: { ...common, trials: trials.value, successes: successes.value } };
		}
		case "count": {
			const count = readNumber(typed("count"));
			if (count === null || !isCount(count.value)) return problem("count", "whole");
			if (count.value > 1e12) return problem("count", "too-large", { maximum: 1e12 });
			const exposure = readNumber(typed("exposure"));
			const unit = check.exposureUnits.find((code) => code === (typed("exposure.unit") || check.exposureUnits[0]));
			if (exposure === null || !(exposure.value > 0) || unit === undefined) return problem("exposure", "exposure");
			return { reading: { ...common, count: count.value, exposure: { ...exposure, unit } } };
		}
		default:
			return readValues(check, common, typed, problem);
	}
}

function readValues(
	check: GuidedCheck,
	common: Pick<Reading, "check">,
	typed: (part: string) => string,
	problem: (part: string, code: string, facts?: Problem["facts"]) => Problem,
): CheckAnswer {
	const unit = check.typedUnits.find((code) => code === (typed("value.unit") || check.typedUnits[0]));
	if (unit === undefined) return problem("value.unit", "choice");
	const parts = typed("value").split(/[;\s]+/);
	if (parts.length > MOST_VALUES) return problem("value", "too-many", { maximum: MOST_VALUES });
	const numbers = parts.filter((part) => part !== "").map(readNumber);
	if (numbers.length === 0) return problem("value", "number");
	const values = [];
	for (const number of numbers) {
		if (number === null) return problem("value", "number");
		if (check.id === "mass" && !(number.value > 0)) return problem("value", "too-small", { minimum: 0 });
		const maximum = check.id === "mass" ? ITEM_MOST[unit] : undefined;
		if (maximum !== undefined && !(number.value <= maximum)) return problem("value", "too-large", { maximum });
		values.push({ ...number, unit });
	}
	const step = typed("resolution");
	if (step === "") return { reading: { ...common, values } };
	const resolution = readNumber(step);
	if (resolution === null || !(resolution.value > 0)) return problem("resolution", "number");
	return { reading: { ...common, values, instrumentId: OWN_SCALE }, scale: { unit, resolution: resolution.value } };
}
