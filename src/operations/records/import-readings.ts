/** Takes what an importer read into the content of a draft. What a person typed stays as typed. Pure. */

import type { ItemClass } from "../../catalogue/codes.ts";
import type { RecordContentInput } from "../../contract/records.ts";
import type { ImportedLink, ImportedReading, ImportResult } from "../../importers/import-result.ts";

type Reading = NonNullable<RecordContentInput["readings"]>[number];
type TypedUnit = NonNullable<Reading["values"]>[number]["unit"];

/** What the draft takes from a file. */
export interface TakenImport {
	readonly content: RecordContentInput;
	/** Check ids of the readings taken. */
	readonly taken: readonly string[];
	/** Identity members in which the file says something else than the draft. */
	readonly identityDiffers: readonly string[];
}

/**
 * Only a file about one device is taken: which one of several is meant is not guessed. Of its readings those are taken
 * whose check is in the item's catalogue, and each of them once: a temperature, a power, the link at the slowest point
 * of its path. The link's limit is the card's own capability, which the reading carries where the path was seen. An
 * error counter without the time over which it counted is shown in the preview and not taken.
 */
export function takeImport(
	content: RecordContentInput,
	result: ImportResult,
	sha256: string,
	checkIds: ReadonlySet<string>,
	itemClass: ItemClass,
): TakenImport {
	const [link] = result.links;
	const wanted = result.readings.filter((reading) => checkIds.has(reading.check));
	const single = new Set(wanted.map((reading) => reading.subject.split(" ")[0])).size <= 1;
	if (!single || result.links.length > 1)
		return { content: withExhibit(content, sha256), taken: [], identityDiffers: [] };
	const common = { provenance: "imported", importSha256: sha256 } as const;
	const plain = wanted.flatMap((reading): Reading[] => {
		if (reading.value === null || LINK_CHECKS.includes(reading.check)) return [];
		if (!TAKEN_UNITS.includes(reading.unit)) return [];
		// A drive's counters and its temperature stand at no load in particular.
		const condition = reading.check.startsWith("smart-") ? "unknown" : reading.condition;
		if (OUTCOMES.includes(reading.check))
			return [{ check: reading.check, condition, trials: 1, successes: reading.value, ...common }];
		const value = { value: reading.value, unit: reading.unit as TypedUnit };
		return [{ check: reading.check, condition, values: [value], ...ownLimit(reading, result), ...common }];
	});
	const found = onlyOnes([...plain, ...(link === undefined ? [] : linkReadings(link, common))]).filter((reading) =>
		checkIds.has(reading.check),
	);
	const typed = (content.readings ?? []).filter((reading) => reading.importSha256 === undefined);
	const isTyped = (reading: Reading) =>
		typed.some((other) => other.check === reading.check && other.condition === reading.condition);
	const taken = found.filter((reading) => !isTyped(reading));
	const kept = (content.readings ?? []).filter(
		(reading) => !taken.some((other) => other.check === reading.check && other.condition === reading.condition),
	);
	const { identity, differs } = mergeIdentity(
		content.identity ?? {},
		NAMED_BY[result.about].includes(itemClass) ? result.identity : {},
	);
	return {
		content: {
			...withExhibit(content, sha256),
			...(Object.keys(identity).length === 0 ? {} : { identity }),
			...(kept.length + taken.length === 0 ? {} : { readings: [...kept, ...taken] }),
			...(link === undefined ? {} : { link: mergeLink(content.link, link) }),
			...(result.identity.driver === undefined || content.setUp?.driver !== undefined
				? {}
				: { setUp: { ...content.setUp, driver: result.identity.driver } }),
		},
		taken: taken.map((reading) => reading.check),
		identityDiffers: differs,
	};
}

