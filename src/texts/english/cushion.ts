/** Notes on cushions. */
export const cushion = {
	"cushion.unknown-foam":
		"The foam is not known. Its thickness alone sets a floor that no cushion can beat; whether this one comes near it is not known.",
	"cushion.temperature-range": "The foam's data reach from {low} to {high} °C.",
	"cushion.outside-energy":
		"The energy density of {energy} kJ/m³ lies outside the checked range of {low} to {high} kJ/m³.",
	"cushion.outside-thickness": "The thickness lies outside the range of the foam's data, {low} to {high} mm.",
	"cushion.outside-thin": "The foam's data begin at a thickness of {low} mm.",
	"cushion.crushed": "At this energy the foam is crushed flat: the peak is beyond what its model can give.",
	"cushion.unlikely-set":
		"A least cushion factor of {factor} is better than any measured foam: check the units and digits of the set.",
	"cushion.outside-temperature": "The foam's data are for {low} to {high} °C.",
	"cushion.locked": "At this energy the set would strain the foam to more than its own thickness.",
	"cushion.note-plank": "The unit of the published set is inferred.",
	"cushion.note-memory": "The curve is recalled, not read: confirm it with the supplier's curve or test drops.",
	"cushion.note-derived": "The set is derived from other data, with a remembered factor in it.",
	"cushion.note-own": "Your own set, without a prediction interval.",
	"cushion.fit-impossible-point":
		"Point {number} has a cushion factor below 1, which no foam can reach: check its units and digits.",
	"cushion.fit-mixed-drops": "First and later drops are mixed. Fit them apart.",
	"cushion.fit-one-energy": "All points have the same energy density. Add one at another stress, height or thickness.",
	"cushion.fit-not-rising": "The stress does not rise with the energy: check the points.",
	"cushion.fit-impossible-set": "The fit would give a cushion factor below 1, which no foam can reach.",
	"cushion.fit-two-points": "Two points fit any set exactly, so nothing is known of how well it holds.",
	"cushion.fit-unlikely": "A least cushion factor of {factor} is better than any measured foam: check the points.",
	"cushion.filler-bubble":
		"Bubble film is no primary cushion: no curve of it could be read, it charges boards, and it bursts under small pads.",
	"cushion.filler-air-pillow":
		"Air pillows are no primary cushion: no curve of them could be read, and one that leaks holds nothing.",
	"cushion.filler-paper":
		"Crumpled paper is no primary cushion: no curve of it could be read, and it stays crushed after the first drop.",
	"cushion.filler-loose": "Loose fill is filler, no primary cushion: the item sinks through it on its way.",
	"cushion.filler-insert":
		"A moulded insert of the shop's box is no primary cushion for another item or a second trip: no curve of it is known.",
	"cushion.note-points": "Fitted to your own points; the band is the prediction interval of one further drop.",
	"cushion.note-two-points": "Fitted to two points, which any set meets: nothing is known of how well it holds.",
} as const;
