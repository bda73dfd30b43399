/** Notes on board strength, vibration, stacked boxes and desiccant. */
export const strength = {
	"strength.screen":
		"A screen only: the rule holds for thin, large boards with small parts. For a stiff board with large parts, such as a graphics card with a heavy cooler, it was criticised in print.",
	"strength.no-frequency":
		"Without the board's natural frequency no shock can be said: how the board is held decides it. See the list by frequency.",
	"strength.plate":
		"The frequency is that of a plain plate. The book's own table of boards differs from this formula by 3 to 9 %; parts and cooler are not in it.",
	"vibration.points-not-rising": "The points are not in rising frequency.",
	"vibration.profile-only": "The overall level of the profile alone: give a natural frequency for a response.",
	"vibration.outside-profile":
		"The natural frequency lies outside the profile, so the response at resonance is not given, only that over the profile's band.",
	"vibration.low-q":
		"The response at resonance is for lightly damped boards, an amplification over 10; here it is {q}.",
	"vibration.not-damage":
		"Equal overall levels are not equal damage: a published comparison found differences of up to a hundredfold.",
	"box.top-to-bottom": "For regular slotted boxes, loaded from top to bottom, standing squarely on each other.",
	"box.beyond-days": "The losses by time are known for {days} days at most; beyond, the last value was taken.",
	"box.flute-assumed": "No flute was given, so C was taken.",
	"desiccant.missing": "This rule needs: {members}.",
	"desiccant.humidity": "This rule has figures for a final humidity of {list} %.",
	"desiccant.sealed": "For a sealed barrier: no pouch helps a bag that is not sealed, or a plain shielding bag.",
	"desiccant.long-storage":
		"This rule is for long storage: it knows neither the barrier's quality nor the time, so it asks for much.",
	"desiccant.no-dunnage": "This rule does not count paper, card and foam inside the barrier.",
	"desiccant.paper":
		"Paper and card inside the barrier hold far more water than the air or the barrier lets in: keep them outside.",
} as const;
