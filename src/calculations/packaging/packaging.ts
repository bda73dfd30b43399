/** Whether a pack is adequate for an item on a trip: every check with its margin, and the verdict of the whole. */
import { dropHeight } from "../handling/drop-height.ts";
import { assessed, type Judged, notAssessed, type Sentence, sentence } from "../judged.ts";
import type { CheckContext } from "./check-context.ts";
import { dropHeightCheck } from "./drop-height-check.ts";
import { faceChecks, limitOf, padsExceedFace, worse } from "./face-cushions.ts";
import { protectedDrop } from "./protected-drop.ts";
import { staticCheck } from "./static-check.ts";
import { CHECK_IDS, type CheckId, FACES, type Packaging, type PackagingCheck, type PackagingInput } from "./types.ts";

/** Checks without which a pack is not adequate. Source: the contract page. */
export const REQUIRED_CHECKS: ReadonlySet<CheckId> = new Set<CheckId>([
	"drop-height",
	...FACES.map((face) => `cushion-${face}` as const),
	"corner-edge",
	"bottoming",
	"fit",
	"static",
]);

/** The checks beside those of the faces, one file each. What is not listed here is said to be not assessed. */
const CHECKS: readonly ((context: CheckContext) => PackagingCheck)[] = [dropHeightCheck, staticCheck];

/** The verdict is the worst of the required checks and of every other that was assessed; cover stands beside it. */
export function packaging(input: PackagingInput): Judged<Packaging> {
	const { item, pack, route } = input;
	const massKg = pack.grossMassKg ?? item.massKg;
	const largest = Math.max(pack.box.innerLengthM, pack.box.innerWidthM, pack.box.innerHeightM);
	const drop = dropHeight({
		massKg,
		largestDimensionM: largest,
		table: route.dropTable,
		tables: route.dropTables,
		measured: route.measured,
	});
	if (drop.status !== "assessed") return notAssessed(drop.reason.code, drop.reason.message, drop);
	const designDropM = drop.result.dropHeightM;
	const found = protectedDrop(input);
	const faces = faceChecks(input, designDropM);
	const context: CheckContext = { input, designDropM, found, faces };
	const built = [...faces, ...CHECKS.map((check) => check(context))];
	const checks = CHECK_IDS.map((id) => built.find((check) => check.id === id) ?? later(id));
	const counted = checks.filter(
		(check) => REQUIRED_CHECKS.has(check.id) || (check.verdict !== "not-assessed" && check.id !== "cover"),
	);
	const solved = found === null || !found.complete ? null : found;
	return assessed<Packaging>(
		{
			verdict: counted.map((check) => check.verdict).reduce(worse),
			checks,
			protectedDropHeightM: solved?.dropHeightM ?? null,
			protectedBandM: solved?.bandM ?? null,
			measuredBelow: solved === null ? [] : measuredBelow(solved.dropHeightM, input),
		},
		{
			cautions: item.cell === "lithium-ion" ? [sentence("packaging.caution-lithium")] : [],
			within: drop.validity.within && (solved === null || solved.outside === null),
			notes: [
				...drop.validity.notes,
				sentence("packaging.face-drops-only"),
				...(solved !== null && solved.outside !== null
					? [sentence("packaging.protected-outside", { face: solved.outside })]
					: []),
				...faceNotes(input),
			],
			sources: [...drop.sources, limitOf(item).source],
		},
	);
}

/** What holds for single faces: pads larger than the item, and sets for one drop only. */
function faceNotes({ item, pack }: PackagingInput): Sentence[] {
	const layers = FACES.flatMap((face) => pack.faces[face].map((layer) => ({ face, layer })));
	const exceeding = layers.find(({ face, layer }) => padsExceedFace(item, face, layer.bearing));
	const first = layers.find(({ layer }) => layer.foam?.dropNumber === "first");
	return [
		...(exceeding === undefined ? [] : [sentence("packaging.pads-exceed-face", { face: exceeding.face })]),
		...(first === undefined ? [] : [sentence("packaging.first-drop-set", { face: first.face })]),
	];
}

function measuredBelow(protectedM: number, input: PackagingInput): Packaging["measuredBelow"] {
	return input.route.measured.flatMap((row) => [
		...(row.p95M !== null && row.p95M <= protectedM
			? [{ id: row.id, percentile: "p95" as const, dropHeightM: row.p95M }]
			: []),
		...(row.maxM <= protectedM ? [{ id: row.id, percentile: "max" as const, dropHeightM: row.maxM }] : []),
	]);
}

/** A check that this release does not make: said, never guessed. */
function later(id: CheckId): PackagingCheck {
	return {
		id,
		verdict: "not-assessed",
		value: null,
		limit: null,
		unit: null,
		margin: null,
		why: sentence("packaging.later"),
		mend: null,
		sources: [],
	};
}
