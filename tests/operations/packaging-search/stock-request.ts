/** An invented stock: eight boxes, three kinds of sheet in two or three thicknesses, two bags; a 1.9 kg card. */
import type { PackagingSearchRequest } from "../../../src/contract/packaging-search.ts";

const ITEM = { lengthM: 0.29, widthM: 0.14, heightM: 0.06 };
const euro = (amount: number) => ({ amount, currency: "EUR" });
const box = (id: string, roomM: number, amount: number) => ({
	id,
	innerLengthM: ITEM.lengthM + roomM,
	innerWidthM: ITEM.widthM + roomM,
	innerHeightM: ITEM.heightM + roomM,
	edgeCrushKNPerM: 7,
	caliperM: 0.004,
	reused: false,
	price: euro(amount),
});
const sheet = (id: string, foam: string, thicknessM: number, amount: number) => ({
	id,
	foam: { id: foam },
	thicknessM,
	price: euro(amount),
});

export const STOCK_REQUEST: PackagingSearchRequest = {
	item: {
		class: "graphics-card",
		massKg: 1.9,
		...ITEM,
		fragility: { gn: 80, basis: "maker" },
		cell: "none",
		edgesPadded: true,
	},
	route: { dropBasis: "din-55439", mode: "road", transitDays: 2 },
	stock: {
		boxes: [
			box("small", 0.1, 1.1),
			box("small-plus", 0.12, 1.3),
			box("medium", 0.15, 1.6),
			box("medium-plus", 0.16, 1.7),
			box("large", 0.2, 2.2),
			box("large-plus", 0.22, 2.4),
			box("huge", 0.3, 3.5),
			box("odd", 0.083, 0.9),
		],
		foams: [
			sheet("ether-50", "pu-ether-24-first", 0.05, 22),
			sheet("ether-25", "pu-ether-24-first", 0.025, 12),
			sheet("ester-50", "pu-ester-32-first", 0.05, 26),
			sheet("ester-30", "pu-ester-32-first", 0.03, 17),
			sheet("plank-50", "pe-plank-23c", 0.05, 30),
			sheet("plank-25", "pe-plank-23c", 0.025, 16),
		],
		bags: [
			{
				id: "shielding",
				layers: [{ kind: "shielding-metal-in", closed: true, intact: true, evidence: "data-sheet" }],
				price: euro(0.4),
			},
			{
				id: "pink",
				layers: [{ kind: "low-charging-film", closed: true, intact: true, evidence: "looks-like" }],
				price: euro(0.1),
			},
		],
	},
	objective: "margin",
};
