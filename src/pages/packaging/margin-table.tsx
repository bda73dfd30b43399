/** Each check's margin as a bar, with what to change in one line, and where it stood before a number was changed. */
import type { z } from "zod";
import { marginBar } from "../../charts/margin-bar.ts";
import type { packagingCheck } from "../../contract/packaging.ts";
import { say, type TextKey, writeNumber } from "../../texts/say.ts";
import { Chart } from "../components/chart.tsx";
import { Verdict } from "./packaging-result.tsx";

type Check = z.infer<typeof packagingCheck>;

/** What a check said before: verdict and margin. */
export type CheckBefore = readonly [verdict: string, margin: number | null];

export function MarginTable({
	checks,
	before,
}: {
	readonly checks: readonly Check[];
	/** By check; empty before anything was changed. */
	readonly before: Readonly<Record<string, CheckBefore>>;
}) {
	return (
		<table class="margins stacked">
			<caption>{say("pack.margins")}</caption>
			<thead>
				<tr>
					<th scope="col">{say("pack.check")}</th>
					<th scope="col">{say("pack.margin")}</th>
					<th scope="col">{say("pack.mend-column")}</th>
				</tr>
			</thead>
			<tbody>
				{checks.map((check) => (
					<MarginRow key={check.id} check={check} before={before[check.id] ?? null} />
				))}
			</tbody>
		</table>
	);
}

function MarginRow({ check, before }: { readonly check: Check; readonly before: CheckBefore | null }) {
	const { margin } = check;
	const name = say(`pack.check.${check.id}` as TextKey);
	const moved = before !== null && (before[0] !== check.verdict || percentOf(before[1]) !== percentOf(margin));
	return (
		<tr class={moved ? "moved" : undefined}>
			<th scope="row">{name}</th>
			<td data-label={say("pack.margin")}>
				{margin !== null && (
					<Chart
						drawing={marginBar({
							margin,
							before: moved ? (before[1] ?? null) : null,
							words: { title: name, description: say("pack.margin-of", { margin: percentOf(margin) }) },
						})}
						id={`margin-${check.id}`}
					/>
				)}
				<Verdict of={check.verdict} />
				{margin !== null && `, ${percentOf(margin)}`}
				{moved && (
					<span class="was">
						{say("pack.was", {
							verdict: say(`pack.verdict.${before[0]}` as TextKey),
							margin: before[1] === null ? "" : `, ${percentOf(before[1])}`,
						})}
					</span>
				)}
			</td>
			<td data-label={say("pack.mend-column")}>{check.mend ?? say("pack.nothing-to-mend")}</td>
		</tr>
	);
}

function percentOf(margin: number | null): string {
	return margin === null ? "–" : `${writeNumber(Math.round(100 * margin)).replace("-", "−")} %`;
}
