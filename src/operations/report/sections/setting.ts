/** Sections that say what is asked, how to read the answer, who ran the server, and what the item is. */
import { facts, list, paragraph, type Section, subheading, type Words } from "../../../reports/report.ts";
import { isolated } from "../../../texts/isolated.ts";
import { itemName } from "../../../texts/item-name.ts";
import { inMillimetres } from "../../../texts/millimetres.ts";
import type { ReportKey } from "../../../texts/say.ts";
import { leftOut } from "../left-out.ts";
import type { ReportFacts } from "../report-facts.ts";
import { ageWords, known, money, typedText } from "../report-words.ts";

export function question({ speaker: { say } }: ReportFacts): Section {
	return { title: say("report.question"), blocks: [paragraph(say("report.question-text"))] };
}

export function howToRead({ edition, speaker }: ReportFacts): Section {
	const { say } = speaker;
	return {
		title: say("report.reading"),
		blocks: [
			paragraph(say("report.reading-kinds")),
			paragraph(say("report.reading-intervals")),
			paragraph(say("report.reading-numbers")),
			paragraph(say("report.reading-not"), "note"),
			subheading(say("report.summary-left-out")),
			list(leftOut(edition, speaker)),
		],
	};
}

export function server({ order, publicUrl, keys, stamp, readIn, speaker }: ReportFacts): Section {
	const { say, showTime } = speaker;
	return {
		title: say("report.server"),
		blocks: [
			paragraph(say("report.server-text")),
			facts([
				[say("report.repairer"), `${isolated(order.repairer.name)}, ${order.repairer.country}`],
				[say("report.server-address"), publicUrl],
				...(readIn === null
					? []
					: [[say("report.read-in"), say("report.read-in-of", { time: showTime(readIn.readInAt) })] as const]),
				[say("report.server-origin"), keys[0]?.origin ?? ""],
				[say("report.server-keys"), keys.map(({ id }) => id).join(", ")],
				[
					say("report.server-time"),
					stamp === null
						? say("report.server-time-none")
						: say("report.server-time-of", { size: String(stamp.size), time: showTime(stamp.time) }),
				],
			]),
		],
	};
}

export function item(report: ReportFacts): Section {
	const { order, speaker } = report;
	const { say } = speaker;
	const { terms } = order;
	return {
		title: say("report.item"),
		blocks: [
			facts([
				...itemFacts(report),
				...known(
					speaker,
					["report.owner", `${isolated(order.owner.name)}, ${order.owner.country}`],
					["report.repairer", `${isolated(order.repairer.name)}, ${order.repairer.country}`],
					["report.contract", say(`shop.contract.${order.contractKind}` as ReportKey)],
					["report.fault", typedText(terms.reportedFault, speaker)],
					["report.work", typedText(terms.agreedWork, speaker)],
				),
			]),
			paragraph(say("report.order-noted"), "small"),
		],
	};
}

/** What the order says of the item itself. */
export function itemFacts(report: ReportFacts): (readonly [string, Words])[] {
	const { order, speaker } = report;
	const { say, writeNumber, writeDigits } = speaker;
	const { item: of } = order;
	const sides = [of.lengthM, of.widthM, of.heightM];
	const size = sides.every((side) => side !== undefined)
		? `${sides.map((side) => writeDigits(inMillimetres(side ?? 0))).join(" × ")} mm`
		: null;
	const mass = of.massKg === undefined ? null : `${writeNumber(of.massKg)} kg`;
	return known(
		speaker,
		["report.item-what", itemName(order.item)],
		["report.item-class", say(`shop.class.${of.class}` as ReportKey)],
		["report.item-serial", of.serialNumber ?? say("report.transit-not-noted")],
		["report.item-value", money(of.value, speaker) ?? say("report.transit-not-noted")],
		["report.item-age", ageWords(report)],
		["report.item-mass", [mass, size].filter((part) => part !== null).join(", ") || null],
	);
}

export function sealLimits({ speaker: { say } }: ReportFacts): Section {
	const points = ["true", "who", "when", "all", "item", "declared"] as const;
	return { title: say("report.seal"), blocks: [list(points.map((point) => say(`report.seal.${point}`)))] };
}
