/** What better packing has to achieve to be worth its cost. */

/**
 * By how much the probability of damage must fall: Δp = c / L. Cost c and loss L in one currency, both above 0. Over 1 it can
 * never be worth it. Source: expected loss, (p₀ − p₁)·L > c.
 */
export function packingBreakEven(cost: number, loss: number): number {
	return cost / loss;
}