const LINK_CHECKS = ["link-width", "link-speed"];
const TAKEN_UNITS = ["degC", "W", "percent", "rpm", "h", "one"];
/** What a drive says of itself: 1 of 1 or 0 of 1. */
const OUTCOMES = ["smart-self-assessment", "smart-self-test"];
/** Item classes whose names a file can give. Any file names a module: it may be anything. */
const NAMED_BY: Readonly<Record<ImportResult["about"], readonly ItemClass[]>> = {
	graphics: ["graphics-card", "module"],
	board: ["mainboard", "laptop-mainboard", "console-mainboard", "module"],
	drive: ["drive", "module"],
	any: [],
};

/** A check that the file answers once. Where it gives two values, which of them is meant is not guessed. */
function onlyOnes(readings: readonly Reading[]): Reading[] {
	return readings.filter(
		(reading) =>
			readings.filter((other) => other.check === reading.check && other.condition === reading.condition).length === 1,
	);
}

/** The card's own limit of its core temperature: the lowest of those that it names. */
function ownLimit(reading: ImportedReading, result: ImportResult): Pick<Reading, "limitHigh"> {
	if (reading.check !== "temperature-core") return {};
	const limits = result.readings.flatMap((other) =>
		/^temperature-core-(highest|slowdown|shutdown)$/.test(other.check) && other.value !== null ? [other.value] : [],
	);
	return limits.length === 0 ? {} : { limitHigh: Math.min(...limits) };
}
const IDENTITY_MEMBERS = ["serialNumber", "uuid", "firmware", "model"] as const;

/** The link at the slowest point of what the file shows. */
function linkReadings(link: ImportedLink, common: Pick<Reading, "provenance" | "importSha256">): Reading[] {
	const points = [link.function, ...(link.upstreamPath ?? [])];
	// All ones: the device was gone; the judgement of the link says so, and there is no number to compare.
	if (points.some((point) => point.width === 63 || point.speedGTPerS === 0)) return [];
	const pathSeen = link.upstreamPath !== null;
	const reading = (check: string, unit: TypedUnit, value: number, capability: number): Reading => ({
		check,
		condition: link.condition,
		values: [{ value, unit }],
		...(pathSeen ? { limitLow: capability } : {}),
		...common,
	});
	return [
		reading("link-width", "lanes", Math.min(...points.map((point) => point.width)), link.card.width),
		reading("link-speed", "GT/s", Math.min(...points.map((point) => point.speedGTPerS)), link.card.speedGTPerS),
	];
}

/** What is known of the link from this file and from one taken before under another condition. */
function mergeLink(before: RecordContentInput["link"], link: ImportedLink): NonNullable<RecordContentInput["link"]> {
	const kept = before ?? { card: link.card };
	const slot = link.slot === null ? {} : { slot: link.slot };
	if (link.condition === "idle") return { ...kept, ...slot, idle: link.function };
	if (link.condition === "unknown") return { ...kept, ...slot };
	return {
		...kept,
		...slot,
		card: link.card,
		function: link.function,
		...(link.upstreamPath === null ? {} : { upstreamPath: [...link.upstreamPath] }),
	};
}

function mergeIdentity(
	typed: NonNullable<RecordContentInput["identity"]>,
	imported: Readonly<Record<string, string>>,
): { identity: NonNullable<RecordContentInput["identity"]>; differs: string[] } {
	const differs: string[] = [];
	const added: Record<string, string> = {};
	for (const member of IDENTITY_MEMBERS) {
		const value = imported[member];
		if (value === undefined) continue;
		if (typed[member] === undefined) added[member] = value;
		else if (typed[member] !== value) differs.push(member);
	}
	return { identity: { ...typed, ...added }, differs };
}

function withExhibit(content: RecordContentInput, sha256: string): RecordContentInput {
	const exhibits = content.exhibits ?? [];
	if (exhibits.some((exhibit) => exhibit.sha256 === sha256 && exhibit.view === "diagnostic-output")) return content;
	return { ...content, exhibits: [...exhibits, { sha256, view: "diagnostic-output" as const }] };
}
