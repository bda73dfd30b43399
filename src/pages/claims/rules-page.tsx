/** `/claim-rules`: every rule on claims that the program holds, and how old the text is that it was taken from. */
import type { FastifyInstance } from "fastify";
import { OPEN_TO_ALL } from "../../access/callers.ts";
import { type RuleAge, ruleAges } from "../../operations/claims/rule-ages.ts";
import type { Deps } from "../../operations/deps.ts";
import { say } from "../../texts/say.ts";
import { Layout } from "../layout.tsx";
import { sendPage } from "../render.ts";

export function registerRules(app: FastifyInstance, deps: Deps): void {
	app.get("/claim-rules", { ...OPEN_TO_ALL, schema: { hide: true } }, async (_request, reply) =>
		sendPage(reply, <RulesPage ages={ruleAges(deps.now().toISOString().slice(0, 10))} />),
	);
}

const GROUPS = ["recalled", "undated", "old", "read"] as const;

function RulesPage({ ages }: { readonly ages: readonly RuleAge[] }) {
	const oldest = ages.find(({ rests }) => rests === "old") ?? ages.find(({ rests }) => rests === "read");
	return (
		<Layout title={say("rules.title")} wide={true}>
			<p class="lead">{say("rules.lead")}</p>
			{oldest !== undefined && <p>{say("rules.oldest", { document: oldest.document, date: oldest.readOn ?? "" })}</p>}
			{GROUPS.map((group) => {
				const some = ages.filter(({ rests }) => rests === group);
				return some.length === 0 ? null : <RuleTable key={group} group={group} ages={some} />;
			})}
		</Layout>
	);
}

/** One table for each text, so that its name stands once. */
function RuleTable({ group, ages }: { readonly group: RuleAge["rests"]; readonly ages: readonly RuleAge[] }) {
	const texts = [...new Set(ages.map(({ document }) => document))];
	return (
		<section id={group}>
			<h2>{say(`rules.rests.${group}`, { count: ages.length })}</h2>
			{texts.map((text) => (
				<table key={text} class="stacked">
					<caption>{text}</caption>
					<thead>
						<tr>
							<th scope="col">{say("rules.rule")}</th>
							<th scope="col">{say("periods.regime")}</th>
							<th scope="col">{say("periods.article")}</th>
							<th scope="col">{say("periods.standing")}</th>
							<th scope="col">{say("rules.state")}</th>
						</tr>
					</thead>
					<tbody>
						{ages
							.filter(({ document }) => document === text)
							.map(({ ruleId, regime, article, standing, readOn }) => (
								<tr key={`${ruleId} ${regime}`}>
									<th scope="row">{ruleId ?? say("rules.limit")}</th>
									<td data-label={say("periods.regime")}>{say(`periods.regime.${regime}`)}</td>
									<td data-label={say("periods.article")}>{article}</td>
									<td data-label={say("periods.standing")}>{say(`pack.standing.${standing}`)}</td>
									<td data-label={say("rules.state")}>{readOn ?? say("rules.no-date")}</td>
								</tr>
							))}
					</tbody>
				</table>
			))}
		</section>
	);
}
