/** The exhibits by number, the sources with their standing, and how to verify. */
import type { Source } from "../../../calculations/sources.ts";
import { facts, paragraph, quoted, type Section, subheading, table } from "../../../reports/report.ts";
import { isReportKey, type ReportKey } from "../../../texts/say.ts";
import type { Speaker } from "../../../texts/speaker.ts";
import { isTested } from "../../comparison/is-tested.ts";
import { rowName } from "../../comparison/lead-screen.ts";
import type { FileHandOut } from "../../pictures/hand-out.ts";
import type { Naming } from "../numbered-exhibits.ts";
import type { ReportFacts, ReportLeg } from "../report-facts.ts";
import { titleOf } from "../report-words.ts";
import { legTitle } from "./transit.ts";

export function exhibits({ exhibits: all, handOuts, order, speaker }: ReportFacts): Section {
	const { say } = speaker;
	const head = (["number", "what", "file", "hash"] as const).map((name) => say(`report.exhibits-${name}`));
	const rows = all.map(({ number, mediaType, sizeBytes, sha256, namings }) => [
		number,
		namingWords(namings, order, speaker),
		say("report.exhibits-size", { type: mediaType, size: sizeWords(sizeBytes, speaker) }),
		[twoLines(sha256), ...handOutWords(handOuts.get(sha256), speaker)].join("\n"),
	]);
	return {
		title: say("report.exhibits"),
		blocks:
			rows.length === 0
				? [paragraph(say("report.exhibits-none"))]
				: [paragraph(say("report.exhibits-text")), table(head, [1, 4.5, 2.8, 6], rows)],
	};
}

/** What the records say of a file, the same words once; and that it is one file where several name it. */
function namingWords(namings: readonly Naming[], order: ReportFacts["order"], speaker: Speaker): string {
	const { say, between, colon } = speaker;
	const byWords = new Map<string, string[]>();
	for (const { view, note, record } of namings) {
		const key = `arrival.view.${view}`;
		const words = [isReportKey(key) ? say(key) : view, ...(note === null ? [] : [note])].join(colon);
		byWords.set(words, [...(byWords.get(words) ?? []), titleOf(order, record, speaker)]);
	}
	const records = new Set(namings.map(({ record }) => record.view.id));
	return [
		...[...byWords].map(([view, titles]) =>
			say("report.exhibits-of", { view, record: [...new Set(titles)].join(between) }),
		),
		...(records.size > 1 ? [say("report.exhibits-same", { count: records.size })] : []),
	].join("\n");
}

/** What others get where it is not the original. */
function handOutWords(found: FileHandOut | undefined, { say }: Speaker): string[] {
	if (found === undefined || found.use.stored_sha256 === null) return [];
	const { others, takers } = found;
	if (others.form === "original") return [];
	const said = say(`report.exhibits-others.${others.form}`, { who: say(`report.exhibits-with.${holderOf(takers)}`) });
	return [said, ...("copy" in others ? [twoLines(others.copy.sha256)] : [])];
}

/** Several may have brought the same bytes. */
export function holderOf(takers: readonly string[]): "shop" | "party" | "several" {
	if (takers.length > 1) return "several";
	return takers[0] === "shop" ? "shop" : "party";
}

function twoLines(sha256: string): string {
	return `${sha256.slice(0, 32)}\n${sha256.slice(32)}`;
}

function sizeWords(bytes: number, { writeDigits }: Speaker): string {
	return bytes < 1e6 ? `${Math.ceil(bytes / 1e3)} kB` : `${writeDigits((bytes / 1e6).toFixed(1))} MB`;
}

/** The rule and the figures of each compared check. */
export function method(report: ReportFacts): Section {
	const { say } = report.speaker;
	const head = [say("report.column-check"), say("report.method-rule"), say("report.method-numbers")];
	return {
		title: say("report.method"),
		blocks: [
			paragraph(say("report.method-text")),
			...report.legs.flatMap((leg) => {
				const rows = methodRows(leg, report.speaker);
				return rows.length === 0 ? [] : [subheading(legTitle(report, leg.leg)), table(head, [4, 5, 4], rows)];
			}),
		],
	};
}

function methodRows({ found }: ReportLeg, speaker: Speaker): string[][] {
	const { say, writeNumber, between } = speaker;
	return found.comparison.rows.flatMap((row) => {
		const { comparison, check } = row;
		if (comparison.status !== "assessed" || (!isTested(row.departure) && !isTested(row.arrival))) return [];
		const { pValue, expandedUncertainty, enNumber } = comparison.result;
		const { kind, comparability, betterIs } = check;
		const numbers = [
			...(expandedUncertainty === null ? [] : [say("report.method-u", { u: expandedUncertainty })]),
			...(enNumber === null ? [] : [say("report.method-en", { en: enNumber })]),
			...(pValue === null ? [] : [say("report.method-p", { p: writeNumber(pValue) })]),
		];
		const rule = say("report.method-rule-of", {
			kind: say(`report.method-kind.${kind}` as ReportKey),
			comparability: say(`report.method-comparability.${comparability}` as ReportKey),
			better: say(`report.method-better.${betterIs}` as ReportKey),
		});
		return [[rowName(row, speaker), rule, numbers.join(between) || "–"]];
	});
}

export function sources({ legs, speaker }: ReportFacts): Section {
	const { say, language } = speaker;
	const all = legs.flatMap(({ found, view, packs }): Source[] => [
		...found.comparison.rows.flatMap(({ comparison }) => comparison.sources),
		...((view.origin?.sources ?? []) as readonly Source[]),
		...packs.flatMap(({ statement }) => (statement.sources ?? []) as unknown as readonly Source[]),
	]);
	const unique = new Map(all.map((source) => [`${source.id} ${source.locator} ${source.standing}`, source]));
	const head = (["document", "place", "standing"] as const).map((name) => say(`report.sources-${name}`));
	const rows = [...unique.values()]
		.sort((a, b) => a.document.localeCompare(b.document, "en") || a.locator.localeCompare(b.locator, "en"))
		.map(({ id, document, locator, standing }) => {
			const own = `report.sources-own.${id}`;
			const title = isReportKey(own) ? say(own) : quoted(document, "en");
			return [title, quoted(locator, "en"), say(`pack.standing.${standing}` as ReportKey)];
		});
	const original = language === "en" ? [] : [paragraph(say("report.sources-original"), "small")];
	return {
		title: say("report.sources"),
		blocks: rows.length === 0 ? [paragraph(say("report.none"))] : [...original, table(head, [6, 4, 2], rows)],
	};
}

export function howToVerify({ checkpoint, root, keys, speaker }: ReportFacts): Section {
	const { say } = speaker;
	return {
		title: say("report.verify"),
		blocks: [
			paragraph(say("report.verify-text")),
			facts([
				[say("report.verify-size"), String(checkpoint.size)],
				[say("report.verify-root"), root],
				...keys.map(({ publicKey }) => [say("report.verify-key"), publicKey] as const),
			]),
		],
	};
}
