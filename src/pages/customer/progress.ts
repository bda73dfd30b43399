/** How far a guided record is, and whether something in it forbids power. */
import type { RecordContentInput } from "../../contract/records.ts";
import type { GuidedCheck } from "../../operations/records/guided-record.ts";
import { readingOf } from "../record-form/checks-form.ts";
import { answerAt } from "../record-form/field.ts";
import type { Step } from "./steps.ts";

/** Whether anything was entered at a step. */
export function isEntered(step: Step, content: RecordContentInput, checks: readonly GuidedCheck[]): boolean {
	if (step.fields.some((field) => answerAt(content, field.name) !== undefined)) return true;
	if (checks.some((check) => step.checks?.(check) === true && readingOf(check, content) !== undefined)) return true;
	const views = step.parts.includes("file") ? ["diagnostic-output"] : step.views.filter((view) => view !== "other");
	return (content.exhibits ?? []).some((exhibit) => views.includes(exhibit.view));
}

/** The first step at which nothing was entered yet: where someone who comes back goes on. */
export function nextStep(steps: readonly Step[], content: RecordContentInput, checks: readonly GuidedCheck[]): Step {
	const entered = steps.map((step) => isEntered(step, content, checks));
	const last = entered.lastIndexOf(true);
	const next = steps[Math.min(last + 1, steps.length - 1)];
	if (next === undefined) throw new Error("a guided record has steps");
	return next;
}
