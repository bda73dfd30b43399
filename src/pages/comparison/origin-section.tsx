/** What the findings fit: origins best supported first, what is missing on every side, and the next tests. */
import type { ComparisonView } from "../../contract/comparison.ts";
import { say } from "../../texts/say.ts";

type Origin = NonNullable<ComparisonView["origin"]>;
type Said = { readonly id: string; readonly says: string };

/** Tests listed at once; the others are in the answer of the API. */
const MOST_TESTS = 6;

export function OriginSection({ origin }: { readonly origin: Origin }) {
	const borne = origin.origins.filter(({ support }) => support !== "not-tested");
	const open = origin.origins.filter(({ support }) => support === "not-tested");
	return (
		<section id="origin">
			<h2>{say("comparison-page.origin")}</h2>
			<p>{say("comparison-page.origin-text")}</p>
			<table class="stacked origins">
				<thead>
					<tr>
						{(["origin", "for", "against", "support"] as const).map((column) => (
							<th key={column} scope="col">
								{say(`comparison-page.origin.${column}`)}
							</th>
						))}
					</tr>
				</thead>
				<tbody>
					{borne.map((one) => (
						<tr key={one.id}>
							<th scope="row">{one.name}</th>
							<td data-label={say("comparison-page.origin.for")}>
								<Findings said={one.for} />
							</td>
							<td data-label={say("comparison-page.origin.against")}>
								<Findings said={one.against} />
							</td>
							<td data-label={say("comparison-page.origin.support")}>
								<strong>{say(`origin.support-${one.support}`)}</strong>
								<span class="hint conformity">{one.why}</span>
							</td>
						</tr>
					))}
				</tbody>
			</table>
			{open.length > 0 && (
				<p>{say("comparison-page.origin.open", { origins: open.map(({ name }) => name).join("; ") })}</p>
			)}
			{origin.turnsOn !== null && <p>{say("comparison-page.origin.turns", { finding: origin.turnsOn.says })}</p>}
			<Missing origin={origin} />
			<h3>{say("comparison-page.tests")}</h3>
			<ol>
				{origin.nextTests.slice(0, MOST_TESTS).map((test) => (
					<li key={test.id}>
						{test.says} <span class="hint">{test.why}</span>
					</li>
				))}
			</ol>
			{origin.cautions.map((caution) => (
				<p key={caution} class="note">
					{caution}
				</p>
			))}
		</section>
	);
}

function Findings({ said }: { readonly said: readonly Said[] }) {
	if (said.length === 0) return <>–</>;
	return (
		<ul class="findings">
			{said.map(({ id, says }) => (
				<li key={id}>{says}</li>
			))}
		</ul>
	);
}

/** What was not looked for, on each side alike, for the origins that are still open. */
function Missing({ origin }: { readonly origin: Origin }) {
	const open = origin.origins.filter(({ support }) => support === "supports" || support === "neutral");
	const on = (side: "departure" | "transit" | "arrival") => {
		const all = open.flatMap((one) => one.missing[side]);
		return all.filter(({ id }, index) => all.findIndex((other) => other.id === id) === index);
	};
	return (
		<details>
			<summary>{say("comparison-page.missing")}</summary>
			<p>{say("comparison-page.missing-text")}</p>
			{(["departure", "transit", "arrival"] as const).map((side) => (
				<div key={side}>
					<h3>{say(`comparison-page.missing.${side}`)}</h3>
					<Findings said={on(side)} />
				</div>
			))}
		</details>
	);
}
