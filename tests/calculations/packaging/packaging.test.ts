/** The pack as a whole: verdict rules of the contract, the solved drop against the cushion's own peak, packs that fail by one check. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cushion } from "../../../src/calculations/cushioning/cushion.ts";
import { packaging } from "../../../src/calculations/packaging/packaging.ts";
import { MEASURED_DROPS } from "../../../src/catalogue/drop-tables.ts";
import { FOAMS } from "../../../src/catalogue/foams.ts";
import type { PackagingRequest } from "../../../src/contract/packaging.ts";
import { packagingInput } from "../../../src/operations/calculations/packaging.ts";

const layerOf = (foam: object, thicknessM = 0.0508, pads?: { lengthM: number; widthM: number }[]) => ({
	layers: [{ foam, thicknessM, ...(pads ? { pads } : { fullFace: true as const }) }],
});
const request = (face: object, gn = 50, basis = "maker", more: object = {}): PackagingRequest =>
	({
		item: {
			class: "graphics-card",
			massKg: 2,
			lengthM: 0.27,
			widthM: 0.11,
			heightM: 0.11,
			fragility: { gn, basis },
			cell: "none",
			edgesPadded: true,
		},
		pack: {
			box: { innerLengthM: 0.4, innerWidthM: 0.3, innerHeightM: 0.3, reused: false },
			faces: { top: face, bottom: face, left: face, right: face, front: face, back: face },
			bagLayers: [{ kind: "shielding-metal-in", closed: true, intact: true, evidence: "data-sheet" }],
		},
		route: { dropBasis: "our-choice-762", mode: "road", transitDays: 2 },
		...more,
	}) as PackagingRequest;
const assess = (input: PackagingRequest) => {
	const answer = packaging(packagingInput(input));
	if (answer.status !== "assessed") throw new Error(answer.reason.code);
	return answer.result;
};
const check = (result: ReturnType<typeof assess>, id: string) => result.checks.find((one) => one.id === id);
const PADS = [{ lengthM: 0.06, widthM: 0.06 }];

describe("packaging", () => {
	it("the card on full faces falls short because the pad is too large, and says smaller pads", () => {
		const result = assess(request(layerOf({ id: "pe-plank-23c" })));
		expect(result.verdict).toBe("falls-short");
		expect(check(result, "cushion-bottom")).toMatchObject({
			verdict: "falls-short",
			why: { sentence: "packaging.pad-too-large" },
			mend: { sentence: "packaging.mend-pads-of" },
		});
		// By hand: the set keeps 50 gₙ from 2.381 kPa (its root) to 6.6 kPa (the end of its data, 99 kJ/m³ · 0.0508 / 0.762):
		// 19.613 N on 82.4 and on 29.7 cm². Half of the last digit.
		const { leastCm2, mostCm2 } = check(result, "cushion-bottom")?.mend?.values ?? {};
		expect(leastCm2).toBeCloseTo(29.7, 1);
		expect(mostCm2).toBeCloseTo(82.4, 1);
		expect(check(result, "cushion-bottom")?.value).toBeCloseTo(120.3, 1);
	});

	it("at the protected drop the worst face has exactly its limit (independent recomputation, 1e-6)", () => {
		const result = assess(request(layerOf({ id: "pe-plank-23c" }, 0.0508, PADS), 60));
		const stress = (2 * 9.80665) / 0.0036 / 1000;
		const plank = FOAMS[0] ?? null;
		const peak = cushion({
			foam: plank,
			thicknessM: 0.0508,
			dropHeightM: result.protectedDropHeightM ?? 0,
			staticStressKPa: stress,
			catalogue: FOAMS,
		}).result?.peakGn;
		expect(Math.abs((peak ?? 0) / 60 - 1)).toBeLessThan(1e-6);
		const [low, high] = result.protectedBandM ?? [0, 0];
		expect(low).toBeLessThan(result.protectedDropHeightM ?? 0);
		expect(high).toBeGreaterThan(result.protectedDropHeightM ?? 0);
	});

	it("a tested fragility counts for 0.8 of itself, other bases whole, none for 30 gₙ", () => {
		const limit = (input: PackagingRequest) => check(assess(input), "cushion-top")?.limit;
		const face = layerOf({ id: "pe-plank-23c" });
		expect(limit(request(face, 50, "tested"))).toBe(40);
		expect(limit(request(face, 50, "class"))).toBe(50);
		const unknown = request(face);
		expect(limit({ ...unknown, item: { ...unknown.item, fragility: undefined } })).toBe(30);
	});

	it("an unknown foam falls short where its thickness alone cannot hold the drop, and is not assessed otherwise", () => {
		expect(check(assess(request(layerOf({ unknown: true }, 0.02), 30)), "cushion-top")?.verdict).toBe("falls-short");
		const thick = assess(request(layerOf({ unknown: true }, 0.1), 100));
		expect(check(thick, "cushion-top")?.verdict).toBe("not-assessed");
		expect(thick.protectedDropHeightM).toBeNull();
	});

	it("gives no protected drop where one foam is not known, and only bounds it from above", () => {
		const input = request(layerOf({ id: "pe-plank-23c" }, 0.0508, PADS), 100);
		const top = layerOf({ unknown: true }, 0.1);
		const result = assess({
			...input,
			pack: { ...input.pack, faces: { ...input.pack.faces, top } },
		} as PackagingRequest);
		expect(result).toMatchObject({ protectedDropHeightM: null, protectedBandM: null, measuredBelow: [] });
		expect(check(result, "drop-height")).toMatchObject({
			verdict: "not-assessed",
			why: { sentence: "packaging.drop-outside" },
		});
		const thin = layerOf({ unknown: true }, 0.002);
		const short = assess({
			...input,
			pack: { ...input.pack, faces: { ...input.pack.faces, top: thin } },
		} as PackagingRequest);
		expect(check(short, "drop-height")).toMatchObject({
			verdict: "falls-short",
			why: { sentence: "packaging.bound-short" },
		});
	});

	it("the band of the protected drop begins at the lowest edge of any face, not at that of the nominally worst", () => {
		const input = request(layerOf({ id: "pe-plank-23c" }, 0.0508, PADS), 60);
		const plank = assess(input);
		const [plankLow] = plank.protectedBandM ?? [0];
		// A set that is nominally better than the plank and less well known.
		const wider = FOAMS.map(({ id }) => layerOf({ id }, 0.0508, PADS)).find((face) => {
			const { protectedDropHeightM: drop, protectedBandM: band } = assess(request(face, 60));
			return (drop ?? 0) > (plank.protectedDropHeightM ?? 0) && (band?.[0] ?? 1) < plankLow;
		});
		const top = wider ?? { layers: [] };
		const mixed = assess({
			...input,
			pack: { ...input.pack, faces: { ...input.pack.faces, top } },
		} as PackagingRequest);
		expect(mixed.protectedDropHeightM).toBe(plank.protectedDropHeightM);
		expect(mixed.protectedBandM?.[0]).toBeLessThan(plankLow);
		expect(mixed.protectedBandM?.[0]).toBe(assess(request(top, 60)).protectedBandM?.[0]);
		expect(mixed.protectedBandM?.[1]).toBe(plank.protectedBandM?.[1]);
	});

	it("at the edges of that band the edges of the peak's band have exactly the limit (independent recomputation, 1e-6)", () => {
		const { protectedBandM } = assess(request(layerOf({ id: "pe-gas-effective" }, 0.0508, PADS), 60));
		const band = (dropHeightM: number) =>
			cushion({
				foam: FOAMS.find(({ id }) => id === "pe-gas-effective") ?? null,
				thicknessM: 0.0508,
				dropHeightM,
				staticStressKPa: (2 * 9.80665) / 0.0036 / 1000,
				catalogue: FOAMS,
			}).result?.peakBandGn ?? [0, 0];
		const [low, high] = protectedBandM ?? [0, 0];
		expect(Math.abs(band(low)[1] / 60 - 1)).toBeLessThan(1e-6);
		expect(Math.abs(band(high)[0] / 60 - 1)).toBeLessThan(1e-6);
	});

	it("a drop kept nominally and not at the low edge is marginal; one that only the high edge keeps is short within its band", () => {
		const drop = (gn: number) =>
			check(assess(request(layerOf({ id: "pe-plank-23c" }, 0.0508, PADS), gn)), "drop-height");
		// 60 × 60 mm on a 2 kg item: 5.448 kPa, peak at 0.762 m 44.9 gₙ, band 39 to 51 gₙ.
		expect(drop(47)).toMatchObject({ verdict: "marginal", why: { sentence: "packaging.drop-marginal" } });
		expect(drop(43)).toMatchObject({ verdict: "falls-short", why: { sentence: "packaging.drop-short-within-band" } });
		expect(drop(30)).toMatchObject({ verdict: "falls-short", why: { sentence: "packaging.drop-short" } });
	});

	it("a cushion thinner than its foam's data leaves the protected drop outside them, and says so", () => {
		// At 50 gₙ the energy reached is 88.7 kJ/m³ on any thickness, inside the set's 33 to 99.
		const notes = (thicknessM: number) =>
			packaging(packagingInput(request(layerOf({ id: "pe-plank-23c" }, thicknessM, PADS), 50))).validity;
		expect(notes(0.0508).within).toBe(true);
		expect(notes(0.02).within).toBe(false);
		expect(notes(0.02).notes.map((note) => note.sentence)).toContain("packaging.protected-outside");
	});

	it("names the measured percentiles that lie below the protected drop, and only those", () => {
		const result = assess(request(layerOf({ id: "pe-plank-23c" }, 0.0508, PADS), 60));
		const protectedM = result.protectedDropHeightM ?? 0;
		const below = MEASURED_DROPS.flatMap(({ id, p95M, maxM }) => [
			...(p95M !== null && p95M <= protectedM ? [`${id} p95`] : []),
			...(maxM <= protectedM ? [`${id} max`] : []),
		]);
		expect(result.measuredBelow.map(({ id, percentile }) => `${id} ${percentile}`)).toEqual(below);
		expect(below.length).toBeGreaterThan(0);
		expect(below.length).toBeLessThan(7);
	});

	it("meets only on a firm foam, a firm limit and a published design drop (the contract's rule for provisional)", () => {
		const own = (basis: string, dropBasis: string) => {
			const face = layerOf({ id: "pe-plank-23c" }, 0.0508, PADS);
			const input = packagingInput({
				...request(face, 125, basis),
				route: { dropBasis, mode: "road", transitDays: 2 },
			} as PackagingRequest);
			const firm = Object.fromEntries(
				Object.entries(input.pack.faces).map(([name, layers]) => [
					name,
					layers.map((layer) => ({ ...layer, foam: layer.foam && { ...layer.foam, bestVerdict: "meets" as const } })),
				]),
			) as unknown as typeof input.pack.faces;
			const checks = packaging({ ...input, pack: { ...input.pack, faces: firm } }).result?.checks ?? [];
			return ["drop-height", "cushion-top"].map((id) => checks.find((one) => one.id === id)?.verdict);
		};
		expect(own("tested", "din-55439")).toEqual(["meets", "meets"]);
		expect(own("maker", "ista-1a")).toEqual(["meets", "meets"]);
		expect(own("tested", "our-choice-762")).toEqual(["provisional", "provisional"]);
		expect(own("tested", "astm-d4169-a-1")).toEqual(["provisional", "provisional"]);
		expect(own("class", "din-55439")).toEqual(["provisional", "provisional"]);
	});

	it("takes the mass of the parcel for the design drop where it is given", () => {
		const input = request(layerOf({ id: "pe-plank-23c" }, 0.0508, PADS), 100);
		const design = (pack: object) =>
			check(
				assess({ ...input, route: { ...input.route, dropBasis: "din-55439" }, pack: { ...input.pack, ...pack } }),
				"drop-height",
			)?.limit;
		expect(design({})).toBe(0.8);
		expect(design({ grossMassKg: 11 })).toBe(0.6);
	});

	it("NaN never passes, wherever it comes from", () => {
		const good = packagingInput(request(layerOf({ id: "pe-plank-23c" }, 0.0508, PADS), 100));
		const wrong = [
			{ ...good, item: { ...good.item, massKg: Number.NaN } },
			{ ...good, item: { ...good.item, fragility: { gn: Number.NaN, basis: "maker" as const } } },
			{
				...good,
				pack: {
					...good.pack,
					grossMassKg: 2,
					faces: {
						...good.pack.faces,
						top: good.pack.faces.top.map((layer) => ({ ...layer, thicknessM: Number.NaN })),
					},
				},
			},
		];
		for (const input of wrong) {
			const answer = packaging(input);
			const verdicts = (answer.result?.checks ?? [])
				.filter(({ id }) => id === "cushion-top" || id === "drop-height")
				.map(({ verdict }) => verdict);
			for (const verdict of verdicts) expect(["falls-short", "not-assessed"]).toContain(verdict);
			expect(["falls-short", "not-assessed"]).toContain(answer.result?.verdict ?? "not-assessed");
		}
	});

	it("pads larger than the face bear on the whole face and no more, and the answer says so", () => {
		const large = request(layerOf({ id: "pe-plank-23c" }, 0.0508, [{ lengthM: 0.5, widthM: 0.5 }]));
		const whole = request(layerOf({ id: "pe-plank-23c" }));
		expect(check(assess(large), "cushion-top")?.value).toBe(check(assess(whole), "cushion-top")?.value);
		const notes = packaging(packagingInput(large)).validity.notes.map((note) => note.sentence);
		expect(notes).toContain("packaging.pads-exceed-face");
	});

	it("names a set that stands for a first drop only", () => {
		const notes = (id: string) =>
			packaging(packagingInput(request(layerOf({ id })))).validity.notes.map((note) => note.sentence);
		expect(notes("pe-35-first")).toContain("packaging.first-drop-set");
		expect(notes("pe-35-mean-2-to-5")).not.toContain("packaging.first-drop-set");
	});

	it("a face without a cushion falls short", () => {
		const input = request(layerOf({ id: "pe-plank-23c" }, 0.0508, PADS), 100);
		const result = assess({ ...input, pack: { ...input.pack, faces: { ...input.pack.faces, left: { layers: [] } } } });
		expect(check(result, "cushion-left")?.verdict).toBe("falls-short");
		expect(result.protectedDropHeightM).toBeNull();
	});

	it("more thickness at the same pads never lowers the protected drop; the same pack in inches gives the same verdict", () => {
		fc.assert(
			fc.property(
				fc.constantFrom(...FOAMS),
				fc.double({ min: 0.03, max: 0.1, noNaN: true }),
				fc.double({ min: 40, max: 150, noNaN: true }),
				(foam, thickness, gn) => {
					const drop = (t: number) => assess(request(layerOf({ id: foam.id }, t, PADS), gn)).protectedDropHeightM ?? 0;
					expect(drop(thickness * 1.2)).toBeGreaterThanOrEqual(drop(thickness) * (1 - 1e-9));
				},
			),
		);
		const metric = assess(request(layerOf({ id: "pe-plank-23c" }, 0.0508, [{ lengthM: 0.0508, widthM: 0.0508 }]), 60));
		const inches = assess(
			request(layerOf({ id: "pe-plank-23c" }, 2 * 0.0254, [{ lengthM: 2 * 0.0254, widthM: 2 * 0.0254 }]), 60),
		);
		expect(inches.checks.map((one) => one.verdict)).toEqual(metric.checks.map((one) => one.verdict));
	});
});
