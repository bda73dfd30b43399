/** Reads one recorder's table in pieces and prints how long it took and the most memory that the process held. */
import { closeSync, openSync, readSync } from "node:fs";
import type { RecordingReading } from "../../src/contract/transit-recordings.ts";
import { readRecording } from "../../src/operations/transit-recordings/read-recording.ts";

const READING: RecordingReading = {
	place: "on-item",
	device: "recorder",
	unitsConfirmed: true,
	mapping: {
		time: { column: 1, unit: "s" },
		axes: [
			{ column: 2, unit: "Gn" },
			{ column: 3, unit: "Gn" },
			{ column: 4, unit: "Gn" },
		],
		temperature: { column: 5, unit: "degC" },
	},
};

function* pieces(path: string): Generator<Uint8Array> {
	const file = openSync(path, "r");
	const buffer = Buffer.alloc(64 * 1024);
	for (let length = readSync(file, buffer); length > 0; length = readSync(file, buffer))
		yield buffer.subarray(0, length);
	closeSync(file);
}

const begun = performance.now();
const { trip } = readRecording(pieces(process.argv[2] ?? ""), ",", READING);
const seconds = (performance.now() - begun) / 1000;
const peakMb = process.resourceUsage().maxRSS / 1024;
console.log(JSON.stringify({ seconds, peakMb, events: trip.eventsFound }));
