/**
 * Reads one picture in a process of its own. Decoders of pictures are large and meet what strangers send: here they have
 * neither the service's memory nor its keys, and what goes wrong in them ends this process alone.
 */
import sharp, { type Sharp } from "sharp";
import type { PictureRefusal } from "../../database/pictures.ts";
import { claimedFacts } from "./claimed-facts.ts";
import { framed, type PictureAnswer, type PictureTask, type Rectangle } from "./picture-task.ts";

/** Our choice: above the cameras that people carry, 120 million. */
const MOST_PIXELS = 120_000_000;
/** Our choice: a small board's markings stay readable at this quality. */
const COPY_QUALITY = 90;
/** Our choice: sharp on a phone where it is shown 8 rem wide. */
const THUMBNAIL = { width: 480, height: 480, quality: 75 };
/** Tried one after the other until a copy fits; then each size again, smaller. Our choice. */
const FIT_QUALITIES = [85, 75, 65];
const FIT_STEP = 0.8;
/** A picture of this width is small enough for any limit here. */
const FIT_LEAST_PIXELS = 200;

/** What libvips calls the formats that are taken. */
const FORMATS: Readonly<Record<string, string>> = {
	"image/jpeg": "jpeg",
	"image/png": "png",
	"image/webp": "webp",
	"image/heic": "heif",
	"image/heif": "heif",
};

const TASK = JSON.parse(process.argv[2] ?? "") as PictureTask;
sharp.cache(false);
sharp.concurrency(1);
sharp.block({ operation: ["VipsForeignLoad"] });
for (const format of ["Jpeg", "Png", "Webp", "Heif"]) sharp.unblock({ operation: [`VipsForeignLoad${format}`] });

const chunks: Buffer[] = [];
for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
process.stdout.write(framed(await answerTo(TASK, Buffer.concat(chunks))));

async function answerTo(task: PictureTask, bytes: Buffer): Promise<PictureAnswer> {
	const claimed = task.act === "read" ? claimedFacts(bytes) : null;
	try {
		const { format } = await opened(bytes).metadata();
		if (format !== FORMATS[task.mediaType]) return refused("not-shown");
		if (task.act === "fit") return { ...(await fitted(bytes, task.mostBytes)), refusal: null, claimed };
		const copy = await written(task.act === "read" ? opened(bytes) : await blackedOut(bytes, task.rectangles));
		const thumbnail = await opened(copy.data)
			.resize({ ...THUMBNAIL, fit: "inside", withoutEnlargement: true })
			.jpeg({ quality: THUMBNAIL.quality })
			.toBuffer();
		const { width, height } = copy.info;
		return { size: { width, height }, refusal: null, claimed, parts: [copy.data, thumbnail] };
	} catch (error) {
		return refused(refusalOf(error as Error));
	}

	function refused(refusal: PictureRefusal): PictureAnswer {
		return { size: null, refusal, claimed, parts: [] };
	}
}

function opened(bytes: Buffer): Sharp {
	return sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: "error", autoOrient: true, pages: 1 });
}

/** Pixels alone: nothing of the metadata is written unless asked for. */
function written(picture: Sharp) {
	return picture.flatten({ background: "white" }).jpeg({ quality: COPY_QUALITY }).toBuffer({ resolveWithObject: true });
}

/** Rounded outwards, so that no line of what was to be covered is left. */
async function blackedOut(bytes: Buffer, rectangles: readonly Rectangle[]): Promise<Sharp> {
	const { autoOrient } = await opened(bytes).metadata();
	const { width, height } = autoOrient;
	const covers = rectangles.flatMap(({ x, y, w, h }) => {
		const left = Math.min(width - 1, Math.floor((x / 100) * width));
		const top = Math.min(height - 1, Math.floor((y / 100) * height));
		const right = Math.min(width, Math.max(left + 1, Math.ceil(((x + w) / 100) * width)));
		const bottom = Math.min(height, Math.max(top + 1, Math.ceil(((y + h) / 100) * height)));
		const create = { width: right - left, height: bottom - top, channels: 3 as const, background: "black" };
		return [{ input: { create }, left, top }];
	});
	return opened(bytes).flatten({ background: "white" }).composite(covers);
}

async function fitted(bytes: Buffer, mostBytes: number): Promise<Pick<PictureAnswer, "size" | "parts">> {
	const { autoOrient } = await opened(bytes).metadata();
	for (let width = autoOrient.width; width >= FIT_LEAST_PIXELS; width = Math.round(width * FIT_STEP)) {
		for (const quality of FIT_QUALITIES) {
			const { data, info } = await opened(bytes)
				.resize({ width, withoutEnlargement: true })
				.jpeg({ quality })
				.toBuffer({ resolveWithObject: true });
			if (data.length <= mostBytes) return { size: { width: info.width, height: info.height }, parts: [data] };
		}
	}
	throw new Error("the picture fits at no size");
}

/** libvips tells its troubles in words alone. */
function refusalOf({ message }: Error): PictureRefusal {
	if (/pixel limit/i.test(message)) return "too-many-pixels";
	if (/memory|allocat/i.test(message)) return "too-much-work";
	if (/unsupported|not compiled|no decoding plugin|compression format/i.test(message)) return "not-shown";
	return "damaged";
}
