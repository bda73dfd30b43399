/** Names of the checks, how each is done, and the cautions that stand beside it. */
export const checks = {
	"checks.mass": "Mass of the board",
	"checks.mass.hint":
		"Weigh the board alone, without bag, on a scale set to zero. Note the smallest step the scale shows.",
	"checks.visual-parts": "All parts there, none loose",
	"checks.visual-parts.hint":
		"Compare with the photos, if you have them. Look for gaps, tilted parts, and parts in the bag.",
	"checks.visual-cracks": "No cracks",
	"checks.visual-cracks.hint":
		"Look along the edges, at the corners of large chips and around the screw holes, in slanting light.",
	"checks.visual-burn-marks": "No burn marks, no burnt smell",
	"checks.visual-burn-marks.hint": "Look for brown or black spots and bubbles, and smell the board.",
	"checks.visual-liquid-marks": "No marks of liquid",
	"checks.visual-liquid-marks.hint":
		"Look for tide lines, white or green deposits, rust on screws, and a wet bag or card.",
	"checks.visual-connectors": "Connectors straight and clean",
	"checks.visual-connectors.hint": "Look into every connector: bent, missing or melted pins, broken latches.",
	"checks.visual-edge-contacts": "Edge contacts clean and whole",
	"checks.visual-edge-contacts.hint":
		"Look at both sides of the gold fingers: scratches, lifted or burnt contacts. Do not touch them.",
	"checks.visual-bracket": "Bracket and cover straight and tight",
	"checks.visual-bracket.hint": "Look whether the bracket is bent, the cover sits firm and all its screws are there.",
	"checks.visual-rattle": "Nothing rattles",
	"checks.visual-rattle.hint": "Hold the board with both hands and tilt it gently. Do not shake it.",
	"checks.visual-fan": "Every fan starts and turns",
	"checks.visual-fan.hint":
		"Watch each fan while the card is warm and under load. One that stands still is not as it should be.",

	"checks.resistance-core-rail": "Cold resistance, core rail to ground",
	"checks.resistance-memory-rail": "Cold resistance, memory rail to ground",
	"checks.resistance-12v-slot-rail": "Cold resistance, 12 V of the slot to ground",
	"checks.resistance-12v-auxiliary-rail": "Cold resistance, 12 V of the auxiliary connector to ground",
	"checks.resistance.hint":
		"Board out of the computer, without power for at least a minute, cooler fitted, at room temperature. Note the meter. Below 10 Ω null the leads first, and say so.",

	"checks.starts-cold": "Cold starts",
	"checks.starts-cold.hint":
		"How often it was started after cooling down to within 3 K of the room, and how often it started as it should. A large cooler needs some 20 minutes. After a transport the very first start counts here.",
	"checks.starts-warm": "Warm starts",
	"checks.starts-warm.hint": "How often it was started again while warm, and how often it started as it should.",
	"checks.link-width": "Link width under load",
	"checks.link-speed": "Link speed under load",
	"checks.link.hint":
		"Taken while the card is working: at rest a sound card may use fewer lanes and a lower speed. Best taken over from a diagnostic file that shows the whole path to the processor.",
	"checks.memory-errors": "Memory errors",
	"checks.memory-errors.hint":
		"How many errors a test of the whole memory found, and for how long it ran. Errors less than a second apart count as one. Stop at the first error and keep what the test says.",
	"checks.temperature-core": "Core temperature under load",
	"checks.temperature-core.hint":
		"After at least 30 minutes of steady load. Note the room temperature, and the limit that the card itself reports.",
	"checks.fan-speed": "Fan speed under load",
	"checks.fan-speed.hint": "As the card reports it, at the same load and room temperature.",
	"checks.score": "Score of a fixed workload",
	"checks.score.hint":
		"Three to five runs after a warm-up of at least five minutes; leave out the first. One run at each end shows nothing.",

	"checks.caution.static":
		"Static electricity can destroy parts without a mark. Touch grounded metal first, hold the board by its edges, and lay it on its bag or a grounded mat.",
	"checks.caution.loose-part": "A loose part that conducts can short the board. Do not power it; take photos and stop.",
	"checks.caution.wet":
		"Anything wet, or a deposit that liquid left: do not power the board. Photograph it before it dries.",
	"checks.caution.stop-sign":
		"Smell, smoke, unusual heat, a supply that trips, liquid, visible damage: switch off and do not try a second time.",
	"checks.caution.supply":
		"Switch off and unplug the power supply before you plug or unplug anything. Never open a power supply. Work on mains is for licensed people, by the rules of your place.",
	"checks.caution.meter":
		"Measure resistance only on a board without power, never on the mains side of anything. Parts can hold a charge for a minute or more.",
	"checks.caution.short": "Below 100 Ω on a 12 V input: do not power the board.",
	"checks.caution.hot":
		"The cooler and the back of the board become hot enough to burn. Let them cool before you touch them.",
	"checks.caution.fan": "Keep fingers, hair and cables away from turning fans.",
} as const;
