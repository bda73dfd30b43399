/** Notes on recorded shocks. */
export const shock = {
	"shock.none": "The trace shows no acceleration.",
	"shock.filter-beyond":
		"A filter of class {filterClass} needs more than {filterClass} × 4.155 samples a second; the trace has {sampleRateHz}.",
	"shock.coarse":
		"Above {frequencyHz} Hz there are fewer than 10 samples to a period: the spectrum can lose more than 4.9 % of its peaks there.",
	"shock.clipped": "The trace was clipped: its peak and velocity change are lower bounds.",
	"shock.few-samples":
		"There are too few samples in the pulse: its peak and velocity change are not known to better than several percent.",
	"shock.cut-off":
		"The trace begins or ends above a tenth of its peak: duration and velocity change are lower bounds, and the spectrum takes the rest as zero.",
	"shock.no-baseline":
		"No samples before the shock were named, so no baseline was taken off. An offset of 0.5 gₙ over 100 ms adds 0.49 m/s.",
	"shock.no-full-scale": "The recorder's full scale is not given, so it is not known whether the trace was clipped.",
	"shock.velocity-apart":
		"The pulse changes the velocity by {velocityChangeMPerS} m/s, the whole trace by {wholeVelocityChangeMPerS} m/s: there are more shocks in it, or it drifts.",
	"shock.single-axis":
		"One axis shows only its share of the shock: the recorder may have been struck from another side.",
	"shock.height-range":
		"The equivalent drop depends fourfold on the rebound, and a kick or a toss makes a pulse as well: it is a range, never one height.",
	"shock.same-class": "Filtered with class {filterClass}: compare only with traces of the same class.",
} as const;
