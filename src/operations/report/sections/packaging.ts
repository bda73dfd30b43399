/** The packs as they were shipped: what was entered, the verdict and the drop as sealed, the curves. */

import type { Judged } from "../../../calculations/judged.ts";
import type { Packaging } from "../../../calculations/packaging/types.ts";
import type { AssessmentView, PackagingRequest } from "../../../contract/packaging.ts";
import { type Block, facts, list, paragraph, type Section, subheading, table } from "../../../reports/report.ts";
import type { ReportKey, Spoken } from "../../../texts/say.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import { cushionDrawing } from "../../packaging/cushion-drawing.ts";
import { factsOfPack } from "../../packaging/pack-facts.ts";
import { curvesOfSealed } from "../../packaging/sealed-curves.ts";
import type { ReportFacts } from "../report-facts.ts";

/** What a sealed assessment holds. */
type SealedPack = PackagingRequest & { readonly result: Judged<Packaging> };

export function packaging({ legs, speaker }: ReportFacts): Section {
	const { say } = speaker;
	const blocks = legs.flatMap(({ leg, packs }) => packs.flatMap((pack) => packBlocks(leg.leg, pack, speaker)));
	return { title: say("report.pack"), blocks: blocks.length === 0 ? [paragraph(say("report.pack-none"))] : blocks };
}

function packBlocks(leg: number, pack: AssessmentView, speaker: Speaker): Block[] {
	const { say, speak, showTime } = speaker;
	const statement = pack.statement as unknown as SealedPack;
	const answer = speak(statement.result);
	const curves = curvesOfSealed(pack);
	return [
		subheading(say("report.pack-sealed", { leg, time: showTime(pack.sealedAt) })),
		paragraph(say("report.pack-fingerprint", { fingerprint: pack.fingerprint }), "fixed"),
		...lead(answer, speaker),
		facts(factsOfPack(statement, speaker)),
		...checks(answer, speaker),
		...(curves.length === 0 ? [] : [paragraph(say("report.pack-curves"), "small")]),
		...curves.map((curve): Block => {
			const { drawing } = cushionDrawing(curve, speaker);
			const caption = `${drawing.title}. ${drawing.description} ${say("pack.curve-legend")}`;
			return { kind: "figure", drawing, caption };
		}),
	];
}

function lead(answer: Spoken<SealedPack["result"]>, { say, colon }: Speaker): Block[] {
	if (answer.status !== "assessed") {
		return [paragraph(say("general.not-assessed", { why: answer.reason.message as unknown as string }))];
	}
	const { verdict, protectedDropHeightM: dropM, protectedBandM: band, checks: made } = answer.result;
	const design = made.find(({ id }) => id === "drop-height")?.limit;
	return [
		paragraph(
			`${say("report.pack-verdict")}${colon}${say(`pack.verdict.${verdict}` as ReportKey)}. ${say(`pack.verdict-text.${verdict}` as ReportKey)}`,
			"note",
		),
		...(dropM === null || band === null
			? []
			: [
					paragraph(
						[
							say(dropM > 0 ? "pack.protects" : "pack.protects-none", { dropM, lowM: band[0], highM: band[1] }),
							...(typeof design === "number" ? [say("pack.design", { designM: design })] : []),
						].join(" "),
					),
				]),
		list(answer.cautions as unknown as readonly string[]),
	];
}

function checks(answer: Spoken<SealedPack["result"]>, { say, writeNumber }: Speaker): Block[] {
	if (answer.status !== "assessed") return [];
	const quantity = (value: number | null, unit: string | null) =>
		value === null ? "–" : `${writeNumber(value)} ${unit ?? ""}`.trim();
	const rows = answer.result.checks.map(({ id, verdict, value, limit, unit, why }) => [
		say(`pack.check.${id}` as ReportKey),
		say(`pack.verdict.${verdict}` as ReportKey),
		value === null && limit === null
			? String(why)
			: say("report.pack-value", { value: quantity(value, unit), limit: quantity(limit, unit), why: String(why) }),
	]);
	return [table([say("pack.check"), say("report.pack-verdict"), say("report.pack-why")], [3, 2, 6], rows)];
}
