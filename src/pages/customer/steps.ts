/**
 * The guided record, step by step, as data. The order destroys no evidence: what later steps undo is recorded before
 * them (closed parcel before opening, inner pack before taking out, looking before power). Common practice.
 */
import type { GuidedCheck } from "../../operations/records/guided-record.ts";
import type { TextKey } from "../../texts/say.ts";
import type { ChoiceField, ChoicesField, Field, QuantityField, TextField } from "../record-form/field.ts";
import { PARCEL_MOST } from "../record-form/masses.ts";

/** What stands on a step beside texts, questions, checks and photos. */
export type StepPart = "wait" | "file" | "platform" | "mismatch" | "power-time" | "own-checks" | "review";

export interface Step {
	readonly id: string;
	readonly title: TextKey;
	readonly texts: readonly TextKey[];
	/** Cautions stand where the act is. */
	readonly cautions: readonly TextKey[];
	/** What photos of this step may show, the likeliest first; none: no photos are asked for. */
	readonly views: readonly string[];
	/** Photos are asked for before the questions: what they show does not last. */
	readonly photosFirst?: boolean;
	readonly fields: readonly Field[];
	/** Which of the checks without instruments belong here. */
	readonly checks?: (check: GuidedCheck) => boolean;
	/** Its checks need power: after a stop sign they are not done. */
	readonly needsPower?: boolean;
	/** Stands in place of texts and cautions where the board must not get power: it asks for no act that gives it any. */
	readonly insteadOfPower?: TextKey;
	/** The title then, where the usual one speaks of giving it power. */
	readonly titleWithoutPower?: TextKey;
	readonly parts: readonly StepPart[];
}

const MASS_UNITS = ["kg", "g", "lb"];

const outerDamage: ChoiceField = {
	kind: "choice",
	name: "parcel.outerDamage",
	label: "arrival.outer-damage",
	codes: ["none-seen", "seen", "not-looked"],
	options: "arrival.outer-damage",
};

const parcelRemark: TextField = {
	kind: "text",
	name: "parcel.remark",
	label: "arrival.parcel-remark",
	hint: "arrival.parcel-remark-hint",
	maximum: 1000,
	long: true,
};

const parcelMass: QuantityField = {
	kind: "quantity",
	name: "parcel.mass",
	label: "arrival.parcel-mass",
	hint: "arrival.parcel-mass-hint",
	units: MASS_UNITS,
	minimum: 0.001,
	mostByUnit: PARCEL_MOST,
};

const stopSigns: ChoicesField = {
	kind: "choices",
	name: "firstPowerOn.stopSigns",
	label: "arrival.stop-signs",
	hint: "arrival.stop-signs-hint",
	codes: ["smell-or-smoke", "unusual-heat", "supply-trips", "liquid", "visible-damage", "swollen-cell"],
	options: "arrival.stop-sign",
};

const identityFields: readonly Field[] = [
	{
		kind: "text",
		name: "identity.serialNumber",
		label: "arrival.serial-number",
		maximum: 100,
	},
	{ kind: "text", name: "identity.maker", label: "arrival.maker", maximum: 100 },
	{ kind: "text", name: "identity.model", label: "arrival.model", maximum: 200 },
	{
		kind: "lines",
		name: "identity.marks",
		label: "arrival.marks",
		hint: "arrival.marks-hint",
		maximum: 20,
		maximumEach: 300,
	},
];

const STATE_CODES = ["good", "partly-good", "intermittent", "does-not-start", "not-tested", "unrepaired"];

const state = (codes: readonly string[]): ChoiceField => ({
	kind: "choice",
	name: "state",
	label: "arrival.state",
	codes,
	options: "arrival.state",
	needed: true,
});

const observedAt: Field = {
	kind: "time",
	name: "observedAt",
	label: "arrival.observed-at",
	hint: "arrival.observed-at-hint",
	needed: true,
};

const words: readonly Field[] = [
	{ kind: "text", name: "statement", label: "arrival.statement", maximum: 10_000, long: true },
	{ kind: "text", name: "recordedBy", label: "arrival.recorded-by", maximum: 200 },
];

const isStart = (check: GuidedCheck) => check.id.startsWith("starts-");
/** Looked at while the board runs. */
const SEEN_UNDER_POWER = ["visual-fan", "visual-noise"];
const isSeen = (check: GuidedCheck) =>
	(check.kind === "visual" && !SEEN_UNDER_POWER.includes(check.id)) || check.id === "mass";
const isRun = (check: GuidedCheck) => !isStart(check) && !isSeen(check);

const review: Step = {
	id: "review",
	title: "arrival.review",
	texts: ["arrival.review.text", "arrival.review.seen-by"],
	cautions: [],
	views: [],
	fields: [],
	parts: ["review"],
};

