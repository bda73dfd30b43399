/** One of the shop's own checks where it is done: how, with what caution, and its result alone; the definition is the shop's. */
import type { InstrumentView } from "../../contract/benches.ts";
import type { OfferedCheck } from "../../operations/own-catalogue/own-checks-of.ts";
import { say } from "../../texts/say.ts";
import { unitSymbol } from "../../texts/unit-symbol.ts";
import { Caution, type FieldErrors, FieldGroup, type FormValues, SelectField, TextField } from "../components/form.tsx";
import { ownControl } from "./own-checks-form.ts";

export function OwnReading({
	check,
	instruments,
	values,
	errors,
}: {
	readonly check: OfferedCheck;
	/** None where it is not read off an instrument. */
	readonly instruments: readonly InstrumentView[];
	readonly values: FormValues;
	readonly errors: FieldErrors;
}) {
	const { id, definition, how, caution } = check;
	const { kind, name, unit, limitLow, limitHigh } = definition;
	const field = (part: string) => ({ name: ownControl(id, part), values, errors });
	return (
		<section class="check">
			<h2>{name}</h2>
			<p class="hint">{how}</p>
			{caution !== undefined && <Caution>{caution}</Caution>}
			{(limitLow !== undefined || limitHigh !== undefined) && (
				<p class="hint">{say("own.limits", { limits: limitWords(definition) })}</p>
			)}
			<FieldGroup.Provider value={name}>
				{kind === "outcome" && (
					<div class="row">
						<TextField {...field("trials")} label={say("own.trials")} inputMode="numeric" />
						<TextField {...field("successes")} label={say("own.successes")} inputMode="numeric" />
					</div>
				)}
				{kind === "count" && (
					<div class="row">
						<TextField {...field("count")} label={say("own.count")} inputMode="numeric" />
						<TextField {...field("exposure")} label={say("own.exposure")} unit="h" inputMode="decimal" />
					</div>
				)}
				{(kind === "measured" || kind === "score") && (
					<TextField
						{...field("values")}
						label={say("own.values")}
						hint={say("own.values-hint")}
						unit={unitSymbol(unit)}
						inputMode="decimal"
					/>
				)}
				{instruments.length > 0 && kind === "measured" && (
					<SelectField
						{...field("instrument")}
						label={say("own.instrument")}
						empty={say("record.no-instrument")}
						choices={instruments.map((instrument) => ({ value: instrument.id, label: instrument.label }))}
					/>
				)}
			</FieldGroup.Provider>
		</section>
	);
}

/** The limits of a definition, in its unit. */
export function limitWords({ kind, unit, limitLow, limitHigh }: OfferedCheck["definition"]): string {
	const symbol = kind === "outcome" || kind === "count" ? "" : ` ${unitSymbol(unit)}`;
	return [
		...(limitLow === undefined ? [] : [say("own.at-least", { limit: `${limitLow}${symbol}` })]),
		...(limitHigh === undefined ? [] : [say("own.at-most", { limit: `${limitHigh}${symbol}` })]),
	].join(", ");
}
