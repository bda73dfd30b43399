/** The periods of each leg under the law of carriage that was chosen or is suggested, as the shop's page has them. */
import type { LegClaimView } from "../../../contract/leg-claim.ts";
import { type Block, facts, paragraph, type Section, subheading, table } from "../../../reports/report.ts";
import { say, type TextKey } from "../../../texts/say.ts";
import type { ReportFacts, ReportLeg } from "../report-facts.ts";
import { legFacts, legTitle } from "./transit.ts";

export function periods(report: ReportFacts): Section {
	return {
		title: say("report.periods"),
		blocks: [
			paragraph(say("report.periods-text")),
			paragraph(say("report.periods-safe"), "note"),
			...report.legs.flatMap((leg) => [subheading(legTitle(report, leg.leg)), ...legBlocks(leg)]),
			paragraph(say("report.periods-general"), "small"),
		],
	};
}

function legBlocks({ leg, found, claim }: ReportLeg): Block[] {
	const { regime, regimeBasis, damage, damageBasis, events, notes, cautions } = claim;
	const begin = facts([
		...legFacts(leg, found.arrival).slice(2, 5),
		[say("periods.damage"), basedOn(say(`periods.damage.${damage}` as TextKey), damageBasis)],
		...NOTED.flatMap((name) =>
			events[name] === undefined ? [] : [[say(`periods.date.${name}` as TextKey), events[name]] as const],
		),
	]);
	if (regime === null) return [begin, paragraph(say("report.periods-none"))];
	const law = say(`periods.regime.${regime}` as TextKey);
	const head = ["what", "date", "missed", "source"].map((name) => say(`report.periods-${name}` as TextKey));
	return [
		begin,
		paragraph(say(regimeBasis === "chosen" ? "periods.chosen" : "periods.suggested", { regime: law }), "note"),
		table(head, [4, 3, 4, 4], claim.periods.map(periodRow)),
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

function basedOn(words: string, basis: LegClaimView["damageBasis"]): string {
	return basis === "suggested" ? `${words} (${say("periods.damage-suggested")})` : words;
}

function periodRow(period: LegClaimView["periods"][number]): string[] {
	const { safeDate, endsOn, rolledTo, alternatives, missing, readOn, standing } = period;
	const none = say(missing.length === 0 ? "periods.no-date" : "periods.missing", {
		events: missing.map((event) => say(`periods.date.${event}` as TextKey)).join(", "),
	});
	const others = [
		...(endsOn === null || endsOn === safeDate ? [] : [`${say("periods.ends")}: ${endsOn}`]),
		...(rolledTo === null ? [] : [`${say("periods.rolled")}: ${rolledTo}`]),
		...alternatives.map((one) => `${one.endsOn ?? say("periods.not-told")}: ${one.reading}`),
	];
	const read = readOn === null ? say("periods.not-read") : say("periods.read-on", { date: readOn });
	return [
		`${period.what} ${say(`periods.form.${period.form}` as TextKey)}`,
		[safeDate ?? none, ...others].join(". "),
		say(`periods.consequence.${period.consequence}` as TextKey),
		`${period.article}. ${read} ${say(`periods.standing.${standing}` as TextKey)}`,
	];
}
