/** What an importer gives: readings as they stood in the file, what the file says of the machine, and what was odd. */
import { type Sentence, sentence } from "../calculations/judged.ts";

export type ImportCondition = "idle" | "load" | "unknown";

export interface ImportedReading {
	/** Check id; `link-width` and `link-speed` are the link's state as the device itself reports it. */
	readonly check: string;
	/** What in the machine it is of: a bus address, with the counter's name where there are several. */
	readonly subject: string;
	readonly condition: ImportCondition;
	/** Null where the file holds no value; then `nullReason` says why. */
	readonly value: number | null;
	readonly unit: string;
	/** The characters of the file. */
	readonly raw: string;
	readonly nullReason?: string;
}

export interface LinkState {
	/** 0: the register holds no speed. */
	readonly speedGTPerS: number;
	/** 63: the register reads all ones, as it does when the device is gone. */
	readonly width: number;
}

/** The card's link and, where the file shows them, the links between it and the root port. */
export interface ImportedLink {
	readonly subject: string;
	readonly condition: ImportCondition;
	readonly card: LinkState;
	readonly function: LinkState;
	/** Null: the path to the root port is not in the file. */
	readonly upstreamPath: readonly LinkState[] | null;
	/** Capability of the port that the card is plugged into; null where it is not in the file. */
	readonly slot: LinkState | null;
}

export interface ImportWarning {
	readonly code: string;
	readonly message: Sentence;
	/** 1 for the first line; null where it is about the whole file. */
	readonly line: number | null;
}

export interface ImportResult {
	readonly format: string;
	readonly formatVersion: string;
	readonly readings: readonly ImportedReading[];
	/** What the machine names itself: personal, so a record keeps it as commitments. */
	readonly identity: Readonly<Record<string, string>>;
	readonly links: readonly ImportedLink[];
	readonly warnings: readonly ImportWarning[];
}

/** A file that is refused: nothing is guessed. */
export class ImportRefusal extends Error {
	override readonly name = "ImportRefusal";
	readonly code: string;
	readonly line: number | null;
	readonly reason: Sentence;

	constructor(code: string, line: number | null, values?: Readonly<Record<string, string | number>>) {
		super(code);
		this.code = code;
		this.line = line;
		this.reason = sentence(`import.${code}`, values);
	}
}

/** A warning, its words under `import.warn-<code>`. */
export function warning(
	code: string,
	line: number | null,
	values?: Readonly<Record<string, string | number>>,
): ImportWarning {
	return { code, message: sentence(`import.warn-${code}`, values), line };
}
