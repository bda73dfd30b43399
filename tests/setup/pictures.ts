/** Pictures for tests: made here, with time, device and place as cameras write them (Exif, CIPA DC-008) by libexif inside sharp. */
import { crc32, deflateSync } from "node:zlib";
import ExifReader from "exifreader";
import sharp from "sharp";

/** Stands in no picture but in the planted metadata. */
export const PLANTED_MAKER = "Lumvarda";
export const PLANTED_MODEL = "Kestrelo 7";

const EXIF = {
	IFD0: { Make: PLANTED_MAKER, Model: PLANTED_MODEL },
	IFD2: { DateTimeOriginal: "2026:05:02 10:11:12", OffsetTimeOriginal: "+02:00" },
	IFD3: {
		GPSLatitudeRef: "N",
		GPSLatitude: "48/1 12/1 30/1",
		GPSLongitudeRef: "E",
		GPSLongitude: "16/1 22/1 0/1",
	},
};

/** Left half red, right half blue, so that turning and covering is seen. */
function halves(width: number, height: number) {
	const right = { create: { width: width / 2, height, channels: 3 as const, background: "blue" } };
	return sharp({ create: { width, height, channels: 3, background: "red" } }).composite([
		{ input: right, left: width / 2, top: 0 },
	]);
}

/** A picture with metadata. */
export function located(format: "jpeg" | "png" | "webp", width = 400, height = 200): Promise<Buffer> {
	return halves(width, height).withExif(EXIF).toFormat(format).toBuffer();
}

/** Stored lying on its side, as phones do: orientation 6 means to turn it by 90° clockwise. */
export function turned(): Promise<Buffer> {
	return halves(400, 200).withMetadata({ orientation: 6 }).jpeg().toBuffer();
}

/** Noise hardly compresses: some 3.5 MB. */
export function large(): Promise<Buffer> {
	const noise = { type: "gaussian" as const, mean: 128, sigma: 40 };
	return sharp({ create: { width: 2400, height: 1800, channels: 3, background: "gray", noise } })
		.withExif(EXIF)
		.jpeg({ quality: 93 })
		.toBuffer();
}

/** PNG (ISO/IEC 15948) of 900 million white pixels of one bit, in some 110 kB. */
export function bomb(): Buffer {
	const chunk = (type: string, data: Buffer) => {
		const named = Buffer.concat([Buffer.from(type, "latin1"), data]);
		const [size, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
		size.writeUInt32BE(data.length);
		sum.writeUInt32BE(crc32(named));
		return Buffer.concat([size, named, sum]);
	};
	const side = 30_000;
	const head = Buffer.alloc(13);
	head.writeUInt32BE(side, 0);
	head.writeUInt32BE(side, 4);
	// One bit, greyscale.
	head[8] = 1;
	const rows = deflateSync(Buffer.alloc((1 + side / 8) * side), { level: 1 });
	const signature = Buffer.from("89504e470d0a1a0a", "hex");
	return Buffer.concat([signature, chunk("IHDR", head), chunk("IDAT", rows), chunk("IEND", Buffer.alloc(0))]);
}

/** What of the planted metadata is in some bytes: read as Exif, and looked for byte by byte. */
export function leaksOf(bytes: Buffer): string[] {
	const found: string[] = [];
	for (const text of [PLANTED_MAKER, PLANTED_MODEL, "2026:05:02", "Exif\0\0", "GPSLatitude", "eXIf"]) {
		if (bytes.includes(text)) found.push(text);
	}
	try {
		const { exif, gps } = ExifReader.load(bytes, { expanded: true });
		if (gps !== undefined) found.push("gps");
		found.push(...Object.keys(exif ?? {}));
	} catch {
		// Not a picture, or one without metadata.
	}
	return found;
}

/** ISO BMFF (ISO/IEC 14496-12) boxes with the place that phones write, `©xyz`, in `moov/udta`: a film's head. */
export function locatedFilm(): Buffer {
	const box = (type: string, ...parts: Buffer[]) => {
		const body = Buffer.concat(parts);
		const head = Buffer.alloc(8);
		head.writeUInt32BE(body.length + 8);
		head.write(type, 4, "latin1");
		return Buffer.concat([head, body]);
	};
	const place = Buffer.from("\u0000\u0012\u0015\u00c7+48.2083+016.3667/", "latin1");
	return Buffer.concat([
		box("ftyp", Buffer.from("isom\u0000\u0000\u0002\u0000isomiso2mp41", "latin1")),
		box("moov", box("udta", box("\u00a9xyz", place))),
		box("mdat", Buffer.alloc(64)),
	]);
}
