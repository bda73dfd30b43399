/**
 * The sealed form of a state record, `handover-risk/record/1`.
 *
 * Plain inside: ids that we mint, codes of closed lists, numbers with units, times, item class, check ids and the
 * definition of a shop's own check, hashes. Committed (see `commitment.ts`): everything that a person typed or a
 * device names. `$format` sorts first; no other member begins below `A`. Times are UTC with milliseconds and `Z`; a
 * claimed time carries its offset in minutes beside it. A quantity stands as typed (digits and unit) beside its value
 * in the reading unit. Members that were not given are absent.
 */

import { type ReadingUnit, type TypedUnit, toReadingUnit } from "../calculations/quantities.ts";
import type { DeliveryManner, Depth, ItemClass, ItemState, RecordProvenance, Stage } from "../catalogue/codes.ts";
import type { JsonValue } from "./canonical.ts";
import type { Commitment, Committer } from "./commitment.ts";
import type {
	LinkObservation,
	OwnCheckContent,
	ReadingContent,
	RecordContent,
	TypedQuantity,
} from "./record-content.ts";

export const RECORD_FORMAT = "handover-risk/record/1";

/** Digits as typed: what a quantity's `typed` must match. */
export const TYPED_DIGITS = /^-?[0-9]+([.,][0-9]+)?([eE][+-]?[0-9]+)?$/;

export interface SealedQuantity {
	readonly typed: string;
	readonly typedUnit: TypedUnit;
	readonly value: number;
	readonly unit: ReadingUnit;
}

export interface ClaimedTime {
	readonly at: string;
	readonly offsetMinutes: number;
}

/** An instrument (the shop's by id, the record's own as `meter-1` …) as it stood when the record was sealed. `Text` is a commitment when sealed, a text (or null) when opened. */
export interface StatementInstrument<Text> {
	readonly id: string;
	readonly label: Text;
	readonly percentOfReading?: number;
	readonly counts?: number;
	readonly resolution?: number;
	readonly rangeHigh?: number;
	readonly unit?: string;
	readonly calibratedOn?: string;
}

export interface StatementReading<Text> {
	readonly check: string;
	readonly definition?: OwnCheckContent;
	readonly condition: string;
	readonly provenance: string;
	readonly instrumentId?: string;
	readonly leadsNulled?: boolean;
	readonly values?: readonly SealedQuantity[];
	readonly count?: number;
	readonly exposure?: SealedQuantity;
	readonly trials?: number;
	readonly successes?: number;
	readonly limitLow?: number;
	readonly limitHigh?: number;
	readonly notTested?: { readonly reason: string; readonly note?: Text };
	readonly importSha256?: string;
	readonly remark?: Text;
}

/** The members of a record statement. `Text` is a commitment when sealed, a text (or null once erased) when opened. */
export interface RecordStatement<Text> {
	readonly $format: typeof RECORD_FORMAT;
	readonly recordId: string;
	readonly orderId: string;
	readonly consignmentId?: string;
	readonly itemId: string;
	readonly itemClass: ItemClass;
	readonly holderId: string;
	readonly stage: Stage;
	readonly depth: Depth;
	readonly provenance: RecordProvenance;
	readonly catalogueVersion: string;
	readonly amends?: string;
	readonly observed: ClaimedTime;
	readonly state: ItemState;
	readonly identity: {
		readonly serialNumber?: Text;
		readonly maker?: Text;
		readonly model?: Text;
		readonly uuid?: Text;
		readonly firmware?: Text;
		readonly marks?: readonly Text[];
	};
	readonly setUp: {
		readonly benchId?: string;
		readonly host?: Text;
		readonly slot?: Text;
		readonly supply?: Text;
		readonly firmware?: Text;
		readonly driver?: Text;
		readonly load?: Text;
		readonly ambient?: SealedQuantity;
		readonly humidity?: SealedQuantity;
		readonly platforms?: number;
		readonly controlBefore?: boolean;
		readonly controlAfter?: boolean;
	};
	readonly instruments: readonly StatementInstrument<Text>[];
	readonly readings: readonly StatementReading<Text>[];
	readonly link?: LinkObservation;
	readonly exhibits: readonly {
		readonly sha256: string;
		readonly sizeBytes: number;
		readonly mediaType: string;
		readonly view: string;
		readonly fileName: Text;
		readonly note?: Text;
	}[];
	readonly parcel?: {
		readonly mass?: SealedQuantity;
		readonly temperature?: SealedQuantity;
		readonly temperatureBasis?: string;
		readonly outerDamage?: string;
		readonly sealsIntact?: boolean;
		readonly indicatorTripped?: boolean;
		readonly delivered?: ClaimedTime;
		readonly inHand?: ClaimedTime;
		readonly manner?: DeliveryManner;
		readonly remark?: Text;
	};
	readonly firstPowerOn?: {
		readonly waitedH?: number;
		readonly firstAttemptEver?: boolean;
		readonly workDoneBefore?: boolean;
		readonly wetnessSeen?: boolean;
		readonly stopSigns?: readonly string[];
	};
	readonly reported?: {
		readonly words: Text;
		readonly channel: string;
		readonly received: ClaimedTime;
		readonly bySender?: Text;
	};
	readonly statement?: Text;
	readonly recordedBy?: Text;
}

/** A statement as sealed, and as read with its openings. */
export type SealedStatement = RecordStatement<Commitment>;
export type OpenedStatement = RecordStatement<string | null>;

/** What a statement says beside the draft's content. */
export interface RecordHeader {
	readonly recordId: string;
	readonly orderId: string;
	readonly consignmentId: string | null;
	readonly itemId: string;
	readonly itemClass: ItemClass;
	readonly holderId: string;
	readonly stage: Stage;
	readonly depth: Depth;
	readonly provenance: RecordProvenance;
	readonly catalogueVersion: string;
	readonly amends: string | null;
}

