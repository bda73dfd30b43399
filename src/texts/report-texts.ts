/**
 * What a report or a mail can say, room by room of the English texts: every other language has exactly these, held by the
 * compiler. They say nothing else, since whoever writes one is handed a `Speaker`.
 */
import type { arrival } from "./english/arrival.ts";
import type { checks } from "./english/checks.ts";
import type { checksByClass } from "./english/checks-by-class.ts";
import type { claims } from "./english/claims.ts";
import type { comparison } from "./english/comparison.ts";
import type { comparisonPage } from "./english/comparison-page.ts";
import type { cushion } from "./english/cushion.ts";
import type { dossier } from "./english/dossier.ts";
import type { firstState } from "./english/first-state.ts";
import type { foams } from "./english/foams.ts";
import type { general } from "./english/general.ts";
import type { link } from "./english/link.ts";
import type { log } from "./english/log.ts";
import type { mailText } from "./english/mail-text.ts";
import type { notice } from "./english/notice.ts";
import type { origin } from "./english/origin.ts";
import type { pack } from "./english/pack.ts";
import type { packaging } from "./english/packaging.ts";
import type { periods } from "./english/periods.ts";
import type { planner } from "./english/planner.ts";
import type { recording } from "./english/recording.ts";
import type { report } from "./english/report.ts";
import type { retired } from "./english/retired.ts";
import type { settling } from "./english/settling.ts";
import type { shop } from "./english/shop.ts";
import type { strength } from "./english/strength.ts";
import type { units } from "./english/units.ts";
import type { verify } from "./english/verify.ts";

type Room<Keys> = Readonly<Record<Extract<Keys, string>, string>>;

/** Keys that begin so, a dot and one more name after it. */
type Under<Start extends string> = `${Start}.${string}`;

type ArrivalKey =
	| "arrival.state"
	| "arrival.serial-number"
	| "arrival.check.good"
	| "arrival.check.bad"
	| Under<
			| "arrival.state"
			| "arrival.stop-sign"
			| "arrival.view"
			| "arrival.manner"
			| "arrival.reading"
			| "arrival.not-tested"
	  >;

type ClaimsKey =
	| "claims.consequences-differ"
	| "claims.from-memory"
	| "claims.general"
	| "claims.no-holidays"
	| "claims.no-rule"
	| "claims.other-damage"
	| "claims.outer-limits"
	| "claims.prevails"
	| "claims.regions-differ"
	| "claims.seller-apart"
	| `claims.${"reading" | "what"}-${string}`;

type ComparisonPageKey =
	| "comparison-page.adjusted-for"
	| "comparison-page.checks-apart"
	| "comparison-page.disclaimer"
	| "comparison-page.imported"
	| "comparison-page.not-recorded"
	| "comparison-page.origin-text"
	| "comparison-page.reported-reading"
	| "comparison-page.tests"
	| "comparison-page.untested-none"
	| Under<
			| "comparison-page.before"
			| "comparison-page.before-point"
			| "comparison-page.certain"
			| "comparison-page.change"
			| "comparison-page.column"
			| "comparison-page.direction"
			| "comparison-page.first-state"
			| "comparison-page.lead"
			| "comparison-page.missing"
			| "comparison-page.next"
			| "comparison-page.origin"
			| "comparison-page.record"
			| "comparison-page.reported-by"
			| "comparison-page.span"
			| "comparison-page.uncertain"
			| "comparison-page.untested"
			| "comparison-page.untested-kind"
			| "comparison-page.verdict"
	  >;

/** Names of checks; how each is done is said on pages alone. */
type NameOfCheck<Keys> = Exclude<
	Keys,
	`${string}.hint` | Under<"checks.caution" | "checks.stop"> | `checks.figure${string}` | `checks.duration${string}`
>;

