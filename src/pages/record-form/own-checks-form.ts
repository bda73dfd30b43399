/**
 * The shop's own checks as form controls, both ways, named `own-<number>.<part>`: of those that the shop keeps the result alone,
 * of one that is typed by hand its definition too.
 */
import { OWN_CHECK_IDS } from "../../catalogue/checks/checks.ts";
import { type RecordContentInput, readingInput } from "../../contract/records.ts";
import { isOf, type OfferedCheck } from "../../operations/own-catalogue/own-checks-of.ts";
import type { Form, Problem } from "./field.ts";
import type { ReadForm } from "./read-form.ts";
import { readNumber } from "./read-number.ts";

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

/** Those whose place is not taken by one that was typed by hand. */
export function offeredIn(content: RecordContentInput, offered: readonly OfferedCheck[]): readonly OfferedCheck[] {
	return offered.filter(
		(check) => !(content.readings ?? []).some((reading) => reading.check === check.id && !isOf(check, reading)),
	);
}

/** The content with the results of these checks as the form says. One without a result is not in it. */
export function readOffered(form: Form, content: RecordContentInput, checks: readonly OfferedCheck[]): ReadForm {
	return readPlaces(form, content, checks, (check, typed) => (isTested(typed) ? check.definition : null));
}

/** The same with the checks that were typed by hand at the places that are free. One without a name is none. */
export function readOwnChecks(form: Form, content: RecordContentInput, offered: readonly OfferedCheck[]): ReadForm {
	const kept = offeredIn(content, offered);
	const free = OWN_CHECK_IDS.filter((id) => !kept.some((check) => check.id === id)).map((id) => ({ id }));
	const read = readOffered(form, content, kept);
	const typed = readPlaces(form, read.content, free, (_, part) => (part("name") === "" ? null : definitionOf(part)));
	return { content: typed.content, problems: [...read.problems, ...typed.problems] };
}

type Typed = (part: string) => string;

function readPlaces<Place extends { readonly id: string }>(
	form: Form,
	content: RecordContentInput,
	places: readonly Place[],
	definition: (place: Place, typed: Typed) => object | null,
): ReadForm {
	const problems: Problem[] = [];
	const others = (content.readings ?? []).filter((reading) => !places.some(({ id }) => id === reading.check));
	const own = places.flatMap((place): Reading[] => {
		const typed: Typed = (part) => (form[ownControl(place.id, part)] ?? "").trim();
		const defined = definition(place, typed);
		if (defined === null) return [];
		const before = content.readings?.find((reading) => reading.check === place.id);
		const outcome = readingInput.safeParse(readingOf(place.id, defined, typed));
		if (outcome.success) return [outcome.data];
		const part = outcome.error.issues.flatMap(({ path }) => path).find((step) => RESULT_PARTS.includes(step as never));
		problems.push({
			name: ownControl(place.id, String(part ?? outcome.error.issues[0]?.path.at(-1) ?? "name")),
			code: "own-check",
		});
		return before === undefined ? [] : [before];
	});
	const { readings: _, ...rest } = content;
	const readings = [...others, ...own];
	return { content: readings.length === 0 ? rest : { ...rest, readings }, problems };
}

const RESULT_PARTS = ["values", "trials", "successes", "count", "exposure"] as const;

function isTested(typed: Typed): boolean {
	return RESULT_PARTS.some((part) => typed(part) !== "");
}

function number(typed: string): number | string | undefined {
	return typed === "" ? undefined : (readNumber(typed)?.value ?? typed);
}

function only(members: Readonly<Record<string, unknown>>): Record<string, unknown> {
	return Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined));
}

/** A definition as its controls say; what cannot be read stays text, so that the shape names it. */
export function definitionOf(typed: Typed): Record<string, unknown> {
	return only({
		name: typed("name"),
		kind: typed("kind"),
		unit: typed("unit"),
		comparability: typed("comparability"),
		betterIs: typed("betterIs"),
		limitLow: number(typed("limitLow")),
		limitHigh: number(typed("limitHigh")),
		equivalenceMargin: number(typed("equivalenceMargin")),
	});
}

function readingOf(id: string, definition: object, typed: Typed): unknown {
	const { kind, unit } = definition as { readonly kind?: string; readonly unit?: string };
	const quantity = (text: string) => {
		const read = readNumber(text);
		return read === null ? text : { ...read, unit };
	};
	const results: Readonly<Record<string, () => Record<string, unknown>>> = {
		outcome: () => ({ trials: number(typed("trials")), successes: number(typed("successes")) }),
		count: () => {
			const exposure = readNumber(typed("exposure"));
			return { count: number(typed("count")), exposure: exposure === null ? undefined : { ...exposure, unit: "h" } };
		},
	};
	const values = () => ({
		values: typed("values")
			.split(/[;\s]+/)
			.filter(Boolean)
			.map(quantity),
	});
	return only({
		check: id,
		definition,
		instrumentId: typed("instrument") === "" ? undefined : typed("instrument"),
		...(isTested(typed) ? (results[kind ?? ""] ?? values)() : { notTested: { reason: "other" } }),
	});
}
