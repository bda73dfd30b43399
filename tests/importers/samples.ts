/** One small whole output of each format, for damaging. Written by hand from the formats; makers and hosts are invented. */
import { readFileSync } from "node:fs";
import type { ImportKind } from "../../src/importers/import-diagnostic.ts";

const XML = `<?xml version="1.0" ?>
<!DOCTYPE nvidia_smi_log SYSTEM "nvsmi_device_v12.dtd">
<nvidia_smi_log>
	<timestamp>Mon Mar  2 10:00:00 2026</timestamp>
	<driver_version>550.1</driver_version>
	<attached_gpus>1</attached_gpus>
	<gpu id="00000000:01:00.0">
		<product_name>Lumen 7</product_name>
		<serial>N/A</serial>
		<uuid>GPU-1</uuid>
		<pci>
			<pci_gpu_link_info>
				<pcie_gen><max_link_gen>4</max_link_gen><current_link_gen>4</current_link_gen></pcie_gen>
				<link_widths><max_link_width>16x</max_link_width><current_link_width>8x</current_link_width></link_widths>
			</pci_gpu_link_info>
			<replay_counter>17</replay_counter>
		</pci>
		<fan_speed>44 %</fan_speed>
		<temperature>
			<gpu_temp>71 C</gpu_temp>
			<gpu_temp_slow_threshold>95 C</gpu_temp_slow_threshold>
			<memory_temp>N/A</memory_temp>
		</temperature>
		<gpu_power_readings><power_draw>294.91 W</power_draw><power_limit>262.50 W</power_limit></gpu_power_readings>
		<ecc_errors><volatile><dram_uncorrectable>3</dram_uncorrectable></volatile></ecc_errors>
		<utilization><gpu_util>99 %</gpu_util></utilization>
	</gpu>
</nvidia_smi_log>
`;

const json = (value: unknown) => `${JSON.stringify(value, null, 1)}\n`;
const SYS = "/sys/devices/pci0000:00/0000:00:01.0/";

export const SAMPLES: Readonly<Record<ImportKind, string>> = {
	"nvidia-smi-xml": XML,
	lspci: `${readFileSync(new URL("fixtures/lspci-width-reduced.txt", import.meta.url), "utf8")}`,
	"sysfs-link": [
		`${SYS}0000:01:00.0/class:0x030000`,
		...[SYS, `${SYS}0000:01:00.0/`].flatMap((path) => [
			`${path}current_link_speed:16.0 GT/s PCIe`,
			`${path}max_link_speed:32.0 GT/s PCIe`,
			`${path}current_link_width:16`,
			`${path}max_link_width:16`,
			`${path}aer_dev_correctable:RxErr 31`,
			`${path}aer_dev_correctable:TOTAL_ERR_COR 31`,
		]),
		`${SYS}0000:01:00.0/pp_dpm_pcie:0: 2.5GT/s, x1 310Mhz `,
		`${SYS}0000:01:00.0/pp_dpm_pcie:1: 16.0GT/s, x16 1143Mhz *`,
		"",
	].join("\n"),
	"nvidia-smi-csv":
		"timestamp, name, pci.bus_id, pcie.link.gen.current, pcie.link.gen.max, pcie.link.width.current, pcie.link.width.max, temperature.gpu, utilization.gpu [%], power.draw [W], fan.speed [%]\n" +
		[61, 63, 62]
			.map((t) => `2026/10/10 13:06:03.419, Lumen 7, 00000000:01:00.0, 4, 5, 8, 16, ${t}, 98 %, 201.4${t % 10} W, 55 %`)
			.join("\n") +
		"\n",
	"rocm-smi": json({
		card0: {
			"PCI Bus": "0000:03:00.0",
			"Temperature (Sensor edge) (C)": "51.5",
			"Temperature (Sensor junction) (C)": "66.0",
			"Average Graphics Package Power (W)": "182.0",
			"Fan speed (%)": "44",
			"Voltage (mV)": "862",
			"pcie clock": { "0": "2.5GT/s x16", "1": "16.0GT/s x16 *" },
		},
	}),
	"amd-smi": json([
		{
			gpu: 0,
			bus: { bdf: "0000:03:00.0", max_pcie_width: 16, max_pcie_speed: { value: 32, unit: "GT/s" } },
			pcie: { width: 16, speed: { value: 16000, unit: "GT/s" }, replay_count: 12, nak_sent_count: 4294967295 },
			temperature: { edge: { value: 45, unit: "C" }, hotspot: { value: 61, unit: "C" } },
			power: { socket_power: { value: 231, unit: "W" } },
		},
	]),
	"kernel-log": `${["00000001", "00001081", "00000040"]
		.map(
			(status, index) =>
				`[   4${index}.670135] pcieport 0000:00:1d.0: PCIe Bus Error: severity=Corrected, type=Physical Layer, (Receiver ID)\n` +
				`[   4${index}.670136] pcieport 0000:00:1d.0:   device [1b1b:7001] error status/mask=${status}/00002000\n`,
		)
		.join("")}[   60.000000] NVRM: Xid (PCI:0000:01:00): 79, pid=1201, GPU has fallen off the bus.\n`,
	smartctl: json({
		json_format_version: [1, 0],
		smartctl: { version: [7, 4], exit_status: 64 },
		device: { name: "/dev/sda" },
		model_name: "Tarn Disks T4",
		serial_number: "TD-0001",
		smart_status: { passed: true },
		ata_smart_attributes: {
			table: [
				{ id: 5, raw: { value: 12 } },
				{ id: 197, raw: { value: 30064771097 } },
				{ id: 199, raw: { value: 345 } },
			],
		},
		temperature: { current: 25 },
		power_on_time: { hours: 12345 },
		power_cycle_count: 56,
	}),
	sensors: json({
		"amdgpu-pci-0300": {
			Adapter: "PCI adapter",
			edge: { temp1_input: 54.25 },
			fan1: { fan1_input: 1410, fan1_min: 0 },
			PPT: { power1_average: 120.5 },
		},
		"nct6775-isa-0290": { Adapter: "ISA adapter", in7: { in7_input: 1.125, in7_alarm: 0 } },
	}),
	dmidecode: [
		"# dmidecode 3.3",
		"Handle 0x0002, DMI type 2, 15 bytes",
		"Base Board Information",
		"\tManufacturer: Heron Boards",
		"\tSerial Number: HB-118",
		"",
		"Handle 0x0011, DMI type 17, 40 bytes",
		"Memory Device",
		"\tSize: 16384 MB",
		"\tLocator: DIMM A1",
		"",
	].join("\n"),
	"sensor-csv":
		"Time;GPU Temperature [°C];Board Power Draw [W]\n10:00;61,5;201,25\n10:01;62,0;199,00\n10:02;60,5;198,75\n",
	"shock-csv": `# rate: 2000 Hz\ntime,x,y,z\n${Array.from({ length: 20 }, (_, index) => `${index},0.01,0.02,1.00`).join("\n")}\n`,
};
