/** Whether two records name the same item: mark by mark, then whether the marks that differ can be a slip of the pen. */
import type { ComparedState, IdentityComparison } from "./types.ts";

/** Marks that no repair changes and no two items share; any other difference is shown, not decisive by itself. */
const DECISIVE = ["serial-number", "uuid"];
/** Marks that a board shows without power. */
const SHOWN_WITHOUT_POWER = ["serial-number", "maker", "model"];
/** What items of one model share; all other marks, natural ones among them, tell two of a model apart. */
const SHARED_BY_MANY = ["maker", "model", "firmware"];
/** Marks that must agree before another item is excluded, of the five points of a bench's identity check; common practice. */
const MARKS_WANTED = 3;
/** Of them, that items of one model do not share: a label alone can be exchanged. Our choice. */
const OWN_MARKS_WANTED = 2;
/** From this many independent mismatches on it is another item. Published in no standard; our choice. */
const MISMATCHES_THAT_STOP = 2;

/** What weighing both ends says; null where it says nothing. */
export type MassAgreement = "agrees" | "differs" | null;

/** Compares the marks of both ends: trimmed, without case; letters read for digits are told apart from a difference. */
export function compareIdentity(
	departure: ComparedState,
	arrival: ComparedState,
	mass: MassAgreement,
): IdentityComparison {
	const found = { agree: [] as string[], differ: [] as string[], readAlike: [] as string[], notSeen: [] as string[] };
	const names = new Set([...Object.keys(departure.identity), ...Object.keys(arrival.identity)]);
	for (const name of names) {
		const [left, came] = [departure.identity[name], arrival.identity[name]];
		if (left !== undefined || came !== undefined) found[agreement(left, came)].push(name);
	}
	// Natural marks are described in words: the same words agree, other words are not a difference.
	const seen = arrival.marks.map((mark) => (mark === null ? null : normal(mark)));
	const marks = departure.marks.filter((mark) => mark !== null);
	for (const mark of marks) found[seen.includes(normal(mark)) ? "agree" : "notSeen"].push(mark);
	const recorded = SHOWN_WITHOUT_POWER.filter((name) => typeof departure.identity[name] === "string");
	return {
		...found,
		likelySlips: found.differ.filter((name) => isSlip(departure.identity[name], arrival.identity[name])),
		mismatches: [...found.differ.filter((name) => isPoint(name)), ...(mass === "differs" ? ["mass"] : [])],
		withoutPower: {
			agree:
				recorded.filter((name) => found.agree.includes(name) || found.readAlike.includes(name)).length +
				marks.filter((mark) => found.agree.includes(mark)).length +
				Number(mass === "agrees"),
			compared:
				recorded.filter((name) => !found.notSeen.includes(name)).length +
				marks.filter((mark) => found.agree.includes(mark)).length +
				Number(mass !== null),
			of: recorded.length + marks.length + Number(mass !== null),
		},
	};
}

/**
 * Whether the records name two items: two independent points differ; or the serial number or device id alone differs, and
 * nothing that two items do not share agrees. With such a mark agreeing, one difference is pointed out and stops nothing.
 */
export function isOtherItem({ agree, mismatches }: IdentityComparison): boolean {
	if (mismatches.length >= MISMATCHES_THAT_STOP) return true;
	return mismatches.some((name) => DECISIVE.includes(name)) && !agree.some((name) => !SHARED_BY_MANY.includes(name));
}

/**
 * Whether the marks exclude another item: none differs; three agree, the serial number or device id among them, and with it
 * one more that items of one model do not share. That one label reads the same leaves an exchanged label open.
 */
export function isSameItem({ agree, readAlike, mismatches }: IdentityComparison, mass: MassAgreement): boolean {
	const own = agree.filter((name) => !SHARED_BY_MANY.includes(name));
	return (
		mismatches.length === 0 &&
		agree.length + readAlike.length + Number(mass === "agrees") >= MARKS_WANTED &&
		own.length >= OWN_MARKS_WANTED &&
		isDecisiveSame({ agree })
	);
}

/** Whether the serial number or the device id reads the same at both ends. */
export function isDecisiveSame({ agree }: Pick<IdentityComparison, "agree">): boolean {
	return agree.some((name) => DECISIVE.includes(name));
}

function isPoint(name: string): boolean {
	return DECISIVE.includes(name) || name === "model";
}

/** One character read wrong, left out or doubled, or two neighbours swapped. */
function isSlip(one: string | null | undefined, other: string | null | undefined): boolean {
	if (typeof one !== "string" || typeof other !== "string") return false;
	const [left, came] = [[...normal(one)], [...normal(other)]];
	if (Math.abs(left.length - came.length) > 1) return false;
	let start = 0;
	while (start < Math.min(left.length, came.length) && left[start] === came[start]) start++;
	const rest = (text: string[], skipped: number) => text.slice(start + skipped).join("");
	return (
		rest(left, 1) === rest(came, 1) ||
		rest(left, 1) === rest(came, 0) ||
		rest(left, 0) === rest(came, 1) ||
		(left[start] === came[start + 1] && left[start + 1] === came[start] && rest(left, 2) === rest(came, 2))
	);
}

function agreement(
	one: string | null | undefined,
	other: string | null | undefined,
): "agree" | "differ" | "readAlike" | "notSeen" {
	if (one === null || one === undefined || other === null || other === undefined) return "notSeen";
	if (normal(one) === normal(other)) return "agree";
	return lookalike(one) === lookalike(other) ? "readAlike" : "differ";
}

function normal(mark: string): string {
	return mark.normalize("NFKC").trim().replace(/\s+/g, " ").toUpperCase();
}

/** Without what people leave out or read for another: spaces, dashes, letters like digits. */
function lookalike(mark: string): string {
	return normal(mark).replace(/[\s-]/g, "").replaceAll("O", "0").replace(/[IL]/g, "1");
}
