/** Whether a pack is adequate for an item on a trip: every check with its margin, and the verdict of the whole. */
import type { CheckVerdict } from "../cushioning/cushion.ts";
import { staticProtection } from "../electrostatics/static-protection.ts";
import { dropHeight } from "../handling/drop-height.ts";
import { assessed, type Judged, notAssessed, type Sentence, sentence } from "../judged.ts";
import { faceChecks, limitOf, padsExceedFace, worse } from "./face-cushions.ts";
import { type ProtectedDrop, protectedDrop } from "./protected-drop.ts";
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
	const design = drop.result.dropHeightM;
	const found = protectedDrop(input);
	const faces = faceChecks(input, design);
	const built = [dropCheck(found, design, faces, input), ...faces, staticCheck(input)];
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

/** The drop that the pack protects to against the design drop: at least. */
function dropCheck(
	found: ProtectedDrop | null,
	design: number,
	faces: readonly PackagingCheck[],
	input: PackagingInput,
): PackagingCheck {
	const sources = [input.route.dropTable.source, limitOf(input.item).source];
	const base = { id: "drop-height" as const, limit: design, unit: "m", sources };
	if (found === null) {
		const short = faces.some((face) => face.verdict === "falls-short");
		return {
			...base,
			verdict: short ? "falls-short" : "not-assessed",
			value: null,
			margin: null,
			why: sentence("packaging.no-protected-drop"),
			mend: sentence("packaging.mend-cushion"),
		};
	}
	const { dropHeightM, bandM, face, complete } = found;
	const values = { dropHeightM, designM: design, lowM: bandM[0], highM: bandM[1], face };
	const result = (verdict: CheckVerdict, key: string, mend: boolean): PackagingCheck => ({
		...base,
		verdict,
		value: dropHeightM,
		margin: (dropHeightM - design) / design,
		why: sentence(key, values),
		mend: mend ? sentence("packaging.mend-worst-face", { face }) : null,
	});
	if (!(dropHeightM >= design)) {
		if (!complete) return result("falls-short", "packaging.bound-short", true);
		const may = bandM[1] >= design;
		return result("falls-short", may ? "packaging.drop-short-within-band" : "packaging.drop-short", true);
	}
	// What the faces' own checks cannot claim at the design drop, the drop that they protect to cannot claim either.
	const carried = faces.map((check) => check.verdict).reduce(worse);
	if (carried === "not-assessed") return result("not-assessed", "packaging.drop-outside", true);
	if (!(bandM[0] >= design)) return result("marginal", "packaging.drop-marginal", true);
	return result(worse(carried, "meets"), "packaging.drop-holds", false);
}

function measuredBelow(protectedM: number, input: PackagingInput): Packaging["measuredBelow"] {
	return input.route.measured.flatMap((row) => [
		...(row.p95M !== null && row.p95M <= protectedM
			? [{ id: row.id, percentile: "p95" as const, dropHeightM: row.p95M }]
			: []),
		...(row.maxM <= protectedM ? [{ id: row.id, percentile: "max" as const, dropHeightM: row.maxM }] : []),
	]);
}

function staticCheck({ item, pack }: PackagingInput): PackagingCheck {
	const kind =
		item.class === "graphics-card"
			? "populated-card"
			: item.class === "module" || item.class === "power-supply" || item.class === "drive"
				? "module"
				: "board";
	const answer = staticProtection({
		item: kind,
		layers: pack.bagLayers,
		cell: item.cell,
		edgesPadded: item.edgesPadded,
		connectorsCapped: item.connectorsCapped,
		makerDeclaresNotSensitive: item.makerDeclaresNotSensitive,
	});
	const base = { id: "static" as const, value: null, limit: null, unit: null, margin: null, sources: answer.sources };
	if (answer.status !== "assessed") return { ...base, verdict: "not-assessed", why: answer.reason.message, mend: null };
	const { verdict, evidence, conditions } = answer.result;
	const counted = ({ acceptable: "meets", conditional: "marginal", "not-acceptable": "falls-short" } as const)[verdict];
	const unproven = evidence === "assumed" || evidence === "unknown";
	return {
		...base,
		verdict: unproven ? worse(counted, "provisional") : counted,
		why: conditions[0] ?? sentence("static.holds"),
		mend: counted === "meets" ? null : sentence("static.mend"),
	};
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
