/** What a report tells of an order as it stood at a size of the log: later entries do not count. */
import type { CustodyLine } from "../../calculations/comparison/types.ts";
import type { ComparisonView } from "../../contract/comparison.ts";
import type { LegClaimView } from "../../contract/leg-claim.ts";
import type { NoticeView } from "../../contract/notices.ts";
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import type { AssessmentView } from "../../contract/packaging.ts";
import type { PositionView } from "../../contract/positions.ts";
import type { Edition } from "../../contract/report.ts";
import type { SettlementView } from "../../contract/settlement.ts";
import type { Checkpoint, LogKey } from "../../records/log/checkpoint.ts";
import type { LoggedEntry } from "../../records/receipt.ts";
import type { Language } from "../../texts/language.ts";
import type { Speaker } from "../../texts/speaker.ts";
import type { ConsignmentComparison } from "../comparison/compare-consignment.ts";
import type { OrderLog } from "../log/order-log.ts";
import type { FileHandOut } from "../pictures/hand-out.ts";
import type { SealedRecord } from "../records/record-views.ts";
import type { LegRecording } from "../transit-recordings/recordings-of-leg.ts";
import type { ShockOnLeg } from "../transit-recordings/shock-on-leg.ts";
import type { NumberedExhibit } from "./numbered-exhibits.ts";

export interface ReportLeg {
	readonly leg: ConsignmentView;
	readonly found: ConsignmentComparison;
	readonly view: ComparisonView;
	readonly packs: readonly AssessmentView[];
	/** As noted now, from the records that stood then. What it counts from today is left out of a report. */
	readonly claim: LegClaimView;
	/** What recorders noted on it. They are not sealed. */
	readonly recordings: readonly LegRecording[];
	/** What they say of a shock on the way; null where no recorder travelled. */
	readonly shock: ShockOnLeg | null;
	/** To the carrier, as they are kept now. */
	readonly notices: readonly NoticeView[];
}

/** Which report is asked for. */
export interface AskedReport<E extends Edition = Edition> {
	readonly edition: E;
	/** Entries of the log that count; all where none is given. */
	readonly at: number | undefined;
	/** A leg's number, for the carrier's edition alone. */
	readonly leg?: number | undefined;
	readonly language: Language;
}

export interface ReportFacts {
	readonly edition: Edition;
	/** Says everything that stands in the report. */
	readonly speaker: Speaker;
	readonly order: OrderView;
	/** Sealed records in observed order, amended ones too. */
	readonly records: readonly SealedRecord[];
	readonly line: CustodyLine;
	readonly legs: readonly ReportLeg[];
	readonly positions: readonly PositionView[];
	readonly settlement: SettlementView;
	readonly exhibits: readonly NumberedExhibit[];
	/** What others than its taker get of each exhibit, by SHA-256. */
	readonly handOuts: ReadonlyMap<string, FileHandOut>;
	/** Every entry about the order, in log order. */
	readonly entries: readonly LoggedEntry[];
	readonly checkpoint: Checkpoint;
	/** Root of its tree, hex. */
	readonly root: string;
	/** Those that signed the checkpoint. */
	readonly keys: readonly LogKey[];
	/** The newest time stamp that covers an entry of the order. */
	readonly stamp: { readonly size: number; readonly time: Date } | null;
	/** The other log that sealed it, where it was read in from a dossier. */
	readonly readIn: OrderLog["readIn"];
	readonly receipt: OrderLog["receipt"];
	/** When the last entry about the order was logged: a report tells of nothing later. */
	readonly asOf: Date;
	readonly publicUrl: string;
}
