/**
 * What a board that did not start on one computer leaves open. `did not start on this platform` is a fact about both;
 * only what was tried excludes anything. Common practice.
 */
import type { RecordContentInput } from "../../contract/records.ts";
import type { TextKey } from "../../texts/say.ts";

export interface PlatformFinding {
	readonly platforms: number;
	readonly excluded: readonly TextKey[];
	readonly open: readonly TextKey[];
}

/** The finding; null unless the state says that it does not start. */
export function platformFinding(content: RecordContentInput): PlatformFinding | null {
	if (content.state !== "does-not-start") return null;
	const { controlBefore, controlAfter, platforms = 1 } = content.setUp ?? {};
	const withControl: TextKey[] = ["arrival.cause.supply", "arrival.cause.slot", "arrival.cause.screen"];
	const excluded: TextKey[] = [];
	const open: TextKey[] = [];
	(controlBefore === true ? excluded : open).push(...withControl);
	(controlAfter === true ? excluded : open).push("arrival.cause.computer-since");
	open.push("arrival.cause.seating");
	(platforms >= 2 ? excluded : open).push("arrival.cause.firmware");
	open.push("arrival.cause.item");
	return { platforms, excluded, open };
}
