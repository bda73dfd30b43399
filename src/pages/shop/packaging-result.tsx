/** What came out of a pack: what is assessed first, with its curve; then what is missing, and why. */
import type { z } from "zod";
import { cushionCurve } from "../../charts/cushion-curve.ts";
import type { packagingCheck, packagingResult } from "../../contract/packaging.ts";
import type { PackCurve } from "../../operations/packaging/pack-curves.ts";
import { say, type TextKey, writeNumber } from "../../texts/say.ts";
import { Chart } from "../components/chart.tsx";
import { Caution } from "../components/form.tsx";

type Check = z.infer<typeof packagingCheck>;

/** The calculation's answer, its sentences in words. */
export interface SpokenPackaging {
	readonly status: "assessed" | "not-assessed";
	readonly result: z.infer<typeof packagingResult> | null;
	readonly reason?: { readonly message: string };
	readonly cautions: readonly string[];
	readonly validity: { readonly within: boolean; readonly notes: readonly string[] };
}

export function PackagingResult({
	answer,
	curves,
}: {
	readonly answer: SpokenPackaging;
	readonly curves: readonly PackCurve[];
}) {
	const { result } = answer;
	if (result === null) {
		return (
			<section>
				<h2>{say("pack.result")}</h2>
				<p>{say("general.not-assessed", { why: answer.reason?.message ?? "" })}</p>
			</section>
		);
	}
	const made = result.checks.filter((check) => check.sources.length > 0 || check.value !== null);
	const missing = result.checks.filter((check) => !made.includes(check));
	return (
		<section class="result">
			<h2>{say("pack.result")}</h2>
			<p class="lead">
				<strong class={`verdict ${result.verdict === "falls-short" ? "bad" : ""}`}>
					{say(`pack.verdict.${result.verdict}` as TextKey)}
				</strong>{" "}
				{say(`pack.verdict-text.${result.verdict}` as TextKey)}
			</p>
			{result.protectedDropHeightM !== null && result.protectedBandM !== null && (
				<p>
					{say(result.protectedDropHeightM > 0 ? "pack.protects" : "pack.protects-none", {
						dropM: result.protectedDropHeightM,
						lowM: result.protectedBandM[0],
						highM: result.protectedBandM[1],
					})}{" "}
					{result.measuredBelow.length === 0
						? say("pack.measured-none")
						: say("pack.measured-below", { list: result.measuredBelow.map(measuredWords).join("; ") })}
				</p>
			)}
			{answer.cautions.map((caution) => (
				<Caution key={caution}>{caution}</Caution>
			))}
			{curves.map((curve) => (
				<Curve key={curve.faces.join()} curve={curve} />
			))}
			<div class="scroll">
				<table>
					<caption>{say("pack.checks")}</caption>
					<thead>
						<tr>
							<th scope="col">{say("pack.check")}</th>
							<th scope="col">{say("pack.verdict")}</th>
							<th scope="col" class="number">
								{say("pack.value")}
							</th>
							<th scope="col" class="number">
								{say("pack.limit")}
							</th>
							<th scope="col">{say("pack.why")}</th>
						</tr>
					</thead>
					<tbody>
						{made.map((check) => (
							<CheckRow key={check.id} check={check} />
						))}
					</tbody>
				</table>
			</div>
			<h3>{say("pack.missing")}</h3>
			<p>{missing.map((check) => say(`pack.check.${check.id}` as TextKey)).join(", ")}</p>
			<p class="hint">{missing[0]?.why}</p>
			{answer.validity.notes.map((note) => (
				<p key={note} class="hint">
					{note}
				</p>
			))}
		</section>
	);
}

function CheckRow({ check }: { readonly check: Check }) {
	const quantity = (value: number | null) =>
		value === null ? "–" : `${writeNumber(value)} ${check.unit ?? ""}`.trim();
	return (
		<tr>
			<th scope="row">{say(`pack.check.${check.id}` as TextKey)}</th>
			<td>
				<span class={`verdict ${check.verdict === "falls-short" ? "bad" : ""}`}>
					{say(`pack.verdict.${check.verdict}` as TextKey)}
				</span>
			</td>
			<td class="number">{quantity(check.value)}</td>
			<td class="number">{quantity(check.limit)}</td>
			<td>
				{check.why}
				{check.mend !== null && (
					<>
						{" "}
						<strong>{check.mend}</strong>
					</>
				)}
				<details>
					<summary>{say("pack.sources")}</summary>
					<ul>
						{check.sources.map((source) => (
							<li key={`${source.id} ${source.locator}`} class="source">
								{source.document}: {source.locator} ({say(`pack.standing.${source.standing}` as TextKey)})
							</li>
						))}
					</ul>
				</details>
			</td>
		</tr>
	);
}

function Curve({ curve }: { readonly curve: PackCurve }) {
	const faces = curve.faces.map((face) => say(`pack.face.${face}` as TextKey)).join(", ");
	const values = { peakGn: curve.operating.peakGn, stressKPa: curve.operating.staticStressKPa, limitGn: curve.limitGn };
	const best = curve.points.reduce((least, point) => (point.peakGn < least.peakGn ? point : least));
	const drawing = cushionCurve({
		points: curve.points,
		operating: curve.operating,
		limitGn: curve.limitGn,
		words: {
			title: say("pack.curve-title", { faces }),
			description: say("pack.curve-description", {
				...values,
				bestGn: best.peakGn,
				bestStressKPa: best.staticStressKPa,
			}),
			stressAxis: say("pack.curve-stress"),
			peakAxis: say("pack.curve-peak"),
			limit: say("pack.curve-limit", values),
			operating: say("pack.curve-point", values),
		},
	});
	return (
		<figure>
			<Chart drawing={drawing} id={`curve-${curve.faces[0]}`} />
			<figcaption>
				<strong>{drawing.title}</strong> {drawing.description} {say("pack.curve-legend")}
			</figcaption>
		</figure>
	);
}

function measuredWords(row: {
	readonly id: string;
	readonly percentile: string;
	readonly dropHeightM: number;
}): string {
	return `${say(`pack.measured.${row.id}` as TextKey)}, ${say(`pack.percentile.${row.percentile}` as TextKey)} ${writeNumber(row.dropHeightM)} m`;
}
