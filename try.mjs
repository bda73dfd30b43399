// try.mts
import { writeFileSync } from "node:fs";

// src/reports/write-report.ts
import PDFDocument from "pdfkit";

// src/reports/fonts.ts
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { create } from "fontkit";
var FONTS = { text: "text", bold: "bold", fixed: "fixed" };
var FILES = {
  text: "DejaVuSans.ttf",
  bold: "DejaVuSans-Bold.ttf",
  fixed: "DejaVuSansMono.ttf"
};
function readFonts() {
  const require2 = createRequire(import.meta.url);
  return Object.keys(FONTS).map((name) => {
    const bytes = readFileSync(require2.resolve(`dejavu-fonts-ttf/ttf/${FILES[name]}`));
    const font = create(bytes);
    return { name, bytes, hasGlyph: (codePoint) => font.hasGlyphForCodePoint(codePoint) };
  });
}
function showable(text, { hasGlyph }) {
  return [...text.replaceAll("\r\n", "\n").replaceAll("	", " ")].map((character) => {
    const codePoint = character.codePointAt(0) ?? 0;
    if (character === "\n" || hasGlyph(codePoint) && !isUnseen(codePoint)) return character;
    return `[U+${codePoint.toString(16).toUpperCase().padStart(4, "0")}]`;
  }).join("");
}
function isUnseen(codePoint) {
  if (codePoint < 32 || codePoint >= 127 && codePoint < 160) return true;
  return codePoint >= 8203 && codePoint <= 8207 || codePoint >= 8234 && codePoint <= 8238 || codePoint >= 8294 && codePoint <= 8297;
}

// src/reports/paint-drawing.ts
var DARK = "#1d2730";
var QUIET = "#5b6670";
var INKS = {
  axis: { stroke: QUIET, width: 1 },
  grid: { stroke: "#d5dade", width: 1 },
  band: { fill: "#dbe6ee" },
  curve: { stroke: "#1f5f8b", width: 2.2 },
  "curve-outside": { stroke: "#1f5f8b", width: 1.4, dash: [5, 4] },
  limit: { stroke: "#8a2f1b", width: 1.6, dash: [9, 4] },
  point: { stroke: DARK, fill: DARK, width: 1 },
  "point-guide": { stroke: DARK, width: 1, dash: [2, 3] },
  optimum: { stroke: "#1f5f8b", fill: "#ffffff", width: 1.6 },
  floor: { stroke: QUIET, width: 1.2, dash: [1, 3] },
  box: { stroke: DARK, width: 2 },
  item: { stroke: DARK, fill: "#c9d3da", width: 1.4 },
  cushion: { stroke: QUIET, fill: "#eef2f4", width: 1 },
  "second-cushion": { stroke: QUIET, fill: "#dfe6ea", width: 1, dash: [3, 2] },
  "bar-holds": { fill: "#3c6e57" },
  "bar-short": { fill: "#8a2f1b" },
  "bar-before": { stroke: QUIET, width: 1, dash: [3, 2] },
  label: { fill: DARK }
};
var LETTERS = 13;
function paintDrawing(doc, drawing, { x, y, width }, showableText) {
  doc.save();
  doc.translate(x, y).scale(width / drawing.width);
  for (const primitive of drawing.primitives) paintPrimitive(doc, primitive, showableText);
  doc.restore();
}
function paintPrimitive(doc, primitive, showableText) {
  if (primitive.kind === "text") return paintText(doc, primitive, showableText(primitive.text));
  const { stroke, fill, width = 1, dash } = INKS[primitive.role];
  doc.lineWidth(width);
  if (dash === void 0) doc.undash();
  else doc.dash(dash[0], { space: dash[1] });
  if (primitive.kind === "path") doc.path(primitive.d);
  else if (primitive.kind === "line") doc.moveTo(primitive.x1, primitive.y1).lineTo(primitive.x2, primitive.y2);
  else doc.circle(primitive.cx, primitive.cy, primitive.r);
  if (stroke !== void 0 && fill !== void 0 && primitive.kind !== "line") doc.fillAndStroke(fill, stroke);
  else if (stroke !== void 0) doc.stroke(stroke);
  else doc.fill(fill ?? DARK);
}
function paintText(doc, primitive, words) {
  doc.undash().font(FONTS.text).fontSize(LETTERS).fillColor(INKS.label.fill ?? DARK);
  const wide = doc.widthOfString(words);
  const before = { start: 0, middle: wide / 2, end: wide }[primitive.anchor];
  doc.text(words, primitive.x - before, primitive.y, { lineBreak: false, baseline: "alphabetic" });
}

