/**
 * What findings speak for. Each rule says which origins a finding fits better than the others, which it fits worse, and
 * which it leaves no room for. Directions only: how strongly is for whoever has numbers. Words stand in
 * `texts/<language>/origin.ts` under `origin.finding-…`.
 */
import type { Origin } from "../../calculations/origin/origins.ts";
import type { Directions, FindingDirection, FindingRule } from "../../calculations/origin/types.ts";
import { cite } from "../../calculations/sources.ts";

const TABLE = cite("common-practice", "signs by which a bench tells origins apart", "common-practice");
const CHOICE = cite("our-choice", "direction set by this project, no source found", "our-choice");
const JOINTS = cite("trade-list-answer", "interfacial cracks", "published");
const BUS_LOSS = cite("driver-issue-tracker", "reseat, supply and firmware first", "published");
const EDGE = cite("repair-manual-edge", "parts knocked off near the edge", "published");

const both = (direction: FindingDirection, ...origins: readonly Origin[]): Directions =>
	Object.fromEntries(origins.map((origin) => [origin, direction]));
const fits = (...origins: readonly Origin[]) => both("for", ...origins);
const misfits = (...origins: readonly Origin[]) => both("against", ...origins);

export const FINDING_RULES: readonly FindingRule[] = [
	// ---- Which item is it -------------------------------------------------------------------------------------
	{ id: "marks-differ", group: "identity", side: "either", whenPresent: fits("other-item"), source: TABLE },
	{
		id: "marks-agree",
		group: "identity",
		side: "either",
		whenPresent: both("rules-out", "other-item"),
		source: TABLE,
	},
	{ id: "number-agrees", group: "identity", side: "either", whenPresent: misfits("other-item"), source: CHOICE },
	// ---- What the departure record can and can not exclude ------------------------------------------------------
	{
		id: "start-missed-before",
		side: "departure",
		whenPresent: fits("missed-before-dispatch", "intermittent"),
		source: TABLE,
	},
	{
		id: "long-clean-test-before",
		side: "departure",
		whenPresent: misfits("missed-before-dispatch", "intermittent"),
		source: CHOICE,
	},
	{
		id: "fault-at-repaired-spot",
		group: "place-of-fault",
		side: "arrival",
		whenPresent: { ...fits("missed-before-dispatch"), ...misfits("other-part") },
		source: JOINTS,
	},
	{
		id: "fault-at-other-part",
		group: "place-of-fault",
		side: "arrival",
		whenPresent: { ...fits("other-part"), ...misfits("missed-before-dispatch") },
		source: TABLE,
	},
	{
		id: "old-damage-seen",
		side: "arrival",
		whenPresent: fits("missed-before-dispatch"),
		source: TABLE,
	},
	// ---- The trip -----------------------------------------------------------------------------------------------
	{
		id: "parcel-damaged",
		group: "blow-to-parcel",
		side: "arrival",
		whenPresent: fits("transit-shock"),
		source: TABLE,
	},
	{
		id: "indicator-tripped",
		group: "blow-to-parcel",
		side: "arrival",
		whenPresent: fits("transit-shock"),
		source: TABLE,
	},
	{
		id: "shock-beyond-design",
		group: "blow-to-parcel",
		side: "transit",
		whenPresent: fits("transit-shock"),
		source: TABLE,
	},
	{
		id: "no-shock-recorded",
		group: "blow-to-parcel",
		side: "transit",
		whenPresent: misfits("transit-shock"),
		source: TABLE,
	},
	{
		id: "new-mechanical-damage",
		group: "mark-on-item",
		side: "arrival",
		whenPresent: fits("transit-shock", "receiver-handling"),
		whenAbsent: { ...fits("missed-before-dispatch", "other-part"), ...misfits("transit-shock") },
		source: EDGE,
	},
	{
		id: "pack-mark-matches",
		group: "pack-mark",
		side: "arrival",
		whenPresent: { ...fits("transit-shock"), ...misfits("receiver-handling") },
		whenAbsent: misfits("transit-shock"),
		source: TABLE,
	},
	{
		id: "cushion-intact",
		group: "pack-mark",
		side: "arrival",
		whenPresent: misfits("transit-shock"),
		source: TABLE,
	},
	{
		id: "parts-loosened",
		side: "arrival",
		whenPresent: fits("transit-vibration"),
		whenAbsent: misfits("transit-vibration"),
		source: TABLE,
	},
	{
		id: "cooler-unsupported",
		side: "departure",
		whenPresent: fits("transit-vibration"),
		source: TABLE,
	},
	{
		id: "wetness-seen",
		side: "arrival",
		whenPresent: fits("moisture"),
		whenAbsent: misfits("moisture"),
		source: TABLE,
	},
	// ---- Unpacking and first power-on -----------------------------------------------------------------------------
	{
		id: "unpacking-filmed",
		side: "arrival",
		whenPresent: misfits("receiver-handling"),
		source: TABLE,
	},
	{ id: "bag-found-open", side: "arrival", whenPresent: fits("receiver-handling", "moisture"), source: TABLE },
	{ id: "lead-of-other-supply", side: "arrival", whenPresent: fits("receiver-handling", "set-up"), source: TABLE },
	{
		id: "reseating-cured",
		side: "arrival",
		whenPresent: { ...fits("unseated"), ...misfits("transit-shock", "other-part", "software-state") },
		whenAbsent: misfits("unseated"),
		source: BUS_LOSS,
	},
	{
		id: "good-at-first-then-bad",
		side: "arrival",
		whenPresent: {
			...fits("missed-before-dispatch", "receiver-handling", "intermittent"),
			...misfits("transit-shock"),
		},
		source: CHOICE,
	},
	{
		id: "good-on-arrival",
		side: "arrival",
		whenPresent: misfits("transit-shock", "transit-vibration", "unseated", "moisture", "other-item"),
		source: TABLE,
	},
	{
		id: "errors-grew-later",
		side: "arrival",
		whenPresent: { ...fits("missed-before-dispatch", "other-part"), ...misfits("transit-shock") },
		source: TABLE,
	},
	// ---- The bench there --------------------------------------------------------------------------------------------
	{
		id: "control-item-good",
		group: "bench-there",
		side: "arrival",
		whenPresent: misfits("set-up"),
		whenAbsent: fits("set-up"),
		source: TABLE,
	},
	{
		id: "slot-limits",
		group: "bench-there",
		side: "arrival",
		whenPresent: fits("set-up"),
		source: TABLE,
	},
	{
		id: "good-on-other-computer",
		group: "other-computer",
		side: "arrival",
		whenPresent: {
			...fits("set-up"),
			...misfits(
				"transit-shock",
				"transit-vibration",
				"moisture",
				"receiver-handling",
				"other-part",
				"missed-before-dispatch",
			),
		},
		whenAbsent: misfits("set-up", "software-state"),
		source: TABLE,
	},
	{
		id: "bad-on-departure-bench",
		side: "either",
		whenPresent: both("rules-out", "set-up"),
		source: TABLE,
	},
	{
		id: "picture-before-driver",
		group: "driver",
		side: "arrival",
		whenPresent: { ...fits("software-state"), ...misfits("transit-shock") },
		source: TABLE,
	},
	{
		id: "other-driver-cured",
		group: "driver",
		side: "arrival",
		whenPresent: fits("software-state"),
		whenAbsent: misfits("software-state"),
		source: TABLE,
	},
	// ---- Both ends ----------------------------------------------------------------------------------------------------
	{
		id: "some-starts-good",
		side: "arrival",
		whenPresent: fits("intermittent", "unseated"),
		source: TABLE,
	},
	{
		id: "better-on-arrival",
		side: "either",
		whenPresent: { ...fits("intermittent", "set-up"), ...misfits("transit-shock", "receiver-handling") },
		source: TABLE,
	},
	{ id: "record-contradicts-itself", side: "either", whenPresent: fits("record-in-doubt"), source: TABLE },
];
