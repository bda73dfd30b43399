/**
 * An XML text as a tree with line numbers. Well-formedness is checked; entities other than the five of XML are refused;
 * a document type may name an external file, which is never fetched, and may hold no internal subset.
 */
import { SaxesParser } from "saxes";
import { ImportRefusal } from "./import-result.ts";

export interface XmlElement {
	readonly name: string;
	readonly attributes: Readonly<Record<string, string>>;
	readonly children: readonly XmlElement[];
	/** Own text, white space folded. */
	readonly text: string;
	readonly line: number;
}

export interface XmlDocument {
	readonly doctype: string;
	readonly root: XmlElement;
}

/** Elements may nest this deep; real files stay below 10. Source: our choice. */
const DEEPEST = 64;

/** @throws ImportRefusal with the line of what is wrong */
export function readXml(text: string): XmlDocument {
	const parser = new SaxesParser();
	const open: {
		name: string;
		attributes: Record<string, string>;
		children: XmlElement[];
		text: string;
		line: number;
	}[] = [];
	let root: XmlElement | null = null;
	let doctype = "";
	parser.on("error", () => {
		throw new ImportRefusal("xml-broken", parser.line, { column: parser.columnIndex });
	});
	parser.on("doctype", (found) => {
		if (found.includes("[")) throw new ImportRefusal("xml-internal-subset", parser.line);
		doctype = found.trim();
	});
	parser.on("opentag", (tag) => {
		if (open.length >= DEEPEST) throw new ImportRefusal("xml-too-deep", parser.line);
		open.push({ name: tag.name, attributes: tag.attributes, children: [], text: "", line: parser.line });
	});
	parser.on("text", (part) => {
		const element = open.at(-1);
		if (element !== undefined) element.text += part;
	});
	parser.on("closetag", () => {
		const closed = open.pop();
		if (closed === undefined) return;
		const element = { ...closed, text: closed.text.replace(/\s+/g, " ").trim() };
		const parent = open.at(-1);
		if (parent === undefined) root = element;
		else parent.children.push(element);
	});
	parser.write(text).close();
	if (root === null) throw new ImportRefusal("xml-broken", parser.line, { column: 0 });
	return { doctype, root };
}

/** The first element on a path of names below an element. */
export function at(element: XmlElement, ...path: readonly string[]): XmlElement | undefined {
	let found: XmlElement | undefined = element;
	for (const name of path) found = found?.children.find((child) => child.name === name);
	return found;
}
