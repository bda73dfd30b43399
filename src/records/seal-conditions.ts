/** What a draft must say before it may be sealed. */
import { toReadingUnit } from "../calculations/quantities.ts";
import { ITEM_CLASSES } from "../catalogue/codes.ts";
import { type NotedTimes, timeShortcomings } from "./claimed-times.ts";
import type { RecordContent } from "./record-content.ts";
import type { RecordHeader } from "./record-statement.ts";
import type { Shortcoming } from "./shortcoming.ts";

/** Most of a parcel, in kg: the same as of a leg's facts. Our choice, far above what parcel carriers take. */
const PARCEL_MOST_KG = 1000;

/** A content that says everything that sealing asks for. */
export type SealableContent = RecordContent & Required<Pick<RecordContent, "observedAt" | "state">>;

/**
 * All shortcomings of a draft at once; none when it may be sealed. Checks that were not entered are no shortcoming:
 * sealing records them as not tested.
 */
export function shortcomings(
	header: Pick<RecordHeader, "stage" | "provenance" | "itemClass">,
	content: RecordContent,
	known: {
		readonly checkIds: ReadonlySet<string>;
		readonly instrumentIds: ReadonlySet<string>;
		readonly exhibitSha256s: ReadonlySet<string>;
		readonly times: NotedTimes;
	},
	now: Date,
): Shortcoming[] {
	const found: Shortcoming[] = [];
	const add = (path: string, code: string) => found.push({ path, code });
	if (!ITEM_CLASSES.includes(header.itemClass)) add("/itemClass", "unknown-class");

	if (content.observedAt === undefined) add("/observedAt", "missing");
	if (content.state === undefined) add("/state", "missing");
	const { serialNumber, marks } = content.identity ?? {};
	if (serialNumber === undefined && (marks ?? []).length === 0) add("/identity/serialNumber", "no-identity");

	if (header.provenance === "reported-to") {
		for (const name of ["words", "channel", "receivedAt"] as const) {
			if (content.reported?.[name] === undefined) add(`/reported/${name}`, "missing");
		}
	}
	if (header.provenance !== "reported-to" && content.reported !== undefined) add("/reported", "not-a-report");
	const mass = content.parcel?.mass;
	if (mass !== undefined) {
		const { value, unit } = toReadingUnit(mass.value, mass.unit);
		if (unit !== "kg" || !(value > 0)) add("/parcel/mass", "not-a-mass");
		else if (!(value <= PARCEL_MOST_KG)) add("/parcel/mass", "parcel-too-heavy");
	}
	const temperature = content.parcel?.temperature;
	if (temperature !== undefined && toReadingUnit(temperature.value, temperature.unit).unit !== "degC") {
		add("/parcel/temperature", "not-a-temperature");
	}
	found.push(...timeShortcomings(content, known.times, now));

	const seen = new Set<string>();
	(content.readings ?? []).forEach((reading, index) => {
		const path = `/readings/${index}`;
		if (!known.checkIds.has(reading.check) && reading.definition === undefined) add(`${path}/check`, "unknown-check");
		const key = `${reading.check} ${reading.condition ?? "unknown"}`;
		if (seen.has(key)) add(`${path}/check`, "twice");
		seen.add(key);
		if (reading.instrumentId !== undefined && !known.instrumentIds.has(reading.instrumentId)) {
			add(`${path}/instrumentId`, "unknown-id");
		}
		if (reading.importSha256 !== undefined && !known.exhibitSha256s.has(reading.importSha256)) {
			add(`${path}/importSha256`, "unknown-exhibit");
		}
	});
	(content.exhibits ?? []).forEach((exhibit, index) => {
		if (!known.exhibitSha256s.has(exhibit.sha256)) add(`/exhibits/${index}/sha256`, "unknown-exhibit");
	});
	return found;
}
