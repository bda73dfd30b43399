/**
 * `smartctl -j`. Published: exit-status bits (smartctl.h), the packed raw value 30064771097 = 7·2³² + 25 (a temperature of
 * 25 °C with its extremes). The files are written by hand from the format, the makers invented.
 */
import { describe, expect, it } from "vitest";
import { exitStatusBits } from "../../src/importers/smartctl.ts";
import { readOutput, valuesOf, warningsOf } from "./read.ts";

const drive = (members: object, exitStatus = 0) =>
	JSON.stringify(
		{
			json_format_version: [1, 0],
			smartctl: { version: [7, 4], exit_status: exitStatus },
			local_time: { time_t: 1767225600, asctime: "Thu Jan  1 01:00:00 2026 SE" },
			device: { name: "/dev/sda", type: "sat" },
			model_name: "Tarn Disks T4",
			serial_number: "TD-0001",
			firmware_version: "1.0",
			...members,
		},
		null,
		2,
	);
const attribute = (id: number, value: number | string) => ({ id, raw: { value, string: String(value) } });
const table = (...rows: object[]) => ({ ata_smart_attributes: { table: rows } });

describe("exit status", () => {
	it.each([
		[64, [6]],
		[4, [2]],
		[0, []],
		[72, [3, 6]],
		[216, [3, 4, 6, 7]],
	])("%i has bits %j", (status, bits) => expect(exitStatusBits(status)).toEqual(bits));

	it("passed is no verdict: a file that says so with bit 2 set shows both", () => {
		const result = readOutput(drive({ smart_status: { passed: true } }, 4));
		expect(valuesOf(result)).toMatchObject({ "smart-self-assessment @ /dev/sda": 1 });
		expect(warningsOf(result)).toEqual(["exit-bit-2", "passed-with-bits"]);
	});
	it.each([1, 2, 3])("refuses a file whose status %i says that the drive was not opened", (status) => {
		expect(() => readOutput(drive({}, status))).toThrowError(expect.objectContaining({ code: "drive-not-opened" }));
	});
});

describe("smartctl -j", () => {
	it("takes the temperature that smartctl unpacked, and no packed number as a count", () => {
		const members = {
			...table(attribute(194, 30064771097), attribute(5, 30064771097), attribute(197, 8), attribute(188, 4295032833)),
			temperature: { current: 25 },
			power_on_time: { hours: 1234 },
			power_cycle_count: 56,
		};
		expect(valuesOf(readOutput(drive(members)))).toEqual({
			"smart-temperature @ /dev/sda": 25,
			"smart-power-on-hours @ /dev/sda": 1234,
			"smart-power-cycles @ /dev/sda": 56,
			"smart-reallocated-sectors @ /dev/sda": "packed",
			"smart-pending-sectors @ /dev/sda": 8,
			"smart-command-timeouts @ /dev/sda": "packed",
		});
	});
	it("reads an NVMe log and the bits of its critical warning", () => {
		const log = {
			critical_warning: 5,
			media_errors: 0,
			num_err_log_entries: 3,
			unsafe_shutdowns: 7,
			percentage_used: 101,
			available_spare: 100,
		};
		const result = readOutput(drive({ nvme_smart_health_information_log: log, temperature: { current: 38 } }));
		expect(valuesOf(result)).toMatchObject({
			"smart-media-errors @ /dev/sda": 0,
			"smart-percentage-used @ /dev/sda": 101,
			"smart-temperature @ /dev/sda": 38,
		});
		expect(warningsOf(result)).toEqual(["critical-bit-0", "critical-bit-2"]);
	});
	it("reads all-ones counters as none", () => {
		expect(valuesOf(readOutput(drive(table(attribute(199, 4294967295)))))).toEqual({
			"smart-transfer-errors @ /dev/sda": "sentinel",
		});
	});
	it("names drive and time: seconds in UTC, not the words", () => {
		const result = readOutput(drive({ serial_number: "REDACTED" }));
		expect(result.takenAt).toEqual({ raw: "1767225600", epochS: 1767225600 });
		expect(result.identity).toEqual({ model: "Tarn Disks T4", firmware: "1.0" });
	});
	it.each([
		["another version", drive({ json_format_version: [2, 0] }), "version-not-read"],
		["a cut file", drive({}).slice(0, -4), "json-broken"],
		["a member that stands twice", drive({}).replace('"device"', '"model_name": "x",\n "device"'), "json-duplicate"],
	])("refuses %s", (_, text, code) => {
		expect(() => readOutput(text)).toThrowError(expect.objectContaining({ code }));
	});
});
