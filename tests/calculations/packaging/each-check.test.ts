/**
 * Each check spoilt alone, in a pack that holds in all others. A face that falls short takes the protected drop with it, and
 * a layer that shorts a cell is no static protection either: those two pairs are one thing seen twice.
 */
import { describe, expect, it } from "vitest";
import { allFaces, assess, check, layer, SOUND, short, soundBut } from "./sound-pack.ts";

const shield = SOUND.pack.bagLayers[0] ?? {
	kind: "none" as const,
	closed: true,
	intact: true,
	evidence: "none" as const,
};
const barrier = { ...shield, kind: "moisture-barrier" as const };

describe("the sound pack", () => {
	it("holds in every check, provisionally: its foam's unit is inferred and the corner rule derived", () => {
		const result = assess(SOUND);
		expect(result.verdict).toBe("provisional");
		expect(result.checks.filter(({ verdict }) => verdict !== "meets" && verdict !== "provisional")).toEqual([]);
		expect(result.checks[0]?.id).toBe("corner-edge");
	});
});

describe("a pack that falls short by exactly one", () => {
	const heavy = layer(0.0762, 0.2, 1);
	it.each([
		[
			"corner-edge",
			soundBut({
				pack: {
					cornerDrops: [{ dropHeightM: 0.8, orientation: "corner", peakGn: 120, sampleRateHz: 5000, massKg: 3 }],
				},
			}),
		],
		["buckling", soundBut({ pack: { faces: allFaces(layer(0.0508, 0.0387, 4)) } })],
		[
			"creep",
			soundBut({
				item: { massKg: 22, lengthM: 0.4, widthM: 0.25, heightM: 0.25 },
				box: { innerLengthM: 0.5524, innerWidthM: 0.4024, innerHeightM: 0.4024, edgeCrushKNPerM: 30 },
				pack: { faces: allFaces({ ...heavy, pads: [{ lengthM: 0.137, widthM: 0.137 }] }) },
			}),
		],
		[
			"temperature",
			// 0.5 psi: 37.7 gₙ at room temperature, 48.7 at −20 °C (reference page 4.4); from 610 mm by the table's second band.
			soundBut({
				item: { fragility: { gn: 46, basis: "maker" }, massKg: 3 },
				pack: { faces: allFaces(layer(0.0508, 0.0924)), grossMassKg: 12 },
				route: { temperatureLowDegC: -20, temperatureHighDegC: 23 },
			}),
		],
		["fit", soundBut({ box: { innerHeightM: 0.165 } })],
		["movement", soundBut({ box: { innerHeightM: 0.2 } })],
		["resonance", soundBut({ item: { board: { ...(SOUND.item.board as object), naturalFrequencyHz: 25 } as never } })],
		["compression", soundBut({ box: { edgeCrushKNPerM: 0.5 } })],
		["static", soundBut({ pack: { bagLayers: [{ ...shield, kind: "dissipative" }] } })],
		["moisture", soundBut({ pack: { bagLayers: [shield, { ...barrier, closed: false }] } })],
		["cooler", soundBut({ item: { heavyCooler: { massKg: 1, support: "board-only" } } })],
		["cover", soundBut({ route: { carrierCap: { amount: 100, currency: "EUR" } } })],
	])("%s", (id, request) => {
		const result = assess(request);
		expect(short(result)).toEqual([id]);
		expect(check(result, id).mend).not.toBeNull();
		expect(result.verdict).toBe(id === "cover" ? "provisional" : "falls-short");
	});

	it.each(["top", "bottom", "left", "right", "front", "back"] as const)("cushion-%s, and with it the drop", (face) => {
		const faces = { ...SOUND.pack.faces, [face]: { layers: [layer(0.0508, 0.028, 8)] } };
		const wide = {
			...SOUND.pack.faces,
			[face]: { layers: [{ ...layer(0.0508, 0.0775), pads: undefined, fullFace: true as const }] },
		};
		const soft = soundBut({
			item: { fragility: { gn: 60, basis: "tested" } },
			pack: { faces: wide },
			route: { temperatureLowDegC: undefined },
		});
		expect(short(assess(soft)).filter((id) => id !== "corner-edge")).toEqual(["drop-height", `cushion-${face}`]);
		expect(short(assess(soundBut({ pack: { faces } })))).toEqual(["buckling"]);
	});

	it("buckling is for pads: a sheet that lines the box has no such check, the same area cut as a pad has", () => {
		// 60 × 60 mm of 50.8 mm foam: below the 45.6 cm² that the rule asks for.
		const item = { lengthM: 0.06, widthM: 0.06, heightM: 0.06, massKg: 0.5 };
		const faces = (bearing: object) => allFaces({ ...layer(0.0508, 0.06), pads: undefined, ...bearing } as never);
		const lined = assess(soundBut({ item, pack: { faces: faces({ fullFace: true }) } }));
		expect(check(lined, "buckling")).toMatchObject({ verdict: "not-assessed", why: { sentence: "packaging.lined" } });
		const padded = assess(soundBut({ item, pack: { faces: faces({ pads: [{ lengthM: 0.06, widthM: 0.06 }] }) } }));
		expect(check(padded, "buckling").verdict).toBe("falls-short");
	});

	it("cell: a conductive layer against it, which static says as well", () => {
		const film = { ...shield, kind: "conductive-film" as const };
		expect(short(assess(soundBut({ pack: { bagLayers: [film, shield, barrier] } })))).toEqual(["static", "cell"]);
		expect(short(assess(soundBut({ item: { cell: "none" }, pack: { bagLayers: [film, shield, barrier] } })))).toEqual(
			[],
		);
	});

	it("bottoming: an own set without a tested range, strained beyond 65 %, is not supported by data", () => {
		const own = { model: "stress-energy" as const, aKPa: 68.044, bPerKPa: 0.015664 };
		const squeezed = assess(soundBut({ pack: { faces: allFaces(layer(0.0508, 0.0715, 1, own)) } }));
		expect(check(squeezed, "cushion-top").verdict).toBe("provisional");
		expect(check(squeezed, "bottoming")).toMatchObject({
			verdict: "not-assessed",
			why: { sentence: "packaging.bottoming-unsupported" },
		});
		expect(squeezed.verdict).toBe("not-assessed");
	});
});

