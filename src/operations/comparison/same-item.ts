/** Whether two records show that it is the same item; the one answer for the first state and for where a change may come from. */
import { isSameItem } from "../../calculations/comparison/identity.ts";
import type { StateComparison } from "../../calculations/comparison/types.ts";

export function showsSameItem({ identity, rows }: StateComparison): boolean {
	const weighed = rows.find(({ check }) => check.id === "mass")?.comparison.result;
	return isSameItem(identity, weighed?.verdict === "equivalent" ? "agrees" : null);
}
