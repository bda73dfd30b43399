/** A cushion's curve as a drawing, with its words: the same on the pages and in reports. */
import { peakCurve } from "../../charts/peak-curve.ts";
import type { ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import type { PackCurve } from "./plan-pack.ts";

export function cushionDrawing(curve: PackCurve, speaker: Speaker = ENGLISH) {
	const { say } = speaker;
	const { result, limitGn, staticStressKPa } = curve;
	const title = say("pack.curve-title", { faces: facesOf(curve, speaker) });
	const values = {
		peakGn: result.peakGn,
		stressKPa: staticStressKPa,
		limitGn,
		bestGn: result.optimumPeakGn,
		bestStressKPa: result.optimumStaticStressKPa,
	};
	const words = {
		title,
		peakAxis: say("pack.curve-peak"),
		limit: say("pack.curve-limit", values),
		operating: say("pack.curve-point", values),
		optimum: say("pack.curve-best", values),
		tick: speaker.tick,
	};
	const drawing = peakCurve({
		over: "stress",
		points: curve.points,
		operating: { at: staticStressKPa, peakGn: result.peakGn },
		optimum: { at: result.optimumStaticStressKPa, peakGn: result.optimumPeakGn },
		limitGn,
		words: { ...words, description: say("pack.curve-description", values), axis: say("pack.curve-stress") },
	});
	return { drawing, title, words, values };
}

/** Faces that share a cushion, by name. */
export function facesOf(curve: PackCurve, { say }: Speaker = ENGLISH): string {
	return curve.faces.map((face) => say(`pack.face.${face}` as ReportKey)).join(", ");
}
