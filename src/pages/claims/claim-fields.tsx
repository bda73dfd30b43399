/** What someone notes for a claim, as form fields, both ways. */
import { type LegClaimInput, legClaimInput, NOTED_DATES } from "../../contract/leg-claim.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { CheckField, type FieldErrors, type FormValues, SelectField, TextField } from "../components/form.tsx";
import { readNumber } from "../record-form/read-number.ts";
import { filledIn } from "../shop/form-errors.ts";
import { dateName } from "./period-section.tsx";

export function claimForm(noted: LegClaimInput): FormValues {
	const yesNo = (given: boolean | undefined) => (given === undefined ? undefined : given ? "yes" : "no");
	return {
		regime: noted.regime,
		byPost: yesNo(noted.byPost),
		airLeg: yesNo(noted.airLeg),
		damage: noted.damage,
		wilful: noted.wilful === true ? "yes" : undefined,
		currencyPerSdr: noted.currencyPerSdr?.toString(),
		"holidays.country": noted.holidays?.country,
		"holidays.region": noted.holidays?.region,
		inspectionDates: noted.inspectionDates?.join(", "),
		...Object.fromEntries(NOTED_DATES.map((name) => [`dates.${name}`, noted.dates?.[name]])),
	};
}

/** The form as the request's shape. Days that were added or removed by the API are kept. */
export function claimOfForm(form: Readonly<Record<string, string>>, before: LegClaimInput): unknown {
	const filled = filledIn(form);
	const yesNo = (name: string) => (filled[name] === undefined ? undefined : filled[name] === "yes");
	const rate = filled.currencyPerSdr;
	const country = filled["holidays.country"]?.toUpperCase();
	const dates = Object.fromEntries(
		NOTED_DATES.flatMap((name) => (filled[`dates.${name}`] === undefined ? [] : [[name, filled[`dates.${name}`]]])),
	);
	const all = {
		regime: filled.regime,
		byPost: yesNo("byPost"),
		airLeg: yesNo("airLeg"),
		damage: filled.damage,
		wilful: filled.wilful === undefined ? undefined : true,
		currencyPerSdr: rate === undefined ? undefined : (readNumber(rate)?.value ?? rate),
		dates: Object.keys(dates).length === 0 ? undefined : dates,
		inspectionDates: filled.inspectionDates?.split(/[,;\s]+/).filter((date) => date !== ""),
		holidays:
			country === undefined
				? undefined
				: {
						...before.holidays,
						country,
						region: filled["holidays.region"],
					},
	};
	return JSON.parse(JSON.stringify(all));
}

export function ClaimFields(field: { readonly values: FormValues; readonly errors: FieldErrors }) {
	const choices = (key: string, codes: readonly string[]) =>
		codes.map((code) => ({ value: code, label: say(`${key}${code}` as TextKey) }));
	const yesNo = choices("periods.", ["yes", "no"]);
	const unknown = say("shop.not-known");
	return (
		<>
			<div class="row">
				<SelectField {...field} name="byPost" label={say("periods.by-post")} empty={unknown} choices={yesNo} />
				<SelectField {...field} name="airLeg" label={say("periods.air-leg")} empty={unknown} choices={yesNo} />
			</div>
			<SelectField
				{...field}
				name="regime"
				label={say("periods.regime")}
				empty={say("periods.as-suggested")}
				choices={choices("periods.regime.", legClaimInput.shape.regime.unwrap().options)}
			/>
			<SelectField
				{...field}
				name="damage"
				label={say("periods.damage")}
				empty={say("periods.damage-suggested")}
				choices={choices("periods.damage.", legClaimInput.shape.damage.unwrap().options)}
			/>
			<CheckField {...field} name="wilful" label={say("periods.wilful")} />
			<div class="row">
				{NOTED_DATES.map((name) => (
					<TextField key={name} {...field} name={`dates.${name}`} label={dateName(name)} type="date" width="short" />
				))}
			</div>
			<TextField
				{...field}
				name="inspectionDates"
				label={say("periods.inspection")}
				hint={say("settling.dates-hint")}
			/>
			<TextField
				{...field}
				name="currencyPerSdr"
				label={say("cover.rate")}
				hint={say("cover.rate-hint")}
				inputMode="decimal"
				width="short"
			/>
			<div class="row">
				<TextField {...field} name="holidays.country" label={say("periods.holiday-country")} width="short" />
				<TextField
					{...field}
					name="holidays.region"
					label={say("periods.holiday-region")}
					hint={say("periods.holiday-region-hint")}
					width="short"
				/>
			</div>
		</>
	);
}
