/**
 * What a board that did not start on one computer leaves open. `did not start on this platform` is a fact about both;
 * only what was tried excludes anything. Common practice.
 */
import type { PowerFacts } from "../../operations/records/power-stop.ts";
import type { TextKey } from "../../texts/say.ts";

/** The parts of a record, drafted or sealed, that the finding rests on. */
export interface PlatformFacts extends PowerFacts {
	readonly state?: string | undefined;
	readonly setUp?:
		| {
				readonly platforms?: number | undefined;
				readonly controlBefore?: boolean | undefined;
				readonly controlAfter?: boolean | undefined;
		  }
		| undefined;
}

export interface PlatformFinding {
	readonly platforms: number;
	readonly excluded: readonly TextKey[];
	readonly open: readonly TextKey[];
}

/** The finding; null unless the state says that it does not start. */
export function platformFinding(content: PlatformFacts): PlatformFinding | null {
	if (content.state !== "does-not-start") return null;
	const { controlBefore, controlAfter, platforms = 1 } = content.setUp ?? {};
	const excluded: TextKey[] = [];
	const open: TextKey[] = [];
	if (controlBefore === true)
		excluded.push("arrival.cause.supply-as-far", "arrival.cause.slot", "arrival.cause.screen");
	else open.push("arrival.cause.supply", "arrival.cause.slot", "arrival.cause.screen");
	(controlAfter === true ? excluded : open).push("arrival.cause.computer-since");
	open.push("arrival.cause.seating");
	(platforms >= 2 ? excluded : open).push("arrival.cause.firmware");
	open.push("arrival.cause.item");
	return { platforms, excluded, open };
}
