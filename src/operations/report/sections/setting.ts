/** Sections that say what is asked, how to read the answer, who ran the server, and what the item is. */
import { facts, list, paragraph, type Section } from "../../../reports/report.ts";
import { inMillimetres } from "../../../texts/millimetres.ts";
import { say, type TextKey, writeNumber } from "../../../texts/say.ts";
import { showTime } from "../../../texts/shown-time.ts";
import type { ReportFacts } from "../report-facts.ts";
import { ageWords, itemTitle, known, money } from "../report-words.ts";

export function question(): Section {
	return { title: say("report.question"), blocks: [paragraph(say("report.question-text"))] };
}

export function howToRead(): Section {
	return {
		title: say("report.reading"),
		blocks: [
			paragraph(say("report.reading-kinds")),
			paragraph(say("report.reading-intervals")),
			paragraph(say("report.reading-numbers")),
			paragraph(say("report.reading-not"), "note"),
		],
	};
}

export function server({ order, publicUrl, keys, stamp, readIn }: ReportFacts): Section {
	return {
		title: say("report.server"),
		blocks: [
			paragraph(say("report.server-text")),
			facts([
				[say("report.repairer"), `${order.repairer.name}, ${order.repairer.country}`],
				[say("report.server-address"), publicUrl],
				...(readIn === null
					? []
					: [[say("read-in.report"), say("read-in.report-of", { time: showTime(readIn.readInAt) })] as const]),
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
	const { order } = report;
	const { terms } = order;
	return {
		title: say("report.item"),
		blocks: [
			facts([
				...itemFacts(report),
				...known(
					["report.owner", `${order.owner.name}, ${order.owner.country}`],
					["report.repairer", `${order.repairer.name}, ${order.repairer.country}`],
					["report.contract", say(`shop.contract.${order.contractKind}` as TextKey)],
					["report.fault", terms.reportedFault],
					["report.work", terms.agreedWork],
				),
			]),
			paragraph(say("report.order-noted"), "small"),
		],
	};
}

/** What the order says of the item itself. */
export function itemFacts({ order, asOf }: ReportFacts): (readonly [string, string])[] {
	const { item: of } = order;
	const sides = [of.lengthM, of.widthM, of.heightM];
	const size = sides.every((side) => side !== undefined)
		? `${sides.map((side) => inMillimetres(side ?? 0)).join(" × ")} mm`
		: null;
	const mass = of.massKg === undefined ? null : `${writeNumber(of.massKg)} kg`;
	return known(
		["report.item-what", itemTitle(order)],
		["report.item-class", say(`shop.class.${of.class}` as TextKey)],
		["report.item-serial", of.serialNumber ?? say("report.transit-not-noted")],
		["report.item-value", money(of.value) ?? say("report.transit-not-noted")],
		["report.item-age", ageWords(of.boughtOn, asOf)],
		["report.item-mass", [mass, size].filter((part) => part !== null).join(", ") || null],
	);
}

export function sealLimits(): Section {
	const points = ["true", "who", "when", "all", "item", "declared"] as const;
	return { title: say("report.seal"), blocks: [list(points.map((point) => say(`report.seal.${point}`)))] };
}