// src/reports/page-writer.ts
var PAGE = { width: 595.28, height: 841.89, margin: 56, foot: 62 };
var WIDTH = PAGE.width - 2 * PAGE.margin;
var BOTTOM = PAGE.height - PAGE.foot;
var INK = "#1d2730";
var QUIET2 = "#4d5861";
var RULE = "#c3cbd1";
var CELL = { x: 4, y: 3.5 };
var TONES = {
  plain: { font: "text", size: 9.5, after: 6 },
  note: { font: "bold", size: 9.5, after: 6 },
  quote: { font: "text", size: 9.5, after: 6 },
  small: { font: "text", size: 8, color: QUIET2, after: 5 },
  fixed: { font: "fixed", size: 8, after: 5 }
};
var CELL_STYLE = { font: "text", size: 8.5 };
var HEAD_STYLE = { font: "bold", size: 8.5 };
var PageWriter = class {
  #doc;
  #root;
  #fonts;
  #y = PAGE.margin;
  constructor(doc, fonts) {
    this.#doc = doc;
    this.#fonts = new Map(fonts.map((font) => [font.name, font]));
    this.#root = doc.struct("Document");
    doc.addStructure(this.#root);
  }
  title(title, lead) {
    this.#element(this.#root, "H1", (at) => this.#text(title, { font: "bold", size: 19, after: 4 }, at));
    this.#element(this.#root, "P", (at) => this.#text(lead, { font: "text", size: 10.5, color: QUIET2, after: 12 }, at));
  }
  /** @param numbered its number in the report; null for the summary */
  section({ title, blocks }, numbered) {
    this.#room(70);
    const part = this.#doc.struct("Sect");
    this.#root.add(part);
    this.#y += numbered === null ? 0 : 8;
    const words = numbered === null ? title : `${numbered}  ${title}`;
    this.#element(part, "H2", (at) => this.#text(words, { font: "bold", size: 13, after: 6 }, at));
    for (const block of blocks) this.#block(part, block);
    part.end();
  }
  newPage() {
    this.#doc.addPage();
    this.#y = PAGE.margin;
  }
  /** Ends the structure, and writes a foot onto every page. */
  finish(footOf) {
    this.#root.end();
    const { start, count } = this.#doc.bufferedPageRange();
    for (let page = start; page < start + count; page++) {
      this.#doc.switchToPage(page);
      this.#doc.markContent("Artifact", { type: "Pagination", attached: ["Bottom"] });
      this.#use({ font: "text", size: 7.5, color: QUIET2 });
      const words = this.#showable(footOf(page + 1, count), "text");
      this.#doc.text(words, PAGE.margin, PAGE.height - 44, { width: WIDTH, lineBreak: false });
      this.#doc.endMarkedContent();
    }
  }
  #block(part, block) {
    switch (block.kind) {
      case "paragraph":
        return this.#paragraph(part, block.text, block.tone);
      case "subheading":
        this.#room(40);
        this.#y += 3;
        return this.#element(part, "H3", (at) => this.#text(block.text, { font: "bold", size: 10.5, after: 4 }, at));
      case "list":
        return this.#list(part, block.items);
      case "facts":
        return this.#table(part, null, block.rows, [3, 7]);
      case "table":
        return this.#table(part, block.head, block.rows, block.widths);
      case "figure":
        return this.#figure(part, block);
    }
  }
  #paragraph(part, words, tone) {
    const tag = tone === "quote" ? "BlockQuote" : "P";
    this.#element(part, tag, (at) => {
      const inset = tone === "quote" ? 14 : 0;
      this.#text(words, TONES[tone], { x: at.x + inset, width: at.width - inset });
    });
  }
  #list(part, items) {
    const list = this.#doc.struct("L");
    part.add(list);
    for (const item of items) {
      this.#room(this.#heightOf(item, TONES.plain, WIDTH - 14));
      const entry = this.#doc.struct("LI");
      list.add(entry);
      const y = this.#y;
      this.#element(entry, "Lbl", (at) => this.#text("\u2022", { font: "text", size: 9.5 }, at));
      this.#y = y;
      this.#element(
        entry,
        "LBody",
        (at) => this.#text(item, { ...TONES.plain, after: 3 }, { x: at.x + 14, width: at.width - 14 })
      );
      entry.end();
    }
    list.end();
    this.#y += 3;
  }
  #figure(part, { drawing }) {
    const width = Math.min(WIDTH, drawing.width * 0.62);
    const height = drawing.height * width / drawing.width;
    this.#room(height + 10);
    const alt = `${drawing.title}. ${drawing.description}`;
    const figure = this.#doc.struct("Figure", { alt }, () => {
      const place = { x: PAGE.margin, y: this.#y, width };
      paintDrawing(this.#doc, drawing, place, (words) => this.#showable(words, "text"));
    });
    part.add(figure);
    figure.end();
    this.#y += height + 10;
  }
  /** Without a head the first column names the row. */
  #table(part, head, rows, widths) {
    const whole = widths.reduce((sum, width) => sum + width, 0);
    const columns = [];
    let x = PAGE.margin;
    for (const width of widths) {
      const points = WIDTH * width / whole;
      columns.push({ x, width: points });
      x += points;
    }
    const table = this.#doc.struct("Table");
    part.add(table);
    if (head !== null) this.#row(table, head, columns, "head");
    for (const row of rows) {
      const broke = this.#room(this.#rowHeight(row, columns));
      if (broke && head !== null) this.#row(table, head, columns, "again");
      this.#row(table, row, columns, "body");
    }
    table.end();
    this.#y += 8;
  }
  #rowHeight(cells, columns) {
    const heights = columns.map(
      ({ width }, index) => this.#heightOf(cells[index] ?? "", index === 0 ? HEAD_STYLE : CELL_STYLE, width - 2 * CELL.x)
    );
    return Math.max(...heights) + 2 * CELL.y;
  }
  /** A head that is said again on the next page is for the eye alone. */
  #row(table, cells, columns, as) {
    const height = this.#rowHeight(cells, columns);
    const y = this.#y;
    const paint = (index) => {
      const { x, width } = columns[index];
      this.#y = y + CELL.y;
      const style = as !== "body" || index === 0 ? HEAD_STYLE : CELL_STYLE;
      this.#text(cells[index] ?? "", style, { x: x + CELL.x, width: width - 2 * CELL.x });
    };
    if (as === "again") {
      this.#artifact(() => columns.forEach((_, index) => paint(index)));
    } else {
      const row = this.#doc.struct("TR");
      table.add(row);
      columns.forEach((_, index) => {
        const isHeader = as === "head" || index === 0;
        const cell = this.#doc.struct(isHeader ? "TH" : "TD", () => paint(index));
        row.add(cell);
        cell.end();
      });
      row.end();
    }
    this.#y = y + height;
    this.#artifact(() => {
      const weight = as === "body" ? 0.4 : 0.9;
      this.#doc.lineWidth(weight).moveTo(PAGE.margin, this.#y).lineTo(PAGE.margin + WIDTH, this.#y).stroke(RULE);
    });
  }
  #artifact(paint) {
    this.#doc.markContent("Artifact", { type: "Layout" });
    paint();
    this.#doc.endMarkedContent();
  }
  #element(part, tag, paint) {
    const element = this.#doc.struct(tag, () => paint({ x: PAGE.margin, width: WIDTH }));
    part.add(element);
    element.end();
  }
  /** Writes a text; one that does not fit goes on on the next page. */
  #text(words, style, { x, width }) {
    for (const [index, line] of words.split("\n").entries()) {
      if (index > 0 && line === "") continue;
      this.#lines(line, style, { x, width });
    }
    this.#y += style.after ?? 0;
  }
  #lines(line, style, { x, width }) {
    const shown = this.#showable(line, style.font);
    this.#use(style);
    const height = this.#doc.heightOfString(shown, { width, lineGap: 1.5 });
    if (this.#y + Math.min(height, 30) > BOTTOM) this.newPage();
    this.#use(style);
    this.#doc.text(shown, x, this.#y, { width, lineGap: 1.5 });
    this.#y = this.#doc.y;
  }
  #heightOf(words, style, width) {
    this.#use(style);
    return words.split("\n").reduce((sum, line) => sum + this.#doc.heightOfString(this.#showable(line, style.font), { width, lineGap: 1.5 }), 0);
  }
  #use({ font, size, color = INK }) {
    this.#doc.font(FONTS[font]).fontSize(size).fillColor(color);
  }
  #showable(words, font) {
    return showable(words, this.#fonts.get(font));
  }
  /** Turns the page where less than this is left; says whether it did. */
  #room(height) {
    if (this.#y + height <= BOTTOM || this.#y <= PAGE.margin) return false;
    this.newPage();
    return true;
  }
};

