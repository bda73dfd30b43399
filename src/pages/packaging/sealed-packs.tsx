/** Packs as they were shipped and sealed: when, with what verdict, and what was entered. */
import type { AssessmentView, PackagingRequest } from "../../contract/packaging.ts";
import { curvesOfSealed } from "../../operations/packaging/sealed-curves.ts";
import { say, speak, type TextKey } from "../../texts/say.ts";
import { groupsOfFour, showTime } from "../../texts/shown-time.ts";
import { CushionFigure } from "./cushion-figure.tsx";
import { PackFacts } from "./pack-facts.tsx";
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
							<PackFacts {...(assessment.statement as unknown as SealedPack)} />
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
