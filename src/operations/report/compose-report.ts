/** The report of an edition: its sections in the order in which an expert would use them. */
import { canonicalBytes, type JsonValue } from "../../records/canonical.ts";
import type { Report, Section } from "../../reports/report.ts";
import { itemName } from "../../texts/item-name.ts";
import type { ReportFacts } from "./report-facts.ts";
import { carrierSections, carrierSummary } from "./sections/carrier.ts";
import { comparison } from "./sections/comparison.ts";
import { custody } from "./sections/custody.ts";
import { packaging } from "./sections/packaging.ts";
import { periods } from "./sections/periods.ts";
import { exhibits, howToVerify, method, sources } from "./sections/proofs.ts";
import { records } from "./sections/records.ts";
import { howToRead, item, question, sealLimits, server } from "./sections/setting.ts";
import { positions, settlement } from "./sections/settling.ts";
import { summary } from "./sections/summary.ts";
import { missing, support } from "./sections/support.ts";
import { transit } from "./sections/transit.ts";

export function composeReport(facts: ReportFacts): Report {
	const { order, edition, checkpoint, asOf, speaker } = facts;
	const { say, showTime, language } = speaker;
	const forCarrier = edition === "carrier";
	return {
		title: say("report.title"),
		lead: say("report.lead", { item: itemName(order.item), edition: say(`report.edition.${edition}`) }),
		asOf,
		language,
		footer: say("report.footer", { order: order.id, size: String(checkpoint.size), time: showTime(asOf) }),
		summary: forCarrier ? carrierSummary(facts) : summary(facts),
		sections: forCarrier ? [...carrierSections(facts), exhibits(facts), howToVerify(facts)] : sectionsOf(facts),
		attachment: forCarrier ? null : machineReadable(facts),
	};
}

function sectionsOf(facts: ReportFacts): Section[] {
	return [
		question(facts),
		howToRead(facts),
		server(facts),
		item(facts),
		custody(facts),
		records(facts),
		packaging(facts),
		transit(facts),
		comparison(facts),
		support(facts),
		missing(facts),
		positions(facts),
		settlement(facts),
		periods(facts),
		exhibits(facts),
		...(facts.edition === "expert" ? [method(facts)] : []),
		sources(facts),
		howToVerify(facts),
		sealLimits(facts),
	];
}

/** The comparisons as the API gives them, for whoever computes with them. */
function machineReadable({ legs, order, checkpoint, speaker }: ReportFacts): Report["attachment"] {
	const comparisons = legs.map(({ view }) => view) as unknown as JsonValue;
	return {
		name: "comparison.json",
		description: speaker.say("report.comparison"),
		bytes: canonicalBytes({ orderId: order.id, treeSize: checkpoint.size, language: speaker.language, comparisons }),
	};
}
