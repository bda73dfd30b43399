/**
 * What the first test after delivery excludes and what it does not: the list first, the grade second. A wait that was not
 * kept or a test that was not possible is a fact with its risk, never a mark against a person.
 */
import { type Sentence, sentence } from "../judged.ts";

/** What an arrival record says of how the first test was made; undefined where it says nothing. */
export interface FirstStateFacts {
	/** Whether power was applied at all. */
	readonly tested: boolean;
	readonly works: boolean;
	/** Hours from in hand to the first test; undefined where either time is not known. */
	readonly startedAfterH?: number | undefined;
	readonly firstAttemptEver?: boolean | undefined;
	readonly waitedH?: number | undefined;
	readonly wetnessSeen?: boolean | undefined;
	readonly workDoneBefore?: boolean | undefined;
	readonly otherItem: boolean;
	/** Whether the marks exclude another item. */
	readonly sameItem: boolean;
	readonly controlBefore?: boolean | undefined;
	readonly controlAfter?: boolean | undefined;
	readonly platforms?: number | undefined;
	/** Whether host, slot, supply and driver are recorded. */
	readonly setUpRecorded: boolean;
	readonly filmed: boolean;
}

export type FirstStateGrade = "full" | "fair" | "weak" | "void";

export interface FirstStatePoint {
	readonly id: string;
	readonly says: Sentence;
	/** How to still get it; null where it is there, or can not be had any more. */
	readonly how: Sentence | null;
}

export interface FirstState {
	readonly excluded: readonly FirstStatePoint[];
	readonly notExcluded: readonly FirstStatePoint[];
	/** Null where nothing was tested: then there is no first state yet. */
	readonly grade: FirstStateGrade | null;
	readonly why: Sentence;
}

/** Within this of delivery; common practice. */
export const SOON_H = 48;
/** Computers tried: one is enough where it works, two where it does not; common practice. */
const PLATFORMS_WANTED = 2;

export function firstState(facts: FirstStateFacts): FirstState {
	const points = pointsOf(facts);
	const told = ({ id, still }: (typeof points)[number], holds: boolean): FirstStatePoint => ({
		id,
		says: sentence(`first-state.${id}-${holds ? "yes" : "no"}`),
		how: holds || !still ? null : sentence(`first-state.${id}-how`),
	});
	return {
		excluded: points.filter(({ holds }) => holds).map((point) => told(point, true)),
		notExcluded: points.filter(({ holds }) => !holds).map((point) => told(point, false)),
		...gradeOf(facts),
	};
}

/** `still`: it can be had after the first test as well. */
function pointsOf(facts: FirstStateFacts) {
	const point = (id: string, holds: boolean, still: boolean) => ({ id, holds, still });
	const untouched = point("untouched", facts.workDoneBefore === false, false);
	const identity = point("same-item", !facts.otherItem && facts.sameItem, true);
	if (!facts.tested) return [identity, untouched, point("tested", false, true)];
	const bench = point("bench-good", facts.controlBefore === true && facts.controlAfter === true, true);
	const computers = point("other-computer", (facts.platforms ?? 1) >= PLATFORMS_WANTED, true);
	return [
		identity,
		untouched,
		point("first-attempt", facts.firstAttemptEver === true, false),
		point("soon", facts.startedAfterH !== undefined && facts.startedAfterH <= SOON_H, false),
		point("dry", facts.wetnessSeen === false && facts.waitedH !== undefined, false),
		...(facts.works ? [] : [bench, computers]),
		point("set-up-recorded", facts.setUpRecorded, true),
		point("filmed", facts.filmed, false),
	];
}

/** Full: all of it. Fair, weak and void by the worst thing that is missing. */
function gradeOf(facts: FirstStateFacts): { grade: FirstStateGrade | null; why: Sentence } {
	const because = (grade: FirstStateGrade | null, key: string) => ({ grade, why: sentence(`first-state.${key}`) });
	if (!facts.tested) return because(null, "none");
	if (facts.otherItem) return because("void", "void-item");
	if (facts.workDoneBefore === true) return because("void", "void-work");
	if (!facts.works && !(facts.controlBefore === true && facts.controlAfter === true))
		return because("weak", "weak-bench");
	if (!facts.works && (facts.platforms ?? 1) < PLATFORMS_WANTED) return because("weak", "weak-computer");
	if (!facts.sameItem) return because("weak", "weak-marks");
	const soon = facts.startedAfterH !== undefined && facts.startedAfterH <= SOON_H;
	if (!soon || !facts.filmed || facts.firstAttemptEver !== true || !facts.setUpRecorded) return because("fair", "fair");
	return because("full", "full");
}
