/** The questions of a record as the shop fills it in, in the order of the page. */
import type { Field } from "../record-form/field.ts";
import { PARCEL_MOST } from "../record-form/masses.ts";

const text = (
	name: string,
	label: Extract<Field, { kind: "text" }>["label"],
	maximum: number,
	long = false,
): Field => ({
	kind: "text",
	name,
	label,
	maximum,
	...(long ? { long: true } : {}),
});

export const IDENTITY_FIELDS: readonly Field[] = [
	text("identity.serialNumber", "arrival.serial-number", 100),
	text("identity.maker", "arrival.maker", 100),
	text("identity.model", "arrival.model", 200),
	text("identity.uuid", "record.uuid", 100),
	text("identity.firmware", "record.firmware", 200),
	{
		kind: "lines",
		name: "identity.marks",
		label: "arrival.marks",
		hint: "arrival.marks-hint",
		maximum: 20,
		maximumEach: 300,
	},
];

export const SET_UP_FIELDS: readonly Field[] = [
	text("setUp.host", "arrival.host", 300),
	text("setUp.slot", "arrival.slot", 100),
	text("setUp.supply", "arrival.supply", 300),
	text("setUp.driver", "record.driver", 200),
	text("setUp.load", "record.load", 300),
	{
		kind: "quantity",
		name: "setUp.ambient",
		label: "arrival.room-temperature",
		units: ["degC"],
		minimum: -40,
		maximum: 60,
	},
];

export const PARCEL_FIELDS: readonly Field[] = [
	{
		kind: "quantity",
		name: "parcel.mass",
		label: "arrival.parcel-mass",
		units: ["kg", "g", "lb"],
		minimum: 0.001,
		mostByUnit: PARCEL_MOST,
	},
	{ kind: "yes-no", name: "parcel.sealsIntact", label: "arrival.seals-intact" },
	text("parcel.remark", "arrival.parcel-remark", 1000, true),
];

/** Of a parcel that came in: what cannot be seen any more once it is open. */
export const ARRIVED_FIELDS: readonly Field[] = [
	{
		kind: "choice",
		name: "parcel.outerDamage",
		label: "arrival.outer-damage",
		codes: ["none-seen", "seen", "not-looked"],
		options: "arrival.outer-damage",
	},
	{ kind: "time", name: "parcel.deliveredAt", label: "arrival.delivered-at" },
	{ kind: "time", name: "parcel.inHandAt", label: "arrival.in-hand-at" },
];

/** What the other side told, word for word. */
export const REPORTED_FIELDS: readonly Field[] = [
	{ ...text("reported.words", "record.reported-words", 10_000, true), hint: "record.reported-words-hint" } as Field,
	{
		kind: "choice",
		name: "reported.channel",
		label: "record.reported-channel",
		codes: ["e-mail", "message", "telephone", "letter", "in-person", "paper-form"],
		options: "record.channel",
	},
	{ kind: "time", name: "reported.receivedAt", label: "record.reported-at" },
	text("reported.bySender", "record.reported-by", 200),
];

export const STATE_FIELDS: readonly Field[] = [
	{
		kind: "choice",
		name: "state",
		label: "arrival.state",
		codes: ["good", "partly-good", "intermittent", "does-not-start", "not-tested", "unrepaired"],
		options: "record.state",
		needed: true,
	},
	{ kind: "time", name: "observedAt", label: "arrival.observed-at", hint: "arrival.observed-at-hint", needed: true },
	text("statement", "record.statement", 10_000, true),
	text("recordedBy", "arrival.recorded-by", 200),
];

/** All questions of a record's page. */
export function fieldsOf(record: { readonly stage: string; readonly provenance: string }): readonly Field[] {
	return [
		...(record.provenance === "reported-to" ? REPORTED_FIELDS : []),
		...IDENTITY_FIELDS,
		...(record.stage === "arrival" ? ARRIVED_FIELDS : []),
		...SET_UP_FIELDS,
		...(record.stage === "bench" ? [] : PARCEL_FIELDS),
		...STATE_FIELDS,
	];
}
