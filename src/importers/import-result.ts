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
	/** Lines that it was read from, 1 for the first; none where the format has no one line for it. */
	readonly lines: readonly number[];
	readonly nullReason?: string;
	/** The true value may be higher: the tool says that it left some out. */
	readonly atLeast?: true;
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

/** What the file is about; its names are taken only into the record of such an item. */
export type ImportSubject = "graphics" | "board" | "drive" | "any";

/** Something in the file that names a person, a computer or a network. */
export interface PersonalFind {
	readonly kind: "host-name" | "user-name" | "ip-address" | "mac-address" | "e-mail" | "computer-id";
	readonly text: string;
	/** Where it stands first. */
	readonly line: number;
}

/** A column of a recorder's file. */
export interface ImportedColumn {
	readonly name: string;
	readonly quantity: "time" | "count" | "acceleration" | "temperature" | "humidity" | null;
	/** Null: not told by the header and not to be told from the values; it must be asked. */
	readonly unit: string | null;
	/** Where the unit comes from. */
	readonly unitFrom: "header" | "rest" | null;
}

/** A line that gave something or was warned of; or a run of lines that gave nothing. */
export interface AccountedLines {
	readonly from: number;
	readonly to: number;
	/** Of the first; one that is cut ends with an ellipsis. */
	readonly text: string;
	/** Checks that were read from it, also where it holds no value of them. */
	readonly checks: readonly string[];
	/** Members of the identity that stand in it. */
	readonly identity: readonly string[];
}

/** What an importer of one format gives; what is personal is found for all formats alike. */
export type FormatResult = Omit<ImportResult, "personal" | "lines">;

export interface ImportResult {
	readonly format: string;
	readonly formatVersion: string;
	readonly about: ImportSubject;
	readonly readings: readonly ImportedReading[];
	/** What the machine names itself: personal, so a record keeps it as commitments. */
	readonly identity: Readonly<Record<string, string>>;
	readonly links: readonly ImportedLink[];
	readonly warnings: readonly ImportWarning[];
	/** When the file says it was taken. Seconds since 1970 in UTC; null where it prints no zone. */
	readonly takenAt: { readonly raw: string; readonly epochS: number | null } | null;
	/** Recorder files only. */
	readonly columns?: readonly ImportedColumn[];
	readonly personal: readonly PersonalFind[];
	/** The file line by line, as far as it is listed. */
	readonly lines: readonly AccountedLines[];
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
