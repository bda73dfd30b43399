/** Money in minor units: whole hundredths of the currency, rounded half-up, so that sums stay exact. */
export interface Money {
	/** In the major unit, at most two decimals. */
	readonly amount: number;
	readonly currency: string;
}

const MINOR_PER_MAJOR = 100;

/** Whole minor units of an amount given in the major unit. */
export function minorUnits(amount: number): number {
	// Twelve digits, so that 1.005, which a double holds as 1.00499…, is rounded up as it is written.
	return Math.floor(Number((amount * MINOR_PER_MAJOR).toPrecision(12)) + 0.5);
}

export function moneyOf(minor: number, currency: string): Money {
	return { amount: minor / MINOR_PER_MAJOR, currency };
}
