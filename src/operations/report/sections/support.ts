/** What the findings fit, and what nobody has looked for, on either side alike. */
import { type Block, facts, list, paragraph, type Section, subheading, table } from "../../../reports/report.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import { untestedChecks } from "../../comparison/untested-checks.ts";
import type { ReportFacts, ReportLeg } from "../report-facts.ts";
import { legTitle } from "./transit.ts";

type Origin = NonNullable<ReportLeg["view"]["origin"]>;
type Said = { readonly id: string; readonly says: string };

export function support(report: ReportFacts): Section {
	const { say } = report.speaker;
	const blocks = report.legs.flatMap(({ leg, view }) =>
		view.origin === null ? [] : [subheading(legTitle(report, leg)), ...originBlocks(view.origin, report.speaker)],
	);
	return {
		title: say("report.support"),
		blocks: blocks.length === 0 ? [paragraph(say("report.support-none"))] : blocks,
	};
}

function originBlocks({ origins, turnsOn, cautions, nextTests }: Origin, { say, between }: Speaker): Block[] {
	const borne = origins.filter((one) => one.support !== "not-tested");
	const open = origins.filter((one) => one.support === "not-tested");
	const head = (["origin", "for", "against", "support"] as const).map((name) => say(`comparison-page.origin.${name}`));
	const rows = borne.map((one) => [
		one.name,
		words(one.for),
		words(one.against),
		`${say(`origin.support-${one.support}`)}. ${one.why}`,
	]);
	return [
		paragraph(say("comparison-page.origin-text")),
		...(rows.length === 0 ? [] : [table(head, [3, 4, 4, 4], rows)]),
		...(open.length === 0
			? []
			: [paragraph(say("comparison-page.origin.open", { origins: open.map(({ name }) => name).join(between) }))]),
		...(turnsOn === null ? [] : [paragraph(say("comparison-page.origin.turns", { finding: turnsOn.says }))]),
		paragraph(say("comparison-page.tests"), "note"),
		list(nextTests.map(({ says, why }) => `${says} ${why}`)),
		...cautions.map((caution) => paragraph(caution, "small")),
	];
}

function words(said: readonly Said[]): string {
	return said.length === 0 ? "–" : said.map(({ says }) => `• ${says}`).join("\n");
}

export function missing(report: ReportFacts): Section {
	const { speaker } = report;
	const { say } = speaker;
	return {
		title: say("report.missing"),
		blocks: [
			paragraph(say("report.missing-text")),
			...report.legs.flatMap((leg) => [
				subheading(legTitle(report, leg.leg)),
				...untested(leg, speaker),
				...(leg.view.origin === null ? [] : unfound(leg.view.origin, speaker)),
			]),
		],
	};
}

function untested({ found }: ReportLeg, speaker: Speaker): Block[] {
	const { say } = speaker;
	if (found.departure === null || found.arrival === null) return [paragraph(say("report.summary-open"))];
	const lacking = untestedChecks(found.comparison.rows, speaker);
	if (lacking.length === 0) return [paragraph(say("comparison-page.untested-none"))];
	return lacking.flatMap(({ where, kinds }) => [
		paragraph(say(`comparison-page.untested.${where}`), "note"),
		facts(kinds),
	]);
}

/** For the origins that are still open. */
function unfound({ origins }: Origin, { say }: Speaker): Block[] {
	const open = origins.filter((one) => one.support === "supports" || one.support === "neutral");
	return (["departure", "transit", "arrival"] as const).flatMap((side) => {
		const all = new Map(open.flatMap((one) => one.missing[side]).map(({ id, says }) => [id, says]));
		if (all.size === 0) return [];
		const where = say(`comparison-page.missing.${side}`);
		return [paragraph(say("report.missing-side", { side: where }), "note"), list([...all.values()])];
	});
}
