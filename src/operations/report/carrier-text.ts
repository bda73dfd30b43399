/**
 * The carrier's edition as plain text for a web form: its facts in short lines, each with a number. It is made from the
 * sections of that edition, so it can hold nothing that they leave out.
 */
import { type Block, plainWords } from "../../reports/report.ts";
import { unisolated } from "../../texts/isolated.ts";
import { isReportKey } from "../../texts/say.ts";
import type { Speaker } from "../../texts/speaker.ts";
import type { ReportFacts } from "./report-facts.ts";
import { carrierSections } from "./sections/carrier.ts";
import { legTitle } from "./sections/transit.ts";

/** So that a mail program or a form need not break a line. */
const LINE_LETTERS = 72;
/** The shortest part that can be asked for: longer than any title with its order. */
export const LEAST_PART = 400;

/** The text in parts of at most `most` characters (UTF-16, as forms count; a line's end is one); one part without a limit. */
export function carrierText(report: ReportFacts, most: number = Number.POSITIVE_INFINITY): string[] {
	if (!(most >= LEAST_PART)) throw new Error(`a part of ${most} characters is too short`);
	const { say } = report.speaker;
	const head = [
		...wrapped(say("report.carrier-text-title")),
		...report.legs.flatMap(({ leg }) => wrapped(legTitle(report, leg))),
		say("report.carrier-text-order", { order: report.order.id, size: String(report.checkpoint.size) }),
	].join("\n");
	const paragraphs = paragraphsOf(report);
	const whole = [head, ...paragraphs].join("\n\n");
	return whole.length <= most ? [whole] : numberedParts(head, paragraphs, most, report.speaker);
}

/** One paragraph per section: its title, its facts numbered through the whole text. */
function paragraphsOf(report: ReportFacts): string[] {
	const { say, colon } = report.speaker;
	let number = 0;
	const sections = [
		...carrierSections(report).map(({ title, blocks }) => ({
			title,
			said: blocks.flatMap((block) => factsOf(block, colon)),
		})),
		{ title: say("report.carrier-text-photos"), said: photosOf(report) },
	];
	return sections
		.filter(({ said }) => said.length > 0)
		.map(({ title, said }) => {
			const lines = said.flatMap((fact) => {
				number += 1;
				return wrapped(`${number}. ${fact}`, "   ");
			});
			return [...wrapped(title), ...lines].join("\n");
		});
}

function factsOf(block: Block, colon: string): string[] {
	switch (block.kind) {
		case "facts":
			return block.rows.map(([name, value]) => `${name}${colon}${plainWords(value)}`);
		case "list":
			return [...block.items];
		case "paragraph":
			return block.tone === "small" ? [] : [block.text];
		// The leg's title, which stands at the head.
		case "subheading":
			return [];
		case "table":
		case "figure":
			throw new Error(`a ${block.kind} has no plain text`);
	}
}

function photosOf({ exhibits, speaker: { say } }: ReportFacts): string[] {
	return exhibits.map(({ number, view }) => {
		const key = `arrival.view.${view}`;
		return `[${number}] ${isReportKey(key) ? say(key) : view}`;
	});
}

/** Lines are never torn: where a part is full the next begins, each saying which it is. */
function numberedParts(head: string, paragraphs: readonly string[], most: number, { say }: Speaker): string[] {
	const lines = [...head.split("\n"), ...paragraphs.flatMap((paragraph) => ["", ...paragraph.split("\n")])];
	// Room for "Part 10 of 12" and its line's end.
	const room = most - say("report.carrier-text-part", { part: 999, parts: 999 }).length - 1;
	const parts: string[][] = [[]];
	let size = 0;
	for (const line of lines) {
		if (size + line.length + 1 > room) {
			parts.push([]);
			size = 0;
		}
		if (size === 0 && line === "") continue;
		parts.at(-1)?.push(line);
		size += line.length + 1;
	}
	return parts.map((part, index) =>
		[say("report.carrier-text-part", { part: index + 1, parts: parts.length }), ...part].join("\n"),
	);
}

/** Broken at spaces; a word that is longer than a line is broken inside. A form need not know marks of direction. */
function wrapped(text: string, indent = ""): string[] {
	const lines: string[] = [];
	let line = "";
	const room = () => LINE_LETTERS - (lines.length === 0 ? 0 : indent.length);
	const end = () => {
		lines.push(`${lines.length === 0 ? "" : indent}${line}`);
		line = "";
	};
	for (const word of unisolated(text)
		.split(/\s+/)
		.filter((one) => one !== "")) {
		if (line !== "" && line.length + 1 + word.length > room()) end();
		let rest = line === "" ? word : ` ${word}`;
		while (line.length + rest.length > room()) {
			line += rest.slice(0, room() - line.length);
			rest = rest.slice(room() - line.length);
			end();
		}
		line += rest;
	}
	if (line !== "") end();
	return lines;
}
