/** A record that was sealed long after its holder says that it was seen: told as a plain fact, on pages and in reports. */
import type { ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";

/** Sealed later than this, it is told. Our choice; the words name it. */
export const LATE_AFTER_H = 24;
const DAY_H = 24;

export interface SeenAndSealed {
	readonly seenAt: string;
	readonly sealedAt: string | Date;
}

export function isSealedLate(one: SeenAndSealed): boolean {
	return hoursBetween(one) > LATE_AFTER_H;
}

/** `sealed 12 days after it was seen`; null where that is no longer than a day. In whole hours below two days. */
export function sealedLateWords(one: SeenAndSealed, { say }: Speaker = ENGLISH): string | null {
	if (!isSealedLate(one)) return null;
	const hours = hoursBetween(one);
	const [unit, count] = hours < 2 * DAY_H ? ["hours", Math.floor(hours)] : ["days", Math.floor(hours / DAY_H)];
	return say(`spine.late-${unit}` as ReportKey, { count });
}

/** What a seal proves that came so late. */
export function lateSealNote({ say }: Speaker = ENGLISH): string {
	return say("spine.late-note", { hours: LATE_AFTER_H });
}

function hoursBetween({ seenAt, sealedAt }: SeenAndSealed): number {
	return (new Date(sealedAt).getTime() - Date.parse(seenAt)) / 3_600_000;
}