type PackKey =
	| "pack.bag"
	| "pack.box"
	| "pack.carrier-cap"
	| "pack.check"
	| "pack.connectors-capped"
	| "pack.days-of"
	| "pack.design"
	| "pack.drop-basis"
	| "pack.edges-padded"
	| "pack.face-of"
	| "pack.fragility"
	| "pack.fragility-none"
	| "pack.full-face"
	| "pack.is-closed"
	| "pack.is-intact"
	| "pack.is-open"
	| "pack.is-stapled"
	| "pack.item"
	| "pack.known-by"
	| "pack.no-cushion"
	| "pack.no-layer"
	| "pack.not-intact"
	| "pack.not-sensitive"
	| "pack.own-gas-set"
	| "pack.own-points"
	| "pack.own-set"
	| "pack.pads-of"
	| "pack.protects"
	| "pack.protects-none"
	| "pack.route"
	| "pack.unknown-foam"
	| "pack.was-reused"
	| `pack.curve-${"best" | "description" | "legend" | "limit" | "peak" | "point" | "stress" | "title"}`
	| `pack.model-${string}`
	| Under<
			| "pack.basis"
			| "pack.check"
			| "pack.drop"
			| "pack.drop-number"
			| "pack.evidence"
			| "pack.face"
			| "pack.filler"
			| "pack.layer"
			| "pack.standing"
			| "pack.verdict"
			| "pack.verdict-text"
	  >;

type PlannerKey =
	| "pack.board"
	| "pack.board-of"
	| "pack.caliper-of"
	| "pack.carrier-cap"
	| "pack.cooler-mass"
	| "pack.cooler-of"
	| "pack.desiccant-units"
	| "pack.drop-of"
	| "pack.dunnage"
	| "pack.dunnage-of"
	| "pack.edge-crush-of"
	| "pack.gap"
	| "pack.humidity"
	| "pack.inner"
	| "pack.inside"
	| "pack.item-value"
	| "pack.temperatures"
	| "pack.temperatures-of"
	| "pack.tried"
	| "pack.velocity"
	| "pack.vibration"
	| Under<
			| "pack.component-kind"
			| "pack.cooler-support"
			| "pack.dunnage-kind"
			| "pack.orientation-kind"
			| "pack.position-kind"
	  >;

/** The draft itself and what a report tells of one that was sent; the rest is said on its page alone. */
type NoticeKey =
	| "notice.amount"
	| "notice.amount-later"
	| "notice.blank"
	| "notice.by-registered-letter"
	| "notice.consignment"
	| "notice.date"
	| "notice.discovered"
	| "notice.found"
	| "notice.from"
	| "notice.goods"
	| "notice.inspection"
	| "notice.kept"
	| "notice.outer-seen"
	| "notice.received"
	| "notice.received-file"
	| "notice.received-not"
	| "notice.received-proof"
	| "notice.said"
	| "notice.sent-file"
	| "notice.sent-proof"
	| "notice.signed"
	| "notice.subject"
	| "notice.to"
	| `notice.${"form" | "says" | "subject"}-${string}`
	| Under<"notice.way">;

type PeriodsKey =
	| "periods.chosen"
	| "periods.damage"
	| "periods.damage-suggested"
	| "periods.ends"
	| "periods.left"
	| "periods.left-none"
	| "periods.left-one"
	| "periods.missing"
	| "periods.no-date"
	| "periods.not-read"
	| "periods.not-told"
	| "periods.other-damage-why"
	| "periods.read-on"
	| "periods.rolled"
	| "periods.suggested"
	| Under<
			| "periods.consequence"
			| "periods.damage"
			| "periods.date"
			| "periods.form"
			| "periods.other-damage"
			| "periods.regime"
			| "periods.standing"
	  >;

type RecordingKey =
	| "recording.after"
	| "recording.at"
	| "recording.cannot-be-placed"
	| "recording.clock"
	| "recording.device"
	| "recording.drop"
	| "recording.duration"
	| "recording.event-rate"
	| "recording.events"
	| "recording.full-scale"
	| "recording.humidity"
	| "recording.humidity-ends"
	| "recording.humidity-over-time"
	| "recording.no-events"
	| "recording.no-height"
	| "recording.no-pack"
	| "recording.not-taken"
	| "recording.number"
	| "recording.or"
	| "recording.outside"
	| "recording.peak"
	| "recording.place"
	| "recording.rates"
	| "recording.spectrum-description"
	| "recording.spectrum-text"
	| "recording.spectrum-title"
	| "recording.supports"
	| "recording.temperature"
	| "recording.temperature-ends"
	| "recording.temperature-over-time"
	| "recording.trace-description"
	| "recording.trace-title"
	| "recording.trip"
	| "recording.trip-caption"
	| "recording.trip-caption-no-clock"
	| "recording.trip-description"
	| "recording.velocity-change"
	| "recording.when"
	| "recording.where"
	| `recording.axis-${"gn" | "hours" | "hz" | "minutes" | "ms" | "response" | "seconds"}`
	| `recording.device-${"phone" | "recorder"}`
	| `recording.${"band" | "board" | "by" | "doubt" | "drop" | "equivalent" | "fall" | "lasting" | "note" | "peak" | "says" | "span" | "where"}-${string}`
	| `recording.place-${"clock-not-known" | "in-one-of" | "in-or-outside" | "in-span" | "no-clock" | "no-line" | "outside"}`;

