/**
 * Link files, sensors, firmware tables, sensor and recorder tables. Cases from bench practice 3.2 and 3.7 to 3.9; the
 * files are written by hand from the formats.
 */
import { describe, expect, it } from "vitest";
import { readOutput, valuesOf, warningsOf } from "./read.ts";

const root = "/sys/devices/pci0000:00/0000:00:01.0/";
const card = `${root}0000:01:00.0/`;
const link = (path: string, width: string, speed = "16.0 GT/s PCIe") =>
	`${path}current_link_speed:${speed}\n${path}current_link_width:${width}\n${path}max_link_speed:16.0 GT/s PCIe\n${path}max_link_width:16\n`;

describe("sysfs link files", () => {
	it("follows the long path to the root port", () => {
		const result = readOutput(`${card}class:0x030000\n${link(root, "8")}${link(card, "16")}`, "load");
		expect(result.links[0]).toEqual({
			subject: "0000:01:00.0",
			condition: "load",
			card: { speedGTPerS: 16, width: 16 },
			function: { speedGTPerS: 16, width: 16 },
			upstreamPath: [{ speedGTPerS: 16, width: 8 }],
			slot: { speedGTPerS: 16, width: 16 },
		});
	});
	it("does not know the path from the short one", () => {
		const result = readOutput(link("/sys/bus/pci/devices/0000:01:00.0/", "16"), "load");
		expect(result.links[0]?.upstreamPath).toBeNull();
		expect(warningsOf(result)).toContain("path-not-seen");
	});
	it("reads 255 and Unknown as no link, 63 as a device that is gone", () => {
		expect(Object.values(valuesOf(readOutput(link(card, "255", "Unknown")))).slice(0, 2)).toEqual([
			"no-link",
			"not-given",
		]);
		expect(warningsOf(readOutput(link(card, "63", "Unknown")))).toContain("bus-lost");
	});
	it("reads files under headings as tail prints them", () => {
		const text = `==> ${card}current_link_width <==\n8\n\n==> ${card}aer_dev_correctable <==\nRxErr 3\nBadTLP 0\nTOTAL_ERR_COR 4\n`;
		const result = readOutput(text);
		expect(valuesOf(result)).toEqual({
			"link-width @ 0000:01:00.0": 8,
			"aer-correctable-receiver @ 0000:01:00.0": 3,
			"aer-correctable-bad-tlp @ 0000:01:00.0": 0,
			"aer-correctable-total @ 0000:01:00.0": 4,
		});
		expect(warningsOf(result)).toContain("total-differs");
	});
	it("reads the active level of the power table; no star is unknown", () => {
		const path = "/sys/class/drm/card0/device/pp_dpm_pcie";
		const levels = (star: string) => `${path}:0: 2.5GT/s, x1 310Mhz \n${path}:1: 16.0GT/s, x8 1143Mhz ${star}\n`;
		expect(Object.values(valuesOf(readOutput(levels("*"))))).toEqual([8, 16]);
		expect(Object.values(valuesOf(readOutput(levels(""))))).toEqual(["active-level-unknown", "active-level-unknown"]);
	});
	it("refuses a value without its path and a file that it does not know", () => {
		expect(() => readOutput(`${link(card, "16")}16.0 GT/s PCIe\n`)).toThrowError(
			expect.objectContaining({ code: "line-not-understood", line: 5 }),
		);
	});
});

describe("sensors -j", () => {
	it("knows a value by its subfeature, not by a label that is the user's own", () => {
		const text = JSON.stringify({
			"amdgpu-pci-0300": {
				Adapter: "PCI adapter",
				"My fan": { fan1_input: 1410, fan1_min: 0, fan1_max: 3300 },
				edge: { temp1_input: 54, temp1_crit: 100 },
				PPT: { power1_input: 120.5 },
				mem: { temp3_input: -273.15 },
			},
			"nct6775-isa-0290": {
				Adapter: "ISA adapter",
				in7: { in7_input: 1.1, in7_min: 0, in7_max: 0, in7_alarm: 1 },
			},
		});
		const result = readOutput(text);
		expect(valuesOf(result)).toEqual({
			"fan-speed @ amdgpu-pci-0300": 1410,
			"temperature-core @ amdgpu-pci-0300": 54,
			"power-draw @ amdgpu-pci-0300": 120.5,
			"temperature-memory @ amdgpu-pci-0300": "sentinel",
			"sensor-voltage @ nct6775-isa-0290 in7_input": 1.1,
		});
		expect(warningsOf(result)).toEqual(["sensor-not-set-up"]);
	});
	it("refuses a pasted part with its trailing comma", () => {
		expect(() => readOutput('{"amdgpu-pci-0300":{"Adapter":"PCI adapter","edge":{"temp1_input":54},}')).toThrowError(
			expect.objectContaining({ code: "json-broken", line: 1 }),
		);
	});
});

