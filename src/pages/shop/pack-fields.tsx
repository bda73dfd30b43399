/** The fields in which a pack is described: item, cushions, bag, box, trip. Cautions stand where the act is. */
import { DROP_BASES } from "../../contract/handling.ts";
import { FACES, staticLayer } from "../../contract/packaging.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { Caution, CheckField, type FieldErrors, type FormValues, SelectField, TextField } from "../components/form.tsx";
import { foamChoices } from "../packaging/foam-words.ts";
import { BAG_LAYERS, NO_CUSHION, OWN_FOAM, UNKNOWN_FOAM } from "./packaging-form.ts";

/** The layer to choose; no layer at all is said by leaving the field. */
const LAYER_KINDS = staticLayer.shape.kind.options.filter((kind) => kind !== "none");

interface Fields {
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

export function PackFields(field: Fields) {
	return (
		<>
			<h2>{say("pack.item")}</h2>
			<TextField {...field} name="item.massKg" label={say("shop.mass")} unit="kg" inputMode="decimal" width="short" />
			<div class="row">
				<TextField {...field} name="item.lengthMm" label={say("shop.length")} unit="mm" inputMode="decimal" />
				<TextField {...field} name="item.widthMm" label={say("shop.width")} unit="mm" inputMode="decimal" />
				<TextField {...field} name="item.heightMm" label={say("shop.height")} unit="mm" inputMode="decimal" />
			</div>
			<p class="hint">{say("pack.axes")}</p>
			<div class="row">
				<TextField
					{...field}
					name="item.gn"
					label={say("pack.fragility")}
					hint={say("pack.fragility-hint")}
					unit="gₙ"
					inputMode="decimal"
				/>
				<SelectField
					{...field}
					name="item.basis"
					label={say("pack.basis")}
					empty="–"
					choices={choices("pack.basis", ["tested", "maker", "board-strength", "class", "our-choice"])}
				/>
			</div>
			<SelectField
				{...field}
				name="item.cell"
				label={say("shop.cell")}
				hint={say("pack.cell-caution")}
				choices={choices("shop.cell-kind", ["none", "coin", "lithium-ion", "supercapacitor"])}
			/>
			<CheckField {...field} name="item.edgesPadded" label={say("pack.edges-padded")} />
			<CheckField {...field} name="item.connectorsCapped" label={say("pack.connectors-capped")} />
			<CheckField {...field} name="item.makerDeclaresNotSensitive" label={say("pack.not-sensitive")} />

			<h2>{say("pack.cushion")}</h2>
			<Caution>{say("pack.cutting-caution")}</Caution>
			<Cushion prefix="cushion" {...field} />
			<details open={touched(field, "face.")}>
				<summary>{say("pack.other-faces")}</summary>
				<p class="hint">{say("pack.other-faces-text")}</p>
				{FACES.map((face) => (
					<details key={face} open={touched(field, `face.${face}.`)}>
						<summary>{say("pack.face-of", { face: say(`pack.face.${face}` as TextKey) })}</summary>
						<Cushion prefix={`face.${face}`} optional {...field} />
					</details>
				))}
			</details>

			<h2>{say("pack.bag")}</h2>
			<Caution>{say("pack.bag-caution")}</Caution>
			{BAG_LAYERS.map((place) => (
				<BagLayer key={place} place={place} {...field} />
			))}

			<h2>{say("pack.box")}</h2>
			<div class="row">
				<TextField {...field} name="box.lengthMm" label={say("pack.inner-length")} unit="mm" inputMode="decimal" />
				<TextField {...field} name="box.widthMm" label={say("pack.inner-width")} unit="mm" inputMode="decimal" />
				<TextField {...field} name="box.heightMm" label={say("pack.inner-height")} unit="mm" inputMode="decimal" />
			</div>
			<div class="row">
				<TextField {...field} name="pack.grossMassKg" label={say("shop.parcel-mass")} unit="kg" inputMode="decimal" />
				<TextField {...field} name="pack.closedHow" label={say("pack.closed-how")} />
			</div>
			<CheckField {...field} name="box.reused" label={say("pack.reused")} />

			<h2>{say("pack.route")}</h2>
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
				<TextField {...field} name="route.transitDays" label={say("pack.days")} inputMode="decimal" />
			</div>
		</>
	);
}

function Cushion({
	prefix,
	optional = false,
	...field
}: Fields & { readonly prefix: string; readonly optional?: boolean }) {
	const own = `${prefix}.aKPa`;
	return (
		<>
			<SelectField
				{...field}
				name={`${prefix}.foam`}
				label={say("pack.foam")}
				{...(optional ? { empty: say("pack.same") } : {})}
				choices={[
					...foamChoices(),
					{ value: OWN_FOAM, label: say("pack.own-foam") },
					{ value: UNKNOWN_FOAM, label: say("pack.unknown-foam") },
					...(optional ? [{ value: NO_CUSHION, label: say("pack.no-cushion") }] : []),
				]}
			/>
			<TextField
				{...field}
				name={`${prefix}.thicknessMm`}
				label={say("pack.thickness")}
				unit="mm"
				inputMode="decimal"
				width="short"
			/>
			<p class="hint">{say("pack.pad-hint")}</p>
			<div class="row">
				<TextField {...field} name={`${prefix}.padCount`} label={say("pack.pad-count")} inputMode="numeric" />
				<TextField
					{...field}
					name={`${prefix}.padLengthMm`}
					label={say("pack.pad-length")}
					unit="mm"
					inputMode="decimal"
				/>
				<TextField
					{...field}
					name={`${prefix}.padWidthMm`}
					label={say("pack.pad-width")}
					unit="mm"
					inputMode="decimal"
				/>
			</div>
			<details open={field.values[`${prefix}.foam`] === OWN_FOAM || touched(field, own)}>
				<summary>{say("pack.own-foam")}</summary>
				<p class="hint">{say("pack.own-hint")}</p>
				<div class="row">
					<TextField {...field} name={own} label={say("pack.own-a")} unit="kPa" inputMode="decimal" />
					<TextField {...field} name={`${prefix}.bPerKPa`} label={say("pack.own-b")} unit="1/kPa" inputMode="decimal" />
				</div>
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
			</div>
			<CheckField {...field} name={`bag.${place}.closed`} label={say("pack.closed")} />
			<CheckField {...field} name={`bag.${place}.intact`} label={say("pack.intact")} />
			<CheckField {...field} name={`bag.${place}.stapled`} label={say("pack.stapled")} />
			<CheckField {...field} name={`bag.${place}.reused`} label={say("pack.bag-reused")} />
		</fieldset>
	);
}

/** Whether something was typed or is wrong under names that begin so: it must be in sight. */
function touched({ values, errors }: Fields, start: string): boolean {
	const named = (entries: FormValues) =>
		Object.entries(entries).some(([name, value]) => name.startsWith(start) && value !== undefined && value !== "");
	return named(values) || named(errors);
}

function choices(key: string, codes: readonly string[]) {
	return codes.map((value) => ({ value, label: say(`${key}.${value}` as TextKey) }));
}
