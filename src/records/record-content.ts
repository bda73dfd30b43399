/**
 * What a state record says, before it is sealed. A draft may lack anything; what sealing asks for is in
 * `seal-conditions.ts`. Shape at the door: `contract/records.ts`.
 */

import type { TypedUnit } from "../calculations/quantities.ts";
import type {
	Condition,
	DeliveryManner,
	ExhibitView,
	ItemState,
	NotTestedReason,
	OuterDamage,
	Provenance,
	ReportChannel,
	StopSign,
	TemperatureBasis,
} from "../catalogue/codes.ts";

/** A number as someone typed it. `typed` keeps the digits; without it they are taken from `value`. */
export interface TypedQuantity {
	readonly value: number;
	readonly unit: TypedUnit;
	readonly typed?: string | undefined;
}

/** Speed and width of one link. */
export interface LinkFacts {
	readonly speedGTPerS: number;
	readonly width: number;
}

/** What was seen of the card's link, as `link-judgement` takes it. */
export interface LinkObservation {
	readonly card: LinkFacts;
	readonly function?: LinkFacts | undefined;
	readonly upstreamPath?: readonly LinkFacts[] | undefined;
	readonly idle?: LinkFacts | undefined;
	readonly load?: LinkFacts | undefined;
	readonly slot?: LinkFacts | undefined;
	readonly control?: LinkFacts | undefined;
}

/** A shop's own check: its whole definition is sealed with the reading. */
export interface OwnCheckContent {
	readonly name: string;
	readonly kind: "measured" | "count" | "score" | "outcome";
	readonly unit: TypedUnit;
	readonly comparability: "any-bench" | "stated-uncertainty" | "same-instrument" | "same-bench";
	readonly betterIs: "higher" | "lower" | "neither";
	readonly limitLow?: number | undefined;
	readonly limitHigh?: number | undefined;
	readonly equivalenceMargin?: number | undefined;
}

/** An instrument described in the record itself; readings name it `meter-1` … `meter-5`. */
export interface OwnInstrument {
	readonly id: string;
	readonly label: string;
	readonly unit: TypedUnit;
	readonly percentOfReading?: number | undefined;
	readonly counts?: number | undefined;
	readonly resolution?: number | undefined;
}

export interface ReadingContent {
	/** Check id of the catalogue, or `own-1` … `own-5`. */
	readonly check: string;
	readonly definition?: OwnCheckContent | undefined;
	readonly condition?: Condition | undefined;
	readonly provenance?: Provenance | undefined;
	readonly instrumentId?: string | undefined;
	readonly leadsNulled?: boolean | undefined;
	/** Measured values and scores, repeats included. */
	readonly values?: readonly TypedQuantity[] | undefined;
	/** Something counted over an exposure. */
	readonly count?: number | undefined;
	readonly exposure?: TypedQuantity | undefined;
	/** Attempts and how many of them went as they should: starts, visual points (1 of 1 or 0 of 1). */
	readonly trials?: number | undefined;
	readonly successes?: number | undefined;
	/** A limit that the item itself carries, such as the width its own capability register names. */
	readonly limitLow?: number | undefined;
	readonly limitHigh?: number | undefined;
	readonly notTested?: { readonly reason: NotTestedReason; readonly note?: string | undefined } | undefined;
	/** The exhibit that the reading was read from. */
	readonly importSha256?: string | undefined;
	readonly remark?: string | undefined;
}

export interface RecordContent {
	/** When the item was seen in this state, as the holder says: RFC 3339 with offset. */
	readonly observedAt?: string | undefined;
	readonly state?: ItemState | undefined;
	readonly identity?:
		| {
				readonly serialNumber?: string | undefined;
				readonly maker?: string | undefined;
				readonly model?: string | undefined;
				readonly uuid?: string | undefined;
				readonly firmware?: string | undefined;
				readonly marks?: readonly string[] | undefined;
		  }
		| undefined;
	readonly setUp?:
		| {
				readonly benchId?: string | undefined;
				readonly host?: string | undefined;
				readonly slot?: string | undefined;
				readonly supply?: string | undefined;
				readonly firmware?: string | undefined;
				readonly driver?: string | undefined;
				readonly load?: string | undefined;
				readonly ambient?: TypedQuantity | undefined;
				/** Relative humidity of the air around, in percent. */
				readonly humidity?: TypedQuantity | undefined;
				/** On how many different computers it was tried. */
				readonly platforms?: number | undefined;
				/** Whether another item known to be good worked in the same place: before and after. */
				readonly controlBefore?: boolean | undefined;
				readonly controlAfter?: boolean | undefined;
		  }
		| undefined;
	/** Instruments that are not in the shop's list, such as the owner's own meter. */
	readonly ownInstruments?: readonly OwnInstrument[] | undefined;
	readonly readings?: readonly ReadingContent[] | undefined;
	readonly link?: LinkObservation | undefined;
	readonly exhibits?:
		| readonly { readonly sha256: string; readonly view: ExhibitView; readonly note?: string | undefined }[]
		| undefined;
	readonly parcel?:
		| {
				readonly mass?: TypedQuantity | undefined;
				/** When it came in from outside, and how that is known. */
				readonly temperature?: TypedQuantity | undefined;
				readonly temperatureBasis?: TemperatureBasis | undefined;
				readonly outerDamage?: OuterDamage | undefined;
				readonly sealsIntact?: boolean | undefined;
				readonly indicatorTripped?: boolean | undefined;
				readonly deliveredAt?: string | undefined;
				readonly inHandAt?: string | undefined;
				readonly manner?: DeliveryManner | undefined;
				readonly remark?: string | undefined;
		  }
		| undefined;
	readonly firstPowerOn?:
		| {
				readonly waitedH?: number | undefined;
				/** Whether this record includes the very first attempt since delivery. */
				readonly firstAttemptEver?: boolean | undefined;
				readonly workDoneBefore?: boolean | undefined;
				readonly wetnessSeen?: boolean | undefined;
				readonly stopSigns?: readonly StopSign[] | undefined;
		  }
		| undefined;
	/** What the other side was told, word for word; only in a record with provenance `reported-to`. */
	readonly reported?:
		| {
				readonly words?: string | undefined;
				readonly channel?: ReportChannel | undefined;
				readonly receivedAt?: string | undefined;
				readonly bySender?: string | undefined;
		  }
		| undefined;
	readonly statement?: string | undefined;
	/** Name of the person who recorded it. */
	readonly recordedBy?: string | undefined;
}
