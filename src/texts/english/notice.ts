/** The draft of a notice to the carrier, and what a claims clerk commonly asks for. */
export const notice = {
	"notice.title": "Draft of a notice to the carrier",
	"notice.link": "Draft of a notice to the carrier",
	"notice.lead":
		"A draft, filled from the records. Read it, fill in what is left blank, and send it yourself; then note with the dates of the claim when it was sent and received. General information, not legal advice.",
	"notice.rule": "Form by {article}: {form} Safe date {date}.",
	"notice.recalled": "This rule was recalled and not read: look it up first.",
	"notice.no-rule": "No rule on a notice is known here for this law of carriage; the draft is a plain one.",
	"notice.languages": "The draft is in English. For another language, have it translated before you send it.",
	"notice.copy": "Text to copy",
	"notice.papers": "What a claims clerk commonly asks for",
	"notice.papers-hint":
		"Common practice, no source. Whether these records hold it is said for each; none of it decides anything.",
	"notice.paper.good-at-origin": "Good order at origin: the last test, with serial number, time and photos",
	"notice.paper.handed-over": "Hand-over: receipt, tracking number, mass of the parcel",
	"notice.paper.damage-photos":
		"Damage on arrival: the closed box from six sides, the label, each layer while unpacking, the board, close-ups with a scale",
	"notice.paper.timing": "Times of delivery, of opening, and of the notice with proof of sending",
	"notice.paper.cause":
		"A record of shock, tilt or humidity; where on the board the damage lies against where the pack was hit",
	"notice.paper.packing": "How it was packed: the assessment of the pack, photos, mass",
	"notice.paper.amount": "The amount: invoice, estimate of the repair, what is left of the value",
	"notice.paper.kept": "The goods and all packaging, kept as found, and an inspection offered",
	"notice.paper.report": "A report by someone independent",
	"notice.held.yes": "held here",
	"notice.held.in-part": "held here in part",
	"notice.held.no": "not held here",
	"notice.blank": "__________",
	"notice.by-registered-letter": "By registered letter",
	"notice.from": "From: {name}, {address}",
	"notice.to": "To: {carrier}",
	"notice.date": "Date: {blank}",
	"notice.subject": "Notice of damage",
	"notice.subject-loss": "Notice of loss",
	"notice.subject-delay": "Notice of delay",
	"notice.consignment":
		"Consignment: {tracking}, sender {sender}, consignee {consignee}, handed over {dispatched}, delivered {delivered}, gross mass {mass} kg.",
	"notice.goods": "Goods: {item}, serial number {serial}.",
	"notice.says-apparent": "We give notice that these goods arrived damaged. The damage could be seen at delivery.",
	"notice.says-not-apparent":
		"We give notice that these goods arrived damaged. The damage could not be seen from outside at delivery.",
	"notice.says-loss": "We give notice that these goods were not delivered.",
	"notice.says-delay": "We give notice that these goods were delivered late.",
	"notice.found": "What was found: {found}",
	"notice.outer-seen": "Damage to the outside of the parcel was seen.",
	"notice.discovered": "It was found on {date}.",
	"notice.form-carrier-report":
		"We ask you to draw up a report on the state of the goods before they are accepted, and for a copy.",
	"notice.form-request-for-report": "We ask you to draw up a report on the state of the goods, and for a copy.",
	"notice.form-confirmed-in-writing":
		"This confirms what we reported on {blank} by telephone or in person. We ask you to inspect the goods.",
	"notice.form-written-claim-with-amount":
		"This is a claim in writing. [49 CFR 370.3(b) asks for certain words: read it and add them here: {blank}]",
	"notice.amount": "The amount claimed is {amount}.",
	"notice.amount-later": "The amount will be stated once it is known.",
	"notice.kept": "The goods and all packaging are kept as they were found.",
	"notice.inspection": "You can inspect them, by a neutral person if you wish, on: {blank}.",
	"notice.signed": "{name}",
} as const;
