/** The fields of boxes and bag. Cautions stand where the act is. */
import { staticLayer } from "../../../contract/packaging.ts";
import type { StockView } from "../../../contract/stock.ts";
import { dunnageInput } from "../../../contract/strength.ts";
import { say } from "../../../texts/say.ts";
import { Caution, CheckField, SelectField, TextField } from "../../components/form.tsx";
import { numberFields } from "../../components/number-fields.tsx";
import { choices, type Fields, touched } from "./field-parts.ts";
import { CORNER_DROPS, DUNNAGE } from "./read-pack.ts";
import { BAG_LAYERS } from "./take-from-stock.ts";

/** The layer to choose; no layer at all is said by leaving the field. */
const LAYER_KINDS = staticLayer.shape.kind.options.filter((kind) => kind !== "none");

/** Sizes of a box, and what is known of its board. */
export function BoxFields({
	prefix,
	stock,
	...field
}: Fields & {
	readonly prefix: string;
	/** None where a box of the stock itself is described. */
	readonly stock?: StockView;
}) {
	const number = numberFields(field, { prefix: `${prefix}.` });
	return (
		<>
			{stock !== undefined && stock.boxes.length > 0 && (
				<SelectField
					{...field}
					name={`${prefix}.take`}
					label={say("pack.take-box")}
					empty={say("pack.as-typed")}
					choices={stock.boxes.map(({ id }) => ({ value: id, label: id }))}
				/>
			)}
			<div class="row">
				{number("lengthMm", "pack.inner-length", "mm")}
				{number("widthMm", "pack.inner-width", "mm")}
				{number("heightMm", "pack.inner-height", "mm")}
			</div>
			<div class="row">
				{number("edgeCrushKNPerM", "pack.edge-crush", "kN/m")}
				{number("caliperMm", "pack.caliper", "mm")}
			</div>
			<CheckField {...field} name={`${prefix}.reused`} label={say("pack.reused")} />
		</>
	);
}

export function BagFields({ stock, ...field }: Fields & { readonly stock: StockView }) {
	return (
		<>
			<Caution>{say("pack.bag-caution")}</Caution>
			{stock.bags.length > 0 && (
				<SelectField
					{...field}
					name="bag.take"
					label={say("pack.take-bag")}
					empty={say("pack.as-typed")}
					choices={stock.bags.map(({ id }) => ({ value: id, label: id }))}
				/>
			)}
			<BagLayers {...field} />
			<details open={touched(field, "pack.desiccant", ...DUNNAGE.map((row) => `dunnage.${row}.mass`))}>
				<summary>{say("pack.dryness")}</summary>
				<p class="hint">{say("pack.dryness-text")}</p>
				<TextField
					{...field}
					name="pack.desiccantUnits"
					label={say("pack.desiccant-units")}
					inputMode="decimal"
					width="short"
				/>
				{DUNNAGE.map((row) => (
					<div class="row" key={row}>
						<SelectField
							{...field}
							name={`dunnage.${row}.kind`}
							label={say("pack.dunnage")}
							choices={choices("pack.dunnage-kind", dunnageInput.shape.kind.options)}
						/>
						<TextField
							{...field}
							name={`dunnage.${row}.massG`}
							label={say("pack.dunnage-mass")}
							unit="g"
							inputMode="decimal"
						/>
					</div>
				))}
			</details>
		</>
	);
}

/** The layers of a bag; those after the first are out of sight until they are needed. */
export function BagLayers(field: Fields) {
	const [first = "1", ...more] = BAG_LAYERS;
	return (
		<>
			<BagLayer place={first} {...field} />
			<details open={touched(field, ...more.map((place) => `bag.${place}.kind`))}>
				<summary>{say("pack.more-layers")}</summary>
				{more.map((place) => (
					<BagLayer key={place} place={place} {...field} />
				))}
			</details>
		</>
	);
}

function BagLayer({ place, ...field }: Fields & { readonly place: string }) {
	return (
		<fieldset class="field">
			<legend>{say("pack.bag-layer", { place })}</legend>
			<div class="row">
				<SelectField
					{...field}
					name={`bag.${place}.kind`}
					label={say("pack.layer-kind")}
					empty={say("pack.no-layer")}
					choices={choices("pack.layer", LAYER_KINDS)}
				/>
				<SelectField
					{...field}
					name={`bag.${place}.evidence`}
					label={say("pack.evidence")}
					choices={choices("pack.evidence", ["none", "looks-like", "data-sheet", "measured"])}
				/>
				<TextField
					{...field}
					name={`bag.${place}.shieldingNJ`}
					label={say("pack.shielding")}
					unit="nJ"
					inputMode="decimal"
				/>
			</div>
			<div class="ticks">
				<CheckField {...field} name={`bag.${place}.closed`} label={say("pack.closed")} />
				<CheckField {...field} name={`bag.${place}.intact`} label={say("pack.intact")} />
				<CheckField {...field} name={`bag.${place}.stapled`} label={say("pack.stapled")} />
				<CheckField {...field} name={`bag.${place}.reused`} label={say("pack.bag-reused")} />
			</div>
		</fieldset>
	);
}

/** Drops of the shop's own: what makes edges and corners more than a derived rule. */
export function CornerDropFields(field: Fields) {
	const number = numberFields(field, { prefix: "drop." });
	return (
		<details open={touched(field, ...CORNER_DROPS.map((row) => `drop.${row}.`))}>
			<summary>{say("pack.corner-drops")}</summary>
			<p class="hint">{say("pack.corner-drops-text")}</p>
			<Caution>{say("pack.corner-drops-caution")}</Caution>
			{CORNER_DROPS.map((row) => (
				<div class="row" key={row}>
					<SelectField
						{...field}
						name={`drop.${row}.orientation`}
						label={say("pack.orientation")}
						choices={choices("pack.orientation-kind", ["corner", "edge", "face"])}
					/>
					{number(`${row}.dropHeightM`, "pack.drop-height", "m")}
					{number(`${row}.peakGn`, "pack.drop-peak", "gₙ")}
					{number(`${row}.sampleRateHz`, "pack.sample-rate", "Hz")}
					{number(`${row}.massKg`, "pack.dummy-mass", "kg")}
				</div>
			))}
		</details>
	);
}
