/** Saves what a step's form said: every good answer, also where another one is wrong. */
import type { Caller } from "../../access/caller.ts";
import { Fault } from "../../faults.ts";
import type { Deps } from "../../operations/deps.ts";
import type { GuidedRecord } from "../../operations/records/guided-record.ts";
import { notedTimes } from "../../operations/records/noted-times.ts";
import { saveDraft } from "../../operations/records/save-draft.ts";
import { readChecks } from "../record-form/checks-form.ts";
import type { Form, Problem } from "../record-form/field.ts";
import { readOffered } from "../record-form/own-checks-form.ts";
import { readForm } from "../record-form/read-form.ts";
import { refuseTimes } from "../record-form/refuse-times.ts";
import { ownChecksAsked } from "./own-checks-asked.ts";
import type { Step } from "./steps.ts";

export interface SavedStep {
	readonly problems: readonly Problem[];
	/** Nothing was saved: the draft was changed elsewhere since the form was opened. */
	readonly stale: boolean;
}

export async function saveStep(
	deps: Deps,
	caller: Caller,
	guided: GuidedRecord,
	step: Step,
	version: number,
	form: Form,
): Promise<SavedStep> {
	const { record } = guided;
	const before = record.content ?? {};
	const fields = readForm(step.fields, form, before);
	const checks = guided.checks.filter((check) => step.checks?.(check) === true);
	const read = readChecks(checks, form, fields.content);
	const own = step.parts.includes("own-checks")
		? readOffered(form, read.content, ownChecksAsked(guided))
		: { content: read.content, problems: [] };
	const typed = { content: own.content, problems: [...fields.problems, ...read.problems, ...own.problems] };
	const noted = await notedTimes(deps.database, record);
	const { content, problems } = refuseTimes(typed, step.fields, before, noted, deps.now());
	if (JSON.stringify(content) === JSON.stringify(before)) return { problems, stale: false };
	if (version !== record.version) return { problems, stale: true };
	try {
		await saveDraft(deps, caller, record.id, version, content);
		return { problems, stale: false };
	} catch (error) {
		if (error instanceof Fault && error.code === "version-stale") return { problems, stale: true };
		throw error;
	}
}
