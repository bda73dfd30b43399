/** `/claim-rules`: every rule on claims that the program holds, and how old the text is that it was taken from. */
import type { FastifyInstance } from "fastify";
import type { Caller } from "../../access/caller.ts";
import { callerOf, OPEN_TO_ALL } from "../../access/callers.ts";
import { type RuleAge, ruleAges } from "../../operations/claims/rule-ages.ts";
import type { Deps } from "../../operations/deps.ts";
import { say, type TextKey, writeNumber } from "../../texts/say.ts";
import { type Crumb, Layout } from "../layout.tsx";
import { placeOf } from "../place-of.ts";
import { sendPage } from "../render.ts";

export function registerRules(app: FastifyInstance, deps: Deps): void {
	app.get("/claim-rules", { ...OPEN_TO_ALL, schema: { hide: true } }, async (request, reply) => {
		const crumbs = wayBack(callerOf(request), request.headers.referer ?? "");
		return sendPage(reply, <RulesPage ages={ruleAges(deps.now().toISOString().slice(0, 10))} crumbs={crumbs} />);
	});
}

/** A leg's dates of a claim, where a page of ours led here from them. */
const CLAIM_PAGE = /\/orders\/\w+\/consignments\/\w+\/claim(?=\?|$)/;

function wayBack(caller: Caller, referer: string): Crumb[] {
	const from = CLAIM_PAGE.exec(referer)?.[0];
	if (from !== undefined) return [{ href: from, label: say("periods.link") }];
	if (caller.kind === "account") return [{ href: "/", label: say("shop.orders") }];
	return caller.kind === "link" ? [{ href: placeOf(caller), label: say("rules.back") }] : [];
}

const GROUPS = ["recalled", "undated", "old", "read"] as const;

function RulesPage({ ages, crumbs }: { readonly ages: readonly RuleAge[]; readonly crumbs: readonly Crumb[] }) {
	const oldest = ages.find(({ rests }) => rests === "old") ?? ages.find(({ rests }) => rests === "read");
	return (
		<Layout title={say("rules.title")} crumbs={crumbs} wide={true}>
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
				<table key={text} class="stacked rules">
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
							.map(({ ruleId, limit, regime, article, standing, readOn }) => (
								<tr key={`${ruleId} ${regime}`}>
									<th scope="row">
										{ruleId ?? say("rules.limit")}
										<span class="check-about">
											{ruleId === null ? limitWords(limit) : say(`claims.what-${ruleId.toLowerCase()}` as TextKey)}
										</span>
									</th>
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

/** Each amount with its unit. */
function limitWords(limit: RuleAge["limit"]): string {
	switch (limit?.unit) {
		case "sdr-per-kg":
			return limit.steps
				.map(({ from, sdrPerKg }) =>
					limit.steps.length === 1
						? say("rules.sdr-per-kg", { sdr: writeNumber(sdrPerKg) })
						: say("rules.sdr-per-kg-from", { sdr: writeNumber(sdrPerKg), from }),
				)
				.join("; ");
		case "sdr-per-parcel":
			return say("rules.sdr-per-parcel", { base: writeNumber(limit.baseSdr), sdr: writeNumber(limit.perKgSdr) });
		case "money-per-kg": {
			const { perKg, mostPerParcel, currency } = limit;
			const most = mostPerParcel === null ? "" : `; ${say("rules.money-most", { amount: mostPerParcel, currency })}`;
			return say("rules.money-per-kg", { amount: writeNumber(perKg), currency }) + most;
		}
		default:
			return say("rules.no-limit");
	}
}
