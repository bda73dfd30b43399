/** The warranty of an order, and what speaks on either side when something fails again. */
export const warranty = {
	"warranty.title": "Warranty",
	"warranty.lead":
		"What the order agrees on, how long it runs, and what speaks on either side when something fails again. It is for both sides to agree; nothing here decides.",
	"warranty.terms": "Terms",
	"warranty.no-terms": "The order gives no warranty of its own.",
	"warranty.months": "{months} months. It covers, in the order's words: {covers}",
	"warranty.starts": "Starts",
	"warranty.start.in-hand":
		"{date}, when the owner had the item in hand. That it starts then is our choice: see what the terms say.",
	"warranty.start.delivered":
		"{date}, when the item was delivered. That it starts then is our choice: see what the terms say.",
	"warranty.start.not-known": "Not known: no leg to the owner says when it was delivered.",
	"warranty.ends": "Last day",
	"warranty.new": "A new failure",
	"warranty.failed-on": "Day on which it showed",
	"warranty.ask-same-fault": "It is the fault that was repaired",
	"warranty.ask-same-part": "It is in a part that was repaired or replaced",
	"warranty.ask-event-since": "Something happened to the item since: a fall, a liquid, work by someone else",
	"warranty.answer.yes": "yes",
	"warranty.answer.no": "no",
	"warranty.answer.not-known": "not known",
	"warranty.look": "Look at it",
	"warranty.not-kept":
		"What you enter here is not kept. To put it on record, state it with the statements of both sides.",
	"warranty.time": "By the clock",
	"warranty.time.inside": "inside",
	"warranty.time.outside": "outside",
	"warranty.time.open": "open",
	"warranty.for": "Speaks for the warranty",
	"warranty.against": "Speaks against it",
	"warranty.open": "Open",
	"warranty.nothing": "Nothing.",
	"warranty.none-agreed": "The order gives no warranty of its own.",
	"warranty.no-start": "The clock has no start yet: note when the item came back to the owner.",
	"warranty.no-failure": "No day of a failure was entered.",
	"warranty.in-time": "The failure showed on {failedOn}, by the last day, {endsOn}.",
	"warranty.before-start": "The failure showed on {failedOn}, before the clock started on {startsOn}.",
	"warranty.after-end": "The failure showed on {failedOn}, after the last day, {endsOn}.",
	"warranty.same-fault-yes": "It is the fault that was repaired.",
	"warranty.same-fault-no": "It is another fault than the one that was repaired.",
	"warranty.same-fault-not-known":
		"Whether it is the same fault is not known: the same check on the same bench would tell.",
	"warranty.same-part-yes": "It is in a part that was repaired or replaced.",
	"warranty.same-part-no": "It is in a part that the repair did not touch.",
	"warranty.same-part-not-known": "Whether it is in a part that the repair touched is not known.",
	"warranty.event-since-yes": "Something happened to the item since it came back.",
	"warranty.event-since-no": "Nothing is known to have happened to the item since it came back.",
	"warranty.event-since-not-known": "Whether something happened to the item since is not known.",
	"warranty.floors": "What the law may give beside the terms",
	"warranty.floors-none":
		"For this country and kind of contract no text was read. That does not mean that there is none.",
	"warranty.floor-de-work":
		"Contract for work: claims for defects of maintenance or alteration of a thing end two years after acceptance.",
	"warranty.floor-de-sale":
		"Consumer sale: a defect that shows within a year is presumed to have been there; claims end two years after delivery.",
	"warranty.floor-fr-sale":
		"Consumer sale: a defect that shows within 24 months is presumed to have been there, 12 months for used goods; two years from delivery; a repair adds six months.",
	"warranty.floor-read":
		"{document}, {locator}; text read in the state of {date}. General information, not legal advice.",
} as const;
