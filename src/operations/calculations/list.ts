/** The calculations that the API offers, in the order of the contract page. */
import type { CalculationOperation } from "./calculation.ts";
import { cushion } from "./cushion.ts";
import { linkJudgement } from "./link-judgement.ts";
import { readingComparison } from "./reading-comparison.ts";

export const CALCULATIONS: readonly CalculationOperation[] = [cushion, readingComparison, linkJudgement];
