/** The demo shop's stock: boxes, sheets and bags, names and prices invented. One foam is given by points of its curve. */
import type { DemoClient } from "./demo-client.ts";

const euro = (amount: number) => ({ amount, currency: "EUR" });
const box = ([innerLengthM, innerWidthM, innerHeightM]: readonly [number, number, number], price: number) => ({
	innerLengthM,
	innerWidthM,
	innerHeightM,
	edgeCrushKNPerM: 7,
	caliperM: 0.004,
	reused: false,
	price: euro(price),
});

/** An invented soft foam: a curve of 18 kPa and 0.06 per kPa, read with a scatter of a few percent. */
const SOFT_POINTS = [
	[0.6, 0.3, 50, 35.8],
	[0.6, 0.61, 50, 46.1],
	[0.6, 0.91, 50, 59.0],
	[1.2, 0.3, 50, 22.6],
	[1.2, 0.61, 50, 37.0],
	[1.2, 0.91, 50, 54.2],
	[2.0, 0.3, 50, 18.7],
	[2.0, 0.61, 50, 38.3],
	[2.6, 0.8, 50, 86.1],
	[3.3, 0.6, 50, 57.2],
].map(([staticStressKPa, dropHeightM, thicknessMm = 0, peakGn]) => ({
	staticStressKPa,
	dropHeightM,
	thicknessM: thicknessMm / 1000,
	peakGn,
	drop: 3,
}));

const STOCK = {
	boxes: {
		"B0 smallest": box([0.247, 0.202, 0.126], 0.8),
		"B1 small": box([0.37, 0.21, 0.14], 1.1),
		"B2 flat": box([0.38, 0.3, 0.112], 1.2),
		"B3 medium": box([0.42, 0.26, 0.19], 1.6),
		"B4 large": box([0.5, 0.4, 0.32], 2.6),
		"B5 double wall": { ...box([0.6, 0.5, 0.42], 4.8), edgeCrushKNPerM: 11, caliperM: 0.007 },
	},
	foams: {
		"Plank 50": { foam: { id: "pe-plank-23c" }, thicknessM: 0.05, price: euro(30) },
		"Plank 25": { foam: { id: "pe-plank-23c" }, thicknessM: 0.025, price: euro(16) },
		"Ether 50": { foam: { id: "pu-ether-24-mean-2-to-5" }, thicknessM: 0.05, price: euro(22) },
		"Ester 40": { foam: { id: "pu-ester-32-mean-2-to-5" }, thicknessM: 0.04, price: euro(21) },
		"Soft 50, own points": { foam: { points: SOFT_POINTS }, thicknessM: 0.05, price: euro(24) },
	},
	bags: {
		"Shielding, data sheet": {
			layers: [{ kind: "shielding-metal-in", closed: true, intact: true, evidence: "data-sheet" }],
			price: euro(0.4),
		},
		"Film, looks dissipative": {
			layers: [{ kind: "low-charging-film", closed: true, intact: true, evidence: "looks-like" }],
			price: euro(0.1),
		},
	},
};

export async function fillShelf(client: DemoClient): Promise<void> {
	for (const [kind, things] of Object.entries(STOCK))
		for (const [id, thing] of Object.entries(things))
			await client.send("PUT", `/api/v1/stock/${kind}/${encodeURIComponent(id)}`, thing);
}