describe("corner drops of the shop's own", () => {
	const drop = { dropHeightM: 0.8, orientation: "corner" as const, peakGn: 60, sampleRateHz: 5000, massKg: 3 };
	const corner = (change: object) =>
		check(assess(soundBut({ pack: { cornerDrops: [{ ...drop, ...change }] } })), "corner-edge");
	it("meet where they are from the design drop, on a corner, with this mass, finely sampled", () => {
		expect(corner({})).toMatchObject({ verdict: "meets", value: 60, why: { sentence: "packaging.corner-measured" } });
	});
	it.each([
		["too low", { dropHeightM: 0.79 }],
		["on an edge", { orientation: "edge" }],
		["of a lighter dummy", { massKg: 2.5 }],
		["sampled too coarsely for the peak", { sampleRateHz: 100 }],
	])("do not count %s", (_, change) => {
		expect(corner(change).verdict).toBe("provisional");
	});
});

describe("what is not given is not assessed, and lowers nothing that is not required", () => {
	it.each([
		["temperature", soundBut({ route: { temperatureLowDegC: undefined } })],
		["resonance", soundBut({ item: { board: undefined } })],
		["compression", soundBut({ box: { edgeCrushKNPerM: undefined } })],
		["moisture", soundBut({ pack: { desiccantUnits: undefined } })],
		["cooler", soundBut({ item: { heavyCooler: undefined } })],
		["cover", soundBut({ route: { carrierCap: undefined } })],
		["cover", soundBut({ route: { carrierCap: { amount: 5000, currency: "USD" } } })],
	])("%s", (id, request) => {
		const result = assess(request);
		expect(check(result, id).verdict).toBe("not-assessed");
		expect(result.verdict).toBe("provisional");
	});
});