// src/reports/write-report.ts
var MAKER = "handover-risk";
async function writeReport(report) {
  const fonts = readFonts();
  const text = fonts.find(({ name }) => name === "text");
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
    font: text?.bytes,
    info: {
      Title: `${report.title}. ${report.lead}`,
      Creator: MAKER,
      Producer: MAKER,
      CreationDate: report.asOf,
      ModDate: report.asOf
    }
  });
  for (const { name, bytes } of fonts) doc.registerFont(name, bytes);
  const written = bytesOf(doc);
  doc.addPage();
  const pages = new PageWriter(doc, fonts);
  pages.title(report.title, report.lead);
  pages.section(report.summary, null);
  if (report.sections.length > 0) pages.newPage();
  for (const [index, section] of report.sections.entries()) pages.section(section, index + 1);
  pages.finish((page, count) => `${report.footer} \xB7 ${page} / ${count}`);
  if (report.attachment !== null) attach(doc, report, report.attachment);
  doc.end();
  return written;
}
function attach(doc, { asOf }, { name, description, bytes }) {
  doc.file(Buffer.from(bytes), {
    name,
    description,
    type: "application/json",
    creationDate: asOf,
    modifiedDate: asOf,
    relationship: "Data"
  });
}
function bytesOf(doc) {
  return new Promise((resolve, reject) => {
    const chunks = [];
    doc.on("data", (chunk) => chunks.push(chunk));
    doc.on("end", () => resolve(Buffer.concat(chunks)));
    doc.on("error", reject);
  });
}