type SettlingKey =
	| "settling.about-checks"
	| "settling.about-leg"
	| "settling.about-records"
	| "settling.amount"
	| "settling.amount-none"
	| "settling.amounts"
	| "settling.answers"
	| "settling.item-next"
	| "settling.none"
	| "settling.outcome"
	| "settling.statement"
	| "settling.step"
	| "settling.test"
	| "settling.test-dates"
	| Under<
			| "settling.act"
			| "settling.by"
			| "settling.item"
			| "settling.kind"
			| "settling.outcome"
			| "settling.payer"
			| "settling.stance"
			| "settling.state"
			| "settling.status"
			| "settling.test"
	  >;

type ShopKey =
	| "shop.cell"
	| "shop.parcel-mass"
	| "spine.arrival"
	| "spine.bench"
	| "spine.departure"
	| "spine.reported"
	| `spine.late-${string}`
	| `spine.span-${string}`
	| Under<
			"record.channel" | "record.provenance" | "shop.cell-kind" | "shop.class" | "shop.contract" | "shop.mode-kind"
	  >;

export interface ReportTexts {
	readonly arrival: Room<Extract<keyof typeof arrival, ArrivalKey>>;
	readonly checks: Room<NameOfCheck<keyof typeof checks>>;
	readonly checksByClass: Room<NameOfCheck<keyof typeof checksByClass>>;
	readonly claims: Room<Extract<keyof typeof claims, ClaimsKey>>;
	readonly comparison: Room<keyof typeof comparison>;
	readonly comparisonPage: Room<Extract<keyof typeof comparisonPage, ComparisonPageKey>>;
	readonly cushion: Room<keyof typeof cushion>;
	readonly dossier: Room<Extract<keyof typeof dossier, "dossier.verify-text">>;
	readonly firstState: Room<keyof typeof firstState>;
	readonly foams: Room<keyof typeof foams>;
	readonly general: Room<keyof typeof general>;
	readonly link: Room<keyof typeof link>;
	readonly log: Room<Extract<keyof typeof log, `log.party-${string}`>>;
	readonly mailText: Room<keyof typeof mailText>;
	readonly notice: Room<Extract<keyof typeof notice, NoticeKey>>;
	readonly origin: Room<keyof typeof origin>;
	readonly pack: Room<Extract<keyof typeof pack, PackKey>>;
	readonly packaging: Room<keyof typeof packaging>;
	readonly periods: Room<Extract<keyof typeof periods, PeriodsKey>>;
	readonly planner: Room<Extract<keyof typeof planner, PlannerKey>>;
	readonly recording: Room<Extract<keyof typeof recording, RecordingKey>>;
	readonly report: Room<keyof typeof report>;
	readonly retired: Room<keyof typeof retired>;
	readonly settling: Room<Extract<keyof typeof settling, SettlingKey>>;
	readonly shop: Room<Extract<keyof typeof shop, ShopKey>>;
	readonly strength: Room<keyof typeof strength>;
	readonly units: Room<keyof typeof units>;
	readonly verify: Room<Extract<keyof typeof verify, Under<"verify.kind">>>;
}

type KeysOfRooms<Rooms> = { [Name in keyof Rooms]: keyof Rooms[Name] }[keyof Rooms];
/** A key that a report can say. */
export type ReportKey = Extract<KeysOfRooms<ReportTexts>, string>;
