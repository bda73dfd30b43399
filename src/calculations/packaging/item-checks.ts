/** The checks `cell`, `cooler` and `cover`: what the item itself brings along. */
import { contactOf, isConductive } from "../electrostatics/static-protection.ts";
import { sentence } from "../judged.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../quantities.ts";
import { cite } from "../sources.ts";
import type { CheckContext } from "./check-context.ts";
import type { PackagingCheck } from "./types.ts";
import { atMost, unassessed } from "./verdicts.ts";

const SHORT = cite("dangerous-goods-188", "cells protected from short circuit", "published");

/** A conductive layer against a cell discharges it; the carrier's own rules for cells are a caution of the answer. */
export function cellCheck({ input: { item, pack } }: CheckContext): PackagingCheck {
	const base = { id: "cell" as const, value: null, limit: null, unit: null, margin: null, sources: [SHORT] };
	if (item.cell === "none") return { ...base, verdict: "meets", why: sentence("packaging.no-cell"), mend: null };
	const contact = pack.bagLayers.find((layer) => layer.kind !== "none");
	if (contact === undefined)
		return unassessed("cell", sentence("packaging.cell-no-layer"), sentence("packaging.mend-cell"), [SHORT]);
	if (isConductive(contact))
		return {
			...base,
			verdict: "falls-short",
			why: sentence("packaging.cell-shorted"),
			mend: sentence("packaging.mend-cell"),
		};
	const proven = contact.evidence === "measured" || contact.evidence === "data-sheet";
	const known = proven && contactOf(contact) === "pass";
	return { ...base, verdict: known ? "meets" : "provisional", why: sentence("packaging.cell-apart"), mend: null };
}

/** What a bare desktop board passes with its cooler fitted: 0.55 kg at 50 gₙ. Source: published, a processor's design guide. */
const BOARD_ONLY_N = 0.55 * 50 * STANDARD_GRAVITY_M_PER_S2;
const LEVEL = cite("board-random-guide", "bare board with a cooler of 550 g passes 50 gₙ", "published");
const PRACTICE = cite(
	"common-practice",
	"support the cooler or the bracket's end, not only the board",
	"common-practice",
);

/** No limit for boards with heavy coolers was found; the force and its moment at the peak are shown against a level that was passed. */
export function coolerCheck({ input: { item }, limit, faces }: CheckContext): PackagingCheck {
	const cooler = item.heavyCooler;
	if (cooler === undefined) return unassessed("cooler", sentence("packaging.no-cooler"));
	const peaks = faces.flatMap(({ peakGn }) => (peakGn === null ? [] : [peakGn]));
	const peakGn = peaks.length === 0 ? limit.limitGn : Math.max(...peaks);
	const forceN = cooler.massKg * peakGn * STANDARD_GRAVITY_M_PER_S2;
	const supported = cooler.support !== "board-only";
	const verdict = supported ? "provisional" : atMost(forceN, BOARD_ONLY_N, "provisional");
	return {
		id: "cooler",
		verdict,
		value: forceN,
		limit: supported ? null : BOARD_ONLY_N,
		unit: "N",
		margin: supported ? null : (BOARD_ONLY_N - forceN) / BOARD_ONLY_N,
		why: sentence(
			supported
				? "packaging.cooler-supported"
				: verdict === "falls-short"
					? "packaging.cooler-short"
					: "packaging.cooler-light",
			{ forceN, momentNm: (forceN * item.heightM) / 2, peakGn, levelN: BOARD_ONLY_N },
		),
		mend: supported ? null : sentence("packaging.mend-cooler"),
		sources: [LEVEL, PRACTICE],
	};
}

const STATED = cite("user", "value and the carrier's cap as given", "user");

/** About money: it stands beside the verdict and never enters it. */
export function coverCheck({ input: { item, route } }: CheckContext): PackagingCheck {
	const [value, cap] = [item.value, route.carrierCap];
	if (value === undefined || cap === undefined)
		return unassessed("cover", sentence("packaging.no-cover"), sentence("packaging.mend-cover-data"));
	if (value.currency !== cap.currency)
		return unassessed(
			"cover",
			sentence("packaging.cover-currency", { value: value.currency, cap: cap.currency }),
			sentence("packaging.mend-cover-data"),
		);
	const held = cap.amount >= value.amount;
	return {
		id: "cover",
		verdict: held ? "meets" : "falls-short",
		value: cap.amount,
		limit: value.amount,
		unit: value.currency,
		margin: value.amount > 0 ? (cap.amount - value.amount) / value.amount : null,
		why: sentence(held ? "packaging.covered" : "packaging.uncovered", {
			cap: cap.amount,
			value: value.amount,
			currency: value.currency,
		}),
		mend: held ? null : sentence("packaging.mend-cover"),
		sources: [STATED],
	};
}
