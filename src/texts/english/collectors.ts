/** Words beside the lines that print a diagnostic output. */
export const collectors = {
	"collectors.title": "Lines that write such a file",
	"collectors.text":
		"Read a line before you run it. Each only reads, writes one file into the folder where you are, installs nothing and sends nothing. You look at the file and choose it here yourself.",
	"collectors.missing":
		"Where the system does not know the tool, leave the line out; nothing is to be installed for it.",
	"collectors.windows": "Windows (PowerShell)",
	"collectors.linux": "Linux (terminal)",
	"collectors.macos": "macOS (terminal)",
	"collectors.administrator": "Needs administrator rights; without them parts are missing.",
	"collectors.twice": "Once at rest, once while the device works; give the second file another name.",
	"collectors.kept": "Kept as it is, for people to read; no values are taken from it.",
	"collectors.card-with-driver-tool": "Graphics card, with the tool that comes with some drivers",
	"collectors.card-with-other-driver-tool": "Graphics card, with the tool that comes with other drivers",
	"collectors.device-problems": "Devices and their problem codes",
	"collectors.hardware-events": "Hardware errors that the system noted",
	"collectors.drive": "Drive: put the name of the drive that is meant in place of the one in the line",
	"collectors.link": "Link of a card with the whole path",
	"collectors.link-files": "Link of a card, without administrator rights",
	"collectors.sensors": "Temperatures, fans and voltages",
	"collectors.kernel-log": "Link errors and driver messages since the start",
	"collectors.board-names": "Names of the board and its memory",
	"collectors.devices": "Devices in the computer",
	"import.personal":
		"The file also names {found}. It is kept with the record, encrypted, and goes when the order's owner is erased.",
	"import.personal.host-name": "a computer ({text})",
	"import.personal.user-name": "a user ({text})",
	"import.personal.ip-address": "a network address ({text})",
	"import.personal.mac-address": "a network card ({text})",
	"import.personal.e-mail": "an e-mail address ({text})",
	"import.personal.computer-id": "a computer's number ({text})",
	"import.personal.more": "{count} more",
} as const;
