/**
 * Tests that tell origins apart: under which they are expected to come out positive and under which negative. A test says
 * nothing of an origin that it does not name. Words stand in `texts/<language>/origin.ts` under `origin.test-…`.
 */
import type { OriginTestRule } from "../../calculations/origin/types.ts";
import { cite } from "../../calculations/sources.ts";

const TABLE = cite("common-practice", "tests by which a bench tells origins apart", "common-practice");
const PLAIN = {
	destructive: false,
	breaksCustody: false,
	needsPower: false,
	needsStart: false,
	source: TABLE,
} as const;

export const ORIGIN_TEST_RULES: readonly OriginTestRule[] = [
	{
		...PLAIN,
		id: "other-computer",
		needsPower: true,
		answers: ["good-on-other-computer"],
		likely: ["set-up", "software-state"],
		unlikely: ["missed-before-dispatch", "transit-shock", "moisture", "receiver-handling", "other-part"],
	},
	{
		...PLAIN,
		id: "control-item",
		answers: ["control-item-good"],
		likely: ["missed-before-dispatch", "transit-shock", "receiver-handling", "other-part"],
		unlikely: ["set-up"],
	},
	{
		...PLAIN,
		id: "reseat",
		needsPower: true,
		answers: ["reseating-cured"],
		likely: ["unseated"],
		unlikely: ["missed-before-dispatch", "transit-shock", "other-part", "software-state", "moisture"],
	},
	{
		...PLAIN,
		id: "counted-starts",
		needsPower: true,
		needsStart: true,
		likely: ["intermittent", "unseated", "missed-before-dispatch"],
		unlikely: ["transit-shock", "receiver-handling", "other-item", "set-up", "software-state"],
	},
	{
		...PLAIN,
		id: "photos-of-same-place",
		answers: ["new-mechanical-damage"],
		likely: ["transit-shock", "receiver-handling"],
		unlikely: ["missed-before-dispatch", "other-part", "set-up", "software-state"],
	},
	{
		...PLAIN,
		id: "marks-in-pack",
		answers: ["pack-mark-matches", "cushion-intact"],
		likely: ["transit-shock"],
		unlikely: ["receiver-handling", "missed-before-dispatch", "other-part", "set-up"],
	},
	{
		...PLAIN,
		id: "other-driver",
		needsPower: true,
		needsStart: true,
		answers: ["other-driver-cured"],
		likely: ["software-state"],
		unlikely: ["transit-shock", "missed-before-dispatch", "other-part"],
	},
	{
		...PLAIN,
		id: "identity-marks",
		answers: ["marks-agree"],
		likely: ["other-item"],
		unlikely: ["missed-before-dispatch", "transit-shock", "other-part"],
	},
	{
		...PLAIN,
		id: "original-files",
		likely: ["record-in-doubt"],
		unlikely: ["missed-before-dispatch", "transit-shock"],
	},
	{
		...PLAIN,
		id: "screws-and-pads",
		answers: ["parts-loosened"],
		likely: ["transit-vibration"],
		unlikely: ["set-up", "software-state", "other-part", "receiver-handling"],
	},
	{
		...PLAIN,
		id: "which-part",
		needsPower: true,
		answers: ["fault-at-repaired-spot", "fault-at-other-part"],
		likely: ["other-part"],
		unlikely: ["missed-before-dispatch"],
	},
	{
		...PLAIN,
		id: "departure-bench",
		needsPower: true,
		answers: ["bad-on-departure-bench"],
		breaksCustody: true,
		likely: ["missed-before-dispatch", "transit-shock", "receiver-handling", "other-part", "moisture"],
		unlikely: ["set-up", "software-state", "unseated"],
	},
	{
		...PLAIN,
		id: "x-ray-of-joints",
		breaksCustody: true,
		likely: ["transit-shock", "missed-before-dispatch"],
		unlikely: ["receiver-handling", "software-state", "set-up", "other-part"],
	},
	{
		...PLAIN,
		id: "cut-and-dye",
		destructive: true,
		breaksCustody: true,
		likely: ["missed-before-dispatch"],
		unlikely: ["transit-shock", "receiver-handling", "other-part"],
	},
];