// try.mts
var long = "A sentence that goes on for a while, so that lines are broken. ".repeat(4);
var r = {
  title: "What left and what arrived",
  lead: "Brookmere Heron 12 \xB7 edition for the parties",
  asOf: /* @__PURE__ */ new Date("2026-03-02T10:00:00Z"),
  language: "en",
  footer: "order ord_x \xB7 checkpoint 27",
  summary: { title: "Summary", blocks: [{ kind: "paragraph", text: long, tone: "plain" }, { kind: "list", items: [long, "b \u540D\u524D \u202E x"] }, { kind: "facts", rows: [["a", long], ["b", "c"]] }] },
  sections: [{ title: "Tables", blocks: [{ kind: "table", head: ["a", "b", "c"], widths: [2, 3, 3], rows: Array.from({ length: 60 }, (_, i) => [`row ${i}`, long.slice(0, 20 + i * 3), "7"]) }, { kind: "paragraph", text: "quoted\n" + long.repeat(30), tone: "quote" }, { kind: "paragraph", text: "ab".repeat(32), tone: "fixed" }] }],
  attachment: { name: "comparison.json", description: "the comparison", bytes: Buffer.from("{}") }
};
var a = await writeReport(r);
await new Promise((f) => setTimeout(f, 1100));
var b = await writeReport(r);
console.log(a.length, a.equals(b));
writeFileSync("/tmp/try.pdf", a);
