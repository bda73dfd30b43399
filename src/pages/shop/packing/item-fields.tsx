/** The fields of the item: what it is, what it withstands, its board, its cooler. */
import { packedItem } from "../../../contract/packaging.ts";
import { boardInput } from "../../../contract/strength.ts";
import { say, type TextKey } from "../../../texts/say.ts";
import { CheckField, SelectField } from "../../components/form.tsx";
import { numberFields } from "../../components/number-fields.tsx";
import { choices, type Fields, touched } from "./field-parts.ts";

const { fragility, heavyCooler } = packedItem.shape;
const { component, plate } = boardInput.shape;

export function ItemFields(field: Fields) {
	const number = numberFields(field);
	return (
		<>
			<div class="row">
				{number("item.massKg", "shop.mass", "kg")}
				{number("item.lengthMm", "shop.length", "mm")}
				{number("item.widthMm", "shop.width", "mm")}
				{number("item.heightMm", "shop.height", "mm")}
			</div>
			<p class="hint">{say("pack.axes")}</p>
			<div class="row">
				{number("item.gn", "pack.fragility", "gₙ", "pack.fragility-hint")}
				<SelectField
					{...field}
					name="item.basis"
					label={say("pack.basis")}
					hint={say("pack.basis-hint")}
					empty="–"
					choices={choices("pack.basis", fragility.unwrap().shape.basis.options)}
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
			<details open={touched(field, "cooler.massKg", "item.velocity")}>
				<summary>{say("pack.cooler")}</summary>
				<div class="row">
					{number("cooler.massKg", "pack.cooler-mass", "kg")}
					<SelectField
						{...field}
						name="cooler.support"
						label={say("pack.cooler-support")}
						choices={choices("pack.cooler-support", heavyCooler.unwrap().shape.support.options)}
					/>
				</div>
				{number("item.velocityMPerS", "pack.velocity", "m/s", "pack.velocity-hint")}
			</details>
			<details
				open={touched(field, "board.thickness", "board.componentMm", "board.edge", "board.frequency", "board.plate")}
			>
				<summary>{say("pack.board")}</summary>
				<p class="hint">{say("pack.board-text")}</p>
				<div class="row">
					<SelectField
						{...field}
						name="board.component"
						label={say("pack.component")}
						choices={choices("pack.component-kind", component.shape.kind.unwrap().options)}
					/>
					<SelectField
						{...field}
						name="board.position"
						label={say("pack.position")}
						choices={choices("pack.position-kind", component.shape.position.options)}
					/>
				</div>
				<div class="row">
					{number("board.componentMm", "pack.component-length", "mm")}
					{number("board.edgeMm", "pack.board-edge", "mm")}
					{number("board.thicknessMm", "pack.board-thickness", "mm")}
				</div>
				<div class="row">
					{number("board.frequencyHz", "pack.board-frequency", "Hz", "pack.board-frequency-hint")}
					{number("board.amplification", "pack.amplification", undefined, "pack.amplification-hint")}
					{number("board.pulseMs", "pack.pulse", "ms")}
				</div>
				<p class="hint">{say("pack.plate-text")}</p>
				<div class="row">
					{number("board.plateLengthMm", "pack.plate-length", "mm")}
					{number("board.plateWidthMm", "pack.plate-width", "mm")}
					{number("board.plateMassKg", "pack.plate-mass", "kg")}
				</div>
				<div class="row">
					{number("board.modulusGPa", "pack.modulus", "GPa")}
					{number("board.poissonRatio", "pack.poisson")}
					<SelectField
						{...field}
						name="board.support"
						label={say("pack.plate-support")}
						choices={plate.unwrap().shape.support.options.map((value) => ({ value, label: supportWords(value) }))}
					/>
				</div>
			</details>
		</>
	);
}

/** Letters for the left, top, right and bottom edge: supported, clamped, free. */
function supportWords(code: string): string {
	if (code === "four-corners") return say("pack.edge.four-corners");
	const edge = (index: number) => say(`pack.edge.${code[index]}` as TextKey);
	return say("pack.edges", { left: edge(0), top: edge(1), right: edge(2), bottom: edge(3) });
}
