/** The shop's own checks as form controls, both ways: a definition and its result, named `own.<number>.<part>`. */
import { OWN_CHECK_IDS } from "../../catalogue/checks/checks.ts";
import { type RecordContentInput, readingInput } from "../../contract/records.ts";
import type { Form, Problem } from "../record-form/field.ts";
import type { ReadForm } from "../record-form/read-form.ts";
import { readNumber } from "../record-form/read-number.ts";

type Reading = NonNullable<RecordContentInput["readings"]>[number];

export function ownControl(id: string, part: string): string {
	return `${id}.${part}`;
}

/** Values of the controls. */
export function fillOwnChecks(content: RecordContentInput): Form {
	const form: Record<string, string> = {};
	for (const reading of content.readings ?? []) {
		const { definition } = reading;
		if (definition === undefined) continue;
		const set = (part: string, value: string | number | undefined) => {
			if (value !== undefined) form[ownControl(reading.check, part)] = String(value);
		};
		for (const part of [
			"name",
			"kind",
			"unit",
			"comparability",
			"betterIs",
			"limitLow",
			"limitHigh",
			"equivalenceMargin",
		] as const) {
			set(part, definition[part]);
		}
		set("values", reading.values?.map((value) => value.typed ?? value.value).join("; "));
		set("trials", reading.trials);
		set("successes", reading.successes);
		set("count", reading.count);
		set("exposure", reading.exposure?.typed ?? reading.exposure?.value);
		set("instrument", reading.instrumentId);
	}
	return form;
}

/** The content with the own checks as the form says. A check without a name is none. */
export function readOwnChecks(form: Form, content: RecordContentInput): ReadForm {
	const problems: Problem[] = [];
	const others = (content.readings ?? []).filter(
		(reading) => !(OWN_CHECK_IDS as readonly string[]).includes(reading.check),
	);
	const own = OWN_CHECK_IDS.flatMap((id): Reading[] => {
		const typed = (part: string) => (form[ownControl(id, part)] ?? "").trim();
		if (typed("name") === "") return [];
		const before = content.readings?.find((reading) => reading.check === id);
		const outcome = readingInput.safeParse(readingOf(id, typed));
		if (outcome.success) return [outcome.data];
		const part = outcome.error.issues[0]?.path.at(-1);
		problems.push({ name: ownControl(id, String(part ?? "name")), code: "own-check" });
		return before === undefined ? [] : [before];
	});
	const { readings: _, ...rest } = content;
	const readings = [...others, ...own];
	return { content: readings.length === 0 ? rest : { ...rest, readings }, problems };
}

function readingOf(id: string, typed: (part: string) => string): unknown {
	const number = (part: string) => (typed(part) === "" ? undefined : (readNumber(typed(part))?.value ?? typed(part)));
	const only = (members: Readonly<Record<string, unknown>>) =>
		Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined));
	const kind = typed("kind");
	const unit = typed("unit");
	const quantity = (text: string) => {
		const read = readNumber(text);
		return read === null ? text : { ...read, unit };
	};
	const results: Readonly<Record<string, () => Record<string, unknown>>> = {
		outcome: () => ({ trials: number("trials"), successes: number("successes") }),
		count: () => {
			const exposure = readNumber(typed("exposure"));
			return { count: number("count"), exposure: exposure === null ? undefined : { ...exposure, unit: "h" } };
		},
	};
	const values = () => ({
		values: typed("values")
			.split(/[;\s]+/)
			.filter(Boolean)
			.map(quantity),
	});
	const definition = only({
		name: typed("name"),
		kind,
		unit,
		comparability: typed("comparability"),
		betterIs: typed("betterIs"),
		limitLow: number("limitLow"),
		limitHigh: number("limitHigh"),
		equivalenceMargin: number("equivalenceMargin"),
	});
	const tested = ["values", "trials", "count"].some((part) => typed(part) !== "");
	return only({
		check: id,
		definition,
		instrumentId: typed("instrument") === "" ? undefined : typed("instrument"),
		...(tested ? (results[kind] ?? values)() : { notTested: { reason: "other" } }),
	});
}
