/** The calculations that the API offers, in the order of the contract page. */
import type { CalculationOperation } from "./calculation.ts";
import { claimCap, claimPeriods, insurance } from "./claims.ts";
import { cushion, cushionFit } from "./cushion.ts";
import { faultOrigin } from "./fault-origin.ts";
import { dropHeight, impact, pulse } from "./handling.ts";
import { linkJudgement } from "./link-judgement.ts";
import { condensation, packaging, staticProtection } from "./packaging.ts";
import { readingComparison } from "./reading-comparison.ts";
import { soak } from "./soak.ts";
import { boardStrength, boxCompression, desiccant, vibration } from "./strength.ts";

export const CALCULATIONS: readonly CalculationOperation[] = [
	impact,
	pulse,
	dropHeight,
	cushion,
	cushionFit,
	boardStrength,
	vibration,
	boxCompression,
	staticProtection,
	desiccant,
	condensation,
	readingComparison,
	soak,
	linkJudgement,
	claimPeriods,
	claimCap,
	insurance,
	faultOrigin,
	packaging,
];
