/** The risk of damage on this trip: beside the verdict, for planning alone. */
import type { DamageRisk } from "../../calculations/packaging/damage-risk.ts";
import { type Spoken, say } from "../../texts/say.ts";

export function DamageRiskNote({ risk }: { readonly risk: Spoken<DamageRisk> | null }) {
	if (risk === null) return <p class="hint">{say("pack.risk-none")}</p>;
	const [low, high] = risk.probability;
	const percent = (share: number) => (share < 1e-6 ? "0.0001" : String(Number((100 * share).toPrecision(2))));
	return (
		<section class="note">
			<h3>{say("pack.risk")}</h3>
			<p>
				{say("pack.risk-of", { lowPercent: percent(low), highPercent: percent(high) })}{" "}
				{say(`pack.risk-turns.${risk.turnsOn}`)}
			</p>
			<details>
				<summary>{say("pack.risk-assumes")}</summary>
				<ul>
					{risk.assumptions.map((assumption) => (
						<li key={assumption}>{assumption}</li>
					))}
				</ul>
			</details>
			<p class="hint">{say("pack.risk-private")}</p>
		</section>
	);
}
