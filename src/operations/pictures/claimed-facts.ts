/**
 * What a picture's file claims of itself: time and device as Exif has them (CIPA DC-008, tags DateTimeOriginal,
 * OffsetTimeOriginal, Make, Model), and whether it holds a place (GPS tags, or the same in XMP). Anyone can write these.
 */
import ExifReader from "exifreader";
import type { ClaimedFacts } from "../../database/pictures.ts";

export const NOTHING_CLAIMED: ClaimedFacts = { time: null, offset: null, device: null, hasPlace: false };

const LONGEST_DEVICE = 100;

/** Bytes without metadata, or with metadata that cannot be read, claim nothing. */
export function claimedFacts(bytes: Buffer): ClaimedFacts {
	try {
		const { exif, gps, xmp } = ExifReader.load(bytes, { expanded: true });
		const named = Object.keys({ ...exif, ...xmp });
		return {
			time: timeOf(exif?.DateTimeOriginal?.description ?? exif?.DateTime?.description),
			offset: offsetOf(exif?.OffsetTimeOriginal?.description ?? exif?.OffsetTime?.description),
			device: deviceOf(exif?.Make?.description, exif?.Model?.description),
			hasPlace: gps !== undefined || named.some((name) => name.startsWith("GPS")) || bytes.includes("GPSLatitude"),
		};
	} catch {
		return { ...NOTHING_CLAIMED, hasPlace: bytes.includes("GPSLatitude") };
	}
}

/** `2026:05:02 10:11:12` in Exif. */
function timeOf(text: string | undefined): string | null {
	const parts = /^(\d{4})[:-](\d\d)[:-](\d\d)[ T](\d\d):(\d\d):(\d\d)/.exec(text ?? "");
	if (parts === null) return null;
	const [, year, month, day, hour, minute, second] = parts;
	const time = `${year}-${month}-${day}T${hour}:${minute}:${second}`;
	return Number.isNaN(Date.parse(`${time}Z`)) ? null : time;
}

function offsetOf(text: string | undefined): string | null {
	return /^[+-]([01]\d):[0-5]\d/.exec(text ?? "")?.[0] ?? null;
}

function deviceOf(maker: string | undefined, model: string | undefined): string | null {
	const [first, second] = [wordsOf(maker), wordsOf(model)];
	// Many models begin with their maker's name.
	const device = second.startsWith(first) ? second : `${first} ${second}`;
	return device.trim().slice(0, LONGEST_DEVICE).toWellFormed() || null;
}

function wordsOf(text: string | undefined): string {
	return (text ?? "").replaceAll(/\p{C}/gu, "").trim();
}
