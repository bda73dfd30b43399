/** The log, its checkpoints, and what they are good for. */
export const log = {
	"log.foot": "Signed log of {size} entries; its root begins",
	"log.title": "Checkpoint of the log",
	"log.text":
		"Log {origin}, {size} entries, signed by key {key}. The line below is the root of its tree. Keep it: a later log must begin with this one, and anyone can check that.",
	"log.server-clock": "Time: server clock only. No time-stamping authority confirms it.",
	"log.stamped": "Time: an authority has stamped the log of {size} entries at {time}. Receipts hold its stamps.",
} as const;
