/** The record's page as the content of a draft: the fields, every check with its instrument, and the shop's own checks. */
import type { CheckDefinition } from "../../catalogue/checks/check.ts";
import type { RecordContentInput } from "../../contract/records.ts";
import type { OfferedCheck } from "../../operations/own-catalogue/own-checks-of.ts";
import { controlName, fillChecks, readChecks } from "../record-form/checks-form.ts";
import type { Field, Form, Problem } from "../record-form/field.ts";
import { fillForm } from "../record-form/fill-form.ts";
import { fillOwnChecks, readOwnChecks } from "../record-form/own-checks-form.ts";
import { type ReadForm, readForm } from "../record-form/read-form.ts";

/** Names of controls outside the fields. */
export const BENCH = "setUp.benchId";

/** Checks that a person reads off an instrument. */
export function usesInstrument(check: CheckDefinition): boolean {
	const read = check.whoCan === "meter" || check.whoCan === "repairer-only";
	return (read && check.kind === "measured") || check.id === "mass";
}

/** Values of all controls. */
export function fillRecordForm(
	fields: readonly Field[],
	checks: readonly CheckDefinition[],
	content: RecordContentInput,
): Form {
	const form: Record<string, string> = {
		...fillForm(fields, content),
		...fillChecks(checks, content),
		...fillOwnChecks(content),
	};
	if (content.setUp?.benchId !== undefined) form[BENCH] = content.setUp.benchId;
	for (const reading of content.readings ?? []) {
		if (reading.instrumentId !== undefined)
			form[controlName({ id: reading.check }, "instrument")] = reading.instrumentId;
		if (reading.leadsNulled === true) form[controlName({ id: reading.check }, "leadsNulled")] = "yes";
	}
	return form;
}

/** The content as the form says; what cannot be read stays out and is named. */
export function readRecordForm(
	fields: readonly Field[],
	checks: readonly CheckDefinition[],
	offered: readonly OfferedCheck[],
	form: Form,
	before: RecordContentInput,
): ReadForm {
	const read = readForm(fields, form, before);
	const checked = readChecks(checks, form, read.content);
	const own = readOwnChecks(form, withInstruments(checks, form, checked.content), offered);
	const problems: Problem[] = [...read.problems, ...checked.problems, ...own.problems];
	return { content: withBench(form, own.content), problems };
}

function withInstruments(
	checks: readonly CheckDefinition[],
	form: Form,
	content: RecordContentInput,
): RecordContentInput {
	if (content.readings === undefined) return content;
	const readings = content.readings.map((reading) => {
		const check = checks.find((candidate) => candidate.id === reading.check);
		if (check === undefined || !usesInstrument(check) || reading.values === undefined) return reading;
		const { instrumentId: _, leadsNulled: __, ...bare } = reading;
		const instrumentId = form[controlName(check, "instrument")] ?? "";
		return {
			...bare,
			...(instrumentId === "" ? {} : { instrumentId }),
			...(form[controlName(check, "leadsNulled")] === "yes" ? { leadsNulled: true } : {}),
		};
	});
	return { ...content, readings };
}

function withBench(form: Form, content: RecordContentInput): RecordContentInput {
	const { benchId: _, ...setUp } = content.setUp ?? {};
	const benchId = form[BENCH] ?? "";
	const next = benchId === "" ? setUp : { ...setUp, benchId };
	const { setUp: __, ...others } = content;
	return Object.keys(next).length === 0 ? others : { ...others, setUp: next };
}
