/** Words of mails, and of the page of an order on which they stand. */
export const mail = {
	"mail.hello": "Hello {name},",
	"mail.hello-nobody": "Hello,",
	"mail.subject.link-departure": "{shop}: please record the state of your {item} before it leaves",
	"mail.subject.link-arrival": "{shop}: please record the state of your {item} on arrival",
	"mail.subject.link-bench": "{shop}: please record the state of your {item}",
	"mail.subject.link-settle": "{shop}: your order about the {item}, to read and to answer",
	"mail.subject.link-reader": "{shop}: an order about a {item}, to read",
	"mail.subject.code": "{shop}: a code",
	"mail.subject.reminder": "{shop}: a reminder about your {item}",
	"mail.subject.receipt": "{shop}: the receipt of a sealed record of the {item}",
	"mail.subject.sealed": "{item}: the other side has sealed something",
	"mail.subject.period": "{item}: a date of a claim comes near, {date}",
	"mail.link-departure":
		"{shop} asks you to record the state of your {item} before you send it off. The address below leads you through it. A phone is enough; no account is needed. Begin before you pack it.",
	"mail.link-arrival":
		"{shop} asks you to record the state of your {item} when it reaches you. The address below leads you through it. A phone is enough; no account is needed. Open the address before you open the parcel.",
	"mail.link-bench": "{shop} asks you to record the state of your {item}. The address below leads you through it.",
	"mail.link-settle":
		"Behind the address below stands everything that was sealed about your {item}. There you can answer.",
	"mail.link-reader": "Behind the address below stands what was sealed about a {item}. It is for reading only.",
	"mail.link-code":
		"You also need a code of six digits. {shop} gives it to you by another way, such as telephone or a text message, so that someone who finds one of the two cannot get in.",
	"mail.link-until":
		"The address works until {time}. If earlier mails brought you another address for the same, only the newest works.",
	"mail.code": "This is the code that you were told would come:",
	"mail.code-text":
		"It goes with an address that {shop} sends by another way. Give it to nobody. If you know of no such address, do nothing.",
	"mail.reminder-departure":
		"Some days ago {shop} asked you to record the state of your {item} before you send it off. Nothing has come yet.",
	"mail.reminder-arrival":
		"Some days ago {shop} asked you to record the state of your {item} when it reaches you. Nothing has come yet. A record made early says more about the trip than one made later.",
	"mail.reminder-bench": "Some days ago {shop} asked you to record the state of your {item}. Nothing has come yet.",
	"mail.reminder-settle": "Some days ago {shop} gave you an address to read your order about the {item} and to answer.",
	"mail.reminder-reader": "Some days ago {shop} gave you an address to read an order about a {item}.",
	"mail.reminder-new":
		"This is the address anew; the earlier one no longer works. The code is the one that you were given.",
	"mail.reminder-open":
		"You have opened it before: go on at the device on which you did, or open the address of our earlier mail.",
	"mail.reminder-done": "If you have told {shop} meanwhile, or the {item} has not reached you yet, do nothing.",
	"mail.receipt":
		"Attached is the receipt of the record of the {item} that was sealed at {time}. Keep it: with it anyone can check, without the shop, what was sealed and that it stands in the shop's signed log.",
	"mail.receipt-by-hand":
		"With this comes the receipt of the record of the {item} that was sealed at {time}. Keep it: with it anyone can check, without the shop, what was sealed and that it stands in the shop's signed log.",
	"mail.receipt-how": "How to check it is said at {address}, which needs no account.",
	"mail.fingerprint": "Its fingerprint:",
	"mail.sealed-record-departure": "The other side has sealed the state of the {item} before it left, at {time}.",
	"mail.sealed-record-arrival": "The other side has sealed the state of the {item} on arrival, at {time}.",
	"mail.sealed-record-bench": "The other side has sealed the state of the {item} on the bench, at {time}.",
	"mail.sealed-position": "The other side has sealed a position about the {item}, at {time}.",
	"mail.sealed-settlement": "The other side has sealed a step towards a settlement about the {item}, at {time}.",
	"mail.sealed-where": "It stands at",
	"mail.sealed-how": "A device on which you opened our link shows it. Without one, ask {shop} for a link.",
	"mail.period":
		"A date for the {item}, leg {leg}: {what}, by {date} ({left}). {article}. This is general information from a text that may have changed, not legal advice. Ask someone who is entitled to advise you where it matters.",
	"mail.period-from-memory": "The rule was noted from memory and not read in its text: check it before you rely on it.",
	"mail.period-suggested": "The regime is the one that the program suggests; nobody has chosen it yet.",
	"mail.period-where": "How it was counted, and a draft of a notice, stand at",
	"mail.order": "Order {order}",
	"mail.answer-shop": "This mail is about an order with {shop}. Questions go there.",
	"mail.checkpoint":
		"To keep: when this mail was written ({time}), the signed log {origin} had {size} entries, and its root was",
	"mail.checkpoint-why": "With these lines anyone can check later that the log still begins with the same entries.",

	"mail.title": "Messages",
	"mail.none": "No mail yet.",
	"mail.no-server":
		"This service has no mail server (settings SMTP_URL and MAIL_FROM), so it sends nothing. The texts can be shown and copied into a mail of your own.",
	"mail.column-what": "What",
	"mail.column-to": "To",
	"mail.column-state": "State",
	"mail.column-act": "Again",
	"mail.kind.link": "Address of a link",
	"mail.kind.code": "Code of a link",
	"mail.kind.reminder": "Reminder",
	"mail.kind.receipt": "Receipt",
	"mail.kind.sealed": "The other side has sealed",
	"mail.kind.period": "A date of a claim",
	"mail.to-nobody": "no address",
	"mail.state.queued": "waits since {time}",
	"mail.state.queued-later": "will be written {time}",
	"mail.state.queued-again": "tried {attempts} times, next {time}",
	"mail.state.sending": "is being sent",
	"mail.state.sent": "taken by the mail server {time}",
	"mail.state.refused": "refused by the mail server {time}",
	"mail.state.given-up": "given up {time}, after {attempts} tries",
	"mail.state.unclear":
		"not clear, {time}: the connection ended before the mail server said whether it took the mail. It is not sent again by itself. Ask whether it came; if not, send it again.",
	"mail.state.dropped": "not sent, {time}: {why}",
	"mail.answer": "Answer or reason: {answer}",
	"mail.tls.not-offered":
		"The mail server takes no encrypted line (STARTTLS), so nothing was sent to it: no address, no text, no password. Ask whoever runs it, or look at SMTP_URL and SMTP_TLS.",
	"mail.tls.speaks-plain":
		"The mail server does not begin with TLS at this port, so nothing was sent to it. With smtp:// in SMTP_URL the line is encrypted by STARTTLS.",
	"mail.tls.other-name":
		"The mail server's certificate is for another name than the one in SMTP_URL, so nothing was sent to it.",
	"mail.tls.out-of-time":
		"The mail server's certificate is over or not valid yet, so nothing was sent to it. This machine's clock may be wrong, too.",
	"mail.tls.not-trusted":
		"The mail server's certificate comes from nobody whom this machine trusts, so nothing was sent to it. The root of an authority of your own is named in SMTP_CA.",
	"mail.drop.no-address": "no address is known",
	"mail.drop.link-used": "the link was opened already, so its address can no longer be told anew",
	"mail.drop.link-over": "the link was withdrawn or is over",
	"mail.drop.answered": "it was answered before",
	"mail.drop.erased": "a person's data was erased",
	"mail.drop.passed": "the date was passed, or is no longer in question",
	"mail.drop.not-there": "what it was about is not there",
	"mail.again": "Send again",
	"mail.again-text": "Show the text",
	"mail.write": "Write",
	"mail.what": "What to write",
	"mail.what-hint":
		"The address of a link is made anew when the mail is written; one that was shown before no longer works then.",
	"mail.option.link": "Address of the link for {what}, made {time}",
	"mail.option.code": "Code of the link for {what}, made {time}",
	"mail.option.reminder": "Reminder of the link for {what}, made {time}",
	"mail.option.receipt": "Receipt of the record {what}, sealed {time}",
	"mail.other-address": "To another address",
	"mail.other-address-hint":
		"Empty: to {address}. A code goes by telephone or text message; by mail only to another address than the link itself.",
	"mail.other-address-hint-none":
		"No address is known of the owner. A code goes by telephone or text message; by mail only to another address than the link itself.",
	"mail.send": "Send by mail",
	"mail.show": "Show the text to copy",
	"mail.nothing-to-write": "There is nothing to write about: no open link and no sealed record.",
	"mail.remind": "Remind once, by itself",
	"mail.remind-link": "Link",
	"mail.remind-days": "If it is still unanswered after",
	"mail.remind-unit": "days",
	"mail.remind-set": "Remind then",
	"mail.choice": "Without being asked each time",
	"mail.choice.toOwner": "Tell the owner when the shop has sealed something",
	"mail.choice.toRepairer": "Tell the shop when the owner has sealed something",
	"mail.choice.periods": "Tell the shop three days before a date of a claim",
	"mail.choice-save": "Save",
	"mail.text-title": "A text to send yourself",
	"mail.text-hint":
		"Shown this once where it holds an address or a code. Copy it into a mail, or open it in your mail program.",
	"mail.text-to": "To",
	"mail.text-subject": "Subject",
	"mail.text-body": "Text",
	"mail.text-open": "Open in the mail program",
	"mail.text-attach": "Attach this file:",
	"mail.new-link-mail": "The address by mail",
	"mail.new-link-send":
		"The service can send the address to {address}. The mail brings a new address, and the one above opens nothing from then on; the code stays.",
} as const;
