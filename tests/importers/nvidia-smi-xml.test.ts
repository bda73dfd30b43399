/** `nvidia-smi -q -x`: two files that a real board printed, read whole by hand; and cases written from the format. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { importDiagnostic } from "../../src/importers/import-diagnostic.ts";

const fixture = (name: string) => readFileSync(new URL(`fixtures/${name}`, import.meta.url));
const valuesOf = (bytes: Uint8Array, condition: "idle" | "load") =>
	Object.fromEntries(
		importDiagnostic(bytes, null, condition).readings.map((reading) => [
			`${reading.check} ${reading.subject}`,
			reading.value ?? reading.nullReason,
		]),
	);
const subject = "00000000:00:06.0";

/** A small file of version 11: names as they were before the event reasons and the device's own link. */
const v11 = (gpu: string) =>
	`<?xml version="1.0" ?>\n<!DOCTYPE nvidia_smi_log SYSTEM "nvsmi_device_v11.dtd">\n<nvidia_smi_log>\n<timestamp>Mon Mar  2 10:00:00 2026</timestamp>\n<driver_version>470.1</driver_version>\n<attached_gpus>1</attached_gpus>\n<gpu id="00000000:01:00.0">\n${gpu}\n</gpu>\n</nvidia_smi_log>\n`;

describe("nvidia-smi -q -x, real files", () => {
	it("reads the file taken under load: values as they stand in it", () => {
		expect(valuesOf(fixture("accelerator-load.xml"), "load")).toMatchObject({
			[`link-speed ${subject}`]: 32,
			[`link-width ${subject}`]: 16,
			[`link-speed-capability ${subject}`]: 32,
			[`link-width-capability ${subject}`]: 16,
			[`temperature-core ${subject}`]: 58,
			[`temperature-memory ${subject}`]: 50,
			[`power-draw ${subject}`]: 696.04,
			[`fan-speed ${subject}`]: "not-given",
			[`memory-errors ${subject} volatile dram correctable`]: 0,
			[`memory-errors ${subject} aggregate dram uncorrectable`]: 0,
			[`aer-replay-counter ${subject}`]: 0,
		});
	});

	it("names the format, its version and the device, and draws no conclusion about a path it does not show", () => {
		const result = importDiagnostic(fixture("accelerator-load.xml"), null, "load");
		expect([result.format, result.formatVersion]).toEqual(["nvidia-smi-xml", "v13"]);
		expect(result.identity).toMatchObject({
			serialNumber: "1000000000001",
			uuid: "GPU-00000000-0000-4000-8000-000000000001",
			model: "Example Accelerator 80GB",
		});
		expect(result.links[0]).toMatchObject({ upstreamPath: null, slot: null });
		expect(result.warnings.map((warning) => warning.code)).toEqual(["maximum-of-card-and-system"]);
	});

	it("warns where the machine's own signs contradict what the caller says", () => {
		const idleAsLoad = importDiagnostic(fixture("accelerator-idle.xml"), null, "load");
		expect(idleAsLoad.warnings.map((warning) => warning.code)).toContain("load-contradicted");
		const loadAsIdle = importDiagnostic(fixture("accelerator-load.xml"), null, "idle");
		expect(loadAsIdle.warnings.map((warning) => warning.code)).toContain("idle-contradicted");
	});

	it("reads the same from UTF-16LE with byte order mark and CRLF, as a Windows shell writes it", () => {
		const text = fixture("accelerator-load.xml").toString("utf8").replaceAll("\n", "\r\n");
		const utf16 = Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(text, "utf16le")]);
		expect(valuesOf(utf16, "load")).toEqual(valuesOf(fixture("accelerator-load.xml"), "load"));
	});
});

describe("nvidia-smi -q -x, cases written from the format", () => {
	it("finds power, slowdown, link and memory counters under the names of version 11", () => {
		const gpu = `<serial>N/A</serial><uuid>GPU-1</uuid>
<pci><pci_gpu_link_info><pcie_gen><max_link_gen>4</max_link_gen><current_link_gen>4</current_link_gen></pcie_gen>
<link_widths><max_link_width>16x</max_link_width><current_link_width>8x</current_link_width></link_widths></pci_gpu_link_info></pci>
<clocks_throttle_reasons><clocks_throttle_reason_hw_slowdown>Active</clocks_throttle_reason_hw_slowdown></clocks_throttle_reasons>
<power_readings><power_draw>294.91 W</power_draw></power_readings>
<temperature><gpu_temp>71 C</gpu_temp><memory_temp>N/A</memory_temp></temperature>
<ecc_errors><volatile><dram_uncorrectable>3</dram_uncorrectable></volatile></ecc_errors>`;
		const result = importDiagnostic(Buffer.from(v11(gpu)), null, "load");
		const value = (check: string) => result.readings.find((reading) => reading.check === check)?.value;
		expect([value("link-speed"), value("link-width"), value("power-draw"), value("memory-errors")]).toEqual([
			16, 8, 294.91, 3,
		]);
		expect(result.warnings.map((warning) => warning.code)).toContain("slowed-down");
		expect(result.identity).toEqual({ uuid: "GPU-1", driver: "470.1" });
	});

	it("reads a lost device and sentinels as no value, with the reason", () => {
		const gpu = `<temperature><gpu_temp>GPU is lost</gpu_temp></temperature><power_readings><power_draw>4294967295 W</power_draw></power_readings>`;
		const reasons = importDiagnostic(Buffer.from(v11(gpu)), null, "load").readings.map((reading) => reading.nullReason);
		expect(reasons).toEqual(["bus-lost", "sentinel"]);
	});

	it.each([
		[
			"an internal subset",
			'<!DOCTYPE nvidia_smi_log [<!ENTITY a "aaaaaaaaaa">]><nvidia_smi_log>&a;</nvidia_smi_log>',
			"xml-internal-subset",
		],
		[
			"an unknown entity",
			'<!DOCTYPE nvidia_smi_log SYSTEM "nvsmi_device_v13.dtd"><nvidia_smi_log>&a;</nvidia_smi_log>',
			"xml-broken",
		],
		["another version", '<!DOCTYPE nvidia_smi_log SYSTEM "nvsmi_device_v9.dtd"><nvidia_smi_log/>', "version-not-read"],
		["a binary", "\u0000\u0001\u0002", "not-text"],
		["another tool's output", "Geekometer 3000 results: 17", "format-not-read"],
		["nothing", "", "empty"],
	])("refuses %s", (_, text, code) => {
		expect(() => importDiagnostic(Buffer.from(text), null, "load")).toThrowError(expect.objectContaining({ code }));
	});

	it("refuses the real file cut off anywhere before its end, and never throws anything else", () => {
		const whole = fixture("accelerator-load.xml");
		const end = whole.toString("utf8").lastIndexOf(">");
		for (let length = 0; length < end; length += 97) {
			expect(() => importDiagnostic(whole.subarray(0, length), null, "load")).toThrowError(
				expect.objectContaining({ name: "ImportRefusal" }),
			);
		}
	});
});