/** A parcel arrives. */
export const ARRIVAL_STEPS: readonly Step[] = [
	{
		id: "parcel-closed",
		title: "arrival.parcel-closed",
		texts: ["arrival.parcel-closed.text", "arrival.parcel-closed.carrier", "arrival.parcel-closed.keep"],
		cautions: [],
		views: ["parcel-closed", "parcel-damage"],
		photosFirst: true,
		fields: [outerDamage, parcelRemark],
		parts: [],
	},
	{
		id: "parcel-facts",
		title: "arrival.parcel-facts",
		texts: ["arrival.parcel-facts.text"],
		cautions: [],
		views: [],
		fields: [
			parcelMass,
			{ kind: "yes-no", name: "parcel.sealsIntact", label: "arrival.seals-intact", hint: "arrival.seals-intact-hint" },
			{
				kind: "yes-no",
				name: "parcel.indicatorTripped",
				label: "arrival.indicator-tripped",
				hint: "arrival.indicator-tripped-hint",
			},
			{
				kind: "time",
				name: "parcel.deliveredAt",
				label: "arrival.delivered-at",
				hint: "arrival.delivered-at-hint",
			},
			{ kind: "time", name: "parcel.inHandAt", label: "arrival.in-hand-at" },
			{
				kind: "choice",
				name: "parcel.manner",
				label: "arrival.manner",
				codes: ["handed-over", "left", "locker", "neighbour", "pick-up-point"],
				options: "arrival.manner",
			},
		],
		parts: [],
	},
	{
		id: "wait",
		title: "arrival.wait",
		texts: ["arrival.wait.text"],
		cautions: [],
		views: [],
		fields: [
			{
				kind: "quantity",
				name: "setUp.ambient",
				label: "arrival.room-temperature",
				units: ["degC"],
				minimum: -40,
				maximum: 60,
			},
			{
				kind: "quantity",
				name: "setUp.humidity",
				label: "arrival.room-humidity",
				hint: "arrival.room-humidity-hint",
				units: ["percent"],
				minimum: 1,
				maximum: 100,
			},
			{
				kind: "quantity",
				name: "parcel.temperature",
				label: "arrival.parcel-temperature",
				hint: "arrival.parcel-temperature-hint",
				units: ["degC"],
				minimum: -60,
				maximum: 80,
			},
			{
				kind: "choice",
				name: "parcel.temperatureBasis",
				label: "arrival.parcel-temperature-basis",
				codes: ["measured", "weather", "guess"],
				options: "arrival.parcel-temperature-basis",
			},
			{
				kind: "yes-no",
				name: "firstPowerOn.wetnessSeen",
				label: "arrival.wetness-outside",
				hint: "arrival.wetness-outside-hint",
			},
		],
		parts: ["wait"],
	},
	{
		id: "opening",
		title: "arrival.opening",
		texts: ["arrival.opening.text", "arrival.opening.inner", "arrival.opening.bag"],
		cautions: ["arrival.opening.cut", "arrival.opening.static", "arrival.opening.children"],
		views: ["pack-open"],
		photosFirst: true,
		fields: [
			{
				kind: "number",
				name: "firstPowerOn.waitedH",
				label: "arrival.waited",
				hint: "arrival.waited-hint",
				minimum: 0,
				maximum: 1000,
			},
			{ kind: "yes-no", name: "firstPowerOn.wetnessSeen", label: "arrival.wetness-inside" },
			{ ...parcelRemark, label: "arrival.pack-note", hint: "arrival.pack-note-hint" },
		],
		parts: [],
	},
	{
		id: "identity",
		title: "arrival.identity",
		texts: ["arrival.identity.text"],
		cautions: [],
		views: ["serial-label"],
		photosFirst: true,
		fields: identityFields,
		parts: ["mismatch"],
	},
	{
		id: "visual",
		title: "arrival.visual",
		texts: ["arrival.visual.text"],
		cautions: [],
		views: ["item-front", "item-back", "connectors", "damage"],
		photosFirst: true,
		fields: [stopSigns],
		checks: isSeen,
		parts: [],
	},
	{
		id: "before-power",
		title: "arrival.before-power",
		texts: ["arrival.before-power.control", "arrival.before-power.seat", "arrival.before-power.untouched"],
		cautions: ["arrival.before-power.supply"],
		insteadOfPower: "arrival.before-power.stopped",
		titleWithoutPower: "arrival.before-power.stopped-title",
		views: [],
		fields: [
			{
				kind: "yes-no",
				name: "setUp.controlBefore",
				label: "arrival.control-before",
				hint: "arrival.control-before-hint",
			},
			{ kind: "yes-no", name: "firstPowerOn.workDoneBefore", label: "arrival.work-done-before" },
			{ kind: "text", name: "setUp.host", label: "arrival.host", hint: "arrival.host-hint", maximum: 300 },
			{ kind: "text", name: "setUp.slot", label: "arrival.slot", maximum: 100 },
			{ kind: "text", name: "setUp.supply", label: "arrival.supply", hint: "arrival.supply-hint", maximum: 300 },
		],
		parts: ["power-time"],
	},
	{
		id: "first-power-on",
		title: "arrival.first-power-on",
		texts: ["arrival.first-power-on.text", "arrival.first-power-on.no-picture"],
		cautions: ["arrival.first-power-on.stop"],
		needsPower: true,
		insteadOfPower: "arrival.first-power-on.stopped",
		titleWithoutPower: "arrival.first-power-on.stopped-title",
		views: ["other"],
		fields: [
			{ kind: "yes-no", name: "firstPowerOn.firstAttemptEver", label: "arrival.first-attempt-ever" },
			{ ...stopSigns },
		],
		checks: isStart,
		parts: ["power-time"],
	},
	{
		id: "checks",
		title: "arrival.checks",
		texts: ["arrival.checks.text"],
		cautions: [],
		views: [],
		fields: [],
		checks: isRun,
		needsPower: true,
		insteadOfPower: "arrival.checks.stopped",
		titleWithoutPower: "arrival.checks.stopped-title",
		parts: ["own-checks"],
	},
	{
		id: "file",
		title: "arrival.file",
		insteadOfPower: "arrival.file.stopped",
		texts: ["arrival.file.text", "arrival.file.private"],
		cautions: [],
		views: [],
		fields: [],
		parts: ["file"],
	},
	{
		id: "result",
		title: "arrival.result",
		texts: ["arrival.result.text"],
		cautions: [],
		views: [],
		fields: [
			state(STATE_CODES),
			{
				kind: "number",
				name: "setUp.platforms",
				label: "arrival.platforms",
				minimum: 0,
				maximum: 20,
				whole: true,
			},
			{
				kind: "yes-no",
				name: "setUp.controlAfter",
				label: "arrival.control-after",
				hint: "arrival.control-after-hint",
			},
			observedAt,
			...words,
		],
		parts: ["platform"],
	},
	review,
];

