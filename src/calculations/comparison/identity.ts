/** Whether two records name the same item. */
import type { ComparedState, IdentityComparison } from "./types.ts";

/** Marks that no repair changes and no two items share; any other difference is shown, not decisive. */
const DECISIVE = ["serial-number", "uuid"];

/** Compares the marks of both ends: trimmed, without case; letters read for digits are told apart from a difference. */
export function compareIdentity(departure: ComparedState, arrival: ComparedState): IdentityComparison {
	const found = { agree: [] as string[], differ: [] as string[], readAlike: [] as string[], notSeen: [] as string[] };
	const names = new Set([...Object.keys(departure.identity), ...Object.keys(arrival.identity)]);
	for (const name of names) found[agreement(departure.identity[name], arrival.identity[name])].push(name);
	// Natural marks are described in words: the same words agree, other words are not a difference.
	const seen = arrival.marks.map((mark) => (mark === null ? null : normal(mark)));
	for (const mark of departure.marks) {
		if (mark !== null) found[seen.includes(normal(mark)) ? "agree" : "notSeen"].push(mark);
	}
	return found;
}

/** The marks whose difference means two items. */
export function decisiveDifferences(identity: IdentityComparison): readonly string[] {
	return identity.differ.filter((name) => DECISIVE.includes(name));
}

function agreement(one: string | null | undefined, other: string | null | undefined): keyof IdentityComparison {
	if (one === null || one === undefined || other === null || other === undefined) return "notSeen";
	if (normal(one) === normal(other)) return "agree";
	return lookalike(one) === lookalike(other) ? "readAlike" : "differ";
}

function normal(mark: string): string {
	return mark.normalize("NFKC").trim().replace(/\s+/g, " ").toUpperCase();
}

function lookalike(mark: string): string {
	return normal(mark).replaceAll("O", "0").replace(/[IL]/g, "1");
}
