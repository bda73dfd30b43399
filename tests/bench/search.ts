/** The search of packs: candidates per second, against a plain loop of full assessments in the same run. */
import { monitorEventLoopDelay } from "node:perf_hooks";
import { fileURLToPath } from "node:url";
import { limitOf } from "../../src/calculations/packaging/fragility.ts";
import { packaging } from "../../src/calculations/packaging/packaging.ts";
import { axisOptions } from "../../src/calculations/packaging/search/axis-options.ts";
import { screen } from "../../src/calculations/packaging/search/candidates.ts";
import { packagingSearch } from "../../src/calculations/packaging/search/packaging-search.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../../src/calculations/quantities.ts";
import { makePackSearcher } from "../../src/operations/packaging-search/pack-searcher.ts";
import { searchInput } from "../../src/operations/packaging-search/search-input.ts";
import { STOCK_REQUEST } from "../operations/packaging-search/stock-request.ts";

/** The plain loop runs for this long. */
const LOOP_S = 3;
const LEAST_CANDIDATES = 1_000_000;
/** Of the request's basis, for this mass. */
const DROP_M = 0.8;

/** How long the event loop may wait while searches run.. */
const MOST_WAIT_MS = 50;

export async function benchSearch(): Promise<void> {
	const input = searchInput(STOCK_REQUEST);
	const begun = performance.now();
	const { result } = packagingSearch(input);
	const searchS = (performance.now() - begun) / 1000;
	const considered = result?.considered ?? 0;

	const box = input.stock.boxes.find(({ id }) => id === "large-plus");
	if (box === undefined) throw new Error("the stock has no such box");
	const { lengthM, widthM, heightM } = input.item;
	const free = box.innerLengthM - lengthM;
	const options = [
		[widthM, heightM],
		[lengthM, heightM],
		[lengthM, widthM],
	].map(([one = 0, two = 0]) => axisOptions(input, DROP_M, { freeM: free, sidesM: [one, two] }, null));
	// The core alone, on candidates whose faces hold, so that each is screened one by one.
	const held = options.map((all) => all.filter((option) => option.excluded === null));
	const times = Math.ceil(Math.cbrt(LEAST_CANDIDATES / held.reduce((product, all) => product * all.length, 1)));
	const many = held.map((all) => Array.from({ length: times }, () => all).flat());
	const frame = {
		box,
		innerBox: null,
		volumeM3: 1,
		cost: 1,
		options: [many[0] ?? [], many[1] ?? [], many[2] ?? []] as const,
	};
	const weightKN = (input.item.massKg * STANDARD_GRAVITY_M_PER_S2) / 1000;
	const coreBegun = performance.now();
	const core = screen(frame, weightKN * DROP_M, weightKN, limitOf(input.item).limitGn, "margin");
	const coreS = (performance.now() - coreBegun) / 1000;
	const corePerS = core.considered / coreS;

	let assessedCount = 0;
	const loopBegun = performance.now();
	while (performance.now() - loopBegun < 1000 * LOOP_S) {
		const pick = (axis: number) => {
			const all = options[axis] ?? [];
			return all[(assessedCount * (axis + 7)) % all.length]?.aroundLayers ?? [];
		};
		const [sides, ends, upright] = [pick(0), pick(1), pick(2)];
		const faces = { left: sides, right: sides, front: ends, back: ends, top: upright, bottom: upright };
		packaging({ ...input, pack: { box, faces, bagLayers: input.stock.bags[0]?.layers ?? [] } });
		assessedCount += 1;
	}
	const loopPerS = assessedCount / LOOP_S;
	console.log(
		`core: ${core.considered} candidates screened one by one in ${coreS.toFixed(2)} s, ${Math.round(corePerS)} per second on one core; plain loop of full assessments: ${Math.round(loopPerS)} per second; ratio ${Math.round(corePerS / loopPerS)}`,
	);
	console.log(
		`search: ${considered} candidates, most of them left out by a face, in ${searchS.toFixed(2)} s; ${result?.designs.length ?? 0} designs judged in full`,
	);

	// Bundled into the folder of artefacts, beside `dist`.
	const search = makePackSearcher(
		60_000,
		fileURLToPath(new URL("../dist/operations/packaging-search/search-worker.js", import.meta.url)),
	);
	const delay = monitorEventLoopDelay({ resolution: 1 });
	await search(STOCK_REQUEST);
	delay.enable();
	const threadsBegun = performance.now();
	await Promise.all([search(STOCK_REQUEST), search({ ...STOCK_REQUEST, objective: "cost" })]);
	const threadsS = (performance.now() - threadsBegun) / 1000;
	delay.disable();
	const waitedMs = delay.max / 1e6;
	if (!(waitedMs <= MOST_WAIT_MS)) process.exitCode = 1;
	console.log(
		`two searches at once on threads: ${threadsS.toFixed(2)} s for both; the event loop waited ${waitedMs.toFixed(0)} ms at most, ${MOST_WAIT_MS} are allowed`,
	);
}
