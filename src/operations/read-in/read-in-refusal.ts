/** Why a dossier was not read in: the check that failed, and where. */
import { say, type TextKey } from "../../texts/say.ts";

export class ReadInRefusal extends Error {
	override readonly name = "ReadInRefusal";
	readonly check: string;

	/** @param check id of a check of the verification, or `order-file`, `already-there`, `other-party`, `erased-party`, `busy` */
	constructor(check: string, where: string) {
		super(say(`read-in.refused.${REASONS.includes(check) ? check : "check"}` as TextKey, { check, where }));
		this.check = check;
	}
}

const REASONS = ["order-file", "already-there", "other-party", "erased-party", "busy"];
