/** What is said about packs: drops, cushions, static, condensation. */
export const packaging = {
	"shock.points-not-rising": "The points are not in rising time.",
	"drop.mass-above": "The table ends below {massKg} kg.",
	"drop.too-large": "The table covers packs whose longest side is below {largestM} m.",
	"drop.per-drop":
		"Percentiles that were measured are per drop, not per trip. A trip has several drops, so a trip exceeds them more often.",
	"packaging.no-cushion": "The {face} has no cushion.",
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
	"packaging.pads-exceed-face":
		"The pads on the {face} are larger than the face itself, so the whole face was taken as bearing area.",
	"packaging.first-drop-set":
		"The curve on the {face} is for a first drop. A trip has several drops: take the curve for the mean of drops 2 to 5.",
	"packaging.protected-outside":
		"The drop that this pack protects to lies outside the data of the foam on the {face}: take it as a hint, not as a value.",
	"packaging.most-on-corners":
		"Most impacts that recorders saw were on edges and corners: 93 % in one parcel network, 44 % in another. So that check stands first.",
	"packaging.corner-bare": "A face has no cushion, so neither have its edges and corners.",
	"packaging.corner-unknown": "A foam is not known, so nothing can be said of edges and corners.",
	"packaging.corner-crushed":
		"On {where} the foam is crushed flat at this drop: the peak is beyond what its model can give, and {limitGn} gₙ are allowed.",
	"packaging.corner-short":
		"Falling on {where} the peak is {peakGn} gₙ where {limitGn} gₙ are allowed; the band goes from {lowGn} to {highGn} gₙ. By a derived rule that nobody has validated.",
	"packaging.corner-first-drop":
		"Falling on {where} the first drop would peak at {peakGn} gₙ, but this foam is known for its first drop only.",
	"packaging.corner-marginal":
		"Falling on {where} the peak of {peakGn} gₙ keeps the limit of {limitGn} gₙ, but not at the upper edge of its band, {highGn} gₙ. By a derived rule that nobody has validated.",
	"packaging.corner-holds":
		"Falling on {where}, the worst edge or corner, the peak of {peakGn} gₙ, at worst {highGn} gₙ, keeps the limit of {limitGn} gₙ. By a derived rule that nobody has validated.",
	"packaging.corner-measured":
		"Dropped on a corner with a recorder, {count} times, it peaked at {peakGn} gₙ where {limitGn} gₙ are allowed.",
	"packaging.corner-measured-short":
		"Dropped on a corner with a recorder, it peaked at {peakGn} gₙ where {limitGn} gₙ are allowed.",
	"packaging.mend-corner":
		"Thicker cushions, or pads of another size, where three faces meet; then a corner drop with a recorder.",
	"packaging.mend-corner-drop":
		"Drop this pack on a corner, with a recorder on a dummy of this mass, from the design drop or higher, sampled at 1000 Hz or more, and enter the peak.",
	"packaging.first-drop-only":
		"On the {face} the first drop would peak at {peakGn} gₙ, but this foam is known for its first drop only, and a trip has several.",
	"packaging.mend-later-drops": "Take a foam whose curve for the mean of drops 2 to 5 is known.",
	"packaging.mend-known-foam": "Use foams whose curves are known on every face.",
	"packaging.bottoming-unknown": "A foam is not known, so nothing can be said of how far it is crushed.",
	"packaging.bottoming-locked": "On the {face} the foam is crushed to its whole thickness in a drop of {designM} m.",
	"packaging.bottoming-unsupported":
		"On the {face} the foam works beyond its optimum, where it hardens, at {percent} % of the highest energy that its data cover: not supported by data.",
	"packaging.bottoming-holds":
		"On the {face}, the most pressed, the foam works beyond its optimum, at {percent} % of the highest energy that its data cover.",
	"packaging.bottoming-soft":
		"No foam works beyond its optimum in a drop of {designM} m; the most pressed is that on the {face}, at {percent} % of the highest energy that its data cover.",
	"packaging.mend-bottoming": "On the {face}: larger pads, a thicker or a stiffer foam.",
	"packaging.lined":
		"No pad stands free. Foam over a whole face lines the box from wall to wall, and the walls hold it; the rule against buckling is for pads.",
	"packaging.no-pads": "There is no pad.",
	"packaging.buckles":
		"A pad on the {face} of {areaCm2} cm² is too slender for its thickness: it buckles unless it has more than {leastCm2} cm².",
	"packaging.no-buckling": "The slenderest pad, on the {face}, has {areaCm2} cm²; more than {leastCm2} cm² are needed.",
	"packaging.mend-buckling": "Pads of more than {leastCm2} cm² each: fewer and larger, or thinner.",
	"packaging.creep-unknown": "For a foam of this pack no limit against creep is known.",
	"packaging.creep-hot":
		"The stress of {stress} kPa on the {face} keeps the limit of {limitKPa} kPa, but that holds up to {warmDegC} °C only; the trip gets warmer.",
	"packaging.creeps":
		"On the {face} {stress} kPa rest on the foam; beyond {limitKPa} kPa it loses more than a tenth of its thickness with time.",
	"packaging.no-creep": "At most {stress} kPa rest on a foam, on the {face}; {limitKPa} kPa are allowed against creep.",
	"packaging.mend-creep": "Larger pads, a stiffer foam, or a cooler trip.",
	"packaging.mend-creep-data": "Ask the supplier for the static stress at which the foam creeps by less than a tenth.",
	"packaging.no-temperatures": "The temperatures of the trip are not given.",
	"packaging.mend-temperatures": "Give the lowest and the highest temperature of the trip.",
	"packaging.temperature-unknown": "A foam is not known, so nothing can be said of it in cold and heat.",
	"packaging.temperature-outside":
		"A foam of this pack is known from {lowDegC} to {highDegC} °C only, and the trip goes beyond.",
	"packaging.temperature-uncovered":
		"In cold and heat the peak would be {peakGn} gₙ at most, below {limitGn} gₙ, but this lies outside the range of the foam's data.",
	"packaging.temperature-short":
		"On the {face} at {atDegC} °C the peak is up to {highGn} gₙ, nominally {peakGn} gₙ, where {limitGn} gₙ are allowed.",
	"packaging.temperature-holds":
		"At both ends of the trip's temperatures the peak stays at {peakGn} gₙ, at worst {highGn} gₙ (on the {face} at {atDegC} °C); {limitGn} gₙ are allowed.",
	"packaging.mend-temperature": "A foam with data for these temperatures, or more margin at room temperature.",
	"packaging.fits":
		"Item and cushions fit. The least distance to the outside is {clearanceMm} mm; the trade advises {advisedMm} mm, which is no substitute for a cushion curve.",
	"packaging.fit-pressed":
		"Closed, the cushions are pressed by {percent} % of their thickness. The least distance to the outside is {clearanceMm} mm; the trade advises {advisedMm} mm.",
	"packaging.fit-short":
		"Item and cushions do not fit: the cushions would be pressed by {percent} % of their thickness.",
	"packaging.mend-fit":
		"Take a larger box, or cushions that fit without being pressed; thinner ones only if every check still holds.",
	"packaging.moves": "There are {slackMm} mm of play along an axis; {playMm} mm count as none.",
	"packaging.still": "The item has {slackMm} mm of play at most; {playMm} mm count as none.",
	"packaging.mend-movement": "Fill the play with the cushions' own foam until nothing moves when the box is shaken.",
	"packaging.no-board-frequency": "The board's natural frequency is not known.",
	"packaging.mend-board-frequency": "Describe the board with its plate, or give its measured frequency.",
	"packaging.no-cushion-frequency": "A cushion has no peak, so no frequency follows from it.",
	"packaging.resonates":
		"The cushion on the {face} swings at about {cushionHz} Hz and the board at {boardHz} Hz: less than an octave apart. The profile of the trip would make {responseGnRms} gₙ rms of it.",
	"packaging.apart":
		"The cushions, the nearest at about {cushionHz} Hz on the {face}, and the board at {boardHz} Hz are an octave apart. The profile of the trip makes {responseGnRms} gₙ rms of both.",
	"packaging.mend-resonance": "A softer cushion, or the board held in more places.",
	"packaging.no-board-data": "Edge crush and thickness of the box's board are not given.",
	"packaging.mend-board-data": "Read the edge crush from the box maker's stamp and measure the board's thickness.",
	"packaging.box-short":
		"After the days and the humidity of the trip the box carries {strengthN} N; a stack of {stackM} m in a vehicle loads it with {loadN} N.",
	"packaging.box-outside":
		"The box would carry {strengthN} N against {loadN} N, but the trip is longer than the losses are known for.",
	"packaging.box-holds":
		"After the days and the humidity of the trip the box carries {strengthN} N; a stack of {stackM} m in a vehicle loads it with {loadN} N.",
	"packaging.mend-box": "A new box, of a stronger board, or double wall.",
	"packaging.no-barrier":
		"There is no moisture barrier. A finished board that is only powered needs none; one that is to be soldered does.",
	"packaging.barrier-open": "The moisture barrier is not sealed or not intact: no pouch of desiccant helps then.",
	"packaging.mend-barrier":
		"Where dryness matters: a moisture barrier bag, heat-sealed, with desiccant and an indicator card.",
	"packaging.no-desiccant": "How much desiccant is in the barrier is not given.",
	"packaging.mend-desiccant": "A pouch of {units} units in the barrier is enough.",
	"packaging.desiccant-short": "{given} units of desiccant are in the barrier; {units} are needed.",
	"packaging.desiccant-holds": "{given} units of desiccant are in the barrier; {units} are needed.",
	"packaging.mend-paper":
		"Keep paper and card outside the barrier: they hold far more water than the air in it or what comes through.",
	"packaging.no-cell": "The item carries no cell.",
	"packaging.cell-no-layer": "Nothing is said of the layer that touches the item.",
	"packaging.cell-shorted": "A conductive layer touches an item that carries a cell: it discharges it and may heat it.",
	"packaging.cell-apart": "The layer that touches the item is not conductive.",
	"packaging.mend-cell": "Put a dissipative wrap between the item and any conductive layer.",
	"packaging.no-cooler": "No heavy cooler is described.",
	"packaging.cooler-supported":
		"At the peak of {peakGn} gₙ the cooler pulls with {forceN} N, a moment of about {momentNm} N·m, on what supports it. No limit for that was found.",
	"packaging.cooler-light":
		"At the peak of {peakGn} gₙ the cooler pulls on the board with {forceN} N, a moment of about {momentNm} N·m. A desktop board passed {levelN} N; no limit for this one is known.",
	"packaging.cooler-short":
		"At the peak of {peakGn} gₙ the cooler pulls on the board with {forceN} N, a moment of about {momentNm} N·m, more than the {levelN} N that a desktop board passed.",
	"packaging.mend-cooler":
		"Let the cushion or a bracket bear the cooler itself, not only the board, and block it in every direction.",
	"packaging.no-cover": "The item's value or what the carrier pays at most is not given.",
	"packaging.cover-currency": "The value is in {value} and the cap in {cap}.",
	"packaging.mend-cover-data": "Give both, in the same currency.",
	"packaging.covered": "The carrier pays {cap} {currency} at most; the item is worth {value} {currency}.",
	"packaging.uncovered": "The carrier pays {cap} {currency} at most; the item is worth {value} {currency}.",
	"packaging.mend-cover": "Declare a value or insure the trip.",
	"packaging.layers-in-a-row":
		"Layers in a row were taken to share one force. That is derived, so such a face is provisional at best.",
	"packaging.velocity-harmless":
		"Even with full rebound, a drop below {harmlessM} m does not reach the change of velocity that can harm the item; the design drop is {designM} m.",
	"packaging.velocity-reached":
		"A drop below {harmlessM} m cannot reach the change of velocity that harms the item; the design drop of {designM} m may.",
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
