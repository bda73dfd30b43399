/**
 * A drop on an edge or a corner: two or three cushions at right angles, each pressed by its share of the fall. The item is
 * rigid, no shear, no crushing of the box's corner, so it is too stiff at light load. Derivation: our own, not validated
 * (cushioning reference, part III section 3): F = Σ n·F_i(n·d), energy = Σ W_i(n·d), n = 1/√k.
 */
import { risingZero } from "./foam-model.ts";
import { type Pad, rowPressed } from "./pad.ts";

/**
 * Peak force, kN, on k = 1, 2 or 3 meeting faces, each a row of pads, that take an energy, kJ, together. Infinite where
 * they lock before.
 */
export function skewPeakKN(faces: readonly (readonly Pad[])[], energyKJ: number): number {
	const share = 1 / Math.sqrt(faces.length);
	const longest = Math.min(...faces.map((pads) => pads.reduce((sum, pad) => sum + pad.thicknessM / pad.peakFactor, 0)));
	const at = (compressionM: number) => faces.map((pads) => rowPressed(pads, compressionM));
	const taken = (compressionM: number) => at(compressionM).reduce((sum, face) => sum + face.energyKJ, 0);
	const compressionM = risingZero((x) => taken(x) - energyKJ, 0, longest);
	return share * at(compressionM).reduce((sum, face) => sum + face.forceKN, 0);
}
