/** Closed lists of codes that requests use and that stand plainly in sealed statements. Codes are permanent: add, never change a meaning. */

export const STAGES = ["departure", "arrival", "bench"] as const;
export type Stage = (typeof STAGES)[number];

/** How much a record covers: `short` is identity, photos, one import and masses; `full` is the whole catalogue. */
export const DEPTHS = ["short", "full"] as const;
export type Depth = (typeof DEPTHS)[number];

export const RECORD_STATES = ["draft", "sealed", "discarded"] as const;
export type RecordState = (typeof RECORD_STATES)[number];

/** How a reading came in. A whole record is either recorded by the holder or reported to the other side. */
export const PROVENANCES = ["recorded-by-holder", "reported-to", "imported", "observed-on-receipt"] as const;
export type Provenance = (typeof PROVENANCES)[number];
export const RECORD_PROVENANCES = ["recorded-by-holder", "reported-to"] as const;
export type RecordProvenance = (typeof RECORD_PROVENANCES)[number];

/** State of the item as its holder found it. */
export const ITEM_STATES = [
	"good",
	"partly-good",
	"intermittent",
	"does-not-start",
	"not-tested",
	"unrepaired",
] as const;
export type ItemState = (typeof ITEM_STATES)[number];

/** Conditions under which a reading was taken. */
export const CONDITIONS = ["cold", "warm", "idle", "load", "unknown"] as const;
export type Condition = (typeof CONDITIONS)[number];

/** Why a check was not done. `not-recorded` is set at sealing where nothing was entered. */
export const NOT_TESTED_REASONS = [
	"no-instrument",
	"no-equipment",
	"no-time",
	"unsafe",
	"stop-sign",
	"not-applicable",
	"does-not-start",
	"not-recorded",
	"other",
] as const;
export type NotTestedReason = (typeof NOT_TESTED_REASONS)[number];

/** Signs after which nothing is tried a second time. */
export const STOP_SIGNS = [
	"smell-or-smoke",
	"unusual-heat",
	"supply-trips",
	"liquid",
	"visible-damage",
	"swollen-cell",
] as const;
export type StopSign = (typeof STOP_SIGNS)[number];

/** What a photo or file shows. The first six are the guided photos of the short record. */
export const EXHIBIT_VIEWS = [
	"item-front",
	"item-back",
	"connectors",
	"serial-label",
	"pack-open",
	"parcel-closed",
	"parcel-damage",
	"damage",
	"diagnostic-output",
	"message",
	"other",
] as const;
export type ExhibitView = (typeof EXHIBIT_VIEWS)[number];

/** How the consignee came to the parcel. */
export const DELIVERY_MANNERS = ["handed-over", "left", "locker", "neighbour", "pick-up-point"] as const;
export type DeliveryManner = (typeof DELIVERY_MANNERS)[number];

/** How the parcel's temperature is known. */
export const TEMPERATURE_BASES = ["measured", "weather", "guess"] as const;
export type TemperatureBasis = (typeof TEMPERATURE_BASES)[number];

/** What was seen of the parcel's outside. */
export const OUTER_DAMAGE = ["none-seen", "seen", "not-looked"] as const;
export type OuterDamage = (typeof OUTER_DAMAGE)[number];

/** How something was told to the side that wrote it down. */
export const REPORT_CHANNELS = ["e-mail", "message", "telephone", "letter", "in-person", "paper-form"] as const;
export type ReportChannel = (typeof REPORT_CHANNELS)[number];

/** Item classes of the contract. */
export const ITEM_CLASSES = [
	"graphics-card",
	"mainboard",
	"laptop-mainboard",
	"console-mainboard",
	"drive",
	"power-supply",
	"module",
] as const;
export type ItemClass = (typeof ITEM_CLASSES)[number];

/** Kinds of log entries. */
export const ENTRY_KINDS = [
	"record-opened",
	"record-discarded",
	"record-sealed",
	"assessment-sealed",
	"position-sealed",
	"settlement-sealed",
	"link-used",
	"party-erased",
	"party-signed",
	"log-key-added",
] as const;
export type EntryKind = (typeof ENTRY_KINDS)[number];

/** Scope of a link: `record` drafts and seals the one record named, `settle` reads the order and answers, `reader` reads. */
export const LINK_SCOPES = ["record", "settle", "reader"] as const;
export type LinkScope = (typeof LINK_SCOPES)[number];

/** What a party does by a position. */
export const POSITION_KINDS = ["states", "asks-for-test", "offers-test"] as const;
export type PositionKind = (typeof POSITION_KINDS)[number];

/** How a party answers a position of the other. */
export const STANCES = ["agrees", "partly-agrees", "disagrees", "takes-no-stand"] as const;
export type Stance = (typeof STANCES)[number];

/** Tests that can be asked for or offered: those that tell origins apart (`origins/tests.ts`), an inspection, any other. */
export const POSITION_TESTS = [
	"other-computer",
	"control-item",
	"reseat",
	"counted-starts",
	"photos-of-same-place",
	"marks-in-pack",
	"other-driver",
	"identity-marks",
	"original-files",
	"screws-and-pads",
	"which-part",
	"departure-bench",
	"x-ray-of-joints",
	"cut-and-dye",
	"inspection",
	"other",
] as const;
export type PositionTest = (typeof POSITION_TESTS)[number];

/** Who does a test. */
export const DONE_BY = ["repairer", "owner", "neutral"] as const;
export type DoneBy = (typeof DONE_BY)[number];

/** What a party does towards a settlement. */
export const SETTLEMENT_ACTS = ["proposes", "assents", "declines", "retracts", "reopens"] as const;
export type SettlementAct = (typeof SETTLEMENT_ACTS)[number];

export const SETTLEMENT_OUTCOMES = [
	"repair-under-warranty",
	"repair-at-cost",
	"returned-unrepaired",
	"refund",
	"part-refund",
	"shared",
	"claim-against-carrier",
	"no-fault-found",
	"withdrawn",
] as const;
export type SettlementOutcome = (typeof SETTLEMENT_OUTCOMES)[number];

/** From and to whom an amount goes. */
export const PAYERS = ["repairer", "owner", "carrier", "insurer"] as const;
export type Payer = (typeof PAYERS)[number];

/** What happens with the item after a settlement. */
export const ITEM_NEXT = ["stays", "to-repairer", "to-owner", "kept-unchanged", "disposed-of"] as const;
export type ItemNext = (typeof ITEM_NEXT)[number];

/** How a notice went to a carrier. */
export const NOTICE_WAYS = [
	"registered-letter",
	"letter",
	"bailiff",
	"e-mail",
	"carrier-form",
	"handed-over",
	"telephone",
] as const;
