/** How a pack is packed, to print and lay beside the box: drawing, pieces to cut, order of work, bag, closing, cautions. */

import { type FoamInput, foamInput } from "../../../contract/cushion.ts";
import type { OrderView } from "../../../contract/orders.ts";
import { FACES, type PackagingRequest } from "../../../contract/packaging.ts";
import type { StockView } from "../../../contract/stock.ts";
import { bagWords, kindWords } from "../../../operations/packaging/pack-words.ts";
import type { PackPlan } from "../../../operations/packaging/plan-pack.ts";
import { inMillimetres } from "../../../texts/millimetres.ts";
import { say, speak, type TextKey, writeNumber } from "../../../texts/say.ts";
import { Layout } from "../../layout.tsx";
import { Lead, type SpokenPackaging } from "../../packaging/packaging-result.tsx";
import { SectionFigures } from "../../packaging/section-figures.tsx";

const CAUTIONS = ["static", "cut", "cell", "mains", "lift"] as const;
const STEPS = 8;
/** Thicknesses closer than this are one. */
const ROUNDING_M = 1e-6;

export interface PackingSheetProps {
	readonly order: OrderView;
	readonly input: PackagingRequest;
	readonly plan: PackPlan;
	/** To name the boxes; null where the stock of now says nothing of it. */
	readonly stock: StockView | null;
}

export function PackingSheet({ order, input, plan, stock }: PackingSheetProps) {
	const { item, pack } = input;
	const { innerBox } = pack;
	return (
		<Layout title={say("pack.sheet")} sheet>
			<div class="packing">
				<p class="lead">
					{order.item.maker} {order.item.model}
					{order.item.serialNumber !== undefined && `, ${order.item.serialNumber}`}; {writeNumber(item.massKg)} kg,{" "}
					{sizeWords([item.lengthM, item.widthM, item.heightM])}
				</p>
				<Lead answer={speak(plan.answer) as SpokenPackaging} />
				<SectionFigures sections={plan.sections} item={item} id="sheet" />
				<h2>{say("pack.pieces")}</h2>
				<table class="stacked pieces">
					<thead>
						<tr>
							<th scope="col">{say("pack.piece-where")}</th>
							<th scope="col">{say("pack.foam")}</th>
							<th scope="col" class="number">
								{say("pack.piece-count")}
							</th>
							<th scope="col">{say("pack.piece-size")}</th>
						</tr>
					</thead>
					<tbody>
						{piecesOf(input, stock).map((piece) => (
							<tr key={`${piece.where} ${piece.foam} ${piece.size}`}>
								<th scope="row">{piece.where}</th>
								<td data-label={say("pack.foam")}>{piece.foam}</td>
								<td class="number" data-label={say("pack.piece-count")}>
									{piece.count}
								</td>
								<td data-label={say("pack.piece-size")}>{piece.size}</td>
							</tr>
						))}
					</tbody>
				</table>
				<p>{say("pack.pads-where")}</p>
				<dl class="facts">
					<dt>{say("pack.box")}</dt>
					<dd>{boxWords(pack.box, stock)}</dd>
					{innerBox !== undefined && (
						<>
							<dt>{say("pack.inner-box")}</dt>
							<dd>{boxWords(innerBox, stock)}</dd>
						</>
					)}
					<dt>{say("pack.bag")}</dt>
					<dd>{pack.bagLayers.map((layer) => bagWords(layer)).join("; ") || say("pack.no-layer")}</dd>
					<dt>{say("pack.closed-how")}</dt>
					<dd>{pack.closedHow ?? say("pack.closing-advice")}</dd>
				</dl>
				<h2>{say("pack.order-of-work")}</h2>
				<ol>
					{Array.from({ length: STEPS }, (_, index) => `pack.step-${index + 1}` as TextKey)
						.filter((key) => innerBox !== undefined || key !== INNER_BOX_STEP)
						.map((key) => (
							<li key={key}>{say(key)}</li>
						))}
				</ol>
				<h2>{say("slip.cautions-title")}</h2>
				<ul>
					{CAUTIONS.map((caution) => (
						<li key={caution}>{say(`pack.caution-${caution}`)}</li>
					))}
				</ul>
				<p>
					{say("pack.sheet-mass")} <span class="blank" /> kg. {say("pack.sheet-by")} <span class="blank" />
				</p>
				<p class="hint">{say("pack.sheet-is")}</p>
			</div>
		</Layout>
	);
}

