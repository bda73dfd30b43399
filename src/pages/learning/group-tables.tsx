/** The groups of one factor: what became of their legs, with a plot, and their near misses. */
import type { LearnedGroup } from "../../calculations/learning/learn.ts";
import type { Factor, NearMiss } from "../../calculations/learning/learned-leg.ts";
import { shareRows } from "../../charts/share-rows.ts";
import { say } from "../../texts/say.ts";
import { Chart } from "../components/chart.tsx";
import { percent, percentWords, shareWords } from "./learning-words.ts";

const OUTCOMES = ["as-left", "changed", "dead", "untested", "silent"] as const;
const NEAR_MISSES = [
	"pads-shifted",
	"tag-tripped",
	"corner-crushed",
	"new-correctable-errors",
	"link-unanswered",
] as const satisfies readonly NearMiss[];

export function FactorSection({
	factor,
	groups,
}: {
	readonly factor: Factor;
	readonly groups: readonly LearnedGroup[];
}) {
	const named = groups.map((group) => ({ ...group, name: nameOf(group) }));
	return (
		<section id={factor}>
			<h2>{say(`learning.by.${factor}`)}</h2>
			<Chart id={`plot-${factor}`} drawing={plotOf(factor, named)} />
			<details class="folded">
				<summary>{say("learning.tables", { by: say(`learning.by.${factor}`) })}</summary>
				<OutcomeTable caption={say(`learning.by.${factor}`)} groups={named} />
				<NearMissTable caption={`${say("learning.near-misses")}: ${say(`learning.by.${factor}`)}`} groups={named} />
			</details>
		</section>
	);
}

export function OutcomeTable({
	caption,
	groups,
}: {
	readonly caption: string;
	readonly groups: readonly NamedGroup[];
}) {
	return (
		<table class="stacked shares">
			<caption>{caption}</caption>
			<thead>
				<tr>
					<th scope="col">{say("learning.group")}</th>
					<th scope="col">{say("learning.legs")}</th>
					{OUTCOMES.map((outcome) => (
						<th key={outcome} scope="col">
							{say(`learning.outcome.${outcome}`)}
						</th>
					))}
					<th scope="col">
						{say("learning.event.bad")}. {say("learning.share")}
					</th>
					<th scope="col">{say("learning.all-good")}</th>
					<th scope="col">{say("learning.all-bad")}</th>
				</tr>
			</thead>
			<tbody>
				{groups.map(({ name, legs, outcomes, shares }) => (
					<tr key={name}>
						<th scope="row">{name}</th>
						<td data-label={say("learning.legs")}>{legs}</td>
						{OUTCOMES.map((outcome) => (
							<td key={outcome} data-label={say(`learning.outcome.${outcome}`)}>
								{outcomes[outcome]}
							</td>
						))}
						<td data-label={say("learning.event.bad")}>
							{shareWords(shares.bad)} {shares.bad.isFew && <em>{say("learning.few")}</em>}
						</td>
						<td data-label={say("learning.all-good")}>{percentWords(shares.bad.allGood)}</td>
						<td data-label={say("learning.all-bad")}>{percentWords(shares.bad.allBad)}</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}

export function NearMissTable({
	caption,
	groups,
}: {
	readonly caption: string;
	readonly groups: readonly NamedGroup[];
}) {
	return (
		<table class="stacked shares">
			<caption>{caption}</caption>
			<thead>
				<tr>
					<th scope="col">{say("learning.group")}</th>
					{NEAR_MISSES.map((event) => (
						<th key={event} scope="col">
							{say(`learning.event.${event}`)}
						</th>
					))}
				</tr>
			</thead>
			<tbody>
				{groups.map(({ name, shares }) => (
					<tr key={name}>
						<th scope="row">{name}</th>
						{NEAR_MISSES.map((event) => (
							<td key={event} data-label={say(`learning.event.${event}`)}>
								{shareWords(shares[event])}{" "}
								{shares[event].share !== null && shares[event].isFew && <em>{say("learning.few")}</em>}
							</td>
						))}
					</tr>
				))}
			</tbody>
		</table>
	);
}

export type NamedGroup = Omit<LearnedGroup, "name"> & { readonly name: string };

export function nameOf({ name }: LearnedGroup): string {
	return name ?? say("learning.not-known");
}

function plotOf(factor: Factor, groups: readonly NamedGroup[]) {
	const rows = groups.map(({ name, shares: { bad } }) => ({
		name: bad.isFew ? `${name} (${say("learning.few")})` : name,
		share: bad.share,
		interval: bad.interval,
		bounds: [bad.allGood ?? 0, bad.allBad ?? 0] as const,
		isFew: bad.isFew,
	}));
	const told = groups.map(({ name, shares: { bad } }) =>
		say("learning.plot-row", {
			name,
			share: shareWords(bad),
			low: percent(bad.allGood ?? 0),
			high: percent(bad.allBad ?? 0),
		}),
	);
	return shareRows({
		rows,
		words: {
			title: say("learning.plot", { by: say(`learning.by.${factor}`) }),
			description: say("learning.plot-text", { rows: told.join(" ") }),
			axis: say("learning.plot-axis"),
		},
	});
}
