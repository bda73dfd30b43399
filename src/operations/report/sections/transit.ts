/** What is noted of each leg: carrier, dates, manner, what recorders said. */
import type { ConsignmentView } from "../../../contract/orders.ts";
import { type Block, facts, type Section, subheading } from "../../../reports/report.ts";
import type { ReportKey } from "../../../texts/say.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import type { SealedRecord } from "../../records/record-views.ts";
import type { ReportFacts } from "../report-facts.ts";
import { claimed, nameOfParty } from "../report-words.ts";
import { recordingBlocks } from "./recordings.ts";
import { parcelWords } from "./records.ts";

export function transit(report: ReportFacts): Section {
	const { speaker } = report;
	const { say } = speaker;
	return {
		title: say("report.transit"),
		blocks: [
			...report.legs.flatMap(({ leg, found, recordings }): Block[] => [
				subheading(legTitle(report, leg)),
				facts([...legFacts(leg, found.arrival, speaker), ...parcelFacts(found.arrival, speaker)]),
				...recordingBlocks(report.order, report.line.spans, recordings, speaker),
			]),
		],
	};
}

export function legTitle({ order, speaker }: ReportFacts, leg: ConsignmentView): string {
	const from = nameOfParty(order, leg.consignorId);
	return speaker.say("report.transit-leg", { leg: leg.leg, from, to: nameOfParty(order, leg.consigneeId) });
}

/** As noted on the order, else as the arrival record says. */
export function legFacts(
	{ facts: noted }: ConsignmentView,
	arrival: SealedRecord | null,
	speaker: Speaker,
): (readonly [string, string])[] {
	const { say, showTime } = speaker;
	const parcel = arrival?.statement.parcel;
	const time = (at: string | undefined, said?: Parameters<typeof claimed>[0]) =>
		at === undefined ? (said === undefined ? null : claimed(said, speaker)) : showTime(at);
	const manner = noted.manner ?? parcel?.manner;
	const rows: readonly (readonly [ReportKey, string | null])[] = [
		["report.transit-carrier", [noted.carrier, noted.service].filter((part) => part !== undefined).join(", ") || null],
		["report.transit-tracking", noted.trackingNumber ?? null],
		["report.transit-dispatched", time(noted.dispatchedAt)],
		["report.transit-delivered", time(noted.deliveredAt, parcel?.delivered)],
		["report.transit-in-hand", time(noted.inHandAt, parcel?.inHand)],
		["report.transit-manner", manner === undefined ? null : say(`arrival.manner.${manner}` as ReportKey)],
	];
	return rows.map(([key, value]) => [say(key), value ?? say("report.transit-not-noted")]);
}

function parcelFacts(arrival: SealedRecord | null, speaker: Speaker): (readonly [string, string])[] {
	const words = arrival === null ? "" : parcelWords(arrival.statement, speaker);
	return words === "" ? [] : [[speaker.say("report.record-parcel"), words]];
}
