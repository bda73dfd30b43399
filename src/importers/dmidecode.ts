/**
 * `dmidecode` (run with administrator rights): blocks of `Handle …, DMI type N` with tab-indented `Key: value`. Read are
 * type 0 (firmware), 1 (the computer), 2 (the board) and 17 (memory modules). What makers left as it came (`Default
 * string`, `To be filled by O.E.M.`, all X) and nonsense such as a size of -64 are no values.
 */
import { collectReadings, type Readings } from "./collect-readings.ts";
import { type FormatResult, type ImportCondition, ImportRefusal, type ImportWarning } from "./import-result.ts";
import { nullReasonOf } from "./null-words.ts";
import { shown, type TextLine, wholeLines } from "./text-lines.ts";

interface Block {
	readonly type: number;
	readonly values: Map<string, TextLine>;
}

const HANDLE = /^Handle 0x[0-9A-F]{4}, DMI type (\d{1,3}), \d+ bytes$/;

/** Whether a text is such a file, also one that says that it was not allowed to look. */
export function looksLikeDmidecode(text: string): boolean {
	return /^(# dmidecode \d|Handle 0x[0-9A-F]{4}, DMI type )/m.test(text.slice(0, 8192));
}

/** @throws ImportRefusal where the tables could not be read or a line is not understood */
export function importDmidecode(text: string, condition: ImportCondition): FormatResult {
	const warnings: ImportWarning[] = [];
	const lines = wholeLines(text);
	const denied = lines.find((line) => /Permission denied/.test(line.text));
	if (denied !== undefined) throw new ImportRefusal("dmi-denied", denied.number);
	const blocks = readBlocks(lines);
	if (blocks.length === 0) throw new ImportRefusal("no-device", 1);
	const readings = collectReadings(condition, warnings);
	for (const block of blocks.filter(({ type }) => type === 17)) readModule(block, readings);
	return {
		format: "dmidecode",
		formatVersion: /^# dmidecode (\d+(?:\.\d+)*)$/m.exec(text)?.[1] ?? "not told by the file",
		about: "board",
		readings: readings.list,
		identity: identityOf(blocks),
		links: [],
		warnings,
		takenAt: null,
	};
}

function readBlocks(lines: readonly TextLine[]): Block[] {
	const blocks: Block[] = [];
	let title = false;
	for (const { text, number } of lines) {
		const handle = HANDLE.exec(text);
		const block = blocks.at(-1);
		if (handle !== null) {
			blocks.push({ type: Number(handle[1]), values: new Map() });
			title = true;
		} else if (block === undefined) {
			if (!/^(#.*|Getting SMBIOS data .*|SMBIOS .*|\d+ structures occupying .*|Table at .*|)$/.test(text.trim()))
				throw new ImportRefusal("line-not-understood", number, { line: shown(text) });
		} else if (text.trim() === "" || /^Invalid entry length|^Wrong DMI/.test(text)) title = false;
		else if (title && !text.startsWith("\t")) title = false;
		else if (!text.startsWith("\t")) throw new ImportRefusal("line-not-understood", number, { line: shown(text) });
		else {
			// One tab: a value; more: a list below it.
			const value = /^\t([^\t:][^:]*):(?: (.*))?$/.exec(text);
			if (value?.[1] !== undefined && !block.values.has(value[1]))
				block.values.set(value[1], { text: (value[2] ?? "").trim(), number });
		}
	}
	return blocks;
}

function readModule(block: Block, readings: Readings): void {
	const size = block.values.get("Size");
	const locator = block.values.get("Locator")?.text;
	if (size === undefined || locator === undefined) return;
	if (/^No Module Installed$/.test(size.text))
		readings.give("memory-module-size", `memory ${locator}`, "MiB", null, size.text, [size.number], {
			nullReason: "not-fitted",
		});
	else
		readings.print(
			"memory-module-size",
			`memory ${locator}`,
			"MiB",
			{ raw: size.text, line: size.number },
			/^(\d+) (?:[kMG]B)$/,
			(number) => {
				const factor = { kB: 1 / 1024, MB: 1, GB: 1024 }[size.text.slice(-2)];
				return factor === undefined || number === 0 ? null : number * factor;
			},
		);
}

/** Names of the board; the computer's own are listed as personal (`personal.ts` finds them by their line). */
function identityOf(blocks: readonly Block[]): Record<string, string> {
	const value = (type: number, name: string) =>
		blocks.find((block) => block.type === type)?.values.get(name)?.text ?? "";
	const names = {
		serialNumber: value(2, "Serial Number"),
		maker: value(2, "Manufacturer"),
		model: value(2, "Product Name"),
		uuid: value(1, "UUID"),
		firmware: value(0, "Version"),
	};
	return Object.fromEntries(
		Object.entries(names).filter(([, text]) => nullReasonOf(text) === null && !/^(X+|0+|-\d+|[0F-]+)$/i.test(text)),
	);
}