const INNER_BOX_STEP: TextKey = "pack.step-6";

interface Piece {
	readonly where: string;
	readonly foam: string;
	readonly count: number;
	readonly size: string;
}

/** Pieces to cut, those that are alike on several faces together. */
function piecesOf({ pack }: PackagingRequest, stock: StockView | null): Piece[] {
	const { innerBox } = pack;
	if (innerBox === undefined) return piecesIn(say("pack.around"), pack.faces, pack.box, stock);
	return [
		...piecesIn(say("pack.around"), pack.faces, innerBox, stock),
		...piecesIn(say("pack.gap"), innerBox.faces, pack.box, stock),
	];
}

type Faces = PackagingRequest["pack"]["faces"];

function piecesIn(place: string, faces: Faces, box: BoxInput, stock: StockView | null): Piece[] {
	const pieces = new Map<string, Omit<Piece, "where"> & { readonly faces: readonly string[] }>();
	for (const face of FACES) {
		for (const { foam, thicknessM, pads } of faces[face].layers) {
			const [pad] = pads ?? [];
			const sides = pad === undefined ? linedSides(face, faces, box) : [pad.lengthM, pad.widthM];
			const [size, words] = [sizeWords([...sides, thicknessM]), sheetWords(foam, thicknessM, stock)];
			const known = pieces.get(words + size);
			pieces.set(words + size, {
				foam: words,
				size,
				count: (known?.count ?? 0) + (pads?.length ?? 1),
				faces: [...(known?.faces ?? []), say(`pack.face.${face}` as TextKey)],
			});
		}
	}
	return [...pieces.values()].map(({ faces: on, ...piece }) => ({ ...piece, where: `${place}: ${on.join(", ")}` }));
}

/** Sheets of the stock that make up this thickness, where there are such; else the foam. */
function sheetWords(foam: FoamInput, thicknessM: number, stock: StockView | null): string {
	// Both in the shape's own order of members: the database keeps another.
	const written = (one: FoamInput) => JSON.stringify(foamInput.parse(one));
	const layersOf = (sheet: StockView["foams"][number]) => Math.round(thicknessM / sheet.thicknessM);
	const sheet = stock?.foams
		.filter((one) => written(one.foam) === written(foam))
		.filter((one) => Math.abs(layersOf(one) * one.thicknessM - thicknessM) < ROUNDING_M)
		.sort((a, b) => layersOf(a) - layersOf(b))[0];
	return sheet === undefined ? kindWords(foam) : `${layersOf(sheet)} × ${sheet.id}`;
}

/** A sheet from wall to wall: left and right go in first, front and back between them, top and bottom between all four. */
function linedSides(face: (typeof FACES)[number], faces: Faces, box: BoxInput): readonly [number, number] {
	const thickM = (one: (typeof FACES)[number]) => faces[one].layers.reduce((sum, layer) => sum + layer.thicknessM, 0);
	const alongM = box.innerLengthM - thickM("left") - thickM("right");
	if (face === "left" || face === "right") return [box.innerWidthM, box.innerHeightM];
	if (face === "front" || face === "back") return [alongM, box.innerHeightM];
	return [alongM, box.innerWidthM - thickM("front") - thickM("back")];
}

/** To the half millimetre: nobody cuts foam finer. */
function sizeWords(sidesM: readonly number[]): string {
	return `${sidesM.map((side) => writeNumber(Math.round(2 * Number(inMillimetres(side))) / 2)).join(" × ")} mm`;
}

type BoxInput = PackagingRequest["pack"]["box"];

function boxWords(box: BoxInput, stock: StockView | null): string {
	const named = stock?.boxes.find(
		(one) =>
			one.innerLengthM === box.innerLengthM &&
			one.innerWidthM === box.innerWidthM &&
			one.innerHeightM === box.innerHeightM,
	);
	const size = say("pack.inside", { size: sizeWords([box.innerLengthM, box.innerWidthM, box.innerHeightM]) });
	return [...(named === undefined ? [] : [named.id]), size, ...(box.reused ? [say("pack.was-reused")] : [])].join(", ");
}
