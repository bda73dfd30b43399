/** The report on an order, in each edition. It tells what was recorded and what that supports, and decides nothing. */
export const report = {
	"report.title": "Report on a hand-over",
	"report.edition.parties": "edition for the parties",
	"report.edition.expert": "edition for an expert or a court",
	"report.edition.carrier": "edition for the carrier",
	"report.lead": "{item} · {edition}",
	"report.footer": "Order {order} · as of log entry {size}, {time}",
	"report.none": "Nothing of this is recorded.",
	"report.erased": "[erased]",

	"report.summary": "Summary",
	"report.summary-question":
		"What was the state of this item when it left, what was it when it arrived, and between which two records does each change lie?",
	"report.summary-records": "Sealed records",
	"report.summary-log": "Log",
	"report.summary-log-of": "{size} entries, root {root}",
	"report.summary-as-of": "As of",
	"report.summary-leg": "Leg {leg}, {from} to {to}",
	"report.summary-open": "Not both ends of this leg are recorded and sealed, so nothing is compared.",
	"report.summary-more": "And {count} more, in the comparison further on.",
	"report.summary-left-out": "What this edition leaves out, and why",
	"report.summary-not": "This report decides nothing between the parties. Its first sections say how to read it.",

	"report.left-out.planning":
		"Plans of packs that were tried and not shipped: nobody sealed them, and they are not kept.",
	"report.left-out.damage-probability":
		"A probability that this parcel would be damaged: it rests on studies of other parcels and says nothing about this one.",
	"report.left-out.drafts": "Drafts: nobody has stood by them. That they were opened or discarded stands in the log.",
	"report.left-out.method": "The rule by which each check is compared: it is in the edition for an expert.",
	"report.left-out.comparison":
		"Comparisons and what findings fit: they are judgements, and facts are what a notice needs.",
	"report.left-out.positions": "What the parties say to each other about an outcome: it is theirs.",
	"report.left-out.plans-carrier": "Plans and checks of the pack: what was shipped stands here as it was entered.",
	"report.left-out.readings": "Readings of the tests: the state at each end is told in one line.",
	"report.left-out.files":
		"Photos and files themselves: they are listed by number and fingerprint, and handed out apart.",
	"report.left-out.addresses": "Addresses of persons: who hands this report on adds what the carrier needs.",

	"report.question": "The question",
	"report.question-text":
		"An item changed hands. Its holder recorded its state before, the other side recorded it after. This report lays both beside each other: what is the same, what differs by more than the instruments leave open, what nobody tested, and in whose keeping the item was between any two records.",

	"report.reading": "How to read this, and what it is not",
	"report.reading-kinds":
		"Five kinds of statement are told apart. Recorded: its holder saw it and sealed it. Reported: someone told the other side, who wrote it down word for word. Imported: read from the output of a machine. Observed on receipt: seen by whoever took the item in. Computed: this service worked it out from the others.",
	"report.reading-intervals":
		"Where a number has an interval, the true value lies in it with 95 % confidence as far as instruments and repeats tell. Two readings differ only where the interval of their difference leaves out zero.",
	"report.reading-not":
		"This is no expert opinion, no finding of cause and no legal advice. It decides nothing between the parties. A seal shows that words were not changed since; it does not show that they are true.",
	"report.reading-numbers":
		"Exhibits are quoted by their number, such as [E3]. Times are UTC unless their difference stands beside them.",

	"report.server": "Who ran the server",
	"report.server-text":
		"The service was run by or for the repairer named below. Its clock dates the entries; whoever runs it could have set that clock, which is why authorities stamp the log where that is set up.",
	"report.server-address": "Address of the service",
	"report.server-origin": "Name of the log",
	"report.server-keys": "Keys that signed",
	"report.server-time": "Independent time",
	"report.server-time-none": "none: the server's clock alone",
	"report.server-time-of": "an authority stamped the log of {size} entries at {time}",

	"report.item": "The item",
	"report.item-what": "Item",
	"report.item-class": "Class",
	"report.item-serial": "Serial number, as the order says",
	"report.item-value": "Value, as the order says",
	"report.item-age": "Age",
	"report.item-age-none": "not recorded",
	"report.item-mass": "Mass and size",
	"report.repairer": "Repairer",
	"report.owner": "Owner",
	"report.contract": "Contract",
	"report.fault": "Fault, as the owner reported it",
	"report.work": "Work agreed on",
	"report.order-noted":
		"These facts are as noted on the order. They are not sealed one by one; what is sealed stands under the records.",

	"report.custody": "Custody line",
	"report.custody-text":
		"Records in the order of their observation, and between them where the item was. A change lies between two records, never at one.",
	"report.custody-when": "When",
	"report.custody-what": "What",
	"report.custody-by": "Sealed",
	"report.custody-seen": "{what}: {state}",
	"report.custody-sealed": "entry {index}, {time}",
	"report.custody-changed": "{span}. A change lies somewhere in this stretch.",

	"report.records": "What was recorded, by whom and how",
	"report.record": "{n}. {what}",
	"report.record-how": "How it came in",
	"report.record-by": "By",
	"report.record-seen": "Seen, as its holder says",
	"report.record-seal": "Sealed",
	"report.record-seal-of": "log entry {index}, {time}, {how}",
	"report.record-by-link": "through a link",
	"report.record-by-account": "by an account of the service",
	"report.record-fingerprint": "Fingerprint (SHA-256)",
	"report.record-state": "State of the item",
	"report.record-amended": "A later record amends this one. It stays, since what was sealed is not taken back.",
	"report.record-marks": "Marks",
	"report.record-set-up": "Tried in",
	"report.record-parcel": "Parcel",
	"report.record-parcel-mass": "weighed {mass}",
	"report.record-seals": "seals intact",
	"report.record-seals-not": "seals not intact",
	"report.record-indicator": "an indicator had tripped",
	"report.record-indicator-not": "no indicator had tripped",
	"report.record-exhibits": "Exhibits",
	"report.record-words": "Told on {time} by {channel}:",
	"report.record-statement": "Statement:",
	"report.record-untested": "Not tested, without a reason given: {checks}.",
	"report.column-check": "Check",
	"report.column-result": "Result, as entered",
	"report.column-how": "How",

	"report.pack": "The packaging",
	"report.pack-none": "No pack as shipped was sealed.",
	"report.pack-sealed": "Pack as shipped on leg {leg}, sealed {time}",
	"report.pack-fingerprint": "Fingerprint (SHA-256): {fingerprint}",
	"report.pack-curves":
		"The curves below were computed anew from the pack as sealed, with the data of today; the verdict and the drop are as sealed.",
	"report.pack-verdict": "Verdict",
	"report.pack-why": "Value, limit, and why",
	"report.pack-value": "{value}, limit {limit}. {why}",

	"report.transit": "Events on the way",
	"report.transit-leg": "Leg {leg}: {from} to {to}",
	"report.transit-carrier": "Carrier and service",
	"report.transit-tracking": "Tracking number",
	"report.transit-dispatched": "Handed over to the carrier",
	"report.transit-delivered": "Delivered",
	"report.transit-in-hand": "In the consignee's hands",
	"report.transit-manner": "How it was delivered",
	"report.transit-not-noted": "not noted",
	"report.transit-no-recording":
		"Readings of shock recorders on the way are not part of this report. That none is told here does not say that there was none.",

	"report.comparison": "What left and what arrived",
	"report.comparison-text":
		"Each check with what both ends say, the difference with its interval, and the verdict. Computed from the sealed records.",
	"report.comparison-certain": "Certain",
	"report.comparison-uncertain": "Not certain",
	"report.comparison-placed": "Where the changes lie",
	"report.comparison-first": "How good the first test on arrival was",
	"report.comparison-difference": "difference {difference} {unit}",
	"report.comparison-interval": "{of} between {low} and {high}",
	"report.comparison-of.difference": "difference",
	"report.comparison-of.ratio": "ratio",
	"report.comparison-of.rate-ratio": "ratio of rates",
	"report.comparison-open": "…",

	"report.support": "What the findings support, and what they do not",
	"report.support-none":
		"Nothing became worse between two records, and nothing is at odds, so there is nothing to explain.",
	"report.support-leg": "Leg {leg}",

	"report.missing": "What is missing, on either side",
	"report.missing-text":
		"What was not tested shows nothing either way. It is listed for both ends alike, and what could still be found out stands with it.",
	"report.missing-side": "Findings that nobody has made: {side}",
	"report.missing-ends": "Leg {leg}: not tested at the end “{end}”",

	"report.periods": "Periods",
	"report.periods-text":
		"The dates on which periods begin are below. Which law holds depends on the contract, the route and where a claim is brought; so no period is counted here. The service counts them for a law that someone chooses. General information, not legal advice.",
	"report.periods-safe": "Whoever may have a claim gives notice at once, and keeps the proof of sending.",

	"report.exhibits": "Exhibits",
	"report.exhibits-text":
		"Photos and files that sealed records name, by the SHA-256 of their bytes as they were brought.",
	"report.exhibits-none": "No sealed record names a photo or file.",
	"report.exhibits-number": "No.",
	"report.exhibits-what": "What, and of which record",
	"report.exhibits-file": "Kind and size",
	"report.exhibits-hash": "SHA-256",
	"report.exhibits-size": "{type}, {size}",
	"report.exhibits-of": "{view}. {record}",

	"report.method": "Method",
	"report.method-text":
		"A measured reading gets its uncertainty from the accuracy of the instrument as its holder stated it, taken as a rectangular distribution, and from the spread of repeats; the two are combined by their squares. Counts are compared as rates, tries as shares, each with an exact interval. Where several differences were tested together their p-values were adjusted (Holm). A check that was not read by comparable means at both ends is not compared.",
	"report.method-rule": "Rule",
	"report.method-numbers": "Figures of the comparison",
	"report.method-rule-of": "{kind}; {comparability}; better: {better}",
	"report.method-kind.measured": "measured value",
	"report.method-kind.count": "counted events",
	"report.method-kind.score": "score",
	"report.method-kind.outcome": "tries that went well",
	"report.method-kind.visual": "looked at",
	"report.method-comparability.any-bench": "comparable between benches",
	"report.method-comparability.stated-uncertainty": "comparable where the accuracy is stated",
	"report.method-comparability.same-instrument": "comparable with the same instrument",
	"report.method-comparability.same-bench": "comparable on the same bench",
	"report.method-better.higher": "higher",
	"report.method-better.lower": "lower",
	"report.method-better.neither": "neither",
	"report.method-p": "p {p}",
	"report.method-u": "U {u}",
	"report.method-en": "Eₙ {en}",
	"report.sources": "Sources, and how well each is known",
	"report.sources-document": "Document",
	"report.sources-place": "Place",
	"report.sources-standing": "Standing",
	"report.sources-original": "Titles and places of documents stand here in English, as this service keeps them.",
	"report.sources-own.our-choice": "This project's own choice",
	"report.sources-own.common-practice": "Common practice of the trade, no published source",
	"report.sources-own.user": "Entered by the user",

	"report.verify": "How to verify this",
	"report.verify-text":
		"The dossier of this order holds every sealed statement as its exact bytes, with the proofs, the keys and a page that checks them without a network. Its file VERIFY.txt says how to check the same with sha256sum and openssl alone. Compare the key below with one that you had by another way, such as the printed slip.",
	"report.verify-size": "Entries of the log",
	"report.verify-root": "Root of its tree (SHA-256)",
	"report.verify-key": "Public key (Ed25519)",

	"report.seal": "What a seal does not prove",
	"report.seal.true": "That what was recorded is true.",
	"report.seal.who":
		"Who held the device: it shows through which link or account something was sealed, and where a device signed, that the same device did.",
	"report.seal.when":
		"When the item was seen: that time is its holder's claim. The time of sealing is the server's, bounded by a time stamp where there is one.",
	"report.seal.all": "That everything was recorded. What nobody recorded leaves no trace.",
	"report.seal.item": "That it was this very item: serial number and marks say how sure that is.",
	"report.seal.declared":
		"This document declares the archival form PDF/A-3; that was not checked by a validator. Characters without a glyph stand as [U+…].",

	"report.carrier-lead":
		"Facts about one consignment, as its parties noted and sealed them. This edition compares nothing and draws no conclusion.",
	"report.carrier-item": "The item",
	"report.carrier-hand-over": "The hand-over",
	"report.carrier-contract": "Contract with the carrier, as the order says",
	"report.carrier-contract-by": "made by {name}",
	"report.carrier-consignor": "Sender",
	"report.carrier-consignee": "Addressee",
	"report.carrier-declared": "Declared value",
	"report.carrier-insured": "Insured value",
	"report.carrier-mass": "Mass of the parcel",
	"report.carrier-state": "State, as recorded",
	"report.carrier-state-of": "{what}, seen {time}: “{state}”",
	"report.carrier-pack": "The pack as shipped",
	"report.carrier-outer": "The outside of the parcel on arrival",
	"report.carrier-outer-words": "What was noted of it: {words}",
	"report.carrier-photos": "Photos of the parcel and the item",
	"report.carrier-notice": "Notice, and its proof",
	"report.carrier-notice-none":
		"This service keeps no notice to the carrier. Whoever sends one adds its date and the proof of sending here.",
	"report.carrier-entitled": "Who is entitled to claim",
	"report.carrier-entitled-text":
		"That depends on the contract of carriage and the law that governs it. What the order notes of it stands above: who made the contract, who sent, to whom.",
} as const;
