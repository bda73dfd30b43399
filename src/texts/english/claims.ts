/** Times and amounts of claims, and insurance. General information: no sentence says what anybody owes. */
export const claims = {
	"claims.general":
		"General information, computed from the dates and amounts entered; not legal advice, and no lawyer stands behind it.",
	"claims.prevails":
		"The contract of carriage, mandatory local law and the court that decides come first; which law applies is your choice here.",
	"claims.outer-limits":
		"The dates are outer limits: act at once, and keep the proof of sending. Holidays are those of the set chosen; dates are local to the place of delivery.",
	"claims.consequences-differ":
		"What follows a missed date differs: it may only shift who has to prove something, or end the claim. Each date says which.",
	"claims.seller-apart":
		"A consumer's rights against the seller run apart from these dates, and are not lessened by them.",
	"claims.no-rule": "Of this regime no rule for this kind of damage was read.",
	"claims.no-holidays":
		"No holidays were given, so only Sundays, or weekends, were left out: the dates may be too early.",
	"claims.regions-differ":
		"Holidays differ between the regions of this country: without a region only those of the whole country were left out.",
	"claims.other-damage": "These rules are not about the kind of damage that was named: {rules}.",
	"claims.from-memory": "One of these rules was recalled and not read: look it up before relying on it.",
	"claims.reading-start-day-counts":
		"If the court's law counts the first day as well: the text does not say, and fixes no way of counting.",
	"claims.reading-sundays-count":
		"If Sundays count: the text leaves out holidays only, practice leaves out Sundays as well.",
	"claims.reading-day-after-posting-counts": "If the time begins with the day after posting and includes it.",
	"claims.reading-saturday-rolls": "If an end on a Saturday moves on as well (a law of 1963, recalled, not read).",
	"claims.reading-at-once-on-discovery": "At once when it is discovered: the number of days is only the outer limit.",
	"claims.reading-across-borders": "If sender and addressee are in two states.",
	"claims.reading-status-every-60-days": "Without a decision by then: a word on the state of things, every 60 days.",
	"claims.reading-doubtful-holiday": "If these days count as public holidays, which is not settled: {dates}.",
	"claims.reading-suspended": "If the time stood still from the claim until it was refused.",
	"claims.reading-suspended-documents":
		"If the time stood still from the written claim until it was refused in writing and its documents were returned.",

	"claims.what-cmr-dmg-apparent": "Reserve on delivery: say in general terms what is damaged.",
	"claims.what-cmr-dmg-concealed":
		"Written reserve on damage that could not be seen; Sundays and holidays do not count.",
	"claims.what-cmr-dmg-jointcheck":
		"Written reserve after both sides checked the goods together, on what could not be seen.",
	"claims.what-cmr-delay": "Written reserve on delay.",
	"claims.what-cmr-loss-presumed": "From then on goods that did not arrive may be treated as lost.",
	"claims.what-cmr-suit": "Court action.",
	"claims.what-mc99-dmg": "Written complaint about damage to cargo, as soon as it is discovered.",
	"claims.what-mc99-delay": "Written complaint about delay.",
	"claims.what-mc99-suit": "Court action; a letter of claim does not stop the time.",
	"claims.what-cim-apparent": "Have the carrier draw up a report before the goods are accepted.",
	"claims.what-cim-concealed":
		"Ask for the carrier's report as soon as the damage is discovered; it has to be shown when it arose.",
	"claims.what-cim-delay": "Claim for delay. The text read does not say from when: taken from acceptance.",
	"claims.what-cim-suit": "Court action.",
	"claims.what-upu-inquiry": "The sender's inquiry to the post.",
	"claims.what-upu-reserve": "Tell the delivering post without delay what was found after a delivery without remarks.",
	"claims.what-de-hgb438-1": "Notice on delivery, specific enough, to the person who delivers.",
	"claims.what-de-hgb438-2":
		"Notice of damage that could not be seen. That an end on a day off moves on is an analogy: keep to the safe date.",
	"claims.what-de-hgb438-3": "Notice of delay.",
	"claims.what-de-hgb424":
		"From then on goods that did not arrive may be treated as lost: the delivery period once more, at least 20 days.",
	"claims.what-de-hgb439": "Court action.",
	"claims.what-de-hgb451f-apparent": "Notice of damage to removal goods that could be seen.",
	"claims.what-de-hgb451f-concealed": "Notice of damage to removal goods that could not be seen.",
	"claims.what-de-hgb377":
		"Between businesses: inspect, and give notice to the seller, without undue delay; of hidden defects when they show.",
	"claims.what-de-bgb477":
		"A consumer's purchase: until then a defect that shows is presumed to have been there when the goods were handed over.",
	"claims.what-nl-bw8-road": "The articles read fix no time for a notice; the contract often does.",
	"claims.what-nl-bw8-road-suit": "Court action, within a year that begins with the day after delivery.",
	"claims.what-fr-l133-3": "Reasoned protest to the carrier.",
	"claims.what-fr-l224-65":
		"In place of the three days, where a consumer took the goods in person and the carrier cannot show that they could be checked.",
	"claims.what-fr-l133-6": "Court action (recalled, not read).",
	"claims.what-fr-post-parcel": "Claim to the post. The text read does not say from when: taken from posting.",
	"claims.what-fr-post-parcel-lost": "From then on a parcel that did not arrive counts as lost.",
	"claims.what-ch-or452": "Notice of damage that could not be seen, at once when it is discovered: eight full days.",
	"claims.what-ch-or454": "Court action.",
	"claims.what-uk-domestic":
		"Contract terms decide the time of a notice; they have to be fair to consumers (recalled).",
	"claims.what-uk-cra-22":
		"A consumer's short-term right to reject goods of a sale: 30 days beginning with the day after.",
	"claims.what-us-nmfc-300135":
		"Report of hidden damage with a request for inspection, confirmed in writing; keep box and contents as found.",
	"claims.what-us-carmack-claim": "Written claim with an amount; a contract may not give less than nine months.",
	"claims.what-us-carmack-suit":
		"Court action after the carrier's written refusal; a contract may not give less than two years.",
	"claims.what-us-370-5": "The carrier acknowledges the claim in writing.",
	"claims.what-us-370-9": "The carrier pays, declines, or makes a firm offer, in writing.",

	"claims.no-cap": "The law read sets no amount by weight: the actual loss counts, unless a lower value was agreed.",
	"claims.no-rate-yet": "For this date no limit was found: the first one known begins on {from}.",
	"claims.near-step":
		"The limit changed within 60 days of this date, on {step}. Whether the event, the contract or the judgment decides is not settled by the text read.",
	"claims.currency-differs": "This limit is in {expected}; the amounts are in {given}.",
	"claims.no-rate": "Without a rate for the special drawing right there is no amount in money.",
	"claims.no-currency": "Without an amount, or a currency, the limit cannot be said in money.",
	"claims.rate-user":
		"The rate of the special drawing right is yours: it changes daily, and laws name different days for it.",
	"claims.no-value": "Without the value only the limit can be said.",
	"claims.agreed-elsewhere": "An agreed amount per kilogram was taken no account of: the rule read knows none.",
	"claims.agreed-outside": "Standard terms may agree on 2 to 40 special drawing rights per kilogram; this is {agreed}.",
	"claims.survey-elsewhere": "The cost of a survey was taken no account of: the rule read does not name it.",
	"claims.interest-elsewhere": "Interest was taken no account of: the rule read names none.",
	"claims.freight-elsewhere": "Freight was taken no account of: the rule read names no refund.",
	"claims.freight-share": "Freight was taken in proportion to the mass affected and to the value lost.",
	"claims.lifted":
		"The limit does not hold for a declared value, nor where intent or recklessness with knowledge is shown, as far as the rule knows these.",
	"claims.cap-not-broken":
		"The limit holds for cargo in every case but a declared value: recklessness does not lift it.",
	"claims.value-decides":
		"The limit covers {percent} % of the value. A declared value or an insurance decides, not the notice alone.",
	"claims.cap-from-memory": "This limit was recalled and not read: look it up before relying on it.",

	"insurance.per-leg": "The probability is that of one leg; over all legs the item is damaged once at most.",
	"insurance.rates":
		"Measured in one study: 16 of 3,234 parcels arrived with a damaged product, 0.5 % (0.3 to 0.8), any goods, in 2013. For electronics no rate per parcel was found.",
	"insurance.no-exposure": "What is left to insure is nothing: deductible and recovery cover the loss.",
	"insurance.aversion":
		"So great an aversion to a loss of this size cannot be computed: give an absolute one per unit of the currency, and with a relative one of 1 or more a wealth that is greater than the loss.",
	"insurance.neutral": "Without an aversion to risk the highest premium is the expected loss: insurers ask for more.",
} as const;
