/** Photos and files as exhibits: what they claim, their copies, what others get, the code beside the board. */
export const pictures = {
	"picture.title": "Photo or file",
	"picture.received": "received {time}",
	"picture.claimed": "claimed: {what}",
	"picture.claimed-time": "{time} by the device's clock",
	"picture.no-preview": "{name} (cannot be shown)",
	"picture.file": "File",
	"picture.kind": "Kind and size",
	"picture.original": "Fingerprint of the original (SHA-256)",
	"picture.original-hint": "The record names this one; once it is sealed, the seal holds it.",
	"picture.received-at": "Received",
	"picture.claims": "The file claims",
	"picture.claims-time": "taken {time}",
	"picture.claims-device": "with {device}",
	"picture.claims-place": "and holds the place where it was taken",
	"picture.claims-nothing": "nothing of time and device",
	"picture.claims-hint": "Anyone can write this into a file. Only the time of receipt is ours.",
	"picture.refusal.damaged":
		"The file cannot be read as a whole: it is cut off or damaged. It is kept as it came. Take the photo again, or send it another way.",
	"picture.refusal.too-many-pixels":
		"The picture has more than 120 million pixels and was not opened. It is kept as it came. Bring a smaller copy of it as well.",
	"picture.refusal.not-shown":
		"This kind of picture cannot be opened here, or the file is not what it says it is. It is kept as it came. Bring it as a JPEG as well.",
	"picture.refusal.too-much-work":
		"Opening the picture took more time or memory than is given to one, and was stopped. It is kept as it came. Bring a smaller copy of it as well.",
	"picture.own-files": "Your photos and files",
	"picture.own-files-text":
		"They are sealed with the record. Here you say what others get of each, and can black out a face or an address.",
	"picture.others": "What others get",
	"picture.others.without-metadata":
		"A copy without metadata: the same picture written anew, without place, device and time. Its fingerprint is another than the original's.",
	"picture.others.blacked-out":
		"A copy with parts blacked out, without metadata. Its fingerprint is another than the original's.",
	"picture.others.original": "The original.",
	"picture.others.nothing":
		"Nothing. From this file place, device and time cannot be taken out, so it is handed out only where whoever brought it agrees.",
	"picture.others.apart":
		"Nothing. Several people brought this file, and each blacked out another part: no copy hides both. It is handed out again once they choose the same copy, or all but one take their choice back.",
	"picture.yours": "You brought it: you have the original, and say what others get.",
	"picture.not-yours": "Someone else brought it. What you see here is what they hand out.",
	"picture.download-original": "Download the original",
	"picture.download": "Download",
	"picture.hand-out-text":
		"Others are the other side of this order, whoever reads it through a link, the dossier and the carrier. A choice counts from now on; what was handed out before cannot be called back.",
	"picture.choose.without-metadata": "Hand out copies without metadata only",
	"picture.choose.nothing": "Hand it out no longer",
	"picture.choose.original": "I agree: hand out the original",
	"picture.choose.original-place": "I agree: hand out the original, with the place where it was taken",
	"picture.choose.blacked-out": "Hand out this copy",
	"picture.handed-out-now": "handed out",
	"picture.choices": "Your choices",
	"picture.choice.without-metadata": "{time}: copies without metadata only",
	"picture.choice.blacked-out": "{time}: the blacked-out copy {copy}",
	"picture.choice.original": "{time}: agreed to hand out the original",
	"picture.copies": "Copies",
	"picture.copy": "Copy",
	"picture.copy-size": "Size",
	"picture.copy-hash": "Its fingerprint (SHA-256)",
	"picture.copy.without-metadata": "Without metadata",
	"picture.copy.blacked-out": "Blacked out, {time}",
	"picture.black-out": "Black something out",
	"picture.black-out-text":
		"Draw over what others should not see: a face, a name, a label. That makes a new copy; the original stays as it is. In the picture the arrow keys move the newest rectangle, and with Shift they change its size.",
	"picture.black-out-fields":
		"Or give each rectangle in percent of the picture: from the left, from the top, its width and its height.",
	"picture.black-out-area": "The picture: draw rectangles on it",
	"picture.rectangle": "Rectangle {number}",
	"picture.x": "left",
	"picture.y": "top",
	"picture.w": "width",
	"picture.h": "height",
	"picture.black-out-make": "Make the copy",
	"picture.black-out-hand-out": "Make the copy and hand it out",
	"picture.black-out-at-once": "Others then get this copy, in place of what they get now.",
	"picture.black-out-later":
		"Others go on getting the blacked-out copy that they get now, until you hand out the new one. Each copy is made of the whole picture: draw over everything that must not be seen.",
	"picture.made": "The copy that you made",
	"picture.made-given":
		"Others now get this copy, in place of what they got before. What someone has taken already stays with them.",
	"picture.made-not-given": "Others do not get this copy yet: they go on getting the one that they got before.",
	"picture.made-look": "Look whether everything is hidden. If not, make another copy below.",
	"picture.black-out-none": "Draw at least one rectangle, or type its four numbers.",
	"picture.black-out-wrong": "Rectangle {number}: give four numbers that stay inside the picture, 0 to 100.",
	"picture.back": "Back",

	"photo-code.title": "Code in a photo",
	"photo-code.write": "Write this code on paper and put it into the photos, beside what they show:",
	"photo-code.why": "It shows that they were not taken before {time}.",
	"photo-code.check": "Check the code in a photo",
	"photo-code.text":
		"A code is made from the newest entry of the log when it is shown. Nobody can know it before, so a photo with the code in it is not older than that entry.",
	"photo-code.limits":
		"It does not show when after that the photo was taken: before the record was received. It does not show that the paper and the board were there together, that the picture was not changed, or that it is this board.",
	"photo-code.field": "Code in the photo",
	"photo-code.act": "Look it up",
	"photo-code.unknown":
		"No record of this order was shown this code. Read it once more: there is no I, L, O or U in it.",
	"photo-code.found": "A photo with this code is not older than {time}.",
	"photo-code.record": "Shown for the record",
	"photo-code.shown-at": "First shown",
	"photo-code.size": "Entries of the log",
	"photo-code.root": "Root of its tree",
	"photo-code.other": "Other party",
	"photo-code.recompute":
		"It can be computed again: SHA-256 over five lines, which are handover-risk/photo-code/1, the number of entries, the root, the record and the other party, each with its line's end; the first 40 bits, five for each character of 0123456789ABCDEFGHJKMNPQRSTVWXYZ.",

	"carrier-photos.title": "Photos for the carrier",
	"carrier-photos.text":
		"Numbered as in the carrier's report of {size} entries: JPEGs of at most 2 MB each, without metadata. Look at each before you hand it on.",
	"carrier-photos.none": "No sealed record of this order names a photo or file.",
	"carrier-photos.number": "No.",
	"carrier-photos.what": "What it shows",
	"carrier-photos.file": "File",
	"carrier-photos.not": "No picture that may be handed out.",
	"carrier-photos.link": "Photos for the carrier",
} as const;
