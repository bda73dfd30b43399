/**
 * Kernel log lines. Published: the status words and their bits are those of Linux include/trace/events/ras.h (v3.14) and
 * the wording that of Documentation/PCI/pcieaer-howto.rst; the logs themselves are written by hand.
 */
import { describe, expect, it } from "vitest";
import { decodeAerStatus } from "../../src/importers/aer-bits.ts";
import { agentAddress } from "../../src/importers/kernel-log.ts";
import { readOutput, valuesOf, warningsOf } from "./read.ts";

const event = (prefix: string, address: string, status: string, mask = "00002000", severity = "Corrected") =>
	`${prefix}pcieport ${address}: PCIe Bus Error: severity=${severity}, type=Physical Layer, (Receiver ID)\n` +
	`${prefix}pcieport ${address}:   device [1b1b:7001] error status/mask=${status}/${mask}\n` +
	`${prefix}pcieport ${address}:    [ 0] RxErr                  (First)\n`;

describe("the status word", () => {
	it.each([
		["00000001", "correctable", [0]],
		["00001081", "correctable", [0, 7, 12]],
		["000000c1", "correctable", [0, 6, 7]],
		["00001000", "correctable", [12]],
		["00002001", "correctable", [0, 13]],
		["00100000", "uncorrectable", [20]],
	] as const)("%s (%s) has bits %j, all of them known", (word, kind, bits) => {
		const decoded = decodeAerStatus(kind, Number.parseInt(word, 16));
		expect(decoded.bits).toEqual(bits);
		expect(decoded.checks).toHaveLength(bits.length);
		expect(decoded.unknownBits).toEqual([]);
	});
	it("names the bits as the contract's checks", () => {
		expect(decodeAerStatus("correctable", 0x1081).checks).toEqual([
			"aer-correctable-receiver",
			"aer-correctable-bad-dllp",
			"aer-correctable-replay-timer",
		]);
		expect(decodeAerStatus("uncorrectable", 0x100000).checks).toEqual(["aer-uncorrectable-unsupported-request"]);
	});
	it("keeps bits that no source read here names apart", () => {
		expect(decodeAerStatus("correctable", 0x8000_4000)).toMatchObject({ checks: [], unknownBits: [14, 31] });
	});
	it("id=00e8 is bus 00, device 1d, function 0", () => expect(agentAddress("00e8")).toBe("00:1d.0"));
});

