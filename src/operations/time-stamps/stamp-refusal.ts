/** Why no time stamp came of a try. The code is kept with the queue and written to the service's log. */

export type RefusalCode =
	| "unreachable"
	| "timed-out"
	| `http-${number}`
	| "too-large"
	| "malformed"
	| "rejected"
	| "wrong-imprint"
	| "wrong-nonce"
	| "no-policy"
	| "wrong-signer"
	| "wrong-usage"
	| "wrong-signature"
	| "untrusted";

export class StampRefusal extends Error {
	override readonly name = "StampRefusal";
	readonly code: RefusalCode;

	/** @param detail what the library or the authority said, for the log */
	constructor(code: RefusalCode, detail = "") {
		super(detail === "" ? code : `${code}: ${detail}`);
		this.code = code;
	}
}
