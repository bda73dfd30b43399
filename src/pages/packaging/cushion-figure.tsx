/** One cushion: its curve with this pack on it, and the same in figures for whoever does not see it. */
import { cushionCurve } from "../../charts/cushion-curve.ts";
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
	const { result, limitGn, staticStressKPa } = curve;
	const title = say("pack.curve-title", {
		faces: curve.faces.map((face) => say(`pack.face.${face}` as TextKey)).join(", "),
	});
	const values = {
		peakGn: result.peakGn,
		stressKPa: staticStressKPa,
		limitGn,
		bestGn: result.optimumPeakGn,
		bestStressKPa: result.optimumStaticStressKPa,
	};
	const drawing = cushionCurve({
		points: curve.points,
		operating: { staticStressKPa, peakGn: result.peakGn },
		optimum: { staticStressKPa: result.optimumStaticStressKPa, peakGn: result.optimumPeakGn },
		limitGn,
		words: {
			title,
			description: say("pack.curve-description", values),
			stressAxis: say("pack.curve-stress"),
			peakAxis: say("pack.curve-peak"),
			limit: say("pack.curve-limit", values),
			operating: say("pack.curve-point", values),
			optimum: say("pack.curve-best", values),
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
