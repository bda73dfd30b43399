/** Whether a pack is adequate for an item on a trip: every check with its margin, and the verdict of the whole. */
import { type DropHeight, dropHeight } from "../handling/drop-height.ts";
import { assessed, type Judged, notAssessed, type Sentence, sentence } from "../judged.ts";
import { STANDARD_GRAVITY_M_PER_S2 } from "../quantities.ts";
import { bottomingCheck } from "./bottoming-check.ts";
import type { CheckContext } from "./check-context.ts";
import { compressionCheck } from "./compression-check.ts";
import { cornerEdgeCheck } from "./corner-edge-check.ts";
import { dropHeightCheck } from "./drop-height-check.ts";
import { faceAnswers } from "./face-cushions.ts";
import { type FaceStacks, faceStacks } from "./face-stacks.ts";
import { fitCheck, movementCheck } from "./fit-checks.ts";
import { limitOf, otherLimits } from "./fragility.ts";
import { cellCheck, coolerCheck, coverCheck } from "./item-checks.ts";
import { moistureCheck } from "./moisture-check.ts";
import { bucklingCheck, creepCheck } from "./pad-checks.ts";
import { protectedDrop } from "./protected-drop.ts";
import { resonanceCheck } from "./resonance-check.ts";
import { staticCheck } from "./static-check.ts";
import { temperatureCheck } from "./temperature-check.ts";
import { CHECK_IDS, type CheckId, FACES, type Packaging, type PackagingCheck, type PackagingInput } from "./types.ts";
import { atMost, worse, written } from "./verdicts.ts";

/** Checks without which a pack is not adequate. Source: the contract page. */
export const REQUIRED_CHECKS: ReadonlySet<CheckId> = new Set<CheckId>([
	"drop-height",
	...FACES.map((face) => `cushion-${face}` as const),
	"corner-edge",
	"bottoming",
	"fit",
	"static",
]);

/** The checks beside those of the faces. */
const CHECKS: readonly ((context: CheckContext) => PackagingCheck)[] = [
	cornerEdgeCheck,
	dropHeightCheck,
	bottomingCheck,
	bucklingCheck,
	creepCheck,
	temperatureCheck,
	fitCheck,
	movementCheck,
	resonanceCheck,
	compressionCheck,
	staticCheck,
	moistureCheck,
	cellCheck,
	coolerCheck,
	coverCheck,
];

/** The verdict is the worst of the required checks and of every other that was assessed; cover stands beside it. */
export function packaging(input: PackagingInput): Judged<Packaging> {
	const { item } = input;
	const drop = designDropOf(input);
	if (drop.status !== "assessed") return notAssessed(drop.reason.code, drop.reason.message, drop);
	const designDropM = drop.result.dropHeightM;
	const [limit, stacks] = [limitOf(item), faceStacks(input)];
	const found = protectedDrop(item, stacks);
	const faces = faceAnswers(input, stacks, designDropM);
	const context: CheckContext = { input, designDropM, limit, stacks, found, faces };
	const built = [...faces.map(({ check }) => check), ...CHECKS.map((check) => check(context))].map(written);
	const checks = built.sort((a, b) => CHECK_IDS.indexOf(a.id) - CHECK_IDS.indexOf(b.id));
	const solved = found === null || !found.complete ? null : found;
	return assessed<Packaging>(
		{
			verdict: wholeVerdict(checks),
			checks,
			protectedDropHeightM: solved?.dropHeightM ?? null,
			protectedBandM: solved?.bandM ?? null,
			measuredBelow: solved === null ? [] : measuredBelow(solved.dropHeightM, input),
			fragility: fragilityOf(context),
			dropBases: basesOf(drop.result, input, solved?.dropHeightM ?? null),
		},
		{
			cautions: item.cell === "lithium-ion" ? [sentence("packaging.caution-lithium")] : [],
			within: drop.validity.within && (solved === null || solved.outside === null),
			notes: [
				...drop.validity.notes,
				sentence("packaging.most-on-corners"),
				...(solved !== null && solved.outside !== null
					? [sentence("packaging.protected-outside", { face: solved.outside })]
					: []),
				...faceNotes(stacks),
				...velocityNote(input, designDropM),
			],
			sources: [...drop.sources, limit.source],
		},
	);
}

