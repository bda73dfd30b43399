/** The facts of a leg as form fields, both ways. */
import { DELIVERY_MANNERS } from "../../catalogue/codes.ts";
import { type ConsignmentView, consignmentFacts } from "../../contract/orders.ts";
import { invalid } from "../../faults.ts";
import { impossibleTimes, LEG_TIMES, type LegTimes } from "../../operations/orders/impossible-times.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { type FieldErrors, type FormValues, SelectField, TextField } from "../components/form.tsx";
import { OFFSETS } from "../record-form/field-control.tsx";
import { readAmount, readNumber } from "../record-form/read-number.ts";
import { errorsOfFault, filledIn } from "./form-errors.ts";

/** What the pack looked like when it was opened. */
const SEEN = ["padsShifted", "cornersCrushed"] as const;
const MODES = ["road", "air", "sea", "rail", "mixed", "carried-by-hand"];

/** Fields of a leg as they stand. Times are shown with the offset in which they were given. */
export function consignmentForm(leg: ConsignmentView): FormValues {
	const { facts } = leg;
	const values: Record<string, string | undefined> = {
		carrier: facts.carrier,
		service: facts.service,
		mode: facts.mode,
		bookedBy: facts.bookedBy,
		trackingNumber: facts.trackingNumber,
		manner: facts.manner,
		...Object.fromEntries(
			SEEN.map((name) => [name, facts[name] === undefined ? undefined : facts[name] ? "yes" : "no"]),
		),
		parcelMassKg: facts.parcelMassKg?.toString(),
		"declaredValue.amount": facts.declaredValue?.amount.toString(),
		"declaredValue.currency": facts.declaredValue?.currency,
		"insuredValue.amount": facts.insuredValue?.amount.toString(),
	};
	for (const name of LEG_TIMES) {
		const time = facts[name];
		if (time !== undefined) {
			values[name] = time.slice(0, 16);
			values.offset = /[+-]\d\d:\d\d$/.exec(time)?.[0] ?? "+00:00";
		}
	}
	return values;
}

/** The form as the request's shape; what cannot be read stays as typed, so that the shape names it. */
export function factsOf(form: Readonly<Record<string, string>>): unknown {
	const filled = filledIn(form);
	const number = (name: string) => {
		const typed = filled[name];
		return typed === undefined ? undefined : (readNumber(typed)?.value ?? typed);
	};
	const currency = filled["declaredValue.currency"]?.toUpperCase() ?? "EUR";
	const money = (name: string) => {
		const typed = filled[name];
		return typed === undefined ? undefined : { amount: readAmount(typed) ?? typed, currency };
	};
	const time = (name: string) => (filled[name] === undefined ? undefined : `${filled[name]}:00${filled.offset ?? ""}`);
	const facts = {
		carrier: filled.carrier,
		service: filled.service,
		mode: filled.mode,
		bookedBy: filled.bookedBy,
		trackingNumber: filled.trackingNumber,
		manner: filled.manner,
		...Object.fromEntries(SEEN.map((name) => [name, filled[name] === undefined ? undefined : filled[name] === "yes"])),
		parcelMassKg: number("parcelMassKg"),
		declaredValue: money("declaredValue.amount"),
		insuredValue: money("insuredValue.amount"),
		...Object.fromEntries(LEG_TIMES.map((name) => [name, time(name)])),
	};
	return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined));
}

/**
 * What was refused, by field, with the times that cannot be beside whatever else the shape refused: all at once. A time
 * without its difference from UTC is one error, at the field that asks for it.
 */
export function factErrors(form: Readonly<Record<string, string>>, error: unknown, now: Date): FieldErrors {
	const names = { "/insuredValue/currency": "declaredValue.currency" };
	const impossible = impossibleTimes(readableTimes(form), now);
	const refused = {
		...(impossible.length === 0 ? {} : errorsOfFault(invalid(impossible))),
		...errorsOfFault(error, names),
	};
	const filled = filledIn(form);
	if (filled.offset !== undefined || LEG_TIMES.every((name) => filled[name] === undefined)) return refused;
	const others = Object.entries(refused).filter(([name]) => !LEG_TIMES.some((time) => time === name));
	return { ...Object.fromEntries(others), offset: say("shop.offset-missing") };
}

/** Those times of the form that the request's shape takes. */
function readableTimes(form: Readonly<Record<string, string>>): LegTimes {
	const typed = factsOf(form) as Readonly<Record<string, unknown>>;
	const shape = consignmentFacts.shape;
	return Object.fromEntries(
		LEG_TIMES.flatMap((name) => {
			const { data } = shape[name].safeParse(typed[name]);
			return data === undefined ? [] : [[name, data]];
		}),
	);
}

export function ConsignmentFields(field: { readonly values: FormValues; readonly errors: FieldErrors }) {
	const choices = (key: string, codes: readonly string[]) =>
		codes.map((code) => ({ value: code, label: say(`${key}.${code}` as TextKey) }));
	return (
		<>
			<div class="row">
				<TextField {...field} name="carrier" label={say("shop.carrier")} />
				<TextField {...field} name="service" label={say("shop.service")} />
			</div>
			<div class="row">
				<SelectField {...field} name="mode" label={say("shop.mode")} choices={choices("shop.mode-kind", MODES)} />
				<SelectField
					{...field}
					name="bookedBy"
					label={say("shop.booked-by")}
					choices={choices("shop.booked", ["consignor", "consignee"])}
				/>
			</div>
			<TextField {...field} name="trackingNumber" label={say("shop.tracking")} />
			<div class="row">
				<TextField {...field} name="declaredValue.amount" label={say("shop.declared-value")} inputMode="decimal" />
				<TextField {...field} name="insuredValue.amount" label={say("shop.insured-value")} inputMode="decimal" />
				<TextField {...field} name="declaredValue.currency" label={say("shop.currency")} width="short" />
			</div>
			<TextField
				{...field}
				name="parcelMassKg"
				label={say("shop.parcel-mass")}
				unit="kg"
				inputMode="decimal"
				width="short"
			/>
			<div class="row">
				{LEG_TIMES.map((name) => (
					<TextField key={name} {...field} name={name} label={say(`shop.${name}` as TextKey)} type="datetime-local" />
				))}
			</div>
			<SelectField
				{...field}
				name="offset"
				label={say("shop.offset")}
				hint={say("shop.offset-hint")}
				empty={say("shop.offset-choose")}
				choices={OFFSETS.map((value) => ({ value, label: `UTC${value}` }))}
			/>
			<SelectField
				{...field}
				name="manner"
				label={say("shop.manner")}
				empty={say("shop.not-known")}
				choices={choices("arrival.manner", DELIVERY_MANNERS)}
			/>
			<div class="row">
				{SEEN.map((name) => (
					<SelectField
						key={name}
						{...field}
						name={name}
						label={say(`learning.${name}`)}
						empty={say("shop.not-known")}
						choices={choices("periods", ["yes", "no"])}
					/>
				))}
			</div>
		</>
	);
}
