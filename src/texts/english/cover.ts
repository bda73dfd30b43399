/** What the carrier pays at most, while something can still be done about it. */
export const cover = {
	"cover.title": "What the carrier pays at most",
	"cover.lead": "Before the parcel leaves, a declared value, an insurance or a better pack can still be chosen.",
	"cover.no-rule": "For this law of carriage no limit is known here: ask for the terms of the contract.",
	"cover.no-mass": "Without the parcel's gross mass no limit can be said: note it with the leg.",
	"cover.limit": "Limit",
	"cover.sdr": "{sdr} special drawing rights",
	"cover.share": "{percent} % of the value of {amount} {currency}",
	"cover.mass": "Gross mass at which the limit reaches the value",
	"cover.source": "Source",
	"cover.declared": "Declared value",
	"cover.insured": "Insured value",
	"cover.none-noted": "none noted",
	"cover.average": "Damage on average",
	"cover.average-of":
		"{amount} {currency} per leg, if 16 of 3,234 parcels are damaged as in one study of any goods; for electronics no rate was found. An insurance that costs much more is bought for peace of mind.",
	"cover.packing": "Better packing",
	"cover.packing-of":
		"At {cost} {currency} more it pays if it lowers the chance of damage by {points} percentage points or more.",
	"cover.rate": "Price of one special drawing right",
	"cover.rate-hint":
		"In the currency of the item's value, on the day that counts. The International Monetary Fund publishes it.",
	"cover.line": "The carrier pays at most {amount} {currency}, {percent} % of the value, if no more is declared.",
	"cover.line-declared":
		"A value of {declared} is noted as declared. If the carrier did not agree to it, it pays at most {amount} {currency}, {percent} % of the value.",
	"cover.declared-counts":
		"A value of {declared} is noted as declared. It takes the place of the limit where the carrier agreed to it; look into the contract and its receipt.",
	"cover.line-sdr": "The carrier pays at most {sdr} special drawing rights, if no more is declared.",
	"cover.line-insured": "Insured for {amount} {currency}.",
	"cover.recalled": "This limit was recalled and not read.",
} as const;
