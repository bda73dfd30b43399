/** The log, its checkpoints, what a device makes of them and signs. */
export const log = {
	"log.foot": "Signed log of {size} entries; its root begins",
	"log.title": "Checkpoint of the log",
	"log.text":
		"Log {origin}, {size} entries, signed by key {key}. The line below is the root of its tree. Keep it: a later log must begin with this one, and anyone can check that.",
	"log.server-clock": "Time: server clock only. No time-stamping authority confirms it.",
	"log.stamped": "Time: an authority has stamped the log of {size} entries at {time}. Receipts hold its stamps.",
	"log.seen-by-hand":
		"Whether the log still begins with the one that you saw before: check an older receipt beside a newer one on the page /verify.",
	"log.seen-first": "This device keeps this checkpoint, and will say here whether later ones begin with it.",
	"log.seen-consistent":
		"Checked on this device: the log that it saw on {time}, of {size} entries, is the beginning of this one.",
	"log.seen-inconsistent":
		"WARNING: the log that this device saw on {time}, of {size} entries, is NOT the beginning of this one. Keep both checkpoints: together they show it to anyone.",
	"log.seen-keep": "Keep both checkpoints as a file",
	"log.seen-unknown": "Whether the log begins with the one that this device saw before could not be checked now.",
	"log.device-unsigned": "What was done through this link is not signed by the party.",
	"log.device-signed":
		"This device has signed what was just done through this link. It shows that a device which used the link signed, and when.",
	"log.device-unable":
		"What was done through this link is not signed by the party: this browser cannot keep a key (it needs HTTPS).",
	"log.device-failed": "What was done through this link is not signed by the party: the signature did not arrive.",
	"log.device-again": "Sign again",
	"log.party-signature": "Signature by a device",
	"log.party-signed": "a device that used the link signed this entry on {time}",
	"log.device-signed-now": "this device, which used the link, has just signed this entry",
	"log.party-unsigned": "not signed by the party",
} as const;
