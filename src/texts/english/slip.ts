/** The hand-over slip that travels in the parcel, and the paper form. Both are printed black on white. */
export const slip = {
	"slip.title": "Hand-over slip",
	"slip.lead": "For whoever receives this parcel. Read it before you open the inner pack.",
	"slip.item": "Item",
	"slip.serial": "Serial number",
	"slip.from": "From",
	"slip.to": "To",
	"slip.tracking": "Tracking number",
	"slip.parcel-mass": "Parcel mass, closed",
	"slip.link-title": "Record what you find",
	"slip.link-text":
		"Scan this with a phone, or type the address. It asks for a six-digit code, which comes to you by another way and is not on this slip. No account is needed.",
	"slip.link-none":
		"No link is printed on this slip. Ask the shop for one, or fill in the paper form and send it back.",
	"slip.qr-label": "QR code of the address {url}",
	"slip.order-title": "In this order",
	"slip.order-1":
		"Photograph the closed parcel from all sides, the label, and every dent. Damage: have it written on the carrier's delivery record.",
	"slip.order-2": "Weigh it closed. Look at seals and indicators before you move it more.",
	"slip.order-3": "Is it colder than the room? Keep it closed until it is warm; the page works out how long.",
	"slip.order-4": "Open it, filming if you can. Photograph each layer before you take anything out.",
	"slip.order-5": "Look at the bag before you open it. Compare the serial number.",
	"slip.order-6": "Look at the board in good light. Anything loose, cracked, melted or wet: no power.",
	"slip.order-7": "Computer off and unplugged, seat the board fully, then the first power-on.",
	"slip.order-8": "Smell, smoke, heat, a tripping supply: off at once, and no second try.",
	"slip.order-9": "Keep all packaging until everything is settled.",
	"slip.cautions-title": "Take care",
	"slip.caution-static": "Static: touch earthed bare metal first, hold the board by its edges.",
	"slip.caution-cut": "Knife: cut shallow along the tape, blade away from you and from the bag.",
	"slip.caution-cell":
		"Lithium cell swollen, leaking or hot: do not press, charge or open it; outdoors if that is safe, and ask your local fire or waste service.",
	"slip.caution-mains":
		"Mains: never open a power supply; it keeps a charge. Work on mains parts is for licensed people, under the rules of your country.",
	"slip.caution-children": "Coin cells and drying bags: away from children.",
	"slip.fingerprint-title": "Fingerprint of the sealed departure record",
	"slip.fingerprint-text":
		"SHA-256 of the exact sealed bytes, in groups of four. The receipt holds these bytes; who has them can compute this figure and see that nothing was changed.",
	"slip.fingerprint-none": "The departure record is not sealed yet. Seal it first, then print the slip.",
	"slip.sealed-at": "Sealed {time}, entry {index} of the signed log.",
	"slip.seal-advice":
		"Seal number on the parcel: ____________________  Write it down before dispatch; a broken seal shows opening, nothing more.",
	"slip.print-hint": "Print on one A4 page, and lay it on top of the inner pack.",
	"slip.make-link": "Make the link and show the slip",
	"slip.make-link-text":
		"The address of a link is shown once, so the slip with its QR code is made together with a new link. Links made before stay valid until you withdraw them. The recipient's own record is opened with it.",
	"slip.code-title": "The code, to be sent apart",
	"slip.code-text":
		"Send this six-digit code by another way than the parcel: e-mail, message or telephone. It is shown only now, and it is not printed on the slip.",
	"slip.paper-link": "Paper form",
	"slip.back": "Back to the order",

	"slip.paper-title": "What arrived: paper form",
	"slip.paper-lead":
		"For use with a pen, where a phone or the link cannot be used. Fill in what you can, from top to bottom: the order matters. A gap never counts against you. Send it back to the shop, or photograph it and send the photos.",
	"slip.paper-step": "{number}. {title}",
	"slip.paper-choose": "tick one",
	"slip.paper-tick-all": "tick all that apply",
	"slip.paper-photos": "Photos taken",
	"slip.paper-not-tested": "or not tested, because",
	"slip.paper-wait":
		"Without the page: was the parcel colder than the room? Leave it closed for 12 hours, and switch the board on after 14 hours at the earliest. That covers every parcel we reckoned with (our choice). Wet, inside or outside: do not switch it on at all.",
	"slip.paper-signature": "Name, date, signature",
	"slip.paper-provenance":
		"The shop enters this form as it stands, marked as reported, with a picture of it as exhibit.",
} as const;
