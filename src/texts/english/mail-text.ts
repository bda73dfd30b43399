/** What mails say. */
export const mailText = {
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
		"A date for the {item}, leg {leg}: {what} By {date} ({left}). {article}. This is general information from a text that may have changed, not legal advice. Ask someone who is entitled to advise you where it matters.",
	"mail.period-from-memory": "The rule was noted from memory and not read in its text: check it before you rely on it.",
	"mail.period-suggested": "The regime is the one that the program suggests; nobody has chosen it yet.",
	"mail.period-where": "How it was counted, and a draft of a notice, stand at",
	"mail.order": "Order {order}",
	"mail.answer-shop": "This mail is about an order with {shop}. Questions go there.",
	"mail.checkpoint":
		"To keep: when this mail was written ({time}), the signed log {origin} had {size} entries, and its root was",
	"mail.checkpoint-why": "With these lines anyone can check later that the log still begins with the same entries.",
	"mail.period-form": "Form: {form}",
	"mail.period-who-sender-or-consignee": "By the text that was read, sender and consignee can each do it ({document}).",
	"mail.period-who-sender-unless-waived":
		"By the text that was read, the sender can do it, unless the sender gave the right to the addressee in writing ({document}).",
	"mail.period-who-not-read":
		"For this law of carriage no text on who can do it was read. Sender and consignee can both send a notice, so that none is missed.",
	"mail.period-you-sender": "On this leg you are the sender.",
	"mail.period-you-consignee": "On this leg you are the consignee, to whom it was sent.",
	"mail.period-agree": "Agree with {shop} which of you does it, so that it is done.",
} as const;
