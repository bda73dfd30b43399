/** The premium at which being insured is worth as much as not being insured. */
import { type Aversion, equivalentLoss, type Outcome } from "./equivalent-loss.ts";

/** Halvings of the range that holds the premium: more than a double has digits. */
const HALVINGS = 60;

/**
 * @param worth the certain loss that being without insurance is worth, of the same aversion
 * @param kept the deductible, which the insured may still lose
 * @returns in the major unit; 0 where the deductible alone is the greater gamble
 */
export function highestPremium(aversion: Aversion, worth: number, kept: Outcome): number {
	if ("absolute" in aversion)
		return Math.max(0, worth - (equivalentLoss(aversion, [kept]) ?? Number.POSITIVE_INFINITY));
	if (kept.loss === 0) return worth;
	// The poorer someone is, the more the deductible weighs, and the premium makes poorer: no closed form.
	let [low, high] = [0, worth];
	for (let halving = 0; halving < HALVINGS; halving += 1) {
		const premium = (low + high) / 2;
		const left = aversion.wealth - premium;
		const deductible = equivalentLoss({ ...aversion, wealth: left }, [kept]);
		if (deductible !== null && premium + deductible <= worth) low = premium;
		else high = premium;
	}
	return low;
}