/** The design drop of the route's basis, by the parcel's mass and longest side. */
export function designDropOf({ item, pack, route }: PackagingInput): Judged<DropHeight> {
	return dropHeight({
		massKg: pack.grossMassKg ?? item.massKg,
		largestDimensionM: Math.max(pack.box.innerLengthM, pack.box.innerWidthM, pack.box.innerHeightM),
		table: route.dropTable,
		tables: route.dropTables,
		measured: route.measured,
	});
}

/** The worst of the required checks and of every other that was assessed. Source: the contract page. */
export function wholeVerdict(checks: readonly PackagingCheck[]): Packaging["verdict"] {
	return checks
		.filter(({ id, verdict }) => REQUIRED_CHECKS.has(id) || (verdict !== "not-assessed" && id !== "cover"))
		.map((check) => check.verdict)
		.reduce(worse);
}

/** What holds for single faces: pads larger than what they bear, and sets for one drop only. */
function faceNotes(stacks: FaceStacks): Sentence[] {
	const exceeding = FACES.find((face) => stacks[face].some((layer) => layer.exceeds));
	const first = FACES.find((face) => stacks[face].some((layer) => layer.foam?.dropNumber === "first"));
	const several = FACES.some((face) => stacks[face].length > 1);
	return [
		...(exceeding === undefined ? [] : [sentence("packaging.pads-exceed-face", { face: exceeding })]),
		...(first === undefined ? [] : [sentence("packaging.first-drop-set", { face: first })]),
		...(several ? [sentence("packaging.layers-in-a-row")] : []),
	];
}

/** Below its critical change of velocity no peak harms the item: the drop without rebound from which that can be reached. */
function velocityNote({ item }: PackagingInput, designDropM: number): Sentence[] {
	const critical = item.fragility?.velocityChangeMPerS;
	if (critical === undefined) return [];
	// Full rebound doubles the change of velocity.
	const harmlessM = critical ** 2 / (8 * STANDARD_GRAVITY_M_PER_S2);
	return [
		sentence(harmlessM >= designDropM ? "packaging.velocity-harmless" : "packaging.velocity-reached", {
			harmlessM,
			designM: designDropM,
		}),
	];
}

function fragilityOf({ input, limit, faces }: CheckContext): Packaging["fragility"] {
	const known = faces.flatMap(({ peakGn, bandGn }) => (peakGn === null || bandGn === null ? [] : [{ peakGn, bandGn }]));
	const whole = known.length === faces.length;
	const peakGn = Math.max(...known.map((face) => face.peakGn));
	const band = [
		Math.max(...known.map((face) => face.bandGn[0])),
		Math.max(...known.map((face) => face.bandGn[1])),
	] as const;
	return {
		basis: limit.basis,
		limitGn: limit.limitGn,
		others: otherLimits(input).map(({ basis, limitGn, source, best }) => ({
			basis,
			limitGn,
			standing: source.standing,
			verdict: whole ? atMost(peakGn, limitGn, best, band) : null,
		})),
	};
}

function basesOf(drop: DropHeight, { route }: PackagingInput, protectedM: number | null): Packaging["dropBases"] {
	const chosen = {
		basis: route.dropTable.id,
		dropHeightM: drop.dropHeightM,
		standing: route.dropTable.source.standing,
	};
	return [chosen, ...drop.alternatives].map((base) => ({
		...base,
		reached: protectedM === null ? null : protectedM >= base.dropHeightM,
	}));
}

function measuredBelow(protectedM: number, input: PackagingInput): Packaging["measuredBelow"] {
	return input.route.measured.flatMap((row) => [
		...(row.p95M !== null && row.p95M <= protectedM
			? [{ id: row.id, percentile: "p95" as const, dropHeightM: row.p95M }]
			: []),
		...(row.maxM <= protectedM ? [{ id: row.id, percentile: "max" as const, dropHeightM: row.maxM }] : []),
	]);
}
