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

	"drops.title": "A foam by drops of your own",
	"drops.text":
		"A dummy of known mass falls on a sample of the foam, a recorder on the dummy. Its table becomes points of the foam's curve, for the stock.",
	"drops.caution":
		"A falling mass crushes fingers and feet. Guide it, keep hands and bystanders away, and raise it only when the place below is clear.",
	"drops.rules":
		"What is needed: a full scale of 1.5 times the peak, ten samples in the pulse, three drops at each of two energies at least. First drops on fresh samples and later drops on used ones are fitted apart. A phone is refused.",
	"drops.file": "The recorder's table, all drops in order",
	"drops.file-hint":
		"CSV; its header must name the units, such as time [s], z [g]. Files that were read before are known.",
	"drops.thickness": "Thickness",
	"drops.length": "Sample's length",
	"drops.width": "Sample's width",
	"drops.temperature-of-foam": "Temperature of the foam",
	"drops.full-scale": "Full scale of the recorder",
	"drops.lines": "The drops, one a line",
	"drops.lines-hint": "Mass in kg; height in mm; which drop on this sample. For example 1,2; 500; 1",
	"drops.judge": "Judge the drops",
	"drops.no-units": "The header does not say which column is what in which unit.",
	"drops.bad-line": "Line {line} is not mass; height; number.",
	"drops.table": "The drops",
	"drops.stress": "Static stress",
	"drops.peak": "Peak",
	"drops.samples": "Samples",
	"drops.outcome": "Outcome",
	"drops.taken": "taken",
	"drops.first": "First drops",
	"drops.later": "Later drops",
	"drops.fit": "{count} points: a = {a} kPa, b = {b} 1/kPa, least cushion factor {least}.",
	"drops.not-above": "This must be greater than {least}.",
	"drops.keep": "Keep in the stock",
} as const;
