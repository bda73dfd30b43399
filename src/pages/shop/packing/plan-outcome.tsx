/** What comes out of a plan: the verdict and what it rests on, the pack cut open, each margin, the curves, every figure. */
import type { PackPlan } from "../../../operations/packaging/plan-pack.ts";
import { say, speak, writeNumber } from "../../../texts/say.ts";
import { CushionFigure } from "../../packaging/cushion-figure.tsx";
import { DamageRiskNote } from "../../packaging/damage-risk-note.tsx";
import { DropTables } from "../../packaging/drop-tables.tsx";
import { FragilityHeadline } from "../../packaging/fragility-headline.tsx";
import { MarginTable } from "../../packaging/margin-table.tsx";
import { Checks, Lead, Notes, type SpokenPackaging } from "../../packaging/packaging-result.tsx";
import { SectionFigures } from "../../packaging/section-figures.tsx";
import type { Before } from "./before.ts";

export interface PlanOutcomeProps {
	readonly plan: PackPlan;
	readonly before: Before | null;
	readonly basis: string;
	readonly item: Parameters<typeof SectionFigures>[0]["item"];
}

export function PlanOutcome({ plan, before, basis, item }: PlanOutcomeProps) {
	const answer = speak(plan.answer) as SpokenPackaging;
	const { result } = answer;
	const dropM = result?.protectedDropHeightM ?? null;
	return (
		<section class="result">
			<h2>{say("pack.result")}</h2>
			<div role="status">
				<Lead answer={answer} />
				{before !== null && before.dropM !== null && dropM !== null && before.dropM !== dropM && (
					<p>{say("pack.drop-was", { beforeM: writeNumber(before.dropM), dropM: writeNumber(dropM) })}</p>
				)}
			</div>
			{result !== null && <FragilityHeadline fragility={result.fragility} />}
			<SectionFigures sections={plan.sections} item={item} id="plan" />
			{result !== null && <MarginTable checks={result.checks} before={before?.checks ?? {}} />}
			<DamageRiskNote risk={speak(plan.damageRisk)} />
			{plan.curves.map((curve) => (
				<CushionFigure key={curve.faces.join()} curve={curve} id="plan" />
			))}
			{plan.drop !== null && (
				<DropTables drop={plan.drop} basis={basis} protectedM={dropM}>
					<Notes answer={answer} />
				</DropTables>
			)}
			<details>
				<summary>{say("pack.every-figure")}</summary>
				<Checks answer={answer} />
			</details>
		</section>
	);
}