describe("kernel log", () => {
	it.each([
		["uptime", "[   41.670135] "],
		["dmesg -T", "[Fri Aug 29 20:09:52 2025] "],
		["dmesg -T in another language", "[ven. août 29 20:09:52 2025] "],
		["syslog", "Aug 29 20:09:52 workbench kernel: [   41.670135] "],
		["syslog in another language", "Okt 29 20:09:52 workbench kernel: "],
		["ISO times", "2025-08-29T20:09:52+02:00 workbench kernel: "],
		["raw with level", "<4>[   41.670135] "],
	])("joins the lines of an event, prefix: %s", (_, prefix) => {
		const result = readOutput(event(prefix, "0000:00:1d.0", "00001081"));
		expect(valuesOf(result)).toEqual({
			"aer-correctable-events @ 0000:00:1d.0": 1,
			"aer-correctable-receiver @ 0000:00:1d.0": 1,
			"aer-correctable-bad-dllp @ 0000:00:1d.0": 1,
			"aer-correctable-replay-timer @ 0000:00:1d.0": 1,
		});
		expect(warningsOf(result)).toEqual([]);
	});

	it("joins by address where two devices' lines are interleaved", () => {
		const [a = "", b = ""] = [event("", "0000:00:01.0", "00000001"), event("", "0000:00:02.0", "00000040")];
		const [a1, a2, a3] = a.split("\n");
		const [b1, b2, b3] = b.split("\n");
		const result = readOutput([a1, b1, b2, a2, a3, b3, ""].join("\n"));
		expect(valuesOf(result)).toMatchObject({
			"aer-correctable-receiver @ 0000:00:01.0": 1,
			"aer-correctable-bad-tlp @ 0000:00:02.0": 1,
		});
	});

	it("leaves masked bits out and reads the newer words of severity", () => {
		const log = event("[  1.000000] ", "0000:00:1d.0", "00102000", "00002000", "Uncorrectable (Non-Fatal)");
		expect(valuesOf(readOutput(log))).toEqual({
			"aer-uncorrectable-events @ 0000:00:1d.0": 1,
			"aer-uncorrectable-unsupported-request @ 0000:00:1d.0": 1,
		});
	});

	it("calls ten in five seconds a lower bound, and nine an exact count", () => {
		const burst = (count: number) =>
			Array.from({ length: count }, (_, index) =>
				event(`[  ${(100 + index * 0.4).toFixed(6)}] `, "0000:00:1d.0", "00000001"),
			).join("");
		const [nine, ten] = [readOutput(burst(9)), readOutput(burst(10))];
		expect(nine.readings.every((reading) => reading.atLeast === undefined)).toBe(true);
		expect(ten.readings.every((reading) => reading.atLeast === true && reading.value === 10)).toBe(true);
		expect(warningsOf(ten)).toContain("throttled");
		const suppressed = `${burst(1)}[  101.000000] aer_print_error: 25 callbacks suppressed\n`;
		expect(readOutput(suppressed).readings[0]).toMatchObject({ value: 1, atLeast: true });
	});

	it("counts an event whose status line is missing without saying which error it was", () => {
		const [head = ""] = event("", "0000:00:1d.0", "00000001").split("\n");
		const result = readOutput(`${head}\n`);
		expect(valuesOf(result)).toEqual({ "aer-correctable-events @ 0000:00:1d.0": 1 });
		expect(warningsOf(result)).toEqual(["event-incomplete"]);
	});

	it("says where an old kernel's id names another device than the line", () => {
		const log =
			"pcieport 0000:00:1c.0: PCIe Bus Error: severity=Corrected, type=Physical Layer, id=00e8(Receiver ID)\n" +
			"pcieport 0000:00:1c.0:   device [1b1b:7001] error status/mask=00000001/00002000\n";
		expect(warningsOf(readOutput(log))).toContain("counted-elsewhere");
	});

	it("counts driver fault numbers, and no number that is cut", () => {
		const log =
			"[ 9.000000] NVRM: Xid (PCI:0000:01:00): 79, pid=1201, name=render, GPU has fallen off the bus.\n" +
			"[ 9.100000] NVRM: Xid (0000:01:00): 13, 0001 00000000\n[ 9.200000] NVRM: Xid (PCI:0000:01:00): 7\n";
		const result = readOutput(log);
		expect(valuesOf(result)).toEqual({
			"xid-79 @ 0000:01:00": 1,
			"xid-13 @ 0000:01:00": 1,
			"link-width @ 0000:01:00": "bus-lost",
		});
		expect(warningsOf(result)).toEqual(["bus-lost", "xid-proves-nothing"]);
	});

	it("sees a lost bus that comes without a number, in three lines", () => {
		const log =
			"[ 9.0] NVRM: The NVIDIA GPU 0000:01:00.0\n[ 9.0] NVRM: (PCI ID: 10de:7001)\n[ 9.0] NVRM: installed in this system has fallen off the bus and is not responding to commands.\n";
		const result = readOutput(`[    9.000000] begin\n${log}`);
		expect(valuesOf(result)).toEqual({ "link-width @ 0000:01:00": "bus-lost" });
	});

	it("reads the journal's JSON lines, also a message given as bytes, and lists the host", () => {
		const lines = event("", "0000:00:1d.0", "00000001").trimEnd().split("\n");
		const journal = lines.map((line, index) =>
			JSON.stringify({
				__REALTIME_TIMESTAMP: "1756490992000000",
				_HOSTNAME: "workbench",
				MESSAGE: index === 1 ? [...Buffer.from(line)] : line,
			}),
		);
		const result = readOutput(`${journal.join("\n")}\n`);
		expect(valuesOf(result)).toMatchObject({ "aer-correctable-receiver @ 0000:00:1d.0": 1 });
		expect(result.personal).toEqual([{ kind: "host-name", text: "workbench", line: 1 }]);
		expect(() => readOutput(`${journal.join("\n")}\n{"MESSAGE": \n`)).toThrowError(
			expect.objectContaining({ code: "line-not-understood", line: 4 }),
		);
	});

	it("refuses a log that ends inside a line", () => {
		const log = event("", "0000:00:1d.0", "00000001");
		expect(() => readOutput(log.slice(0, -30))).toThrowError(expect.objectContaining({ code: "cut-off" }));
	});

	it("says that a log without such messages shows little", () => {
		const result = readOutput("[    0.000000] Linux version 6.9\n");
		expect([result.readings, warningsOf(result)]).toEqual([[], ["no-events"]]);
	});
});
