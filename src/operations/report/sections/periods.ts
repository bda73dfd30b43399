/** The periods of each leg under the law of carriage that was chosen or is suggested, as the shop's page has them. */
import type { LegClaimView } from "../../../contract/leg-claim.ts";
import { type Block, facts, paragraph, type Section, subheading, table } from "../../../reports/report.ts";
import type { ReportKey } from "../../../texts/say.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import type { ReportFacts, ReportLeg } from "../report-facts.ts";
import { legFacts, legTitle } from "./transit.ts";

export function periods(report: ReportFacts): Section {
	const { speaker } = report;
	const { say } = speaker;
	return {
		title: say("report.periods"),
		blocks: [
			paragraph(say("report.periods-text")),
			paragraph(say("report.periods-safe"), "note"),
			...report.legs.flatMap((leg) => [subheading(legTitle(report, leg.leg)), ...legBlocks(leg, speaker)]),
			paragraph(say("report.periods-general"), "small"),
		],
	};
}

function legBlocks({ leg, found, claim }: ReportLeg, speaker: Speaker): Block[] {
	const { say } = speaker;
	const { regime, regimeBasis, damage, damageBasis, events, otherReading, notes, cautions } = claim;
	const begin = facts([
		...legFacts(leg, found.arrival, speaker).slice(2, 5),
		[say("periods.damage"), basedOn(say(`periods.damage.${damage}` as ReportKey), damageBasis, speaker)],
		...NOTED.flatMap((name) =>
			events[name] === undefined ? [] : [[say(`periods.date.${name}` as ReportKey), events[name]] as const],
		),
	]);
	if (regime === null) return [begin, paragraph(say("report.periods-none"))];
	const law = say(`periods.regime.${regime}` as ReportKey);
	const head = ["what", "date", "missed", "source"].map((name) => say(`report.periods-${name}` as ReportKey));
	const tableOf = (periods: LegClaimView["periods"]) =>
		table(
			head,
			[5, 2.6, 3.6, 4.8],
			periods.map((period) => periodRow(period, speaker)),
		);
	return [
		begin,
		paragraph(say(regimeBasis === "chosen" ? "periods.chosen" : "report.periods-suggested", { regime: law }), "note"),
		tableOf(claim.periods),
		...(otherReading === null
			? []
			: [
					paragraph(say(`periods.other-damage.${otherReading.damage}` as ReportKey), "note"),
					paragraph(say("periods.other-damage-why")),
					tableOf(otherReading.periods),
				]),
		...[...notes, ...cautions].map((text) => paragraph(text, "small")),
	];
}

/** Dates that stand in no other section. */
const NOTED = [
	"discovered",
	"placedAtDisposal",
	"jointlyChecked",
	"agreedLimit",
	"noticeSent",
	"claimed",
	"rejected",
] as const;

function basedOn(words: string, basis: LegClaimView["damageBasis"], { say }: Speaker): string {
	return basis === "suggested" ? `${words} (${say("periods.damage-suggested")})` : words;
}

function periodRow(period: LegClaimView["periods"][number], { say, colon }: Speaker): string[] {
	const { safeDate, endsOn, rolledTo, alternatives, missing, readOn, standing } = period;
	const none = say(missing.length === 0 ? "periods.no-date" : "periods.missing", {
		events: missing.map((event) => say(`periods.date.${event}` as ReportKey)).join(", "),
	});
	const others = [
		...(endsOn === null || endsOn === safeDate ? [] : [`${say("periods.ends")}${colon}${endsOn}`]),
		...(rolledTo === null || rolledTo === endsOn ? [] : [`${say("periods.rolled")}${colon}${rolledTo}`]),
		...alternatives.map((one) => `${one.endsOn ?? say("periods.not-told")}${colon}${one.reading}`),
	];
	const read = readOn === null ? say("periods.not-read") : say("periods.read-on", { date: readOn });
	return [
		`${period.what} ${say(`periods.form.${period.form}` as ReportKey)}`,
		[safeDate ?? none, ...others].join(". "),
		say(`periods.consequence.${period.consequence}` as ReportKey),
		`${period.article}. ${read} ${say(`periods.standing.${standing}` as ReportKey)}`,
	];
}