describe("dmidecode", () => {
	const text = [
		"# dmidecode 3.3",
		"Getting SMBIOS data from sysfs.",
		"SMBIOS 3.2.0 present.",
		"",
		"Handle 0x0001, DMI type 1, 27 bytes",
		"System Information",
		"\tUUID: 00000001-0002-0003-0004-000000000005",
		"",
		"Handle 0x0002, DMI type 2, 15 bytes",
		"Base Board Information",
		"\tManufacturer: Heron Boards",
		"\tProduct Name: To be filled by O.E.M.",
		"\tSerial Number: HB-118",
		"\tFeatures:",
		"\t\tBoard is a hosting board",
		"",
		"Handle 0x0011, DMI type 17, 40 bytes",
		"Memory Device",
		"\tSize: 16 GB",
		"\tLocator: DIMM A1",
		"",
		"Handle 0x0012, DMI type 17, 40 bytes",
		"Memory Device",
		"\tSize: -64",
		"\tLocator: DIMM B1",
		"",
	].join("\n");
	it("reads the board's names and the memory; placeholders and nonsense are none", () => {
		const result = readOutput(text);
		expect(result.identity).toEqual({
			serialNumber: "HB-118",
			maker: "Heron Boards",
			uuid: "00000001-0002-0003-0004-000000000005",
		});
		expect(valuesOf(result)).toEqual({
			"memory-module-size @ memory DIMM A1": 16_384,
			"memory-module-size @ memory DIMM B1": "not-understood",
		});
		expect(result.personal.map(({ kind, line }) => [kind, line])).toEqual([["computer-id", 7]]);
	});
	it("says that rights were missing", () => {
		const denied = "# dmidecode 3.3\n/sys/firmware/dmi/tables/smbios_entry_point: Permission denied\n";
		expect(() => readOutput(denied)).toThrowError(expect.objectContaining({ code: "dmi-denied", line: 2 }));
	});
});

describe("sensor tables", () => {
	it("takes a decimal comma only where semicolons separate", () => {
		const comma = "Time;GPU Temperature [°C];Board Power Draw [W]\n10:00;61,5;201,25\n10:01;62,0;199,00\n";
		expect(valuesOf(readOutput(comma, "load"))).toEqual({
			"temperature-core @ device": 62,
			"power-draw @ device": 201.25,
		});
		const dot = "Time,GPU Temperature [°C]\n10:00,61,5\n";
		expect(() => readOutput(dot)).toThrowError(expect.objectContaining({ code: "csv-row", line: 2 }));
	});
	it("reads neither of two columns that could be meant, and nothing without a unit", () => {
		const two = "Time,GPU Temperature [°C],GPU Temperature [°C],Hot Spot [°C]\n10:00,61,62,75\n";
		const result = readOutput(two);
		expect(valuesOf(result)).toEqual({ "temperature-hot-spot @ device": 75 });
		expect(warningsOf(result)).toEqual(expect.arrayContaining(["column-ambiguous", "columns-not-read"]));
		expect(() => readOutput("Time,GPU Temperature\n10:00,61\n")).toThrowError(
			expect.objectContaining({ code: "format-not-read" }),
		);
	});
});

describe("recorder tables", () => {
	const table = (header: string, z: number) =>
		`# rate: 2000 Hz\n${header}\n${Array.from({ length: 20 }, (_, index) => `${index},0.01,0.02,${z}`).join("\n")}\n`;
	it.each([
		["in gn", "time,x,y,z", 1.0, "Gn"],
		["in m/s²", "t,a_x,a_y,a_z", 9.81, "m/s2"],
		["in mm/s²", "count,accel_x,accel_y,accel_z", 9807, "mm/s2"],
		["with gravity taken out", "ts,x,y,z", 0.0, null],
	])("tells the unit at rest, %s", (_, header, z, unit) => {
		const result = readOutput(table(header, z));
		expect(result.columns?.slice(1).map((column) => column.unit)).toEqual([unit, unit, unit]);
		expect(warningsOf(result)).toEqual(unit === null ? ["unit-to-be-asked"] : []);
		expect(result.readings).toEqual([]);
	});
	it("takes the unit of the header before it looks at values", () => {
		const [time, x] = readOutput(table("utime (s),X (G),Y (G),Z (G)", 1)).columns ?? [];
		expect(time).toEqual({ name: "utime (s)", quantity: "time", unit: "s", unitFrom: "header" });
		expect(x).toMatchObject({ quantity: "acceleration", unit: "G", unitFrom: "header" });
	});
});

describe("personal things", () => {
	it("are listed with their line, each once; versions, times and bus addresses are none", () => {
		const text = [
			"[    1.000000] eth0: 02:00:5e:10:00:01 at 192.0.2.44, fe80::1ff:fe23:4567:890a",
			"[    1.000001] mailed to someone@mail.example, C:\\Users\\Someone\\log.txt and /home/someone/log",
			"[    1.000002] version 94.02.71.40.9f at 10:22:33 on 0000:01:00.0, 192.0.2.44",
			"someone@workbench:~$ dmesg",
			"",
		].join("\n");
		expect(readOutput(text).personal.map((found) => `${found.line} ${found.kind} ${found.text}`)).toEqual([
			"1 mac-address 02:00:5e:10:00:01",
			"1 ip-address 192.0.2.44",
			"1 ip-address fe80::1ff:fe23:4567:890a",
			"2 e-mail someone@mail.example",
			"2 user-name Someone",
			"2 user-name someone",
			"4 host-name workbench",
		]);
	});
});
