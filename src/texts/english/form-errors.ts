/** What a page says of a field that was refused, in the words of whoever fills it in; the API's own words are in `faults`. */
export const formErrors = {
	"form.bad.thousands": "Nothing stands between thousands: 1200 or 1200,50.",
	"form.bad.amount":
		"Enter an amount, for example 1200 or 1200,50. Two decimals at most follow a comma or a point; nothing stands between thousands.",
	"form.bad.words": "Enter words here.",
	"form.bad.above": "Enter a number above {least}.",
	"form.bad.below": "Enter a number below {most}.",
	"form.bad.too-few": "Choose or enter at least {least}.",
	"form.bad.too-many": "At most {most} are taken.",
	"form.bad.too-short": "Enter at least {least} characters.",
	"form.bad.date": "Enter a date such as 2026-03-09.",
	"form.bad.year": "Enter a year between 1970 and 2200.",
	"form.bad.country": "Enter a country as its two letters, such as DE.",
	"form.bad.currency": "Enter a currency as its three letters, such as EUR.",
	"form.bad.region": "Enter the region as one to five letters or digits, such as BY.",
	"form.bad.e-mail": "Enter an e-mail address such as name@example.org.",
	"form.bad.code": "Enter the six digits of the code.",
	"form.bad.as-hinted": "This is not written as it has to be. Look at what the field asks for.",
	"form.bad.incomplete": "This is not complete. Look at the fields again.",
	"form.bad.not-asked": "This is not asked for here. Leave it out.",
	"form.bad.no-holidays":
		"No public holidays are known here for this place. Check its letters, or leave the field empty.",
	"form.bad.not-a-report": "This belongs into a record of what was reported. Open one, or leave this out.",
	"form.bad.test-named": "Name a test where you ask for one or offer one, and nowhere else.",
	"form.bad.sent-before":
		"This form was sent before with other words. Load the page again: what was sealed then stands there.",
} as const;
