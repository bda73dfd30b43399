/** Names of the checks of single item classes, how each is done, when to stop, and their cautions. */
export const checksByClass = {
	"checks.flatness": "Bow of the board",
	"checks.flatness.hint":
		"Lay a straight edge along the longest side and measure the largest gap with a feeler gauge; gap over length, in percent. A card 267 mm long reaches 0.75 % at 2 mm.",
	"checks.visual-screws": "All screws there and tight",
	"checks.visual-screws.hint":
		"Count the screws of cooler and bracket and compare with the photos. Tighten to the maker's torque; never over-tighten screws with springs.",

	"checks.resistance-pcie-rail": "Cold resistance, PCI Express core rail to ground",
	"checks.resistance-1v8-rail": "Cold resistance, 1.8 V rail to ground",
	"checks.resistance-5v-rail": "Cold resistance, 5 V rail to ground",
	"checks.resistance-3v3-slot-rail": "Cold resistance, 3.3 V of the slot to ground",
	"checks.resistance-12v-processor-rail": "Cold resistance, 12 V of the processor connector to ground",
	"checks.resistance-12v-main-rail": "Cold resistance, 12 V of the main connector to ground",
	"checks.resistance-3v3-rail": "Cold resistance, 3.3 V rail to ground",
	"checks.resistance-5v-standby-rail": "Cold resistance, 5 V standby to ground",
	"checks.resistance-soc-rail": "Cold resistance, system-on-chip rail to ground",
	"checks.resistance-adapter-input-rail": "Cold resistance, adapter input behind its protection to ground",
	"checks.resistance-12v-input-rail": "Cold resistance, 12 V input to ground",
	"checks.resistance-supply-rail": "Cold resistance between the supply pins",
	"checks.diode-core": "Diode mode, core rail",
	"checks.diode-memory": "Diode mode, memory rail",
	"checks.diode.hint":
		"Red lead to ground, black lead to the point, board without power. Note the meter: another meter drives another current and reads something else. An open reading is no number; write it as a remark.",

	"checks.first-power-limited": "First power from a limited supply",
	"checks.first-power-limited.hint":
		"Set the supply's current limit below twice the idle current, or use a fuse. Watch the board with a thermal camera for ten seconds: nothing above 60 °C. One try; it went well where the limit held nothing back.",
	"checks.rails-in-order": "Rails come up in their order",
	"checks.rails-in-order.hint":
		"With an oscilloscope, by the maker's or your own recorded order for this model: how many rails were looked at, and how many came as they should.",
	"checks.voltage-12v-slot": "12 V of the slot, under load",
	"checks.voltage-12v-auxiliary": "12 V of the auxiliary connector, under load",
	"checks.voltage-3v3-slot": "3.3 V of the slot, under load",
	"checks.voltage-12v": "+12 V at the connector, under load",
	"checks.voltage-5v": "+5 V at the connector, under load",
	"checks.voltage-3v3": "+3.3 V at the connector, under load",
	"checks.voltage-minus-12v": "−12 V at the connector, under load",
	"checks.voltage-5v-standby": "5 V standby",
	"checks.voltage-3v3-always": "3.3 V always-on rail",
	"checks.voltage-5v-always": "5 V always-on rail",
	"checks.voltage-window.hint":
		"At the pin of the connector named, with the load running. Note the meter. The window is that of one edition of the guide; the source names it.",
	"checks.voltage-core": "Core voltage under load",
	"checks.voltage-memory": "Memory voltage under load",
	"checks.voltage.hint":
		"At the same point and the same load as in the board's own record, with the same meter. No window is published that fits every model.",
	"checks.voltage-clock-battery": "Voltage of the clock's battery",
	"checks.voltage-clock-battery.hint": "At the battery's terminals, board without power.",
	"checks.voltage-battery": "Battery voltage while charging",
	"checks.voltage-battery.hint": "At the battery connector, adapter plugged in. Note the state of charge as a remark.",
	"checks.current-off": "Input current, switched off",
	"checks.current-standby": "Input current, standby",
	"checks.current-start": "Input current while starting",
	"checks.current-charge": "Charging current",
	"checks.current-nominal": "Input current at the nominal supply",
	"checks.current-low-supply": "Input current at 10 % below the nominal supply",
	"checks.current-high-supply": "Input current at 10 % above the nominal supply",
	"checks.current.hint":
		"From a bench supply with a current limit, after the reading has settled. The board's own record decides.",

	"checks.picture-ports": "Picture on every port",
	"checks.picture-ports.hint":
		"How many outputs the card has, and how many show the same right picture with a cable that is known to work. Wait five minutes before you call the first one dark.",
	"checks.picture-screen": "Picture on the screen",
	"checks.picture-screen.hint":
		"How often it was switched on, and how often the panel showed a right picture. In another chassis say so in a remark: panel and cable may look like a fault of the board.",
	"checks.picture-1080": "Picture at 1080 lines for ten minutes",
	"checks.picture-1080.hint": "How often it was tried, and how often the picture stood for ten minutes without a flaw.",
	"checks.picture-highest": "Picture at the highest mode for ten minutes",
	"checks.picture-highest.hint":
		"With a screen and a cable that can show it: how often it was tried, and how often it stood for ten minutes.",
	"checks.aer-events": "Link errors under load",
	"checks.aer-events.hint":
		"How many events the system's log counts for the card or its slot while it works, and for how long. The log leaves some out, so the number is the least. A few at start are usual; the same slot decides.",
	"checks.temperature-hot-spot": "Hot-spot temperature under load",
	"checks.temperature-hot-spot.hint":
		"As the card reports it, after at least 30 minutes. By practice it lies at most 25 K above the core.",
	"checks.temperature-memory": "Memory temperature under load",
	"checks.temperature-memory.hint": "As the card reports it, after at least 30 minutes of the same load.",
	"checks.power-draw": "Power drawn under load",
	"checks.power-draw.hint": "As the card reports it, at the same load. For moments it may lie above its limit.",

	"checks.visual-socket": "Pins of the processor's socket straight",
	"checks.visual-socket.hint":
		"Photograph the socket close up from three angles, then look: bent, missing or dirty pins.",
	"checks.post-code-end": "Start codes reach the operating system",
	"checks.post-code-end.hint":
		"How often it was started with a code display, and how often the codes went on to the end. Write the last code and the manual that explains it as a remark; single codes differ by board.",
	"checks.memory-channels": "Every memory slot works",
	"checks.memory-channels.hint":
		"Each slot alone and all together with memory that is known to work: how many tried, how many well.",
	"checks.ports-work": "Ports and connectors work",
	"checks.ports-work.hint":
		"Each port, header and socket with a device that is known to work: how many were tried, and how many worked. Name those that did not as a remark.",
	"checks.slots-full-width": "Slots run at their full width",
	"checks.slots-full-width.hint":
		"In each slot a card that is known to work, under load: how many slots were tried, and how many ran as wide as slot and card can.",
	"checks.built-in-devices": "Built-in devices work",
	"checks.built-in-devices.hint":
		"Network, wireless, sound, camera, keyboard, controllers, whatever this board serves: how many were tried, and how many worked.",
	"checks.temperature-regulators": "Temperature of the voltage regulators",
	"checks.temperature-regulators.hint": "At the hottest point, after 30 minutes of load. Note the room temperature.",
	"checks.runs-under-load": "Runs under load without a fault",
	"checks.runs-under-load.hint":
		"A demanding load for at least 30 minutes: how often it was run, and how often it ran to the end without a fault or a shutdown. A power supply at 80 % of its rating or more; a module at the upper limit of its room temperature.",

	"checks.visual-latches": "Latches of the connectors whole",
	"checks.visual-latches.hint": "Every flat-cable connector: latch there, closing, no contact lifted. Photograph each.",
	"checks.visual-liquid-indicator": "Liquid indicators not turned",
	"checks.visual-liquid-indicator.hint": "The small paper dots, where the board has them: white is dry.",
	"checks.charge-port-both-ways": "Charges with the plug either way round",
	"checks.charge-port-both-ways.hint": "How often it was plugged in, both ways, and how often it charged.",
	"checks.sleep-and-resume": "Sleeps and wakes",
	"checks.sleep-and-resume.hint": "Five times: how often it was sent to sleep, and how often it woke as it should.",
	"checks.runs-on-adapter-only": "Runs on the adapter alone",
	"checks.runs-on-adapter-only.hint": "Battery unplugged: how often it was started, and how often it ran.",
	"checks.runs-on-battery-only": "Runs on the battery alone",
	"checks.runs-on-battery-only.hint": "Adapter unplugged: how often it was started, and how often it ran.",

	"checks.visual-thermal-interface": "Thermal interface as it should be",
	"checks.visual-thermal-interface.hint":
		"Only where the cooler is off for the repair: photograph which material is there and that none has run out. Liquid metal shifts with the way the parcel lies.",
	"checks.indicator-as-it-should": "Indicators light as they should",
	"checks.indicator-as-it-should.hint":
		"How often it was switched on, and how often lights and beeps were as they should be. Write the blinks you counted as a remark.",
	"checks.disc-drive-reads": "Disc drive reads and ejects",
	"checks.disc-drive-reads.hint": "How many discs were tried, and how many were read and given back.",
	"checks.temperature-exhaust": "Temperature of the exhaust air",
	"checks.temperature-exhaust.hint":
		"In the air that leaves the case, after 30 minutes of load. Note the room temperature.",

	"checks.visual-noise": "Sounds as it should",
	"checks.visual-noise.hint":
		"A disk that clicks, scrapes or starts over and over is not as it should be: switch it off and leave it off.",
	"checks.smart-self-assessment": "The drive's own assessment",
	"checks.smart-reallocated-sectors": "Reallocated sectors",
	"checks.smart-pending-sectors": "Pending sectors",
	"checks.smart-offline-uncorrectable": "Sectors that cannot be read",
	"checks.smart-reported-uncorrectable": "Reported uncorrectable errors",
	"checks.smart-command-timeouts": "Commands that timed out",
	"checks.smart-media-errors": "Media errors",
	"checks.smart-error-log-entries": "Entries in the error log",
	"checks.smart-transfer-errors": "Errors of the transfer",
	"checks.smart-shock-sense": "Shocks that the drive counted",
	"checks.smart-power-cycles": "Times switched on",
	"checks.smart-unsafe-shutdowns": "Times switched off without warning",
	"checks.smart-percentage-used": "Life used, by the drive's own estimate",
	"checks.smart-available-spare": "Spare blocks left",
	"checks.smart.hint":
		"Best taken over from the file of a drive tool. Not every drive keeps every number. Transfer errors alone point to cable or bench; the shock counter counts under power only, never in a parcel.",
	"checks.smart-power-on-hours": "Hours under power",
	"checks.smart-power-on-hours.hint":
		"At arrival never less than when it left, and only the hours of test and bench more; else it may be another drive.",
	"checks.read-errors": "Errors of a full read",
	"checks.read-errors.hint":
		"How many errors reading the whole drive gave, and how long it took. Reading only: nothing is written. Save what matters first.",
	"checks.smart-self-test": "The drive's self-test",
	"checks.smart-self-test.hint":
		"Short and extended self-test: how many were run, and how many ended without an error.",
	"checks.smart-temperature": "Drive temperature",
	"checks.smart-temperature.hint": "As the drive reports it, after 30 minutes of load.",

	"checks.earth-and-insulation": "Protective earth and insulation",
	"checks.earth-and-insulation.hint":
		"Only by a person qualified for it, with the instrument and by the rules of the place: how many tests were done, and how many were passed.",
	"checks.ripple-12v": "Ripple of +12 V",
	"checks.ripple-5v": "Ripple of +5 V",
	"checks.ripple-3v3": "Ripple of +3.3 V",
	"checks.ripple-5v-standby": "Ripple of 5 V standby",
	"checks.ripple.hint":
		"Peak to peak at the connector, 10 Hz to 20 MHz, with 0.1 µF and 10 µF at the probe, into a dummy load.",
	"checks.time-to-power-on": "Time until the rails are up",
	"checks.time-to-power-good": "Time until power-good",
	"checks.hold-up-time": "Hold-up time",
	"checks.timing.hint":
		"With an oscilloscope at the low-voltage side, into a dummy load. Limits differ by edition of the guide; the source names the one used here.",
	"checks.protection-trips": "Protection trips and recovers",
	"checks.protection-trips.hint":
		"How many protections were tried with a load made for it, and how many tripped and recovered.",

	"checks.functional-points": "Function at the points of its specification",
	"checks.functional-points.hint":
		"At least three points of the owner's own specification, inputs and outputs named in a remark: how many were tried, and how many kept their tolerance.",
	"checks.connectors-mated": "Connectors mate",
	"checks.connectors-mated.hint":
		"Each connector plugged once and photographed: how many, and how many went as they should.",

	"checks.figures": "Figures of this check, and where they come from",
	"checks.figure-limits": "Limit: {range}.",
	"checks.figure-stop-below": "Below {value} the board is not powered.",
	"checks.figure-plausible": "Sound boards were read {range}. Outside, look again at what you typed; it is no limit.",
	"checks.figure-margin": "Up to {margin} of difference between the two ends does not matter.",
	"checks.figure-or": ", or if larger ",
	"checks.figure-at-most": "at most {high}",
	"checks.figure-at-least": "at least {low}",
	"checks.figure-between": "{low} to {high}",
	"checks.figure-source": "({document}: {locator}; {standing}.)",
	"checks.duration": "Takes at least {least} minutes.",
	"checks.duration-release": "Takes at least {least} minutes; {release} before a repaired item leaves the bench.",
	"checks.stop.bent": "Stop when the bow is above the limit near a large chip: do not bend it back.",
	"checks.stop.limited": "Stop when the limit holds the current back, at smoke, or when anything reaches 80 °C.",
	"checks.stop.first-rail": "Stop at the first rail that is missing.",
	"checks.stop.outside":
		"Stop when an input is outside its window: that is a fault of the bench or the supply, not of the board.",
	"checks.stop.sign": "Stop at smoke, smell, unusual heat or a supply that trips.",
	"checks.stop.first-error": "Stop at the first error and keep what the test says.",
	"checks.stop.soak":
		"Stop at the device's own slowdown threshold, at flaws in the picture, when it drops off the bus, or at a smell.",
	"checks.stop.current":
		"Stop when standby draws more than twice its own record, or when anything reaches 60 °C within ten seconds.",
	"checks.stop.cell":
		"Stop when a battery is swollen, hot or leaking: leave it alone and keep it away from what burns.",
	"checks.stop.earth": "Stop when earth or insulation is not proven: the supply is not plugged in again.",

	"checks.caution.live":
		"The board is under power while you measure. A probe that slips can destroy it: clip on before you switch on, or use a probe with a covered tip.",
	"checks.caution.mains":
		"A power supply holds mains voltage, also for a while after it is unplugged. Do not open it and measure nothing on its mains side. That is for licensed people, by the rules of your place.",
	"checks.caution.cell":
		"Lithium cells burn when they are shorted, pierced, bent or charged wrongly. Never power or charge one that is swollen.",
	"checks.caution.socket":
		"The socket's pins bend at a touch. Look and photograph; do not wipe, and put the cover back on.",
	"checks.caution.liquid-metal": "Liquid metal conducts and creeps. Do not power the board where it may have run out.",
	"checks.caution.never-open": "Never open a hard disk: dust destroys it.",
} as const;
