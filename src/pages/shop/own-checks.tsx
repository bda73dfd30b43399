/** The shop's own checks: what is looked at, how it is judged, and the result; the definition is sealed with it. */
import { OWN_CHECK_IDS } from "../../catalogue/checks/checks.ts";
import type { InstrumentView } from "../../contract/benches.ts";
import type { OfferedCheck } from "../../operations/own-catalogue/own-checks-of.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { unitSymbol } from "../../texts/unit-symbol.ts";
import { type FieldErrors, type FormValues, SelectField, TextField } from "../components/form.tsx";
import { ownControl } from "../record-form/own-checks-form.ts";
import { OwnReading } from "../record-form/own-reading.tsx";

/** Units that an own check may be in. */
const UNITS = [
	"V",
	"mV",
	"A",
	"mA",
	"W",
	"ohm",
	"kohm",
	"degC",
	"MHz",
	"s",
	"mm",
	"percent",
	"points",
	"errors",
	"starts",
	"one",
];

export function OwnChecks({
	values,
	errors,
	instruments,
	offered,
	open,
}: {
	readonly values: FormValues;
	readonly errors: FieldErrors;
	readonly instruments: readonly InstrumentView[];
	/** Those that the shop keeps for this item and that no other was typed in the place of. */
	readonly offered: readonly OfferedCheck[];
	readonly open: boolean;
}) {
	const free = OWN_CHECK_IDS.filter((id) => !offered.some((check) => check.id === id));
	return (
		<>
			{offered.map((check) => (
				<OwnReading
					key={check.id}
					check={check}
					instruments={check.whoCan === "meter" || check.whoCan === "repairer-only" ? instruments : []}
					values={values}
					errors={errors}
				/>
			))}
			<details open={open}>
				<summary>{say("own.title")}</summary>
				<p>
					{say("own.text")} <a href="/catalogue">{say("own.keep-link")}</a>
				</p>
				{free.map((id) => {
					const index = OWN_CHECK_IDS.indexOf(id);
					const field = (part: string) => ({
						name: ownControl(id, part),
						label: say(`own.${part}` as TextKey),
						values,
						errors,
					});
					const used = (values[ownControl(id, "name")] ?? "") !== "";
					return (
						<details key={id} open={used}>
							<summary>{used ? values[ownControl(id, "name")] : say("own.number", { number: index + 1 })}</summary>
							<DefinitionFields field={field} />
							<div class="row">
								<TextField {...field("values")} hint={say("own.values-hint")} inputMode="decimal" />
								<SelectField
									{...field("instrument")}
									empty={say("record.no-instrument")}
									choices={instruments.map((instrument) => ({ value: instrument.id, label: instrument.label }))}
								/>
							</div>
							<div class="row">
								<TextField {...field("trials")} inputMode="numeric" />
								<TextField {...field("successes")} inputMode="numeric" />
								<TextField {...field("count")} inputMode="numeric" />
								<TextField {...field("exposure")} unit="h" inputMode="decimal" />
							</div>
						</details>
					);
				})}
			</details>
		</>
	);
}

/** The controls of a definition. */
export function DefinitionFields({
	field,
}: {
	readonly field: (part: string) => {
		readonly name: string;
		readonly label: string;
		readonly values: FormValues;
		readonly errors: FieldErrors;
	};
}) {
	const choices = (part: string, codes: readonly string[]) =>
		codes.map((value) => ({ value, label: say(`own.${part}.${value}` as TextKey) }));
	return (
		<>
			<TextField {...field("name")} hint={say("own.name-hint")} />
			<div class="row">
				<SelectField {...field("kind")} choices={choices("kind", ["measured", "count", "score", "outcome"])} />
				<SelectField {...field("unit")} choices={UNITS.map((value) => ({ value, label: unitSymbol(value) || "–" }))} />
			</div>
			<div class="row">
				<SelectField
					{...field("comparability")}
					choices={choices("comparability", ["any-bench", "stated-uncertainty", "same-instrument", "same-bench"])}
				/>
				<SelectField {...field("betterIs")} choices={choices("betterIs", ["higher", "lower", "neither"])} />
			</div>
			<div class="row">
				<TextField {...field("limitLow")} inputMode="decimal" />
				<TextField {...field("limitHigh")} inputMode="decimal" />
				<TextField {...field("equivalenceMargin")} inputMode="decimal" />
			</div>
		</>
	);
}
