/** The fields of the trip: how far it may fall, how, how long, how cold, how damp. */
import { VIBRATION_PROFILES } from "../../../catalogue/vibration-profiles.ts";
import { DROP_BASES } from "../../../contract/handling.ts";
import { say } from "../../../texts/say.ts";
import { SelectField, TextField } from "../../components/form.tsx";
import { numberFields } from "../../components/number-fields.tsx";
import { choices, type Fields } from "./field-parts.ts";

export function TripFields(field: Fields) {
	const number = numberFields(field);
	return (
		<>
			<SelectField
				{...field}
				name="route.dropBasis"
				label={say("pack.drop-basis")}
				hint={say("pack.drop-basis-hint")}
				choices={choices("pack.drop", DROP_BASES)}
			/>
			<div class="row">
				<SelectField
					{...field}
					name="route.mode"
					label={say("shop.mode")}
					choices={choices("shop.mode-kind", ["road", "air", "sea", "rail", "mixed", "carried-by-hand"])}
				/>
				{number("route.transitDays", "pack.days")}
			</div>
			<div class="row">
				{number("route.temperatureLowDegC", "pack.coldest", "°C")}
				{number("route.temperatureHighDegC", "pack.warmest", "°C")}
				{number("route.humidityPercent", "pack.humidity", "%")}
			</div>
			<SelectField
				{...field}
				name="route.vibrationProfileId"
				label={say("pack.vibration")}
				empty={say("pack.vibration-default")}
				choices={VIBRATION_PROFILES.map(({ id, source, statedGnRms }) => ({
					value: id,
					label: say("pack.vibration-profile", {
						document: source.document,
						locator: source.locator,
						standing: say(`pack.standing.${source.standing}`),
						rms: statedGnRms ?? "–",
					}),
				}))}
			/>
			<div class="row">
				{number("item.valueAmount", "pack.item-value")}
				<TextField {...field} name="item.valueCurrency" label={say("pack.currency")} width="short" />
				{number("route.capAmount", "pack.carrier-cap")}
				<TextField {...field} name="route.capCurrency" label={say("pack.currency")} width="short" />
			</div>
		</>
	);
}
