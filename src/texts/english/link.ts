/** Judgements of a card's link. */
export const link = {
	"link.ok": "The link runs at {speedGTPerS} GT/s on {width} lanes, all that the card is capable of.",
	"link.ok-idle-saving":
		"Under load the link runs at {speedGTPerS} GT/s on {width} lanes; what it gives up at idle is saving.",
	"link.ok-card-limit":
		"The link runs at {speedGTPerS} GT/s on {width} lanes, all that the card is capable of; the slot could carry more.",
	"link.slot-limited":
		"The link runs at {speedGTPerS} GT/s on {width} lanes: as much as the slot carries, less than the card's {cardSpeedGTPerS} GT/s on {cardWidth}.",
	"link.width-reduced":
		"Under load only {width} lanes run where the card is capable of {cardWidth} and what was seen of the slot would carry more.",
	"link.speed-reduced":
		"Under load the link runs at {speedGTPerS} GT/s where the card is capable of {cardSpeedGTPerS} GT/s and what was seen of the slot would carry more.",
	"link.unjudged-idle": "Only idle values were seen. Width and speed may both be reduced at idle to save power.",
	"link.unjudged-path-not-seen":
		"The device reports {speedGTPerS} GT/s on {width} lanes, but the path from the card to the root port was not seen, so the slowest point is not known.",
	"link.bus-lost": "The registers read all ones: the device does not answer on the bus.",
	"link.no-link-data": "Nothing was recorded of the link.",
	"link.unknown-speed": "{speedGTPerS} GT/s is not the speed of any generation, so it is not judged.",
} as const;