describe("later drops, layers and boxes", () => {
	it("a set for the first drop is judged by the set of drops 2 to 5 where it is the worse", () => {
		const first = assess(soundBut({ pack: { faces: allFaces(layer(0.0508, 0.0775, 1, { id: "pe-27-first" })) } }));
		const later = assess(
			soundBut({ pack: { faces: allFaces(layer(0.0508, 0.0775, 1, { id: "pe-27-mean-2-to-5" })) } }),
		);
		expect(check(first, "cushion-top").value).toBe(check(later, "cushion-top").value);
		expect(first.protectedDropHeightM).toBe(later.protectedDropHeightM);
	});
	it("one that is known for the first drop only is not assessed where it would hold", () => {
		const result = assess(soundBut({ pack: { faces: allFaces(layer(0.0508, 0.0775, 1, { id: "epp-60-gas" })) } }));
		expect(["falls-short", "not-assessed"]).toContain(check(result, "cushion-top").verdict);
		expect(["falls-short", "not-assessed"]).toContain(check(result, "corner-edge").verdict);
	});
	it("two equal layers are one of twice the thickness (1e-9)", () => {
		const one = assess(soundBut({ pack: { faces: allFaces(layer(0.0508, 0.0775)) } }));
		const two = assess(soundBut({ pack: { faces: allFaces(layer(0.0254, 0.0775), layer(0.0254, 0.0775)) } }));
		expect((check(two, "cushion-top").value ?? 0) / (check(one, "cushion-top").value ?? 1)).toBeCloseTo(1, 9);
		expect((two.protectedDropHeightM ?? 0) / (one.protectedDropHeightM ?? 1)).toBeCloseTo(1, 9);
		expect((check(two, "corner-edge").value ?? 0) / (check(one, "corner-edge").value ?? 1)).toBeCloseTo(1, 6);
	});
	it("an inner box spreads the weight: pads in its gap bear on its own face", () => {
		const inner = { innerLengthM: 0.3, innerWidthM: 0.14, innerHeightM: 0.08, caliperM: 0.004, reused: false };
		const result = assess(
			soundBut({
				box: { innerLengthM: 0.308 + 0.1016, innerWidthM: 0.148 + 0.1016, innerHeightM: 0.088 + 0.1016 },
				pack: { faces: allFaces(), innerBox: { ...inner, faces: allFaces(layer(0.0508, 0.0775)) } },
			}),
		);
		expect(short(result)).toEqual([]);
		expect(check(result, "cushion-top").value).toBe(check(assess(SOUND), "cushion-top").value);
		expect(check(result, "movement").value).toBeCloseTo(0, 9);
	});
	it("fillers are no primary cushion: their floor alone is said, and why", () => {
		const result = assess(soundBut({ pack: { faces: allFaces(layer(0.0508, 0.0775, 1, { id: "bubble-film" })) } }));
		expect(check(result, "cushion-top")).toMatchObject({
			verdict: "not-assessed",
			why: { sentence: "cushion.filler-bubble" },
		});
		expect(result.protectedDropHeightM).toBeNull();
		expect(result.verdict).toBe("not-assessed");
	});
});

describe("the same pack in inches", () => {
	it("has the same verdicts, whatever rounding the conversion left", () => {
		const inch = (metres: number) => Number((Math.round(metres / 0.0254 / 1e-4) * 1e-4).toFixed(4)) * 0.0254;
		const convert = (value: unknown): unknown => {
			if (Array.isArray(value)) return value.map(convert);
			if (value === null || typeof value !== "object") return value;
			return Object.fromEntries(
				Object.entries(value).map(([name, entry]) => [
					name,
					typeof entry === "number" && /[a-z]M$/.test(name) ? inch(entry) : convert(entry),
				]),
			);
		};
		const verdicts = (request: typeof SOUND) => assess(request).checks.map(({ id, verdict }) => `${id} ${verdict}`);
		expect(verdicts(convert(SOUND) as typeof SOUND)).toEqual(verdicts(SOUND));
	});
});

describe("fragility by other bases", () => {
	it("says which basis carries the verdict, and what the faces would be by the others", () => {
		const { fragility } = assess(SOUND);
		expect(fragility).toMatchObject({ basis: "tested", limitGn: 100 });
		expect(fragility.others.map(({ basis, verdict }) => `${basis} ${verdict}`)).toEqual([
			"board-strength provisional",
			"class falls-short",
			"our-choice falls-short",
		]);
	});
	it("names the drop below which the change of velocity harms nothing: Vc = 2·√(2gh)", () => {
		const request = soundBut({ item: { fragility: { gn: 125, basis: "tested", velocityChangeMPerS: 8 } } });
		expect(assess(request).verdict).toBe("provisional");
		expect(64 / 8 / 9.80665).toBeCloseTo(0.816, 3);
	});
});
