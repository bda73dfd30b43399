/** `board-strength`, `vibration`, `box-compression`, `desiccant`. */
import { boxCompression as compressBox } from "../../calculations/box/box-compression.ts";
import { desiccant as unitsOfDesiccant } from "../../calculations/moisture/desiccant.ts";
import { cite } from "../../calculations/sources.ts";
import { boardStrength as strengthOfBoard } from "../../calculations/strength/board-strength.ts";
import { vibration as vibrate } from "../../calculations/vibration/vibration.ts";
import { DEFAULT_VIBRATION_PROFILE, vibrationProfileById } from "../../catalogue/vibration-profiles.ts";
import {
	boardStrengthRequest,
	boardStrengthResult,
	boxCompressionRequest,
	boxCompressionResult,
	desiccantRequest,
	desiccantResult,
	vibrationRequest,
	vibrationResult,
} from "../../contract/strength.ts";
import { invalid } from "../../faults.ts";
import { calculation } from "./calculation.ts";

export const boardStrength = calculation({
	name: "board-strength",
	summary: "A screen of the shock that a board takes, by the deflection that its components' joints allow.",
	request: boardStrengthRequest,
	result: boardStrengthResult,
	example: {
		request: {
			component: { kind: "ball-grid-array", lengthM: 0.044958, position: "centre", boardEdgeM: 0.2667 },
			boardThicknessM: 0.0016002,
			naturalFrequencyHz: 100,
			amplification: 1.5,
		},
		result: { allowableShockDeflectionM: 0.0024, allowableVibrationDeflectionM: 0.0004, allowableShockGn: 64 },
	},
	assess: strengthOfBoard,
});

export const vibration = calculation({
	name: "vibration",
	summary: "The response of a board to a random vibration profile, and what its cushion lets through.",
	request: vibrationRequest,
	result: vibrationResult,
	example: {
		request: { profileId: DEFAULT_VIBRATION_PROFILE, naturalFrequencyHz: 60, cushionFrequencyHz: 20 },
		result: { overallGnRms: 0.604 },
	},
	assess: ({ profile, profileId, ...input }) => vibrate({ ...input, profile: profileOf(profile, profileId) }),
});

function profileOf(points: readonly { frequencyHz: number; gn2PerHz: number }[] | undefined, id: string | undefined) {
	if (points !== undefined)
		return { id: "own", points, statedGnRms: null, source: cite("user", "own vibration profile", "user") };
	const found = vibrationProfileById(id ?? DEFAULT_VIBRATION_PROFILE);
	if (found === null) throw invalid([{ path: "/profileId", code: "unknown-id" }]);
	return found;
}

export const boxCompression = calculation({
	name: "box-compression",
	summary: "Strength of a corrugated box under a stack, what time and humidity leave of it, and the margin.",
	request: boxCompressionRequest,
	result: boxCompressionResult,
	example: {
		request: { edgeCrushKNPerM: 5.604, caliperM: 0.004, perimeterM: 1.4, days: 10, humidityPercent: 80 },
		result: { compressionStrengthN: 2462, deratedStrengthN: 1055 },
	},
	assess: compressBox,
});

export const desiccant = calculation({
	name: "desiccant",
	summary: "Units of desiccant for a sealed barrier, by the published rules.",
	request: desiccantRequest,
	result: desiccantResult,
	example: {
		request: {
			method: "din-55474",
			barrierAreaM2: 0.24,
			barrierVolumeM3: 0.004,
			waterVapourGramPerM2Day: 3,
			days: 30,
			finalHumidityPercent: 40,
		},
		result: { units: 2.53, unitsRounded: 4 },
	},
	assess: unitsOfDesiccant,
});
