/** The fields of cushions: one for all faces, and one for each face that has another. */
import { FILLERS } from "../../../catalogue/fillers.ts";
import { FACES } from "../../../contract/packaging.ts";
import type { StockView } from "../../../contract/stock.ts";
import { foamChoices, foamWords } from "../../../operations/packaging/foam-words.ts";
import { inMillimetres } from "../../../texts/millimetres.ts";
import { say, type TextKey } from "../../../texts/say.ts";
import { SelectField } from "../../components/form.tsx";
import { numberFields } from "../../components/number-fields.tsx";
import { type CushionPlace, FROM_STOCK, NO_CUSHION, OWN_FOAM, UNKNOWN_FOAM } from "./cushion-names.ts";
import { type Fields, touched } from "./field-parts.ts";

interface CushionFieldProps extends Fields {
	readonly stock: StockView;
}

export function CushionFields({ place, ...field }: CushionFieldProps & { readonly place: CushionPlace }) {
	const [firstFace] = FACES;
	const others = place.face(firstFace).replace(firstFace, "");
	return (
		<>
			<Cushion prefix={place.all} {...field} />
			<details open={touched(field, others)}>
				<summary>{say("pack.other-faces")}</summary>
				<p class="hint">{say("pack.other-faces-text")}</p>
				{FACES.map((face) => (
					<details key={face} open={touched(field, `${place.face(face)}.`)}>
						<summary>{say("pack.face-of", { face: say(`pack.face.${face}` as TextKey) })}</summary>
						<Cushion prefix={place.face(face)} single {...field} />
					</details>
				))}
			</details>
		</>
	);
}

function Cushion({
	prefix,
	single = false,
	stock,
	...field
}: CushionFieldProps & {
	readonly prefix: string;
	/** Of one face, which otherwise has what all have. */
	readonly single?: boolean;
}) {
	const own = `${prefix}.aKPa`;
	const foams = [
		...stock.foams.map(({ id, thicknessM }) => ({
			value: FROM_STOCK + id,
			label: say("pack.from-stock", { id, thicknessMm: Number(inMillimetres(thicknessM)) }),
		})),
		...foamChoices(),
		...FILLERS.map(({ id }) => ({ value: id, label: say("pack.filler-choice", { filler: foamWords(id) }) })),
		{ value: OWN_FOAM, label: say("pack.own-foam") },
		{ value: UNKNOWN_FOAM, label: say("pack.unknown-foam") },
	];
	const number = numberFields(field, { prefix: `${prefix}.` });
	return (
		<>
			<div class="row">
				<SelectField
					{...field}
					name={`${prefix}.foam`}
					label={say("pack.foam")}
					{...(single ? { empty: say("pack.same") } : {})}
					choices={[...foams, ...(single ? [{ value: NO_CUSHION, label: say("pack.no-cushion") }] : [])]}
				/>
				{number("thicknessMm", "pack.thickness", "mm")}
			</div>
			<p class="hint">{say("pack.pad-hint")}</p>
			<div class="row">
				{number("padCount", "pack.pad-count")}
				{number("padLengthMm", "pack.pad-length", "mm")}
				{number("padWidthMm", "pack.pad-width", "mm")}
			</div>
			<details open={touched(field, `${prefix}.second`)}>
				<summary>{say("pack.second-layer")}</summary>
				<p class="hint">{say("pack.second-layer-text")}</p>
				<div class="row">
					<SelectField
						{...field}
						name={`${prefix}.secondFoam`}
						label={say("pack.foam")}
						empty={say("pack.no-layer")}
						choices={foams.filter(({ value }) => value !== OWN_FOAM)}
					/>
					{number("secondThicknessMm", "pack.thickness", "mm")}
				</div>
			</details>
			<details open={field.values[`${prefix}.foam`] === OWN_FOAM || touched(field, own)}>
				<summary>{say("pack.own-foam")}</summary>
				<p class="hint">{say("pack.own-hint")}</p>
				<div class="row">
					{number("aKPa", "pack.own-a", "kPa")}
					{number("bPerKPa", "pack.own-b", "1/kPa")}
				</div>
			</details>
		</>
	);
}
