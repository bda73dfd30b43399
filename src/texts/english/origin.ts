/**
 * Sentences on where a fault may come from. They speak of findings under an origin, never of the probability of an origin,
 * and never of a person's part in it.
 */
export const origin = {
	"origin.missed-before-dispatch": "It was there before dispatch and was not seen",
	"origin.transit-shock": "A shock on the way",
	"origin.transit-vibration": "Vibration on the way",
	"origin.unseated": "Something came out of its place",
	"origin.moisture": "Moisture",
	"origin.receiver-handling": "Unpacking, handling or first power-on",
	"origin.set-up": "The computer or bench that it was tried in",
	"origin.software-state": "Software or settings",
	"origin.other-item": "It is another item",
	"origin.other-part": "Another part failed later",
	"origin.intermittent": "A fault that comes and goes, at both ends",
	"origin.record-in-doubt": "A record does not hold what it says",
	"origin.none-of-these": "None of these",

	"origin.support-supports": "the findings fit this better than the others",
	"origin.support-does-not-support": "the findings fit this worse than the others",
	"origin.support-neutral": "the findings point both ways",
	"origin.support-not-tested": "nothing found so far bears on it",

	"origin.why-supports": "Facts that fit this better than the others: {countedFor}. None fits it worse.",
	"origin.why-does-not-support": "Facts that fit this worse than the others: {countedAgainst}. None fits it better.",
	"origin.why-neutral": "Facts that fit this better than the others: {countedFor}; worse: {countedAgainst}.",
	"origin.why-not-tested": "Nothing that was looked for and found, or looked for and not found, bears on this.",
	"origin.why-ruled-out": "A finding leaves no room for this.",
	"origin.why-ratio-weighed":
		"By the numbers given, the findings are {ratio} times as probable under this origin as under the others together, weighed as given.",
	"origin.why-ratio-best":
		"By the numbers given, the findings are {ratio} times as probable under this origin as under the other that explains them best.",
	"origin.why-ratio-unbounded": "By the numbers given, the findings are impossible under every other origin.",

	"origin.scale-none": "no support for one over the other",
	"origin.scale-weak": "weak support",
	"origin.scale-moderate": "moderate support",
	"origin.scale-moderately-strong": "moderately strong support",
	"origin.scale-strong": "strong support",
	"origin.scale-very-strong": "very strong support",
	"origin.scale-extremely-strong": "extremely strong support",
	"origin.scale-other-weak": "weak support for the others",
	"origin.scale-other-moderate": "moderate support for the others",
	"origin.scale-other-moderately-strong": "moderately strong support for the others",
	"origin.scale-other-strong": "strong support for the others",
	"origin.scale-other-very-strong": "very strong support for the others",
	"origin.scale-other-extremely-strong": "extremely strong support for the others",

	"origin.note-no-rule": "For the finding {finding} there is no rule and no number, so it says nothing here.",
	"origin.note-none-of-these":
		"The probabilities given leave nothing for an origin that nobody has thought of. A few percent would.",
	"origin.caution-not-who":
		"This says which findings fit which origin. It does not say how probable an origin is, and it decides nothing between the parties.",
	"origin.caution-both-can-stand":
		"A joint that broke under a shock may have been weak before. Both can stand; one does not speak against the other.",
	"origin.capped-judgement":
		"Numbers that rest on judgement alone bear no ratio above {cap}. The word is chosen as for {cap}.",
	"origin.capped-cases": "The cases counted bear no ratio above {cap}. The word is chosen as for {cap}.",

	"origin.test-informs": "It is expected to tell {bits} bits about the origin.",
	"origin.test-separates-one": "It tells apart two of the origins that are still open.",
	"origin.test-separates": "It tells origins that are still open apart, {pairs} pairs of them.",
	"origin.test-breaks-custody":
		"It changes the item's holder or what can still be seen. Only when both sides agree, and after all other tests.",
	"origin.test-destructive": "It destroys what it looks at. Only when both sides agree, and last of all.",

	"origin.finding-marks-differ": "Marks that no repair changes differ between the two records.",
	"origin.finding-marks-agree": "Marks that tell two items apart agree in both records.",
	"origin.finding-number-agrees":
		"The serial number or device id is the same at both ends. A label alone can be exchanged: another item is not excluded by it.",
	"origin.finding-start-missed-before": "A start failed before dispatch.",
	"origin.finding-long-clean-test-before":
		"Before dispatch it passed many cold starts and hours under load without a miss.",
	"origin.finding-fault-at-repaired-spot": "The fault lies where the repair was.",
	"origin.finding-fault-at-other-part": "The fault lies at a part that the repair did not touch.",
	"origin.finding-old-damage-seen": "Corrosion or damage was seen that takes long to grow.",
	"origin.finding-parcel-damaged": "The parcel was damaged outside when it came.",
	"origin.finding-indicator-tripped": "A shock or tilt indicator on the parcel had tripped. That alone is no damage.",
	"origin.finding-shock-beyond-design":
		"A recorder, its place in the parcel known, logged a shock beyond what pack and board are designed for.",
	"origin.finding-no-shock-recorded": "A recorder ran the whole way and logged no shock beyond the design.",
	"origin.finding-new-mechanical-damage": "Mechanical damage was seen on arrival that was not there before dispatch.",
	"origin.finding-pack-mark-matches": "A mark in the pack lies where the damage on the item is.",
	"origin.finding-cushion-intact": "The inner pack was found whole and in place.",
	"origin.finding-parts-loosened": "Screws, bracket, cooler or pads were found loose or shifted.",
	"origin.finding-cooler-unsupported": "A heavy cooler travelled without support.",
	"origin.finding-wetness-seen": "Moisture, residue or a wet indicator was seen.",
	"origin.finding-unpacking-filmed": "Unpacking was filmed without a cut.",
	"origin.finding-bag-found-open": "The inner bag was found cut or open.",
	"origin.finding-lead-of-other-supply": "A supply lead that belongs to another supply was used.",
	"origin.finding-reseating-cured": "Seating it again, and nothing else, mended it.",
	"origin.finding-good-at-first-then-bad": "It worked at the first power-on and failed soon after.",
	"origin.finding-good-on-arrival":
		"It was tested on arrival and was good. What only grew later is not excluded by that.",
	"origin.finding-errors-grew-later": "Errors were absent at first and grew over weeks of use.",
	"origin.finding-control-item-good":
		"Another item that is known to be good worked on the same bench, before and after.",
	"origin.finding-slot-limits": "The slot or the computer there can do no more than was measured.",
	"origin.finding-good-on-other-computer": "It worked in another computer after arrival.",
	"origin.finding-bad-on-departure-bench": "It shows the same fault on the bench on which it was good before dispatch.",
	"origin.finding-picture-before-driver": "It gives a picture before the driver loads, and fails after.",
	"origin.finding-other-driver-cured": "Another driver or a clean system mended it.",
	"origin.finding-some-starts-good": "On arrival some starts went well and some did not.",
	"origin.finding-better-on-arrival": "Something was good on arrival that was not good before dispatch.",
	"origin.finding-record-contradicts-itself": "A record holds times or values that can not be true together.",

	"origin.recorded-peak":
		"A recorder on the item (recording {recording}, impact {impact}) logged {peakGn} gₙ on the way; the pack was judged with a limit of {limitGn} gₙ. Recordings are not sealed.",
	"origin.recorded-peak-within-design":
		"A recorder on the item (recording {recording}, impact {impact}) logged {peakGn} gₙ on the way; the pack was judged with a limit of {limitGn} gₙ. It equals a drop of {lowM} to {highM} m, within the {designM} m that a pack for this trip is judged for. Recordings are not sealed.",
	"origin.recorded-drop":
		"A recorder in the parcel (recording {recording}, impact {impact}) logged on the way what a drop of {lowM} to {highM} m makes; the pack protects from {protectedM} m. Recordings are not sealed.",
	"origin.recorded-board":
		"By a recorder on the item (recording {recording}, impact {impact}) the board swung on the way further than the rule on boards allows. Recordings are not sealed.",
	"origin.recorded-none":
		"A recorder on the item (recording {recording}) ran the whole way and logged no shock beyond what pack and board were judged for. Recordings are not sealed.",
	"origin.recorder-silent-unread":
		"Whether a shock beyond the design was logged is not known: recording {recording} was not read yet.",
	"origin.recorder-silent-no-pack":
		"Whether a shock beyond the design was logged is not known: no pack was sealed against which recording {recording} could be set.",
	"origin.recorder-silent-clock":
		"Whether a shock beyond the design was logged on the way is not known: nobody noted the clock of recording {recording}, or how far it may be off.",
	"origin.recorder-silent-no-line":
		"Whether a shock beyond the design was logged on the way is not known: the records do not say when the way of recording {recording} began and ended.",
	"origin.recorder-silent-elsewhere":
		"Recording {recording} holds a shock beyond the design, but by its clock it may as well lie before or after the way.",
	"origin.recorder-silent-open":
		"Whether a shock beyond the design was logged is open: recording {recording} holds one whose figures reach to both sides, or cannot be set against the pack from where the recorder sat.",
	"origin.recorder-silent-phone":
		"Recording {recording} holds no shock beyond the design, but a phone does not show that there was none.",
	"origin.recorder-silent-place":
		"Recording {recording} holds no shock beyond the design, but from where the recorder sat it does not show that there was none on the item.",
	"origin.recorder-silent-axes":
		"Recording {recording} holds no shock beyond the design, but with fewer than three axes it does not show that there was none.",
	"origin.recorder-silent-part":
		"Recording {recording} holds no shock beyond the design, but it does not cover the whole way.",
	"origin.recorder-silent-gaps":
		"Recording {recording} holds no shock beyond the design, but stretches of its time have no samples.",
	"origin.recorder-silent-slow":
		"Recording {recording} holds no shock beyond the design, but it sampled too slowly to see every one.",
	"origin.recorder-silent-range":
		"Recording {recording} holds no shock beyond the design, but it is not shown that its range and its threshold hold the limit.",
	"origin.recorder-silent-kept":
		"The impacts kept of recording {recording} are not beyond the design, but it holds more than are kept.",

	"origin.absent-new-mechanical-damage": "No new mechanical damage was found on arrival.",
	"origin.absent-pack-mark-matches": "No mark in the pack was found where the damage on the item is.",
	"origin.absent-parts-loosened": "No screw, bracket, cooler or pad was found loose or shifted.",
	"origin.absent-wetness-seen": "No moisture, residue or wet indicator was found.",
	"origin.absent-reseating-cured": "Seating it again did not mend it.",
	"origin.absent-control-item-good": "Another item that is known to be good did not work on the same bench either.",
	"origin.absent-good-on-other-computer": "It did not work in another computer either.",
	"origin.absent-other-driver-cured": "Another driver or a clean system did not mend it.",

	"origin.test-other-computer": "Try it in a second computer of another make, if no stop sign was seen.",
	"origin.test-control-item": "Try another item that is known to be good on the same bench, before and after.",
	"origin.test-reseat": "With the power off, seat it again. Change nothing else, and note what happens.",
	"origin.test-counted-starts": "Count ten starts from cold and write down each.",
	"origin.test-photos-of-same-place":
		"Photograph it from all sides and lay the photos beside those from before dispatch: is any damage new?",
	"origin.test-marks-in-pack": "Look for a dent or crushed cushion in the pack, and where it lay against the item.",
	"origin.test-other-driver": "Try another driver on a clean system.",
	"origin.test-identity-marks": "Compare serial number, device id, mass and natural marks.",
	"origin.test-original-files": "Lay the original files and their times beside the record.",
	"origin.test-screws-and-pads": "Look for loose screws, shifted pads and rubbed places, without opening anything.",
	"origin.test-which-part": "Find which part the errors belong to, and whether the repair touched it.",
	"origin.test-departure-bench": "Repeat the departure tests on the bench that made them.",
	"origin.test-x-ray-of-joints": "Have the joints X-rayed.",
	"origin.test-cut-and-dye": "Have the joints dyed and pulled apart in a laboratory.",
} as const;
