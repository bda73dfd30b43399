/**
 * Every error that a caller can meet: a permanent code with its HTTP status. The words are in `texts/`, under
 * `fault.<code>` and `fault.<code>.mend`; those of a bad member under `bad.<code>` and `bad.<code>.mend`. A retired code
 * is never used again.
 */

const STATUS_OF_FAULT = {
	"bad-input": 400,
	"malformed-json": 400,
	"not-signed-in": 401,
	"passphrase-wrong": 401,
	"code-wrong": 401,
	"code-gone": 401,
	forbidden: 403,
	"cross-site": 403,
	"form-expired": 403,
	"link-expired": 403,
	"not-handed-out": 403,
	"not-found": 404,
	"link-unknown": 404,
	"link-revoked": 404,
	"set-up-used": 404,
	"already-sealed": 409,
	discarded: 409,
	"not-sealed": 409,
	erased: 410,
	"already-there": 409,
	"no-mail-server": 409,
	"already-settled": 409,
	"already-noted": 409,
	"not-settled": 409,
	"proposal-closed": 409,
	"own-proposal": 403,
	"others-proposal": 403,
	"idempotency-conflict": 409,
	"version-stale": 412,
	"version-missing": 428,
	"too-large": 413,
	"quota-full": 413,
	"unsupported-type": 415,
	"type-differs": 415,
	"offset-differs": 409,
	"upload-gone": 410,
	"upload-busy": 423,
	"tus-version": 412,
	"disk-full": 507,
	"too-many": 429,
	"code-locked": 429,
	unavailable: 503,
	internal: 500,
} as const;

export type FaultCode = keyof typeof STATUS_OF_FAULT;

/** One member that is wrong: JSON Pointer and code; `facts` fill the words. */
export interface BadMember {
	readonly path: string;
	readonly code: string;
	readonly facts?: Readonly<Record<string, string | number>>;
}

/** An error that is told to the caller. */
export class Fault extends Error {
	override readonly name = "Fault";
	readonly code: FaultCode;
	readonly status: number;
	readonly members: readonly BadMember[];
	/** Seconds after which trying again makes sense; sent as Retry-After. */
	readonly retryAfterS: number | null;
	/** Fill the words of the fault itself. */
	readonly facts: Readonly<Record<string, string | number>>;

	constructor(
		code: FaultCode,
		details: {
			readonly members?: readonly BadMember[];
			readonly retryAfterS?: number;
			readonly facts?: Readonly<Record<string, string | number>>;
		} = {},
	) {
		super(code);
		this.code = code;
		this.status = STATUS_OF_FAULT[code];
		this.members = details.members ?? [];
		this.retryAfterS = details.retryAfterS ?? null;
		this.facts = details.facts ?? {};
	}
}

/** A fault to throw. */
export function fault(code: FaultCode, details?: ConstructorParameters<typeof Fault>[1]): Fault {
	return new Fault(code, details);
}

/** The fault of input that is well-formed but says something wrong, all wrong members at once. */
export function invalid(members: readonly BadMember[]): Fault {
	return new Fault("bad-input", { members });
}

/** A member name as a step of a JSON Pointer (RFC 6901). */
export function escapePointer(name: string): string {
	return name.replaceAll("~", "~0").replaceAll("/", "~1");
}
