/** A foam characterised by the shop's own drops. */
export const drops = {
	"drops.phone":
		"A phone is refused for peaks: its sensor filters and ends at a range that nobody states. It may time a fall, no more.",
	"drops.no-shock": "The trace shows no shock.",
	"drops.clipped": "The recorder was at its full scale.",
	"drops.range": "The full scale of {fullScaleGn} gₙ is less than 1.5 times the peak of {peakGn} gₙ.",
	"drops.few-samples": "{samples} samples in the pulse are too few: ten are the least.",
	"drops.velocity":
		"The change of velocity is {ratio} times that of the fall; without rebound it is 1, with full rebound 2. Look at the height, the baseline and the axes.",
	"drops.impossible": "{peakGn} gₙ is less than any cushion of this thickness can do from this height.",
	"drops.few": "Three drops at each of two energies are the least; {enough} energies have three.",
	"drops.temperature": "The points hold at {temperatureDegC} °C; foams are stiffer in the cold.",
} as const;
