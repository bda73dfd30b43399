/** How long to go on with a soak: what was seen so far, the fault that is looked for, what that excludes. Keeps nothing. */
import type { FastifyRequest } from "fastify";
import { escapeCurve } from "../../../charts/escape-curve.ts";
import type { SoakRequest } from "../../../contract/soak.ts";
import type { SoakPlan } from "../../../operations/screening/plan-soak.ts";
import { say, speak, writeNumber } from "../../../texts/say.ts";
import { Chart } from "../../components/chart.tsx";
import { Caution, ErrorSummary, type FieldErrors, type FormValues, Submit } from "../../components/form.tsx";
import { numberFields } from "../../components/number-fields.tsx";
import { ShopLayout } from "../shop-layout.tsx";

export interface SoakPageProps {
	readonly request: FastifyRequest;
	readonly values: FormValues;
	readonly errors: FieldErrors;
	readonly outcome: { readonly asked: SoakRequest; readonly plan: SoakPlan } | null;
}

export function SoakPage({ request, outcome, ...field }: SoakPageProps) {
	const number = numberFields(field);
	return (
		<ShopLayout request={request} title={say("soak-page.title")} crumbs={[{ href: "/", label: say("shop.orders") }]}>
			<ErrorSummary errors={field.errors} />
			{outcome !== null && <Outcome {...outcome} />}
			<form method="get" action="/soak" noValidate>
				<h2>{say("soak-page.seen")}</h2>
				<p class="hint">{say("soak-page.seen-text")}</p>
				<div class="row">
					{number("hours", "soak-page.hours", "h")}
					{number("failures", "soak-page.failures")}
					{number("coldStarts", "soak-page.cold-starts")}
					{number("coldStartFailures", "soak-page.cold-start-failures")}
				</div>
				<h2>{say("soak-page.fault")}</h2>
				<p class="hint">{say("soak-page.fault-text")}</p>
				<div class="row">
					{number("shows", "soak-page.shows")}
					{number("showedInH", "soak-page.showed-in", "h")}
					{number("startFaultPercent", "soak-page.start-fault", "%")}
				</div>
				<h2>{say("soak-page.own")}</h2>
				<p class="hint">{say("soak-page.own-text")}</p>
				<div class="row">
					{number("priorPercent", "soak-page.prior", "%")}
					{number("targetPercent", "soak-page.target", "%")}
					{number("costPerH", "soak-page.cost-per-h")}
					{number("costOfReturn", "soak-page.cost-of-return")}
				</div>
				<Submit label={say("pack.compute")} />
			</form>
		</ShopLayout>
	);
}

function Outcome({ asked, plan }: NonNullable<SoakPageProps["outcome"]>) {
	const { result, cautions } = speak(plan.judged);
	if (result === null) return null;
	const rows = (
		[
			["soak-page.hours-for-confidence", result.hoursForConfidence, "h"],
			["soak-page.starts-needed", result.coldStartsNeeded, ""],
			["soak-page.hours-for-target", result.hoursForTarget, "h"],
			["soak-page.hours-economic", result.hoursEconomic, "h"],
			["soak-page.posterior", result.posteriorProbability === null ? null : 100 * result.posteriorProbability, "%"],
		] as const
	).flatMap(([key, value, unit]) => (value === null ? [] : [[key, `${writeNumber(value)} ${unit}`] as const]));
	return (
		<section class="result">
			<h2>{say("soak-page.outcome")}</h2>
			<div role="status">
				{result.says.map((sentence) => (
					<p key={sentence} class="lead">
						{sentence}
					</p>
				))}
			</div>
			{rows.length > 0 && (
				<dl class="facts">
					{rows.map(([key, words]) => (
						<>
							<dt>{say(key)}</dt>
							<dd>{words}</dd>
						</>
					))}
				</dl>
			)}
			<Plot asked={asked} plan={plan} />
			{cautions.map((caution) => (
				<Caution key={caution}>{caution}</Caution>
			))}
		</section>
	);
}

function Plot({ asked, plan: { judged, curve } }: NonNullable<SoakPageProps["outcome"]>) {
	const { result } = judged;
	if (curve.length === 0 || result === null || result.escapeProbability === null) return null;
	const percent = 100 * result.escapeProbability;
	const marks = (
		[
			["soak-page.mark-confidence", result.hoursForConfidence],
			["soak-page.mark-target", result.hoursForTarget],
			["soak-page.mark-economic", result.hoursEconomic],
		] as const
	).flatMap(([key, hours]) => (hours === null ? [] : [{ hours, label: say(key, { hours }) }]));
	const drawing = escapeCurve({
		points: curve,
		now: { hours: asked.hours, probability: result.escapeProbability },
		marks,
		words: {
			title: say("soak-page.plot"),
			description: say("soak-page.plot-text", { hours: asked.hours, percent }),
			hoursAxis: say("soak-page.hours-axis"),
			chanceAxis: say("soak-page.chance-axis"),
			now: say("soak-page.now", { percent }),
		},
	});
	return (
		<figure>
			<figcaption>{drawing.description}</figcaption>
			<Chart drawing={drawing} id="escape" />
		</figure>
	);
}
