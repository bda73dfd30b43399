/** What the first test after delivery excludes and does not; how to still get what is missing. */
export const firstState = {
	"first-state.same-item-yes":
		"At least three marks agree, more than one of which items of one model do not share: it is the item that left.",
	"first-state.same-item-no":
		"Too few marks agree to exclude another item: that takes the serial number or device id, one more mark that items of one model do not share, and a third.",
	"first-state.same-item-how": "Photograph the serial number and the marks named in the departure record.",
	"first-state.untouched-yes": "Nothing was mended, flashed, cleaned or taken apart before the test.",
	"first-state.untouched-no": "It is not recorded that nothing was done to it before the test.",
	"first-state.first-attempt-yes": "The first power-on since delivery is recorded.",
	"first-state.first-attempt-no": "Earlier attempts to power it are not excluded.",
	"first-state.soon-yes": "It was tested within 48 hours of coming in hand.",
	"first-state.soon-no": "It was tested later than 48 hours after coming in hand, or the times are not recorded.",
	"first-state.dry-yes": "It had time to warm up, and no moisture was seen.",
	"first-state.dry-no":
		"Moisture at the first power-on is not excluded: it was seen, not looked for, or the wait is not recorded.",
	"first-state.bench-good-yes":
		"Another item known to be good worked there before and after: supply, leads and screen are fine.",
	"first-state.bench-good-no": "A fault of the supply, the leads, the slot or the screen there is not excluded.",
	"first-state.bench-good-how":
		"With the power off, try another item that is known to be good in the same place, and write it down.",
	"first-state.other-computer-yes": "It was tried in two computers.",
	"first-state.other-computer-no": "It was tried in one computer: that the two do not fit each other is not excluded.",
	"first-state.other-computer-how":
		"If no stop sign was seen, try it in a second computer of another make. A friend's will do.",
	"first-state.set-up-recorded-yes": "Computer, slot, supply and driver are recorded.",
	"first-state.set-up-recorded-no": "What it was tried in is not fully recorded.",
	"first-state.set-up-recorded-how": "Write down the computer, the slot, the supply and the driver.",
	"first-state.filmed-yes": "Unpacking was filmed.",
	"first-state.filmed-no": "Unpacking was not filmed. What happened before the first photo rests on what people say.",
	"first-state.tested-no": "It was not powered. How it works is not known.",
	"first-state.tested-how":
		"Test it when it is dry and looks sound, or agree on a neutral bench: send it on in the closed bag.",

	"first-state.none": "There is no first state yet: what was seen stands, how it works is not known.",
	"first-state.void-item": "The two records name different items, so this is no first state of the item that left.",
	"first-state.void-work": "Work was done before the test, so this does not show the state in which it came.",
	"first-state.weak-bench": "It did not work there, and the bench there was not shown to be good.",
	"first-state.weak-computer": "It did not work on this one computer.",
	"first-state.weak-marks": "Too few marks were compared to be sure that it is the same item.",
	"first-state.fair": "A fair first state: one of time, film, first attempt or set-up is not recorded.",
	"first-state.full": "A full first state.",

	"first-state.grade-full": "full",
	"first-state.grade-fair": "fair",
	"first-state.grade-weak": "weak",
	"first-state.grade-void": "void",
	"first-state.grade-none": "none yet",
} as const;
