/** The shop's own checks: what is looked at, how it is judged, and the result; the definition is sealed with it. */
import { OWN_CHECK_IDS } from "../../catalogue/checks/checks.ts";
import type { InstrumentView } from "../../contract/benches.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { unitSymbol } from "../../texts/unit-symbol.ts";
import { type FieldErrors, type FormValues, SelectField, TextField } from "../components/form.tsx";
import { ownControl } from "./own-checks-form.ts";

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
	open,
}: {
	readonly values: FormValues;
	readonly errors: FieldErrors;
	readonly instruments: readonly InstrumentView[];
	readonly open: boolean;
}) {
	const choices = (part: string, codes: readonly string[]) =>
		codes.map((value) => ({ value, label: say(`own.${part}.${value}` as TextKey) }));
	return (
		<details open={open}>
			<summary>{say("own.title")}</summary>
			<p>{say("own.text")}</p>
			{OWN_CHECK_IDS.map((id, index) => {
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
						<TextField {...field("name")} hint={say("own.name-hint")} />
						<div class="row">
							<SelectField {...field("kind")} choices={choices("kind", ["measured", "count", "score", "outcome"])} />
							<SelectField
								{...field("unit")}
								choices={UNITS.map((value) => ({ value, label: unitSymbol(value) || "–" }))}
							/>
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
	);
}
