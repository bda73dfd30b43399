/** One cushion: its curve with this pack on it, and the same in figures for whoever does not see it. */
import { peakCurve } from "../../charts/peak-curve.ts";
import { cushionDrawing, facesOf } from "../../operations/packaging/cushion-drawing.ts";
import type { PackCurve } from "../../operations/packaging/plan-pack.ts";
import { say, speak, type TextKey, writeNumber } from "../../texts/say.ts";
import { Chart } from "../components/chart.tsx";

export function CushionFigure({
	curve,
	id,
}: {
	readonly curve: PackCurve;
	/** Of the pack, so that two on one page are told apart. */
	readonly id: string;
}) {
	const { result } = curve;
	const { drawing, title, words, values } = cushionDrawing(curve);
	const thicknessMm = 1000 * curve.thicknessM;
	const overThickness = peakCurve({
		over: "thickness",
		points: curve.byThickness,
		operating: { at: thicknessMm, peakGn: result.peakGn },
		optimum: null,
		limitGn: curve.limitGn,
		words: {
			...words,
			title: say("pack.thickness-title", { faces: facesOf(curve) }),
			description: say(
				result.minimumThicknessAtStressM === null || result.minimumThicknessAtStressReason === "pad-too-large"
					? "pack.thickness-never"
					: "pack.thickness-description",
				{ ...values, thicknessMm, leastMm: 1000 * (result.minimumThicknessAtStressM ?? 0) },
			),
			axis: say("pack.curve-thickness"),
		},
	});
	return (
		<figure class="cushion">
			<figcaption>
				<h3>{title}</h3>
				<p>
					{drawing.description} {say("pack.curve-legend")}
				</p>
			</figcaption>
			<Chart drawing={drawing} id={`curve-${id}-${curve.faces[0]}`} />
			<h4>{overThickness.title}</h4>
			<p class="hint">
				{overThickness.description} {say("pack.thickness-legend")}
			</p>
			<Chart drawing={overThickness} id={`thickness-${id}-${curve.faces[0]}`} />
			<Figures curve={curve} title={title} />
			{speak(curve.notes).map((note) => (
				<p key={note} class="hint">
					{note}
				</p>
			))}
		</figure>
	);
}

function Figures({ curve, title }: { readonly curve: PackCurve; readonly title: string }) {
	const { result, limitGn, energyRangeKJPerM3: range } = curve;
	const [low, high] = result.peakBandGn;
	const reach = result.staticStressRangeKPa;
	const millimetres = (metres: number | null) => (metres === null ? "–" : `${writeNumber(1000 * metres)} mm`);
	const rows: readonly (readonly [TextKey, string])[] = [
		["pack.fact-thickness", millimetres(curve.thicknessM)],
		["pack.fact-drop", `${writeNumber(curve.dropHeightM)} m`],
		["pack.fact-stress", `${writeNumber(curve.staticStressKPa)} kPa`],
		["pack.fact-peak", say("pack.peak-of", { peakGn: result.peakGn, lowGn: low, highGn: high })],
		["pack.fact-limit", `${writeNumber(limitGn)} gₙ`],
		["pack.fact-loading", result.loading === null ? "–" : say(`pack.loading.${result.loading}` as TextKey)],
		[
			"pack.fact-energy",
			range === null
				? `${writeNumber(result.energyDensityKJPerM3)} kJ/m³`
				: say("pack.energy-of", { energy: result.energyDensityKJPerM3, low: range[0], high: range[1] }),
		],
		[
			"pack.fact-stress-range",
			reach === null
				? say("pack.no-stress")
				: say("pack.stress-of", { low: reach[0] ?? 0, high: reach[1] ?? Number.POSITIVE_INFINITY }),
		],
		[
			"pack.fact-thickness-at-stress",
			result.minimumThicknessAtStressReason === "pad-too-large"
				? say("pack.no-thickness")
				: millimetres(result.minimumThicknessAtStressM),
		],
		["pack.fact-thickness-at-best", millimetres(result.minimumThicknessAtOptimumM)],
		["pack.fact-thickness-any", millimetres(result.leastThicknessAnyFoamM)],
	];
	return (
		<table class="figures">
			<caption>{say("pack.figures-of", { title })}</caption>
			<tbody>
				{rows.map(([key, value]) => (
					<tr key={key}>
						<th scope="row">{say(key)}</th>
						<td>{value}</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}
