/** Where a fault may come from: closed list of permanent ids. They name what happened, never who answers for it. */
export const ORIGINS = [
	"missed-before-dispatch",
	"transit-shock",
	"transit-vibration",
	"unseated",
	"moisture",
	"receiver-handling",
	"set-up",
	"software-state",
	"other-item",
	"other-part",
	"intermittent",
	"record-in-doubt",
	"none-of-these",
] as const;
export type Origin = (typeof ORIGINS)[number];