/** An owner sends the board in. */
export const DEPARTURE_STEPS: readonly Step[] = [
	{
		id: "identity",
		title: "arrival.identity-departure",
		texts: ["arrival.identity.text-departure"],
		cautions: ["arrival.opening.static"],
		views: ["serial-label"],
		photosFirst: true,
		fields: identityFields,
		parts: [],
	},
	{
		id: "visual",
		title: "arrival.visual",
		texts: ["arrival.visual.text-departure"],
		cautions: [],
		views: ["item-front", "item-back", "connectors", "damage"],
		photosFirst: true,
		fields: [stopSigns],
		checks: isSeen,
		parts: [],
	},
	{
		id: "result",
		title: "arrival.fault",
		texts: ["arrival.result.text-departure"],
		cautions: [],
		views: [],
		fields: [
			state(STATE_CODES.filter((code) => code !== "unrepaired")),
			observedAt,
			...words,
			{ kind: "text", name: "setUp.host", label: "arrival.host", hint: "arrival.host-hint", maximum: 300 },
			{ kind: "text", name: "setUp.supply", label: "arrival.supply", hint: "arrival.supply-hint", maximum: 300 },
		],
		parts: [],
	},
	{
		id: "checks",
		title: "arrival.checks",
		texts: ["arrival.checks.text-departure"],
		cautions: ["arrival.before-power.supply"],
		needsPower: true,
		insteadOfPower: "arrival.checks.stopped",
		titleWithoutPower: "arrival.checks.stopped-title",
		views: [],
		fields: [],
		checks: (check) => !isSeen(check),
		parts: ["own-checks"],
	},
	{
		id: "file",
		title: "arrival.file",
		insteadOfPower: "arrival.file.stopped",
		texts: ["arrival.file.text", "arrival.file.private"],
		cautions: [],
		views: [],
		fields: [],
		parts: ["file"],
	},
	{
		id: "pack",
		title: "arrival.pack",
		texts: ["arrival.pack.text", "arrival.pack.static", "arrival.pack.seal"],
		cautions: ["arrival.pack.lithium"],
		views: ["pack-open", "parcel-closed"],
		photosFirst: true,
		fields: [parcelMass, { ...parcelRemark, label: "arrival.pack-remark", hint: "arrival.pack-remark-hint" }],
		parts: [],
	},
	review,
];

/** The steps of a record's stage; bench records are not guided. */
export function stepsOf(stage: string): readonly Step[] {
	return stage === "departure" ? DEPARTURE_STEPS : ARRIVAL_STEPS;
}
