/** The calculations that the API offers, in the order of the contract page. */
import type { CalculationOperation } from "./calculation.ts";

export const CALCULATIONS: readonly CalculationOperation[] = [];
