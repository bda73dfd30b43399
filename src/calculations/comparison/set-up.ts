/** What has to agree beside the bench before system-level readings may be compared: driver, firmware, room temperature. */
import type { ComparedState } from "./types.ts";

/** Common practice, no published source: within 3 K. */
export const AMBIENT_WITHIN_K = 3;

/** What both ends recorded and recorded differently; what one end did not record is not held against it. */
export function setUpDifferences(
	departure: ComparedState | null,
	arrival: ComparedState | null,
): ("driver" | "firmware" | "ambient")[] {
	const apart = (["driver", "firmware"] as const).filter((name) => {
		const [left, came] = [departure?.[name], arrival?.[name]];
		return typeof left === "string" && typeof came === "string" && left.trim() !== came.trim();
	});
	const [left, came] = [departure?.ambientDegC, arrival?.ambientDegC];
	if (left === undefined || came === undefined || Math.abs(left - came) <= AMBIENT_WITHIN_K) return apart;
	return [...apart, "ambient"];
}
