/** The best first; what was not tested or came back unrepaired is not on it. */
const STATES = ["good", "partly-good", "intermittent", "does-not-start"];

/**
 * Whether an item as a whole is not good where it arrived, and was not seen so before. On its way to the repairer an item is
 * expected not to be good, so there only a record of a better state before counts.
 * @param left its state as the departure record says it; undefined without one
 */
export function isWorseOnArrival(arrived: string, left: string | undefined, isToOwner: boolean): boolean {
	if (!(STATES.indexOf(arrived) > 0)) return false;
	const before = STATES.indexOf(left ?? "");
	return before < 0 ? isToOwner : STATES.indexOf(arrived) > before;
}
