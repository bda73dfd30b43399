/** What an estimate of the risk of damage rests on. */
export const risk = {
	"risk.heights":
		"Heights and numbers of drops are those of two recorded parcel networks, heights lognormal through the 95th percentile and the highest of each.",
	"risk.independent":
		"Drops are independent of each other, their number varies by chance, and no drop weakens the item for the next.",
	"risk.orientation":
		"Faces, edges and corners strike in the shares of two studies that contradict each other; edges and corners by a derived rule that nobody has validated.",
	"risk.curve": "The foams' peaks lie somewhere in their bands.",
	"risk.strength-tested":
		"Half of such items are harmed at {gn} gₙ; from item to item that varies by a factor of e to the {low} to {high}, our choice.",
	"risk.strength-maker":
		"The maker's {gn} gₙ, a level passed, is taken as if half of such items were harmed at it, which is careful; from item to item that varies by a factor of e to the {low} to {high}, our choice.",
	"risk.only-drops":
		"Only drops are counted: no crush, no water, no vibration, no static, no fault that was there before.",
} as const;
