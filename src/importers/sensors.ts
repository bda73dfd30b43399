/**
 * `sensors -j` (lm-sensors): chip → label → subfeature. Labels may be the user's own, so a value is known by the name of
 * its subfeature (`temp1_input`). A pasted fragment is no JSON and is refused. Minimum and maximum both 0 with the alarm
 * set is an input that nobody set up, not an alarm. Which sensor of a graphics chip is which: published, kernel
 * documentation of amdgpu; `power1_input` took the place of `power1_average` with kernel 6.6.
 */
import { collectReadings, type Readings } from "./collect-readings.ts";
import {
	type FormatResult,
	type ImportCondition,
	ImportRefusal,
	type ImportWarning,
	warning,
} from "./import-result.ts";
import { type JsonNode, readJson } from "./json-tree.ts";

/** Whether a text is such a file. */
export function looksLikeSensors(text: string): boolean {
	return /"[\w-]+"\s*:\s*\{\s*"Adapter"\s*:/.test(text.slice(0, 65_536));
}

/** Subfeatures of a graphics chip. */
const GRAPHICS: Readonly<Record<string, readonly [check: string, unit: string]>> = {
	temp1_input: ["temperature-core", "degC"],
	temp2_input: ["temperature-hot-spot", "degC"],
	temp3_input: ["temperature-memory", "degC"],
	fan1_input: ["fan-speed", "rpm"],
	power1_average: ["power-draw", "W"],
	power1_input: ["power-draw", "W"],
	in0_input: ["voltage-core", "V"],
};
/** Of any other chip. */
const OTHERS: readonly (readonly [RegExp, string, string])[] = [
	[/^temp\d+_input$/, "sensor-temperature", "degC"],
	[/^fan\d+_input$/, "sensor-fan-speed", "rpm"],
	[/^in\d+_input$/, "sensor-voltage", "V"],
	[/^power\d+_(input|average)$/, "sensor-power", "W"],
];

/** @throws ImportRefusal where the JSON is broken or no chip is in it */
export function importSensors(text: string, condition: ImportCondition): FormatResult {
	const warnings: ImportWarning[] = [];
	const root = readJson(text, warnings);
	const chips = [...root.members].filter(([, chip]) => chip.members.get("Adapter")?.kind === "string");
	if (chips.length === 0) throw new ImportRefusal("no-device", root.line);
	const readings = collectReadings(condition, warnings);
	for (const [name, chip] of chips) readChip(name, chip, readings, warnings);
	return {
		format: "sensors",
		formatVersion: "not told by the file",
		about: "any",
		readings: readings.list,
		identity: {},
		links: [],
		warnings,
		takenAt: null,
	};
}

function readChip(chipName: string, chip: JsonNode, readings: Readings, warnings: ImportWarning[]): void {
	const graphics = /^(amdgpu|nouveau|radeon)-pci-[0-9a-f]{4}$/.test(chipName);
	const drive = /^(nvme|drivetemp)-/.test(chipName);
	for (const label of chip.members.values()) {
		const alarm = member(label, "_alarm")?.raw;
		const unset = ["_min", "_max"].every((end) => Number(member(label, end)?.raw ?? Number.NaN) === 0);
		if (Number(alarm) === 1)
			warnings.push(warning(unset ? "sensor-not-set-up" : "sensor-alarm", label.line, { sensor: chipName }));
		for (const [name, node] of label.members) {
			const known = knownAs(name, graphics, drive);
			if (known === undefined) continue;
			const [check, unit] = known;
			const subject = graphics || drive ? chipName : `${chipName} ${name}`;
			if (Number(member(label, "_fault")?.raw) === 1)
				readings.give(check, subject, unit, null, node.raw, [node.line], { nullReason: "sensor-fault" });
			else readings.print(check, subject, unit, { raw: node.raw, line: node.line }, /^(-?\d+(?:\.\d+)?)$/);
		}
	}
}

function knownAs(name: string, graphics: boolean, drive: boolean): readonly [check: string, unit: string] | undefined {
	if (graphics && GRAPHICS[name] !== undefined) return GRAPHICS[name];
	if (drive && name === "temp1_input") return ["smart-temperature", "degC"];
	const [, check, unit] = OTHERS.find(([pattern]) => pattern.test(name)) ?? [];
	return check === undefined || unit === undefined ? undefined : [check, unit];
}

function member(label: JsonNode, ending: string): JsonNode | undefined {
	return [...label.members].find(([name]) => name.endsWith(ending))?.[1];
}
