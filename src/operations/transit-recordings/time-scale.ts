/** Hours, minutes or seconds, by how long something lasted. */
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";

const SCALES = [
	{ key: "hours", seconds: 3600, from: 2 * 3600 },
	{ key: "minutes", seconds: 60, from: 120 },
	{ key: "seconds", seconds: 1, from: 0 },
] as const;

export function timeScale(lengthS: number): (typeof SCALES)[number] {
	return SCALES.find(({ from }) => lengthS >= from) ?? SCALES[2];
}

/** To three digits: `4.25 h`. */
export function lasting(lengthS: number, { say, writeNumber }: Speaker = ENGLISH): string {
	const { key, seconds } = timeScale(lengthS);
	return say(`recording.lasting-${key}`, { value: writeNumber(Number((lengthS / seconds).toPrecision(3))) });
}

/** To the second, since two impacts may follow each other closely. */
export function showSecond(at: string, { say, showTime }: Speaker = ENGLISH): string {
	return say("recording.at", {
		day: showTime(at).split(",")[0] ?? "",
		clock: new Date(at).toISOString().slice(11, 19),
	});
}
