/** Sentences of the comparison: what two records say beside each other. They describe readings, never a person's part in them. */
export const comparison = {
	"comparison.tested-at-neither-end": "It was not tested at either end.",
	"comparison.not-tested-at-departure": "It was not tested before dispatch, so there is nothing to compare with.",
	"comparison.not-tested-on-arrival": "It was not tested on arrival. That is not a failure.",

	"comparison.other-instrument":
		"Two different instruments were used. A reading of this kind depends on the instrument, so the two cannot be compared.",
	"comparison.instrument-unknown":
		"At one end the instrument is not recorded. A reading of this kind can only be compared with the same instrument.",
	"comparison.other-bench":
		"The two readings come from different benches. A reading of this kind depends on the whole set-up, so the two cannot be compared.",
	"comparison.bench-unknown":
		"At one end the bench is not recorded. A reading of this kind can only be compared on the same bench.",
	"comparison.no-uncertainty-stated":
		"At one end the accuracy of the instrument is not recorded, so the two readings cannot be compared.",
	"comparison.no-exposure":
		"At one end it is not recorded for how long it was counted, so the rates cannot be compared.",
	"comparison.other-exposure":
		"The two ends counted over different kinds of exposure, so the rates cannot be compared.",
	"comparison.other-condition":
		"The reading was taken under another condition than this check asks for, so it does not answer it.",
	"comparison.other-unit": "The two ends recorded it in units that do not convert into each other.",
	"comparison.other-definition": "The two ends recorded different checks under this number.",
	"comparison.other-driver": "The bench is the same, but the driver is not, so the two cannot be compared.",
	"comparison.other-firmware": "The bench is the same, but the firmware is not, so the two cannot be compared.",
	"comparison.other-ambient":
		"The bench is the same, but the room was warmer at one end, so the two cannot be compared.",

	"comparison.within-margin": "The difference, with its uncertainty, lies inside the margin of {margin}{unit}.",
	"comparison.equal": "The two readings are equal.",
	"comparison.beyond-uncertainty":
		"The readings lie {difference}{unit} apart, more than the uncertainty of the difference, {uncertainty}{unit}.",
	"comparison.within-uncertainty":
		"The readings lie {difference}{unit} apart, and the uncertainty of the difference is {uncertainty}{unit}. That shows neither a change nor that there is none.",
	"comparison.spread-unknown":
		"The accuracy is not recorded at both ends, and repeats do not show it. Whether the difference means anything cannot be said.",

	"comparison.rates-differ":
		"{departure} in {departureExposure} {unit} before dispatch, {arrival} in {arrivalExposure} {unit} on arrival. Chance alone would hardly give two counts so far apart.",
	"comparison.rates-open":
		"{departure} in {departureExposure} {unit} before dispatch, {arrival} in {arrivalExposure} {unit} on arrival. Counts as small as these do not show whether the rate changed.",
	"comparison.shares-differ":
		"{departure} of {departureTrials} attempts went well before dispatch, {arrival} of {arrivalTrials} on arrival. Chance alone would hardly give two results so far apart.",
	"comparison.shares-open":
		"{departure} of {departureTrials} attempts went well before dispatch, {arrival} of {arrivalTrials} on arrival. So few attempts do not show whether the share changed.",
	"comparison.scores-differ":
		"The scores, {departure} before dispatch and {arrival} on arrival, lie further apart than their scatter.",
	"comparison.scores-equivalent": "The scores, with their scatter, lie within {margin} of each other.",
	"comparison.scores-open":
		"The scores, {departure} before dispatch and {arrival} on arrival, lie within their scatter. That shows neither a change nor that there is none.",
	"comparison.no-spread": "The runs show no scatter to measure the difference by. More runs at each end would.",
	"comparison.adjusted":
		"By itself the difference would stand out, but {count} differences were tested together, and among so many one like it is expected by chance.",

	"comparison.nothing-found": "Nothing was found at either end.",
	"comparison.found-on-arrival": "Found on arrival, and not before dispatch.",
	"comparison.found-at-departure-only": "Found before dispatch, and not on arrival.",
	"comparison.found-at-both": "Found at both ends.",

	"comparison.note-bursts":
		"The test takes the events as independent. If errors come in bursts, count each burst once.",
	"comparison.note-resolution-only":
		"Of one instrument only the smallest step is known, not its accuracy. The uncertainty is then too small.",
	"comparison.note-bursts-counted": "Events that came together were counted as one burst.",
	"comparison.note-few-runs":
		"Fewer than four runs at one end: how far runs scatter is hardly known, and only large differences can show.",
	"comparison.note-control": "This rests on the control item itself being unchanged between the two benches.",

	"comparison.ratio-within": "The ratio, {low} to {high} with its uncertainty, lies within {percent} % of one.",
	"comparison.ratio-differs": "The ratio is {ratio}, and with its uncertainty, {low} to {high}, it leaves one out.",
	"comparison.ratio-undecided":
		"The ratio is {ratio}, with its uncertainty {low} to {high}. That shows neither a change nor that there is none.",
	"comparison.ratio-open": "One value can not be told from zero, so their ratio has no bounds.",

	"comparison.control-not-for-counts":
		"The two readings come from different benches, and a control item does not make counts or starts comparable.",
	"comparison.control-not-measured":
		"The two readings come from different benches, and the control item was not measured on both.",
	"comparison.control-other-bench":
		"The control item was measured on another bench than the item, so it does not join the two.",
	"comparison.control-no-spread":
		"The control item was measured, but the runs show no scatter to measure the difference by. More runs on each bench would.",
	"comparison.control-within":
		"Held against the control item, the ratio is {low} to {high} and lies within {percent} % of one.",
	"comparison.control-differs":
		"Held against the control item, which shows what the benches differ by, the ratio is {ratio}, {low} to {high} with its scatter.",
	"comparison.control-undecided":
		"Held against the control item, the ratio is {ratio}, {low} to {high} with its scatter. That shows neither a change nor that there is none.",

	"comparison.counter-rose": "The counter stood at {departure} before dispatch and at {arrival} on arrival.",
	"comparison.counter-same": "The counter stood at {arrival} at both ends.",
	"comparison.counter-fell":
		"The counter stood at {departure} before dispatch and at {arrival} on arrival. A counter of this kind never falls: it was reset, a part was exchanged, or this is another item.",
	"comparison.counter-full": "The counter stands where it stops counting, so a step can not be seen.",

	"comparison.outcome-compared": "The two records were compared check by check.",
	"comparison.outcome-identity-mismatch":
		"Marks that tell items apart differ, so the two records name different items. As long as that stands, what follows compares two items.",
	"comparison.outcome-no-departure": "There is no record from before dispatch, so nothing can be compared.",
	"comparison.outcome-not-tested":
		"Nothing was tested on arrival. That is not a failure; how the item works is not known yet.",
	"comparison.outcome-no-arrival": "There is no record from arrival yet.",
	"comparison.outcome-work-before":
		"Work was done on the item before it was first tested on arrival, so that record does not show the state in which it arrived.",
	"comparison.outcome-state-conflict":
		"On arrival something was good that was not good before dispatch. The two records do not fit together, so both are worth looking at again.",
	"comparison.outcome-moisture-hold":
		"Moisture was seen. Do not power the item; it must dry first. Tests made before that say little.",
} as const;
