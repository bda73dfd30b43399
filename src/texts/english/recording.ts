/** Transit recordings: what a recorder that travelled with the item noted, and how little or much of it says something. */
export const recording = {
	"recording.peak-on-inner-box":
		"The recorder sat on the inner box. Between it and the item lies a cushion: its peak is not the item's.",
	"recording.peak-on-outer-box":
		"The recorder sat on the outer box. The cushion lies between the box and the item: the peak on the box says nothing of the item's peak.",
	"recording.peak-in-cushion":
		"The recorder sat in the cushion, where it moves with neither the box nor the item: its peak is not the item's.",
	"recording.peak-not-known":
		"It is not known where the recorder sat, so its peak is not set against the item's limit.",
	"recording.peak-phone":
		"A phone recorded it. Its sensor filters and ends at a range that nobody states, so its peaks are not taken.",
	"recording.no-pack": "No pack was sealed for this leg, so there is no limit to set it against.",
	"recording.no-height": "The sealed pack gave no height that it protects from.",
	"recording.peak-above":
		"{peakGn} gₙ was recorded on the item; the pack was judged with a limit of {limitGn} gₙ. Whether the item still works is told by its checks.",
	"recording.peak-open":
		"At least {peakGn} gₙ on the item, below the limit of {limitGn} gₙ; the true peak may be higher, so it is not decided.",
	"recording.peak-below": "{peakGn} gₙ on the item, within the limit of {limitGn} gₙ that the pack was judged with.",
	"recording.drop-in-cushion": "In the cushion the change of velocity is neither the box's nor the item's.",
	"recording.drop-not-known": "It is not known where the recorder sat, and no free fall was seen.",
	"recording.drop-phone": "A phone recorded it, and no free fall was seen: its change of velocity is not taken.",
	"recording.fall-above":
		"It fell freely for as long as a drop of {lowM} to {highM} m takes; the pack protects from {protectedM} m.",
	"recording.fall-below":
		"It fell freely for as long as a drop of {lowM} to {highM} m takes, within the {protectedM} m that the pack protects from.",
	"recording.fall-open":
		"It fell freely for as long as a drop of {lowM} to {highM} m takes; the {protectedM} m that the pack protects from lie between.",
	"recording.equivalent-above":
		"The change of velocity equals a drop of {lowM} m with full rebound to {highM} m with none, more than the {protectedM} m that the pack protects from. No free fall was seen: a kick or a toss does the same.",
	"recording.equivalent-below":
		"The change of velocity equals a drop of {lowM} m with full rebound to {highM} m with none, within the {protectedM} m that the pack protects from.",
	"recording.equivalent-open":
		"The change of velocity equals a drop of {lowM} m with full rebound to {highM} m with none, and what was recorded may be a lower bound; it is not decided against the {protectedM} m that the pack protects from.",

	"recording.place-no-clock": "The file counts from its own beginning, and nobody said when that was.",
	"recording.place-clock-not-known": "Nobody said how far the recorder's clock may be off.",
	"recording.place-no-line": "The order has no two records yet between which it could lie.",
	"recording.place-in-span": "It lies in this span, whatever the clock's error.",
	"recording.place-in-one-of": "By the clock's error it lies in one of these spans.",
	"recording.place-in-or-outside":
		"By the clock's error it lies in this span, or before or after all that is recorded.",
	"recording.place-outside": "It lies before or after all spans between the records.",

	"recording.says-on-item": "On the item: peaks are the item's own, and can be set against its limit.",
	"recording.says-on-inner-box": "On the inner box: drops can be set against the pack; peaks are not the item's.",
	"recording.says-on-outer-box":
		"On the outer box: drops can be set against the pack; of the item's peak it says nothing, since the cushion lies between.",
	"recording.says-in-cushion":
		"In the cushion: only the time of a free fall says something; peaks belong to neither the box nor the item.",
	"recording.says-not-known": "Nobody knows where it sat: only the time of a free fall says something.",
	"recording.note-phone":
		"A phone may time a fall. Its peaks are not taken: its sensor filters and clips as nobody states.",
	"recording.note-axes":
		"{axes} of three axes: a shock from another side shows only its share, so peaks are lower bounds.",
	"recording.note-no-full-scale":
		"The recorder's full scale is not known, so it is not known whether a peak was clipped.",
	"recording.note-gaps": "{gaps} stretches of time have no samples. What happened in them is not in this file.",
	"recording.note-kept": "{found} impacts reached the threshold; the {kept} greatest are kept.",
	"recording.note-cut": "Line {line} has no end and was left out; what follows is missing.",
	"recording.supports":
		"A recorded impact says that the recorder met a shock of this size, by its clock, where it sat. It does not say that the item changed there: that is told by the records before and after. A file without impacts says the same of its own place and time, and no more.",
} as const;
