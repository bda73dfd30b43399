/**
 * What a check found. Findings speak by text key and values, so that the same ones are put into words by a page, by the
 * command line and by the offline file.
 */

/** The checks, in the order in which they are reported. Ids are permanent. */
export const CHECK_IDS = [
	"form",
	"statement-hash",
	"openings",
	"order",
	"inclusion",
	"checkpoint-signature",
	"expected-key",
	"earlier-checkpoints",
	"party-signature",
	"independent-time",
	"exhibits",
] as const;
export type CheckId = (typeof CHECK_IDS)[number];

/** Checks of a dossier, before those of the receipt inside it. Permanent too. */
export const DOSSIER_CHECK_IDS = ["bag", "bag-files", "copies"] as const;
export const ALL_CHECK_IDS = [...DOSSIER_CHECK_IDS, ...CHECK_IDS] as const;
export type AnyCheckId = (typeof ALL_CHECK_IDS)[number];

export const CHECK_OUTCOMES = ["passed", "failed", "not-possible"] as const;
export type CheckOutcome = (typeof CHECK_OUTCOMES)[number];

/** A sentence by its key in `texts/`, with the values that it names; counts are written out, as none may be rounded. */
export interface Why {
	readonly sentence: string;
	readonly values: Readonly<Record<string, string>>;
}

export interface FindingDetails {
	/** JSON Pointer into the receipt, name of a file in a dossier, byte offset (`byte 17`), or a pointer and the offset in what is encoded there. */
	readonly where?: string;
	readonly expected?: string;
	readonly found?: string;
	readonly why?: Why;
}

export interface Finding extends FindingDetails {
	readonly id: AnyCheckId;
	readonly outcome: CheckOutcome;
}

export function why(sentence: string, values: Readonly<Record<string, string | number>> = {}): Why {
	return { sentence, values: Object.fromEntries(Object.entries(values).map(([name, value]) => [name, String(value)])) };
}

/** Why reading stopped: thrown inside this folder alone, and always caught in it. */
export class Unreadable extends Error {
	override readonly name = "Unreadable";
	readonly details: FindingDetails;

	constructor(details: FindingDetails) {
		super(details.why?.sentence ?? "unreadable");
		this.details = details;
	}
}
