/** Words of the sheet that every page is written on, and of forms. */
export const layout = {
	"layout.skip": "Skip to the content",
	"layout.way-back": "Where you are",
	"layout.foot":
		"handover-risk records and compares. It says what was seen, by whom and when, and what that supports; it does not decide who has to pay. Periods and rules of law are general information, not legal advice.",
	"form.errors": "Please look at these again",
	"form.caution": "Caution.",
	"form.drop": "A file can be dropped here, or pasted while this field is chosen.",
	"form.dropped": "Chosen:",
} as const;
