/**
 * Lines that print a diagnostic output to a file: one for each thing to be read and each system. Each only reads, uses a
 * tool that is part of the system or came with the device's driver, writes one file into the folder it is run in, installs
 * nothing and sends nothing. Words: `texts/<language>/collectors.ts`. Source of the tools' options: from memory, except
 * those of the formats that the importers read.
 */

export const COLLECTOR_SYSTEMS = ["windows", "linux", "macos"] as const;
export type CollectorSystem = (typeof COLLECTOR_SYSTEMS)[number];

export interface Collector {
	readonly id: string;
	readonly system: CollectorSystem;
	/** The line as it is typed, in a terminal or, on Windows, in PowerShell. */
	readonly command: string;
	/** The file that it writes. */
	readonly file: string;
	/** Kind of the importer that reads it; null: kept as it is, for people to read. */
	readonly format: string | null;
	/** Checks that it answers, by id; a class that has none of them is not shown the line. */
	readonly checks: readonly string[];
	/** The system asks for the rights of an administrator, or leaves parts out without them. */
	readonly administrator: boolean;
	/** Taken twice: once at rest and once while the device works. */
	readonly twice: boolean;
}

const LINK = ["link-width", "link-speed", "slots-full-width"];
const CARD = [...LINK, "temperature-core", "temperature-memory", "power-draw", "fan-speed"];
const DRIVE = [
	"smart-self-assessment",
	"smart-reallocated-sectors",
	"smart-pending-sectors",
	"smart-offline-uncorrectable",
	"smart-reported-uncorrectable",
	"smart-command-timeouts",
	"smart-media-errors",
	"smart-error-log-entries",
	"smart-transfer-errors",
	"smart-shock-sense",
	"smart-power-cycles",
	"smart-unsafe-shutdowns",
	"smart-power-on-hours",
	"smart-percentage-used",
	"smart-available-spare",
	"smart-temperature",
	"smart-self-test",
];
/** A driver that tells the hottest point apart. */
const HOT_SPOT = [...CARD, "temperature-hot-spot"];

export const COLLECTORS: readonly Collector[] = [
	{
		id: "card-with-driver-tool",
		system: "windows",
		command: "nvidia-smi -q -x > card.xml",
		file: "card.xml",
		format: "nvidia-smi-xml",
		checks: CARD,
		administrator: false,
		twice: true,
	},
	{
		id: "device-problems",
		system: "windows",
		command: "Get-PnpDevice -PresentOnly | Format-List FriendlyName, Class, Status, Problem > devices.txt",
		file: "devices.txt",
		format: null,
		checks: ["link-width", "built-in-devices", "ports-work"],
		administrator: false,
		twice: false,
	},
	{
		id: "hardware-events",
		system: "windows",
		command:
			"Get-WinEvent -FilterHashtable @{ LogName = 'System'; ProviderName = 'Microsoft-Windows-WHEA-Logger' } | Format-List TimeCreated, Id, Message > hardware-events.txt",
		file: "hardware-events.txt",
		format: null,
		checks: ["aer-events", "starts-cold"],
		administrator: false,
		twice: false,
	},
	{
		id: "drive",
		system: "windows",
		command: "smartctl -x -j /dev/sda > drive.json",
		file: "drive.json",
		format: "smartctl",
		checks: DRIVE,
		administrator: true,
		twice: false,
	},
	{
		id: "drive-counters",
		system: "windows",
		command: "Get-PhysicalDisk | Get-StorageReliabilityCounter | Format-List * > drive-counters.txt",
		file: "drive-counters.txt",
		format: null,
		checks: ["smart-power-on-hours", "smart-temperature", "read-errors"],
		administrator: true,
		twice: false,
	},
	{
		id: "link",
		system: "linux",
		command: "sudo lspci -vv > link.txt",
		file: "link.txt",
		format: "lspci",
		checks: LINK,
		administrator: true,
		twice: true,
	},
	{
		id: "link-files",
		system: "linux",
		command:
			"find /sys/devices/pci* \\( -name class -o -name 'current_link_*' -o -name 'max_link_*' -o -name 'aer_dev_*' \\) -exec grep -H . {} + > link-files.txt",
		file: "link-files.txt",
		format: "sysfs-link",
		checks: LINK,
		administrator: false,
		twice: true,
	},
	{
		id: "card-with-driver-tool",
		system: "linux",
		command: "nvidia-smi -q -x > card.xml",
		file: "card.xml",
		format: "nvidia-smi-xml",
		checks: CARD,
		administrator: false,
		twice: true,
	},
	{
		id: "card-with-other-driver-tool",
		system: "linux",
		command: "rocm-smi -a --json > card.json",
		file: "card.json",
		format: "rocm-smi",
		checks: HOT_SPOT,
		administrator: false,
		twice: true,
	},
	{
		id: "card-with-newer-driver-tool",
		system: "linux",
		command: "amd-smi metric --json > card.json",
		file: "card.json",
		format: "amd-smi",
		checks: HOT_SPOT,
		administrator: false,
		twice: true,
	},
	{
		id: "sensors",
		system: "linux",
		command: "sensors -j > sensors.json",
		file: "sensors.json",
		format: "sensors",
		checks: [
			"temperature-core",
			"temperature-hot-spot",
			"temperature-memory",
			"temperature-regulators",
			"fan-speed",
			"power-draw",
			"smart-temperature",
		],
		administrator: false,
		twice: true,
	},
	{
		id: "kernel-log",
		system: "linux",
		command: "sudo dmesg > kernel-log.txt",
		file: "kernel-log.txt",
		format: "kernel-log",
		checks: ["aer-events", "slots-full-width"],
		administrator: true,
		twice: false,
	},
	{
		id: "drive",
		system: "linux",
		command: "sudo smartctl -x -j /dev/sda > drive.json",
		file: "drive.json",
		format: "smartctl",
		checks: DRIVE,
		administrator: true,
		twice: false,
	},
	{
		id: "board-names",
		system: "linux",
		command: "sudo dmidecode > board.txt",
		file: "board.txt",
		format: "dmidecode",
		checks: ["memory-channels", "built-in-devices"],
		administrator: true,
		twice: false,
	},
	{
		id: "drive",
		system: "macos",
		command: "smartctl -x -j disk0 > drive.json",
		file: "drive.json",
		format: "smartctl",
		checks: DRIVE,
		administrator: false,
		twice: false,
	},
	{
		id: "drive-status",
		system: "macos",
		command: "system_profiler SPNVMeDataType SPSerialATADataType > drive-status.txt",
		file: "drive-status.txt",
		format: null,
		checks: ["smart-self-assessment"],
		administrator: false,
		twice: false,
	},
	{
		id: "devices",
		system: "macos",
		command: "system_profiler SPPCIDataType SPDisplaysDataType SPMemoryDataType > devices.txt",
		file: "devices.txt",
		format: null,
		checks: [...LINK, "memory-channels", "built-in-devices"],
		administrator: false,
		twice: false,
	},
];

/** The lines that answer any of these checks. */
export function collectorsFor(checkIds: ReadonlySet<string>): readonly Collector[] {
	return COLLECTORS.filter((collector) => collector.checks.some((check) => checkIds.has(check)));
}
