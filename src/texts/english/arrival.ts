/** The record that someone at home is led through by a link: the arrival of a parcel, or an owner's own departure. */
export const arrival = {
	// Coming in by the link.
	"arrival.entry-title-record": "Your record of a board",
	"arrival.entry-lead-record":
		"The repair shop sent you this link. It opens one record: what you see and find when the board changes hands. Once it is sealed, the same link shows what you sealed, with your photos.",
	"arrival.entry-title-settle": "Settling what became of a board",
	"arrival.entry-lead-settle":
		"The repair shop sent you this link. It opens your order: the sealed records of both sides compared, what each side holds, and the steps to an agreement. Here you say your piece.",
	"arrival.entry-title-reader": "Reading the records of a board",
	"arrival.entry-lead-reader":
		"You were sent this link to read along: the sealed records of both sides compared, what each side holds, and the reports. You change nothing by reading.",
	"arrival.entry-code": "Six-digit code",
	"arrival.entry-code-hint": "The code came to you apart from the link, by another way.",
	"arrival.entry-open": "Open",
	"arrival.entry-no-code": "Enter the six digits of the code.",
	"arrival.entry-needs-settle":
		"You need no account. What you state or agree to is sealed when you send it; nothing is sealed by looking. You may come back with the same link and code.",
	"arrival.entry-needs-reader": "You need no account. You may come back with the same link and code.",
	"arrival.entry-needs-record":
		"You need no account. A phone with a camera is enough; a kitchen scale helps. What you enter is saved at each step, and you may go on later with the same link and code.",
	"arrival.entry-photos-first":
		"The parcel is there already? Take photos of it, closed and from all sides, before anything else. You can add them here afterwards.",
	"arrival.continue": "Go on at a computer",
	"arrival.continue-title": "Go on at another device",
	"arrival.continue-offer":
		"On the other device, open the address below and type the code. It is good once, until {time}. This device stays in as well; both write the same draft.",
	"arrival.continue-address": "Address",
	"arrival.continue-code": "Code",
	"arrival.continue-lead": "Type the code that the other device shows, eight letters and digits.",
	"arrival.continue-back": "Back to the record",
	"arrival.entry-closed-title": "This link does not open",

	// The frame of every step.
	"arrival.title": "What arrived",
	"arrival.title-departure": "Before you send it",
	"arrival.step-of": "Step {number} of {count}",
	"arrival.steps": "All steps",
	"arrival.step-done": "entered",
	"arrival.step-here": "you are here",
	"arrival.save": "Save and go on",
	"arrival.back": "Back",
	"arrival.skip-note": "You may leave out what you cannot say. Nothing counts against you for a gap.",
	"arrival.stale":
		"This record was saved on another device in the meantime. What you just typed is below; look it over and save it again.",
	"arrival.yes": "Yes",
	"arrival.no": "No",
	"arrival.no-answer": "No answer",
	"arrival.unit": "Unit",
	"arrival.clock": "What does your clock show at this moment?",
	"arrival.clock-hint": "Your times are kept together with this difference from universal time (UTC).",
	"arrival.clock-choose": "Choose the time on your clock",
	"arrival.photos-add": "Add photos",
	"arrival.photos-hint":
		"Several at once, films too; up to 8 GB each (20 MB where the browser runs no script). Take them again until they are sharp.",
	"arrival.photos-view": "What the photos show",
	"arrival.photos-note": "Note on these photos",
	"arrival.photos-save": "Add them",
	"arrival.photos-remove": "Remove",
	"arrival.photos-remove-one": "Remove: {what}",
	"arrival.photos-full": "this record holds 100 files already, the most it can. Remove one to add another.",
	"arrival.photos-kind":
		"this kind of file is not taken. A picture (JPEG, PNG, WebP, HEIC), a video (MP4, MOV, WebM), a PDF or a plain text is.",
	"arrival.photos-large":
		"it is larger than 20 MB, the most that is taken without script in the browser. Take a shorter film, or a smaller picture.",
	"arrival.too-many-title": "Too many files at once",
	"arrival.too-many":
		"At most 20 files are taken at once. Go back in your browser, choose fewer, and send the rest afterwards.",
	"arrival.photos-empty": "the file is empty. Choose it again.",
	"arrival.file-refused": "{file} was not added: {why}",
	"arrival.done-title": "This record is sealed",

	// A stop sign was noted.
	"arrival.stop-title": "You noted a stop sign. Do not switch it on.",
	"arrival.stop-title-again": "You noted a stop sign. Do not switch it on again.",
	"arrival.stop-text":
		"Pull the plug of the computer first, then leave everything as it is. Do not try it in a second computer. Go on to the end of this record: what could not be tried is noted as not tested, and that never counts as a failure.",
	"arrival.stop-points": "For {checks}, what you found is not as it should be. That counts as a stop sign.",
	"arrival.stop-wet-title": "You noted wetness. Do not switch it on.",
	"arrival.stop-wet-text":
		"Leave the board off, take photos of what is wet before it dries, finish this record and speak with the shop before anything else. What could not be tried is noted as not tested, and that never counts as a failure.",
	"arrival.stop-cell":
		"A swollen, leaking or hot cell: do not press, charge or open it. Take it outdoors if you can do so safely, keep away from it, and ask your local fire or waste service what to do.",

	// Views of photos.
	"arrival.view.item-front": "Board, front",
	"arrival.view.item-back": "Board, back",
	"arrival.view.connectors": "Connectors",
	"arrival.view.serial-label": "Label with the serial number",
	"arrival.view.pack-open": "Inside of the opened parcel, as found",
	"arrival.view.parcel-closed": "Closed parcel",
	"arrival.view.parcel-damage": "Damage to the parcel",
	"arrival.view.damage": "Damage to the board",
	"arrival.view.diagnostic-output": "File of a diagnostic program",
	"arrival.view.message": "Message",
	"arrival.view.other": "Something else",

	// Step: the closed parcel.
	"arrival.parcel-closed": "The closed parcel",
	"arrival.parcel-closed.text":
		"Before anything else, and before you sign if the carrier is still there: photograph all six sides of the closed parcel, the address label, seals and indicators, and every dent, tear or wet spot from close by. Later nobody can tell when a dent was made.",
	"arrival.parcel-closed.carrier":
		"Do you see damage? Have it written on the carrier's delivery record, and keep a photo of that. This never waits: not for the temperature, not for the tests.",
	"arrival.parcel-closed.keep": "Keep all packaging until everything is settled, the inner parts too.",
	"arrival.outer-damage": "Did you see damage on the outside?",
	"arrival.outer-damage.none-seen": "I looked and saw none",
	"arrival.outer-damage.seen": "I saw damage",
	"arrival.outer-damage.not-looked": "I did not look before opening",
	"arrival.parcel-remark": "What did you see?",
	"arrival.parcel-remark-hint": "Dents, wet spots, torn tape, seals, who was there.",

	// Step: coming to hand.
	"arrival.parcel-facts": "How it came to you",
	"arrival.parcel-facts.text":
		"Weigh the parcel while it is closed. Look at seals and at shock, tilt or humidity indicators before you move it more: some can trip in your hands. An indicator that has tripped tells of rough handling; it does not say that the board is damaged.",
	"arrival.delivered-at": "When was it delivered?",
	"arrival.delivered-at-hint": "From the carrier's message or tracking page, if you were not there.",
	"arrival.in-hand-at": "When did you have it in your hands, indoors?",
	"arrival.manner": "How was it delivered?",
	"arrival.manner.handed-over": "Handed to me or someone at home",
	"arrival.manner.left": "Left at the door or elsewhere",
	"arrival.manner.locker": "In a parcel locker",
	"arrival.manner.neighbour": "With a neighbour",
	"arrival.manner.pick-up-point": "At a pick-up point",
	"arrival.parcel-mass": "Mass of the closed parcel",
	"arrival.parcel-mass-hint": "A kitchen or bathroom scale will do.",
	"arrival.odd-mass.lighter-than-item":
		"The closed parcel would weigh less than the board alone. Check both numbers and their units; if they are right, leave them.",
	"arrival.odd-mass.heavier-than-parcels":
		"The parcel would weigh more than 70 kg, above what parcel carriers usually take (31.5 kg or 70 kg, from memory). Check the number and its unit; if it is right, leave it.",
	"arrival.seals-intact": "Are all seals unbroken?",
	"arrival.seals-intact-hint": "Numbered or printed labels across the seams. No answer if there are none.",
	"arrival.indicator-tripped": "Has an indicator tripped?",
	"arrival.indicator-tripped-hint": "A shock, tilt or humidity indicator on the outside. No answer if there is none.",

	// Step: temperature.
	"arrival.wait": "Closed until it is warm",
	"arrival.wait.text":
		"A cold board that is unpacked in a warm room gets wet, like glasses in winter. The closed bag keeps it dry. So the parcel stays shut until the board is warmer than the air's dew point, where the air would leave water on it. Warm the parcel by letting it stand in the room, never with a heater.",
	"arrival.room-temperature": "Temperature of the room",
	"arrival.room-humidity": "Humidity of the air in the room",
	"arrival.room-humidity-hint":
		"If you have a hygrometer. Without it we count with {percent} %, a damp room, to be on the careful side.",
	"arrival.parcel-temperature": "Temperature of the parcel when you brought it in",
	"arrival.parcel-temperature-hint":
		"Measured, or the temperature outdoors where it stood. If you do not know, give your guess of the coldest it may have been.",
	"arrival.parcel-temperature-basis": "How do you know the parcel's temperature?",
	"arrival.parcel-temperature-basis.measured": "Measured on the parcel",
	"arrival.parcel-temperature-basis.weather": "The weather where it was",
	"arrival.parcel-temperature-basis.guess": "A guess",
	"arrival.wetness-outside": "Is or was anything wet?",
	"arrival.wetness-outside-hint": "The box, its underside, the tape.",
	"arrival.wait-compute": "Save and work out the wait",
	"arrival.wait-title": "When to open, when to switch on",
	"arrival.wait-open": "Open the parcel from",
	"arrival.wait-power": "Switch the board on from",
	"arrival.wait-now": "Now",
	"arrival.wait-over": "Now; the wait ended {time}",
	"arrival.wait-power-wet": "Not at all: wetness was seen",
	"arrival.wait-power-stopped": "Not at all: a stop sign was noted",
	"arrival.wait-none-why":
		"The parcel is at least 3 °C warmer than the dew point of your room, {dewPointDegC} °C. Nothing will condense on it.",
	"arrival.wait-why":
		"The dew point of your room is {dewPointDegC} °C. A surface colder than that gets wet once the bag is open; we keep 3 °C clear of it. In this parcel the board is reckoned to need about {modelWaitH} hours for that. The reckoning is rough, so the wait is at least twice as long, and never under four hours.",
	"arrival.wait-why-unsure":
		"By what you entered, the parcel is at least 3 °C warmer than the dew point of your room, {dewPointDegC} °C. As the temperature is a guess, or wetness was seen, it stays shut for four hours all the same.",
	"arrival.wait-counted-from": "Counted from {time}, when the parcel came into your hands.",
	"arrival.wait-counted-from-entry":
		"Counted from {time}, when you entered the temperatures. You gave no time for having it in hand.",
	"arrival.wait-humidity-assumed": "You gave no humidity; counted with {percent} % (our choice).",
	"arrival.wait-careful":
		"The wait cannot be worked out from this. To be on the careful side, leave the parcel closed for 12 hours, and switch the board on after 14 hours at the earliest (our choice). Wet, inside or outside: do not switch it on at all.",
	"arrival.wait-careful-stopped":
		"The wait cannot be worked out from this. To be on the careful side, leave the parcel closed for 12 hours (our choice). Do not switch the board on.",
	"arrival.wait-never":
		"In this room the wait would never end: the air is too damp for its temperature. Dry or warm the room first, or take the closed parcel to a drier room, then enter it again.",
	"arrival.wait-not-yet": "Enter the two temperatures, and the wait is worked out here.",
	"arrival.wait-frozen":
		"It came in below 0 °C. Ice melts late and inside, so the time before switching on is longer than the one before opening.",

	// Step: opening.
	"arrival.opening": "Opening",
	"arrival.opening.text":
		"If you can, film from here on without a break: the closed seal, the opening, the inner pack, the bag, the serial number. If not, take photos at every layer before you take anything out.",
	"arrival.opening.cut":
		"Cut shallow along the tape, the blade pointing away from you, from the board and from the bag. Stop if you meet wetness, smell, heat, or a swollen or leaking cell: go outdoors with it if that is safe, and do not power the board.",
	"arrival.opening.inner":
		"Photograph the inner pack as found: gaps, crushed foam, where the board lies. Taking it out destroys that.",
	"arrival.opening.bag":
		"Look at the bag: is it closed, has it holes, what does a humidity card show? Photograph it before you open it.",
	"arrival.opening.static":
		"Static can damage a board without a spark that you feel. Touch bare metal that is earthed first, hold the board by its edges, leave it on its bag, keep it off carpet and foam. A wrist strap is no protection against mains: never wear one while you work on live mains.",
	"arrival.opening.children": "Keep coin cells and drying bags away from children; swallowing either is dangerous.",
	"arrival.wetness-inside": "Is or was anything wet, outside or inside, or does a humidity card show wet?",
	"arrival.pack-note": "Your notes on the parcel and the pack",
	"arrival.pack-note-hint": "Add what you found inside: gaps, crushed or moved foam, a torn bag, loose parts.",

	// Step: identity.
	"arrival.identity-departure": "Which board it is",
	"arrival.identity": "Is it the same board?",
	"arrival.identity.text":
		"Copy the serial number from the board's own label, letter by letter, and photograph the label. A sticker, a scratch or a repaired spot that you know counts too.",
	"arrival.identity.text-departure":
		"Copy the serial number from the board's own label, letter by letter, and photograph the label. Natural marks help most: a scratch, a sticker, an odd solder joint. They survive when the board is dead.",
	"arrival.identity.mismatch-title": "This serial number is not the one in the order",
	"arrival.identity.mismatch":
		"You entered {entered}. Look at the label once more. If it stays like this, do not power the board: finish and seal this record, and tell the shop.",
	"arrival.serial-number": "Serial number on the board",
	"arrival.maker": "Maker, as printed on it",
	"arrival.model": "Model, as printed on it",
	"arrival.marks": "Marks by which you would know it",
	"arrival.marks-hint": "One per line.",

	// Step: what can be seen.
	"arrival.visual": "What you see",
	"arrival.visual.text":
		"In good light, before any power: both sides, the connectors, the edges, the cooler. Turn it gently and listen for something loose. Bent, cracked, loose or melted parts: note it, photograph it, and do not power the board.",
	"arrival.own-scale": "own scale",
	"arrival.stop-signs": "Did you notice any of these?",
	"arrival.stop-signs-hint": "Any one of them means: no power, or no further power.",
	"arrival.stop-sign.smell-or-smoke": "Smell of burning, or smoke",
	"arrival.stop-sign.unusual-heat": "Something gets unusually hot",
	"arrival.stop-sign.supply-trips": "The power supply or a fuse switches off",
	"arrival.stop-sign.liquid": "Liquid or moisture on the board",
	"arrival.stop-sign.visible-damage": "Visible damage: crack, loose or melted part",
	"arrival.stop-sign.swollen-cell": "A swollen or leaking cell",

	// Step: before the first power-on.
	"arrival.before-power": "Before you switch it on",
	"arrival.before-power.control":
		"First make sure of your computer. Do you have another part that is known to be good? Try it now in the same slot, with the same leads and screen. If it works, your computer is not the question.",
	"arrival.before-power.seat":
		"Computer off, plug pulled, and wait a minute. Seat the board fully until the latch clicks, fasten its screw. Its own power leads, one lead per socket, no adapters, no extension card. Never plug anything in while there is power.",
	"arrival.before-power.supply":
		"Power supplies keep a charge after unplugging. Never open one. Repairs on mains parts are for licensed people, under the rules of your country.",
	"arrival.before-power.untouched":
		"No cleaning, no new paste or pads, no firmware update before the first test: afterwards nobody could tell what was there before.",
	"arrival.before-power.stopped-title": "Leave it off",
	"arrival.before-power.stopped":
		"Nothing more is tried: leave the board out of the computer, or, if it is in there, pull the plug of the computer and leave the board where it is. Below, note only what was done before you noticed it. The rest stays empty; then go on.",
	"arrival.control-before": "Did another part, known to be good, work in this place just before?",
	"arrival.control-before-hint": "No answer if you had none to try.",
	"arrival.work-done-before": "Was anything cleaned, opened, changed or updated on the board since it arrived?",
	"arrival.host": "Computer",
	"arrival.host-hint": "Maker and model, or the mainboard and processor.",
	"arrival.slot": "Slot or place",
	"arrival.supply": "Power supply",
	"arrival.supply-hint": "Model and watts, as printed.",

	// Step: the first power-on.
	"arrival.first-power-on": "Switching it on for the first time",
	"arrival.first-power-on.text":
		"One screen, one cable, connected to the board. Switch on, keep your hand near the switch, and wait five minutes: some computers need long for their first start after a change.",
	"arrival.first-power-on.stop":
		"Smoke, smell, something hot, a supply that trips: off at once, pull the plug, and that was it. No second try, not here and not in another computer.",
	"arrival.first-power-on.stopped-title": "Was it on before you stopped?",
	"arrival.first-power-on.stopped":
		"The board gets no power now, not here and not in another computer. Was it switched on before you noticed this? Then note below how often, and how it went. Otherwise leave the starts as not tested and go on to the end of this record: photos, your words, and the seal are what helps now.",
	"arrival.first-power-on.no-picture":
		"No picture and no stop sign? Change one thing at a time: another socket of the board, another cable, seat it again with the plug pulled. Note every try below.",
	"arrival.first-power-on.wait": "It is not yet time: by what you entered, switch it on from {time}.",
	"arrival.waited": "How long did the closed parcel stand in the room before you opened it?",
	"arrival.waited-hint": "In hours. A shorter wait is only a fact, not a mark against you.",
	"arrival.first-attempt-ever": "Is this the first time it has power since delivery?",

	// Step: checks.
	"arrival.checks": "What you can check",
	"arrival.checks.text":
		"These need no instruments. Do what you can; choose “not tested” for the rest. What you cannot test is never counted as a failure.",
	"arrival.checks.none": "There is nothing in the list for this kind of board that can be checked without instruments.",
	"arrival.checks.stopped-title": "What was tested until now",
	"arrival.checks.left":
		"The checks in this list need power, or may need it. After the stop they count as not tested, and that is never held against you.",
	"arrival.checks.left-list": "Checks that need power: {count}",
	"arrival.checks.stopped":
		"Nothing that needs power is done any more. What you have not tested until now stays not tested; change only what was tested before you noticed it.",
	"arrival.check.good": "As it should be",
	"arrival.check.bad": "Not as it should be",
	"arrival.check.trials": "Tries",
	"arrival.check.successes": "Went well",
	"arrival.check.count": "How many",
	"arrival.check.exposure": "Over how long",
	"arrival.check.value": "Value",
	"arrival.check.resolution": "Smallest step of your scale",
	"arrival.check.not-tested": "Not tested, because",
	"arrival.check.remark": "Remark",
	"arrival.check.more": "Not tested, or a remark",
	"arrival.check.file": "from your file",
	"arrival.reading.not-tested": "not tested: {why}",
	"arrival.reading.count": "{count} in {over}",
	"arrival.reading.tries": "{successes} of {trials} went well",
	"arrival.not-tested.no-instrument": "I have no instrument",
	"arrival.not-tested.no-equipment": "I lack what it needs",
	"arrival.not-tested.no-time": "I had no time",
	"arrival.not-tested.unsafe": "It seemed unsafe",
	"arrival.not-tested.stop-sign": "There was a stop sign",
	"arrival.not-tested.not-applicable": "It does not apply",
	"arrival.not-tested.does-not-start": "It does not start",
	"arrival.not-tested.not-recorded": "Nothing was entered",
	"arrival.not-tested.other": "Another reason",

	// Step: a diagnostic file.
	"arrival.file": "A file from your computer",
	"arrival.file.text":
		"If the board runs and you can, add what a diagnostic program printed, best while the board was busy. Values at rest say little: boards save power then. If this means nothing to you, go on; nobody expects it.",
	"arrival.file.private":
		"Such a file can name your computer and other devices in it. Everyone in this order sees it once the record is sealed.",
	"arrival.file.stopped":
		"Do not start the board for this. Only if a diagnostic program printed a file before you noticed it: add that one. Otherwise go on.",
	"arrival.file.load": "What was the computer doing?",
	"arrival.file.load.load": "The board was busy",
	"arrival.file.load.idle": "The board was at rest",
	"arrival.file.load.unknown": "I do not know",
	"arrival.file.add": "Add the file",
	"arrival.file.kept": "{file} is kept as it is. Its values were not read: {why}",
	"arrival.file.kept-large": "{file} is kept as it is. Above 16 MiB no values are read out of a file.",
	"arrival.file.read": "{file} was read. Taken from it: {readings}.",
	"arrival.file.read-none": "{file} was read and is kept. It holds no value that one of the checks asks for.",
	"arrival.file.differs": "It does not agree with what you entered under: {members}. Please look at both once more.",

	// Step: the result.
	"arrival.result": "The result",
	"arrival.result.text": "In one line: how did you find the board? Then, in your own words, whatever matters to you.",
	"arrival.result.text-departure": "In one line: in what state do you send it? Then tell what is wrong, as you saw it.",
	"arrival.state": "State of the board",
	"arrival.state.good": "It works",
	"arrival.state.partly-good": "It works in part",
	"arrival.state.intermittent": "It works now and then",
	"arrival.state.does-not-start": "It does not start",
	"arrival.state.not-tested": "I could not test it",
	"arrival.state.unrepaired": "It came back unrepaired",
	"arrival.platforms": "In how many different computers did you try it?",
	"arrival.control-after": "Did the other part, known to be good, work again in the same place afterwards?",
	"arrival.control-after-hint": "It shows that the computer is still fine. No answer if you had none to try.",
	"arrival.observed-at": "When did you see it in this state?",
	"arrival.observed-at-hint": "The time of the test, not of typing.",
	"arrival.statement": "In your own words",
	"arrival.recorded-by": "Your name",
	"arrival.platform-title": "Did not start on this platform",
	"arrival.platform-text":
		"With one computer nobody can tell a board that is dead from a board and a computer that do not suit each other. So the record says: it did not start on this platform. Below is what the tries so far exclude, and what they leave open.",
	"arrival.platform-two":
		"It did not start in {count} computers. If they are of different makers and another part worked in both, this speaks clearly for the board itself.",
	"arrival.excluded": "Excluded by what was tried",
	"arrival.excluded-none": "Nothing yet.",
	"arrival.open": "Not excluded",
	"arrival.cause.supply": "the power supply and its leads",
	"arrival.cause.supply-as-far": "the power supply and its leads, as far as the other part needs as much power",
	"arrival.cause.slot": "the slot",
	"arrival.cause.screen": "the screen and its cable",
	"arrival.cause.seating": "the board not being fully seated",
	"arrival.cause.firmware": "settings or firmware of this computer that do not suit the board",
	"arrival.cause.computer-since": "a change in the computer during the tests",
	"arrival.cause.item": "the board itself",
	"arrival.platform-next":
		"A try in a second computer of another maker would separate these best. Only where there was no stop sign, and only if one is at hand.",

	// Steps of the owner's departure.
	"arrival.fault": "What is wrong with it",
	"arrival.pack": "Packing",
	"arrival.pack.text":
		"Photograph the board in its bag, each layer of the pack before you close it, and the closed parcel from all sides. Then weigh the closed parcel.",
	"arrival.pack.static":
		"A closed static-shielding bag next to the board, no plain plastic film or plain foam touching it. At least as much cushion on each of the six sides as the shop told you.",
	"arrival.pack.lithium":
		"Is a lithium cell on the board or with it? Ask the carrier before you send it: postal and air rules limit cells, and a damaged or swollen cell must not be posted at all.",
	"arrival.pack.seal":
		"A numbered label across every seam that can be opened shows opening. Write its number down here before you hand the parcel over.",
	"arrival.pack-remark": "How did you pack it?",
	"arrival.pack-remark-hint": "Bag, foam, box, seal numbers.",
	"arrival.visual.text-departure":
		"Photograph both sides and the connectors in good light, and whatever you see that is broken.",
	"arrival.checks.text-departure":
		"What could you check before sending it? Choose “not tested” for the rest. Do not switch on a board that smelled, smoked, got hot, or tripped a supply.",

	// Review, seal, receipt.
	"arrival.review": "Look it over and seal it",
	"arrival.review.text":
		"This is everything the record will say. Go back to any step to mend it. Sealing closes the record for good: neither you nor the shop can change it afterwards. What you remember later goes into a new record that refers to this one.",
	"arrival.review.gap": "not entered",
	"arrival.review.change": "Change",
	"arrival.review.missing": "Before sealing, this is still needed:",
	"arrival.review.missing-below":
		"Before sealing, {count} answers are still missing or need a look: see the end of this page.",
	"arrival.review.confirm": "I have looked it over. Seal it.",
	"arrival.review.confirm-missing": "Tick the box to seal the record.",
	"arrival.review.seal": "Seal the record",
	"arrival.review.seen-by": "Sealed, it is shown to both sides of this order: the owner and the shop.",
	"arrival.receipt.text":
		"Keep the receipt. It holds the exact content of this record and of every sealed record of this order that was shown to you, and the proof that they stand in the signed log: enough without this server.",
	"arrival.receipt.download": "Download the receipt",
	"arrival.receipt.print": "Print this page from your browser's menu to have it on paper.",
	"arrival.receipt.fingerprint": "Fingerprint of this record (SHA-256)",
	"arrival.receipt.sealed-at": "Sealed at",
	"arrival.receipt.by": "Sealed",
	"arrival.receipt.sealed-through": "through link {id}",
	"arrival.receipt.sealed-by": "by account {id}",
	"arrival.receipt.record": "Record",
	"arrival.receipt.entry": "entry {index} of the log",
	"arrival.receipt.comparison": "Compare with the record of the other side",
	"arrival.receipt.next":
		"What happens next: the shop sees your record now. If there was damage, tell the carrier soon, in writing: the time for that can be short. Keep all packaging. (General information, not legal advice.)",

	// What is wrong with a field.
	"arrival.bad.number": "Enter a number, for example 12 or 12.5.",
	"arrival.bad.too-small": "This is too small; the least is {minimum}.",
	"arrival.bad.too-large": "This is too large; the most is {maximum}.",
	"arrival.bad.whole": "Enter a whole number.",
	"arrival.bad.time": "Enter a date and a time, for example 2026-03-05T14:30.",
	"arrival.bad.clock": "Choose what your clock shows, so that the time is clear.",
	"arrival.bad.choice": "Choose one of the answers in the list.",
	"arrival.bad.too-many": "At most {maximum} values, please.",
	"arrival.bad.too-many-lines": "At most {maximum} lines, please.",
	"arrival.bad.too-long": "This is too long; the most is {maximum} characters.",
	"arrival.bad.text": "This holds characters that cannot be kept. Type it again in plain text.",
	"arrival.bad.tries": "No more can go well than were tried.",
	"arrival.bad.exposure": "Say over how long you counted.",
	"arrival.bad.both": "Give a result or a reason for not testing, not both.",
	"arrival.bad.identity": "Enter the serial number, or at least one mark.",
	"arrival.bad.own-check": "The own check is not complete. Give its result in the form that its kind asks for.",
	"arrival.bad.other": "This cannot be kept as it is ({code}).",
} as const;