/** Facts that operations look up for a content that may be sealed (`seal-conditions.ts`). */
export interface ResolvedFacts {
	readonly instruments: readonly StatementInstrument<string>[];
	readonly exhibits: ReadonlyMap<
		string,
		{ readonly sizeBytes: number; readonly mediaType: string; readonly fileName: string }
	>;
}

/** Builds the statement; every typed text goes through `committer`. */
export function recordStatement(
	header: RecordHeader,
	content: RecordContent & Required<Pick<RecordContent, "observedAt" | "state">>,
	resolved: ResolvedFacts,
	committer: Committer,
): SealedStatement {
	if (content.observedAt === undefined || content.state === undefined)
		throw new Error("the content may not be sealed yet");
	const text = (value: string | undefined) => (value === undefined ? undefined : committer.commit(value));
	const { identity = {}, setUp = {}, parcel, firstPowerOn, reported } = content;
	const statement = {
		$format: RECORD_FORMAT,
		recordId: header.recordId,
		orderId: header.orderId,
		consignmentId: header.consignmentId ?? undefined,
		itemId: header.itemId,
		itemClass: header.itemClass,
		holderId: header.holderId,
		stage: header.stage,
		depth: header.depth,
		provenance: header.provenance,
		catalogueVersion: header.catalogueVersion,
		amends: header.amends ?? undefined,
		observed: claimedTime(content.observedAt),
		state: content.state,
		identity: {
			serialNumber: text(identity.serialNumber),
			maker: text(identity.maker),
			model: text(identity.model),
			uuid: text(identity.uuid),
			firmware: text(identity.firmware),
			marks: identity.marks?.map((mark) => committer.commit(mark)),
		},
		setUp: {
			...setUp,
			host: text(setUp.host),
			slot: text(setUp.slot),
			supply: text(setUp.supply),
			firmware: text(setUp.firmware),
			driver: text(setUp.driver),
			load: text(setUp.load),
			ambient: sealedQuantity(setUp.ambient),
			humidity: sealedQuantity(setUp.humidity),
		},
		instruments: resolved.instruments.map((instrument) => ({
			...instrument,
			label: committer.commit(instrument.label),
		})),
		readings: (content.readings ?? []).map((reading) => sealedReading(reading, header.provenance, committer)),
		link: content.link,
		exhibits: (content.exhibits ?? []).map((exhibit) => {
			const facts = resolved.exhibits.get(exhibit.sha256);
			if (facts === undefined) throw new Error(`exhibit ${exhibit.sha256} was not resolved`);
			return {
				sha256: exhibit.sha256,
				sizeBytes: facts.sizeBytes,
				mediaType: facts.mediaType,
				view: exhibit.view,
				fileName: committer.commit(facts.fileName),
				note: text(exhibit.note),
			};
		}),
		parcel: parcel && {
			mass: sealedQuantity(parcel.mass),
			temperature: sealedQuantity(parcel.temperature),
			temperatureBasis: parcel.temperatureBasis,
			outerDamage: parcel.outerDamage,
			sealsIntact: parcel.sealsIntact,
			indicatorTripped: parcel.indicatorTripped,
			delivered: parcel.deliveredAt === undefined ? undefined : claimedTime(parcel.deliveredAt),
			inHand: parcel.inHandAt === undefined ? undefined : claimedTime(parcel.inHandAt),
			manner: parcel.manner,
			remark: text(parcel.remark),
		},
		firstPowerOn,
		reported: reported && {
			words: text(reported.words),
			channel: reported.channel,
			received: reported.receivedAt === undefined ? undefined : claimedTime(reported.receivedAt),
			bySender: text(reported.bySender),
		},
		statement: text(content.statement),
		recordedBy: text(content.recordedBy),
	};
	return withoutUndefined(statement) as unknown as SealedStatement;
}

/** A claimed RFC 3339 time as UTC with milliseconds, its offset beside it. */
export function claimedTime(time: string): ClaimedTime {
	const offset = /([+-])(\d\d):(\d\d)$/.exec(time);
	const minutes = offset === null ? 0 : (Number(offset[2]) * 60 + Number(offset[3])) * (offset[1] === "-" ? -1 : 1);
	return { at: new Date(time).toISOString(), offsetMinutes: minutes === 0 ? 0 : minutes };
}

function sealedReading(reading: ReadingContent, provenance: RecordProvenance, committer: Committer) {
	return {
		...reading,
		condition: reading.condition ?? "unknown",
		provenance: reading.provenance ?? provenance,
		values: reading.values?.map((value) => sealedQuantity(value)),
		exposure: sealedQuantity(reading.exposure),
		notTested: reading.notTested && {
			reason: reading.notTested.reason,
			note: reading.notTested.note === undefined ? undefined : committer.commit(reading.notTested.note),
		},
		remark: reading.remark === undefined ? undefined : committer.commit(reading.remark),
	};
}

function sealedQuantity(quantity: TypedQuantity | undefined): SealedQuantity | undefined {
	if (quantity === undefined) return undefined;
	const { value, unit } = toReadingUnit(quantity.value, quantity.unit);
	return { typed: quantity.typed ?? String(quantity.value), typedUnit: quantity.unit, value, unit };
}

/** Canonical bytes know no `undefined`; a member that was not given is absent. */
function withoutUndefined(value: unknown): JsonValue {
	if (Array.isArray(value)) return value.map(withoutUndefined);
	if (value === null || typeof value !== "object") return value as JsonValue;
	return Object.fromEntries(
		Object.entries(value)
			.filter(([, entry]) => entry !== undefined)
			.map(([name, entry]) => [name, withoutUndefined(entry)]),
	);
}
