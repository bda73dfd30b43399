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
