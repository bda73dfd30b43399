/** What is said about packs: drops, cushions, static, condensation. */
export const packaging = {
	"shock.points-not-rising": "The points are not in rising time.",
	"drop.mass-above": "The table ends below {massKg} kg.",
	"drop.too-large": "The table covers packs whose longest side is below {largestM} m.",
	"drop.per-drop":
		"Percentiles that were measured are per drop, not per trip. A trip has several drops, so a trip exceeds them more often.",
	"packaging.no-cushion": "The {face} has no cushion.",
	"packaging.several-layers": "Several layers of foam on one face are not assessed yet.",
	"packaging.short":
		"On this face the peak is {peakGn} gₙ where {limitGn} gₙ are allowed; even the better edge of its band, {lowGn} gₙ, is too much.",
	"packaging.short-within-band":
		"On this face the peak is {peakGn} gₙ where {limitGn} gₙ are allowed. The band from {lowGn} to {highGn} gₙ reaches below the limit, so it may hold, but that is not shown.",
	"packaging.pad-too-large":
		"On this face the peak is {peakGn} gₙ where {limitGn} gₙ are allowed. The pad is too large for the weight: at this stress no thickness helps.",
	"packaging.floor-short":
		"Whatever foam it is: at this thickness no cushion can stay below {peakGn} gₙ, and {limitGn} gₙ are allowed.",
	"packaging.crushed":
		"The foam is crushed flat at this drop: the peak is beyond what its model can give, and {limitGn} gₙ are allowed.",
	"packaging.foam-unknown": "The foam is not known, so only its floor of {peakGn} gₙ can be said.",
	"packaging.outside-range":
		"The peak would be {peakGn} gₙ (band {lowGn} to {highGn}), below {limitGn} gₙ, but this lies outside the range of the foam's data.",
	"packaging.not-assessed": "Not assessed.",
	"packaging.marginal":
		"The peak of {peakGn} gₙ keeps the limit of {limitGn} gₙ, but not at the upper edge of its band, {highGn} gₙ.",
	"packaging.holds": "The peak of {peakGn} gₙ, at worst {highGn} gₙ, keeps the limit of {limitGn} gₙ.",
	"packaging.mend-cushion": "Put a cushion of a known foam on every face.",
	"packaging.mend-smaller-pads": "Use smaller pads, or a softer foam.",
	"packaging.mend-pads-of":
		"Use smaller pads, or a softer foam. With this foam and thickness, pads of together {leastCm2} to {mostCm2} cm² stay below the limit nominally.",
	"packaging.mend-unknown":
		"Use a foam whose curve is known. With the best of the catalogue at least {leastMm} mm are needed.",
	"packaging.mend-range": "Choose thickness and pad size so that the foam works inside its data.",
	"packaging.mend-thicker": "At this pad size at least {leastMm} mm are needed.",
	"packaging.mend-margin": "A thicker cushion, or a stress nearer to the lowest point of its curve, gives the margin.",
	"packaging.mend-worst-face": "Begin with the {face}: it is the weakest.",
	"packaging.no-protected-drop": "A face has no cushion that can be assessed, so the pack protects to no known drop.",
	"packaging.drop-short": "The pack protects to a drop of {dropHeightM} m; the design drop is {designM} m.",
	"packaging.drop-short-within-band":
		"The pack protects to a drop of {dropHeightM} m; the design drop is {designM} m. Its band reaches to {highM} m, so it may hold, but that is not shown.",
	"packaging.bound-short":
		"A foam is not known. Even so, the {face} cannot protect beyond a drop of {dropHeightM} m; the design drop is {designM} m.",
	"packaging.drop-outside":
		"The pack would protect to {dropHeightM} m, but a face lies outside the data of its foam, or its foam is not known.",
	"packaging.drop-marginal":
		"The pack protects to {dropHeightM} m where {designM} m are asked for, but its band begins at {lowM} m.",
	"packaging.drop-holds": "The pack protects to {dropHeightM} m, at worst {lowM} m; {designM} m are asked for.",
	"packaging.face-drops-only": "Flat drops only: most impacts recorded were on edges and corners, which come later.",
	"packaging.pads-exceed-face":
		"The pads on the {face} are larger than the face itself, so the whole face was taken as bearing area.",
	"packaging.first-drop-set":
		"The curve on the {face} is for a first drop. A trip has several drops: take the curve for the mean of drops 2 to 5.",
	"packaging.protected-outside":
		"The drop that this pack protects to lies outside the data of the foam on the {face}: take it as a hint, not as a value.",
	"packaging.later": "Not assessed, because this release does not make this check yet.",
	"packaging.caution-lithium":
		"Lithium cells are dangerous goods in the post: follow the carrier's rules, and never pack a swollen or damaged one.",
	"static.no-shielding":
		"No closed, intact layer shields against a discharge, which is needed outside a protected area.",
	"static.kitchen-foil": "Kitchen foil shorts cells and capacitors and proves no protection.",
	"static.shorts-cell": "A conductive layer touches an item that carries a cell.",
	"static.charging-contact": "Plain film or bubble wrap against the board charges it when it is taken off.",
	"static.insulating-contact": "The layer that touches the item insulates: a charge on it cannot flow away.",
	"static.declared": "It rests on the maker's word that the closed module is not sensitive.",
	"static.cap-connectors": "Its connectors must be capped.",
	"static.shield-unproven":
		"Nothing proves that the shielding layer shields: a data sheet or a measurement is missing.",
	"static.contact-unproven": "Nothing proves that the layer that touches the item does not charge it.",
	"static.pad-edges": "Sharp edges of bracket and cooler must be padded, so that they do not cut the shield.",
	"static.reused": "A bag that was used before needs a look for holes and creases, recorded.",
	"static.holds": "Low charging, dissipative contact and discharge shielding are all there.",
	"static.mend": "Close the item in an intact shielding bag that comes with a data sheet, sharp edges padded.",
	"static.caution-bench":
		"Take the item out only on an earthed mat, with an earthed wrist strap; never wear a strap when working on live equipment.",
	"condensation.wet": "Water was seen: leave it off, and let someone look at it who can.",
	"condensation.never":
		"In this room it never gets warm enough above the dew point: dry or warm the room first, not the parcel.",
	"condensation.no-time-constant": "How fast the parcel warms is not known.",
	"condensation.outside-range": "The dew point's formula holds for rooms from {low} to {high} °C.",
	"condensation.lower-bound":
		"The model was never checked against a measured box; the waits are longer than it says, by our choice.",
} as const;
