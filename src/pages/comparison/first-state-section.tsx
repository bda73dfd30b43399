/** How the first test on arrival was made: what it excludes, what it does not, and only then the grade. */
import type { ComparisonView } from "../../contract/comparison.ts";
import { say } from "../../texts/say.ts";

export function FirstStateSection({ firstState }: { readonly firstState: NonNullable<ComparisonView["firstState"]> }) {
	const { excluded, notExcluded, grade, why } = firstState;
	return (
		<section id="first-state">
			<h2>{say("comparison-page.first-state")}</h2>
			{excluded.length > 0 && (
				<>
					<h3>{say("comparison-page.first-state.excluded")}</h3>
					<ul>
						{excluded.map(({ id, says }) => (
							<li key={id}>{says}</li>
						))}
					</ul>
				</>
			)}
			{notExcluded.length > 0 && (
				<>
					<h3>{say("comparison-page.first-state.not-excluded")}</h3>
					<ul>
						{notExcluded.map(({ id, says, how }) => (
							<li key={id}>
								{says} {how !== null && <span class="hint">{how}</span>}
							</li>
						))}
					</ul>
				</>
			)}
			<p class="hint">
				{say("comparison-page.first-state.grade", { grade: say(`first-state.grade-${grade ?? "none"}`), why })}
			</p>
		</section>
	);
}
