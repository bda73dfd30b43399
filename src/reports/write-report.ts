/**
 * Lays a report out as a tagged PDF that declares PDF/A-3, conformance level A: declared, since no validator is at hand.
 * The same report has the same bytes: its dates are the report's own, and the file's id is made from them.
 */
import PDFDocument from "pdfkit";
import { WORD_JOINTS } from "../texts/word-joints.ts";
import { readFaces } from "./fonts.ts";
import { PAGE } from "./page-styles.ts";
import { PageWriter } from "./page-writer.ts";
import type { Report } from "./report.ts";
import { Typesetter } from "./typesetter.ts";

/** Named in the document as what made it. */
const MAKER = "handover-risk";

export async function writeReport(report: Report): Promise<Buffer> {
	const doc = new PDFDocument({
		size: [PAGE.width, PAGE.height],
		margins: { top: PAGE.margin, left: PAGE.margin, right: PAGE.margin, bottom: PAGE.foot },
		pdfVersion: "1.7",
		subset: "PDF/A-3a",
		tagged: true,
		lang: report.language,
		displayTitle: true,
		bufferPages: true,
		autoFirstPage: false,
		// None by default: the standard fonts are not embedded, and a font that is known by two names is read anew each time.
		font: null as unknown as string,
		info: {
			Title: `${report.title}. ${report.lead}`,
			Creator: MAKER,
			Producer: MAKER,
			CreationDate: report.asOf,
			ModDate: report.asOf,
		},
	});
	const faces = readFaces(({ name, bytes }) => doc.registerFont(name, bytes));
	const written = bytesOf(doc);
	doc.addPage();
	const pages = new PageWriter(doc, new Typesetter(doc, faces, WORD_JOINTS[report.language]));
	pages.title(report.title, report.lead);
	pages.section(report.summary, null);
	if (report.sections.length > 0) pages.newPage();
	for (const [index, section] of report.sections.entries()) pages.section(section, index + 1);
	pages.finish((page, count) => `${report.footer} · ${page} / ${count}`);
	if (report.attachment !== null) attach(doc, report, report.attachment);
	doc.end();
	return written;
}

function attach(
	doc: PDFKit.PDFDocument,
	{ asOf }: Report,
	{ name, description, bytes }: NonNullable<Report["attachment"]>,
) {
	doc.file(Buffer.from(bytes), {
		name,
		description,
		type: "application/json",
		creationDate: asOf,
		modifiedDate: asOf,
		relationship: "Data",
	} as PDFKit.Mixins.PDFAttachmentOptions);
}

function bytesOf(doc: PDFKit.PDFDocument): Promise<Buffer> {
	return new Promise((resolve, reject) => {
		const chunks: Buffer[] = [];
		doc.on("data", (chunk: Buffer) => chunks.push(chunk));
		doc.on("end", () => resolve(Buffer.concat(chunks)));
		doc.on("error", reject);
	});
}
