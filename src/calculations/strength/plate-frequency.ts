/** First natural frequency of a rectangular plate by how its edges are held. */

/** Edges in the order left, top, right, bottom: S supported, X clamped, F free; left and right are of the width's length. */
export const PLATE_SUPPORTS = [
	"SFFS",
	"SSFS",
	"SSSS",
	"XFFF",
	"XFXF",
	"SFSF",
	"XFSF",
	"XFFX",
	"XXFX",
	"XXXX",
	"XSXS",
	"XFXS",
	"XFFS",
	"SFSX",
	"XXSX",
	"XSFX",
	"XSSX",
	"XSSS",
	"FFFF",
	"four-corners",
] as const;
export type PlateSupport = (typeof PLATE_SUPPORTS)[number];

export interface Plate {
	/** Horizontal edge. */
	readonly lengthM: number;
	/** Vertical edge. */
	readonly widthM: number;
	/** With everything mounted on it. */
	readonly massKg: number;
	readonly modulusGPa: number;
	/** 0 to below 0.5. */
	readonly poissonRatio: number;
	readonly support: PlateSupport;
}

/**
 * f = (π/k)·√(D/ρ·(A/a⁴ + B/(a²b²) + C/b⁴)), as [k, A, B, C]; ρ the mass per area. Source: published, the book's figures
 * 6.14 to 6.16, read as scans. Its table of tested boards differs by 3 to 9 %.
 */
const COEFFICIENTS: Readonly<Record<PlateSupport, readonly [k: number, a4: number, a2b2: number, b4: number]>> = {
	SFFS: [11, 1, 2, 1],
	SSFS: [2, 1 / 16, 1 / 2, 1],
	SSSS: [2, 1, 2, 1],
	XFFF: [Math.PI / 0.56, 1, 0, 0],
	XFXF: [Math.PI / 3.55, 1, 0, 0],
	SFSF: [2, 1, 0, 0],
	XFSF: [1 / 0.78, 1, 0, 0],
	XFFX: [5.42, 1, 3.2, 1],
	XXFX: [3, 0.75, 2, 12],
	XXXX: [1.5, 3, 2, 3],
	XSXS: [3.46, 16, 8, 3],
	XFXS: [1.74, 4, 0.5, 0.015625],
	XFFS: [2, 0.127, 0.2, 0],
	SFSX: [2, 1, 0.608, 0.126],
	XXSX: [2, 2.45, 2.9, 5.13],
	// biome-ignore lint/suspicious/noApproximativeNumericConstant: the figure as printed.
	XSFX: [2, 0.127, 0.707, 2.44],
	XSSX: [2, 2.45, 2.68, 2.45],
	XSSS: [2, 2.45, 2.32, 1],
	FFFF: [2, 0, 2.08, 0],
	// The book's board of 6 × 4 in on four corners, 71.78 Hz (figure 6.26), scaled as the figure says; its shape is kept.
	"four-corners": [2, 0, 0.3833, 0],
};

/** Natural frequency, Hz, of a bare plate of a thickness, m. */
export function plateFrequencyHz(plate: Plate, thicknessM: number): number {
	const { lengthM: a, widthM: b, massKg, modulusGPa, poissonRatio, support } = plate;
	const stiffness = (modulusGPa * 1e9 * thicknessM ** 3) / (12 * (1 - poissonRatio ** 2));
	const [k, a4, a2b2, b4] = COEFFICIENTS[support];
	return (Math.PI / k) * Math.sqrt(((stiffness * a * b) / massKg) * (a4 / a ** 4 + a2b2 / (a * b) ** 2 + b4 / b ** 4));
}
