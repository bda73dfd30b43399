/** Orders that were read in from a dossier: what their pages say, and why a dossier was refused. */
export const readIn = {
	"read-in.note":
		"Sealed in the log {origin} (key {key} …), read in here on {time} from a dossier. Its entries keep their places and proofs in that log. Nothing is added to this order here.",
	"read-in.refused.check": "The dossier does not pass its verification: check “{check}” failed. {where}",
	"read-in.refused.order-file":
		"What is noted of the order (data/order.json) is missing, or is at odds with what was sealed: {where}",
	"read-in.refused.already-there": "The order {where} is here already.",
	"read-in.refused.busy": "Another dossier is being read in. Try again when that is done.",
	"read-in.refused.other-party": "The party {where} is here already, and did not come with an order of the same log.",
	"read-in.refused.erased-party": "The party {where} was erased here: its orders are not read in again.",
	"read-in.done":
		"Read in: order {order}, {records} sealed records, {brought} photos and files. Sealed in the log {origin} of {size} entries.",
	"read-in.copies":
		"Of {count} photos the dossier held a copy in the place of the original: without metadata, or blacked out.",
	"read-in.missing": "{count} photos and files that the records name were not in the dossier.",
	"read-in.key": "Key of that log: {key}",
	"read-in.unknown-key":
		"Nobody said which key it must be. Compare it with one that you had by another way, or give it with --key.",
	"read-in.usage": "npm run import-dossier -- FILE [--key HEX-or-FILE]",
	"read-in.failed": "nothing was read in: {why}",
} as const;
