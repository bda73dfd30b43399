/** `/learning`: what the shop's own legs show, and the same as a table for a spreadsheet. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { callerOf, openTo } from "../../access/callers.ts";
import type { Judged } from "../../calculations/judged.ts";
import type { Learning } from "../../calculations/learning/learn.ts";
import { fault } from "../../faults.ts";
import type { Deps } from "../../operations/deps.ts";
import { learningCsv, readLearning } from "../../operations/learning/read-learning.ts";
import { say, speak, writeNumber } from "../../texts/say.ts";
import { sendPage } from "../render.ts";
import { ShopLayout } from "../shop/shop-layout.tsx";
import { FactorSection, NearMissTable, OutcomeTable } from "./group-tables.tsx";
import { showWords } from "./learning-words.ts";

const SHOP = { ...openTo("account"), schema: { hide: true } };
const FACTORS = ["carrier", "pack", "foam", "soak"] as const;

export function registerLearning(app: FastifyInstance, deps: Deps): void {
	app.get("/learning", SHOP, async (request, reply) => {
		const learned = await readLearning(deps, callerOf(request));
		return sendPage(reply, <LearningPage request={request} learned={learned} />);
	});
	app.get("/learning.csv", SHOP, async (request, reply) => {
		const learned = await readLearning(deps, callerOf(request));
		if (learned.status === "not-assessed") throw fault("not-found");
		return reply
			.type("text/csv; charset=utf-8; header=present")
			.header("Content-Disposition", 'attachment; filename="learning.csv"')
			.send(learningCsv(learned.result));
	});
}

function LearningPage({ request, learned }: { readonly request: FastifyRequest; readonly learned: Judged<Learning> }) {
	return (
		<ShopLayout
			request={request}
			title={say("learning.title")}
			crumbs={[{ href: "/", label: say("shop.orders") }]}
			wide={true}
		>
			<p class="lead">{say("learning.lead")}</p>
			{learned.status === "not-assessed" ? (
				<p>{speak(learned.reason.message)}</p>
			) : (
				<Learned learning={learned.result} cautions={speak(learned.cautions)} sources={learned.sources} />
			)}
		</ShopLayout>
	);
}

function Learned(props: {
	readonly learning: Learning;
	readonly cautions: readonly string[];
	readonly sources: Judged<Learning>["sources"];
}) {
	const { firstOn, lastOn, legsPerYear, all, by, toShow } = props.learning;
	const whole = [{ ...all, name: say("learning.legs") }];
	return (
		<>
			<p>
				{say("learning.span", { legs: all.legs, first: firstOn, last: lastOn })};{" "}
				{legsPerYear === null
					? say("learning.rate-none")
					: say("learning.rate", { count: writeNumber(Math.round(legsPerYear)) })}
				. {say("learning.on-the-way")}
			</p>
			{props.cautions.map((caution) => (
				<p key={caution} class="note">
					{caution}
				</p>
			))}
			<p class="hint">
				{say("learning.few-hint")} <a href="/learning.csv">{say("learning.csv")}</a>
			</p>
			<nav aria-label={say("learning.contents")}>
				<ul>
					{FACTORS.map((factor) => (
						<li key={factor}>
							<a href={`#${factor}`}>{say(`learning.by.${factor}`)}</a>
						</li>
					))}
					<li>
						<a href="#show">{say("learning.show")}</a>
					</li>
				</ul>
			</nav>
			<OutcomeTable caption={say("learning.title")} groups={whole} />
			<p class="hint">{say("learning.near-hint")}</p>
			<NearMissTable caption={say("learning.near-misses")} groups={whole} />
			{FACTORS.map((factor) => (
				<FactorSection key={factor} factor={factor} groups={by[factor]} />
			))}
			<h2 id="show">{say("learning.show")}</h2>
			<p>{say("learning.show-text")}</p>
			<table class="stacked shares">
				<thead>
					<tr>
						<th scope="col">{say("learning.event")}</th>
						<th scope="col">{say("learning.halved")}</th>
						<th scope="col">{say("learning.doubled")}</th>
					</tr>
				</thead>
				<tbody>
					{toShow.map(({ event, halved, doubled }) => (
						<tr key={event}>
							<th scope="row">{say(`learning.event.${event}`)}</th>
							<td data-label={say("learning.halved")}>{showWords(halved)}</td>
							<td data-label={say("learning.doubled")}>{showWords(doubled)}</td>
						</tr>
					))}
				</tbody>
			</table>
			<h2>{say("learning.sources")}</h2>
			<p>{say("learning.method")}</p>
			<ul>
				{props.sources.map(({ document, locator, standing }) => (
					<li key={`${document} ${locator}`}>
						{document}, {locator}. {say(`periods.standing.${standing}`)}
					</li>
				))}
			</ul>
		</>
	);
}
