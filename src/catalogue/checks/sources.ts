/** Sources that several checks share. */
import { cite } from "../../calculations/sources.ts";

/** What does not depend on the bench, what depends on the meter, what on the whole set-up. */
export const CLASSES = cite("common-practice", "comparability by what is measured", "common-practice");

export const NO_MISS = cite(
	"common-practice",
	"any miss is an intermittent fault, not a good board",
	"common-practice",
);
export const NOTHING_FOUND = cite("common-practice", "none of the listed faults is found by eye", "common-practice");
export const NO_ERRORS = cite("common-practice", "no memory error over at least 90 % of the memory", "common-practice");
export const MASS_MARGIN = cite("common-practice", "the larger of 5 g and 0.5 %", "common-practice");
export const RESISTANCE_MARGIN = cite(
	"common-practice",
	"15 % with the same meter on the same board",
	"common-practice",
);
export const FAN_MARGIN = cite("common-practice", "10 % of the board's own record", "common-practice");
export const TEMPERATURE_MARGIN = cite("our-choice", "5 K, for a room that may differ by 3 K", "our-choice");
export const SCORE_MARGIN = cite("our-choice", "3 %, the scatter above which a bench is not steady", "our-choice");
export const REPAIR_MANUAL = cite("repair-manual-graphics", "2.1, 3.1: 12 V input below 100 Ω is a short", "published");
export const RESISTANCE_WINDOWS = cite(
	"common-practice",
	"union of four published sets of readings, with margin; finds typing errors, never a fault",
	"common-practice",
);

export const OWN_RECORD_5 = cite(
	"common-practice",
	"5 % of the board's own record with the same meter",
	"common-practice",
);
export const OWN_RECORD_10 = cite("common-practice", "10 % of the board's own record", "common-practice");
export const OWN_RECORD_20 = cite("common-practice", "20 % of the board's own record", "common-practice");
export const DIODE_MARGIN = cite(
	"common-practice",
	"the larger of 10 mV and 3 % with the same meter",
	"common-practice",
);
export const FLATNESS = cite(
	"ipc-a-610f",
	"10.2.7, bow and twist: at most 0.75 % with surface-mounted parts",
	"published",
);
export const DURATION = cite("common-practice", "durations of the bench", "common-practice");
export const SOAK = cite(
	"common-practice",
	"30 min at least, 2 to 4 h before a board leaves after work on its solder joints",
	"common-practice",
);
export const STARTS_WANTED = cite("common-practice", "5 cold and 5 warm starts at least", "common-practice");
export const CARD_12V = cite(
	"supply-guide-3-0",
	"table 3-5: 12 V at edge and auxiliary connectors +5/-8 %; the older card specification has ±8 %, 11.04 to 12.96 V",
	"published",
);
export const CARD_3V3 = cite("hot-plug-data-sheet", "3.3 V of the slot ±9 %", "published");
export const RAIL_WINDOWS = cite(
	"repair-manual-graphics",
	"3.2: core 0.8 to 1.1 V, memory 1.35 to 1.55 V; finds typing errors, never a fault",
	"published",
);
export const SUPPLY_RAILS = cite("supply-guide-2-0", "3.2.1, table 2: ±5 %, -12 V ±10 %", "published");
export const SUPPLY_RIPPLE = cite(
	"supply-guide-0-9",
	"table 8: 120 mV at ±12 V, 50 mV at 5, 3.3 and 5 V standby, peak to peak, 10 Hz to 20 MHz, 0.1 µF and 10 µF at the probe",
	"published",
);
export const SUPPLY_TIMING = cite(
	"supply-guide-3-0",
	"table 4-9, revision 2.0 (legacy): T1 below 500 ms, T3 100 to 500 ms; T5 table 4-10, revision 2.1a: above 11 ms",
	"published",
);
export const BATTERY_WINDOW = cite("common-practice", "2.8 to 3.3 V of the clock's battery", "common-practice");
export const ALWAYS_ON = cite("common-practice", "always-on rails ±5 %", "common-practice");
export const INPUT_RESISTANCE = cite(
	"common-practice",
	"input rail at least 100 Ω; finds typing errors",
	"common-practice",
);
export const HOT_SPOT = cite("common-practice", "hot spot at most 25 K above the core", "common-practice");
export const DRIVE_COUNTERS = cite(
	"common-practice",
	"any rise of reallocated, pending or uncorrectable sectors or media errors between the two ends is a change",
	"common-practice",
);
export const DRIVE_HOURS = cite("our-choice", "48 h of bench and test between the two ends", "our-choice");
export const DRIVE_CYCLES = cite("our-choice", "30 switchings of bench and test between the two ends", "our-choice");
