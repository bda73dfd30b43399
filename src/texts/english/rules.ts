/** The page of the rules on claims and of how old their texts are. */
export const rules = {
	"rules.title": "Rules on claims, and how old their texts are",
	"rules.lead":
		"Every rule from which this service computes dates and limits of claims, what was only recalled first, then by the state of the text it was taken from. Laws change: look a rule up before you rely on it. General information, not legal advice.",
	"rules.oldest": "The oldest text with a date: {document}, in the state of {date}.",
	"rules.rests.recalled": "Recalled, not read ({count})",
	"rules.rests.undated": "Quoted by others, or read without a date ({count})",
	"rules.rests.old": "Read in a state of more than three years ago ({count})",
	"rules.rests.read": "Read in a later state ({count})",
	"rules.rule": "Rule",
	"rules.limit": "Limit of what is paid",
	"rules.state": "State of the copy",
	"rules.no-date": "no dated copy of this article was read",
	"rules.back": "Back to the order",
	"rules.sdr-per-kg": "{sdr} special drawing rights per kg",
	"rules.sdr-per-kg-from": "{sdr} special drawing rights per kg from {from}",
	"rules.sdr-per-parcel": "{base} special drawing rights per parcel and {sdr} per kg",
	"rules.money-per-kg": "{amount} {currency} per kg",
	"rules.money-most": "at most {amount} {currency} per parcel",
	"rules.no-limit": "the text read names no amount",
	"rules.link": "All rules, and how old their texts are",
} as const;
