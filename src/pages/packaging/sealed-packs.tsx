/** Packs as they were shipped and sealed: when, with what verdict, and what was entered. */
import { type AssessmentView, FACES, type PackagingRequest } from "../../contract/packaging.ts";
import { curvesOfSealed } from "../../operations/packaging/sealed-curves.ts";
import { say, speak, type TextKey, writeNumber } from "../../texts/say.ts";
import { groupsOfFour, showTime } from "../record-form/shown-time.ts";
import { CushionFigure } from "./cushion-figure.tsx";
import { foamWords } from "./foam-words.ts";
import { Checks, Lead, Notes, type SpokenPackaging } from "./packaging-result.tsx";

/** What a sealed assessment holds, its committed texts opened; an erased one is null. */
interface SealedPack extends PackagingRequest {
	readonly result: object;
}

/** What was sealed and computed then; a recomputation would stand beside it. */
export function answerOf(assessment: AssessmentView): SpokenPackaging {
	return speak((assessment.statement as unknown as SealedPack).result) as SpokenPackaging;
}

/** A sealed pack in one line. */
export function sealedLine(assessment: AssessmentView): string {
	const verdict = say(`pack.verdict.${answerOf(assessment).result?.verdict ?? "not-assessed"}` as TextKey);
	return say("pack.on-order", { time: showTime(assessment.sealedAt), verdict });
}

export function SealedPacks({ assessments }: { readonly assessments: readonly AssessmentView[] }) {
	return (
		<>
			{assessments.map((assessment) => {
				const answer = answerOf(assessment);
				return (
					<section key={assessment.id} class="result" id={assessment.id}>
						<h2>{say("pack.sealed-at", { time: showTime(assessment.sealedAt) })}</h2>
						<Lead answer={answer} />
						<p>
							{say("pack.fingerprint")} <span class="fingerprint">{groupsOfFour(assessment.fingerprint)}</span>
						</p>
						<details>
							<summary>{say("pack.as-entered")}</summary>
							<PackFacts sealed={assessment.statement as unknown as SealedPack} />
						</details>
						<details>
							<summary>{say("pack.curves-now")}</summary>
							<p class="hint">{say("pack.curves-now-text")}</p>
							{curvesOfSealed(assessment).map((curve) => (
								<CushionFigure key={curve.faces.join()} curve={curve} id={assessment.id} />
							))}
						</details>
						<details>
							<summary>{say("pack.checks-then")}</summary>
							<Checks answer={answer} />
							<Notes answer={answer} />
						</details>
					</section>
				);
			})}
		</>
	);
}

function PackFacts({ sealed: { item, pack, route } }: { readonly sealed: SealedPack }) {
	const size = (...metres: readonly number[]) => `${metres.map((metre) => writeNumber(1000 * metre)).join(" × ")} mm`;
	const { box } = pack;
	return (
		<dl class="facts">
			<dt>{say("pack.item")}</dt>
			<dd>
				{writeNumber(item.massKg)} kg, {size(item.lengthM, item.widthM, item.heightM)}
			</dd>
			<dt>{say("pack.fragility")}</dt>
			<dd>
				{item.fragility === undefined
					? say("pack.fragility-none")
					: `${writeNumber(item.fragility.gn)} gₙ, ${say("pack.known-by", { how: say(`pack.basis.${item.fragility.basis}` as TextKey) })}`}
			</dd>
			<dt>{say("shop.cell")}</dt>
			<dd>{[say(`shop.cell-kind.${item.cell}` as TextKey), ...saidOf(item)].join("; ")}</dd>
			{cushionsOf(pack.faces).map(([words, faces]) => (
				<>
					<dt>{say("pack.face-of", { face: faces })}</dt>
					<dd>{words}</dd>
				</>
			))}
			<dt>{say("pack.bag")}</dt>
			<dd>{pack.bagLayers.map(bagWords).join("; ") || say("pack.no-layer")}</dd>
			<dt>{say("pack.box")}</dt>
			<dd>
				{size(box.innerLengthM, box.innerWidthM, box.innerHeightM)}
				{pack.grossMassKg !== undefined && `, ${say("shop.parcel-mass")}: ${writeNumber(pack.grossMassKg)} kg`}
				{box.reused && `, ${say("pack.was-reused")}`}
				{typeof pack.closedHow === "string" && `, ${pack.closedHow}`}
			</dd>
			<dt>{say("pack.drop-basis")}</dt>
			<dd>{say(`pack.drop.${route.dropBasis}` as TextKey)}</dd>
			<dt>{say("pack.route")}</dt>
			<dd>
				{say(`shop.mode-kind.${route.mode}` as TextKey)}, {say("pack.days-of", { days: route.transitDays })}
			</dd>
		</dl>
	);
}

/** What was ticked about the item. */
function saidOf(item: PackagingRequest["item"]): string[] {
	return [
		...(item.edgesPadded === true ? [say("pack.edges-padded")] : []),
		...(item.connectorsCapped === true ? [say("pack.connectors-capped")] : []),
		...(item.makerDeclaresNotSensitive === true ? [say("pack.not-sensitive")] : []),
	];
}

/** Each different cushion in words, with the faces that have it. */
function cushionsOf(faces: PackagingRequest["pack"]["faces"]): [words: string, faces: string][] {
	const found = new Map<string, string[]>();
	for (const face of FACES) {
		const words = faces[face].layers.map(cushionWords).join("; ") || say("pack.no-cushion");
		found.set(words, [...(found.get(words) ?? []), say(`pack.face.${face}` as TextKey)]);
	}
	return [...found].map(([words, names]) => [words, names.join(", ")]);
}

function bagWords(layer: PackagingRequest["pack"]["bagLayers"][number]): string {
	return [
		say(`pack.layer.${layer.kind}` as TextKey),
		say(layer.closed ? "pack.is-closed" : "pack.is-open"),
		say(layer.intact ? "pack.is-intact" : "pack.not-intact"),
		...(layer.stapled === true ? [say("pack.is-stapled")] : []),
		...(layer.reused === true ? [say("pack.was-reused")] : []),
		say("pack.known-by", { how: say(`pack.evidence.${layer.evidence}` as TextKey) }),
	].join(", ");
}

function cushionWords({ foam, thicknessM, pads }: PackagingRequest["pack"]["faces"]["top"]["layers"][number]): string {
	const [first] = pads ?? [];
	const bearing =
		first === undefined
			? say("pack.full-face")
			: say("pack.pads-of", {
					count: pads?.length ?? 0,
					lengthMm: 1000 * first.lengthM,
					widthMm: 1000 * first.widthM,
				});
	return `${kindWords(foam)}, ${writeNumber(1000 * thicknessM)} mm, ${bearing}`;
}

function kindWords(foam: PackagingRequest["pack"]["faces"]["top"]["layers"][number]["foam"]): string {
	if ("unknown" in foam) return say("pack.unknown-foam");
	if ("id" in foam) return foamWords(foam.id);
	if ("points" in foam) return say("pack.own-points", { count: foam.points.length });
	return foam.model === "stress-energy"
		? say("pack.own-set", { a: foam.aKPa, b: foam.bPerKPa })
		: say("pack.own-gas-set");
}
