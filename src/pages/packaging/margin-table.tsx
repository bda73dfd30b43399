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
				{alike(checks, before).map((same) => (
					<MarginRow key={same[0].id} same={same} before={before[same[0].id] ?? null} />
				))}
			</tbody>
		</table>
	);
}

type Alike = readonly [Check, ...Check[]];

/** Faces of which the same is to be said stand in one row. */
function alike(checks: readonly Check[], before: Readonly<Record<string, CheckBefore>>): Alike[] {
	const rows = new Map<string, Alike>();
	for (const check of checks) {
		const { id, verdict, margin, mend } = check;
		const key = id.startsWith("cushion-") ? JSON.stringify([verdict, margin, mend, before[id]]) : id;
		const row = rows.get(key);
		rows.set(key, row === undefined ? [check] : [...row, check]);
	}
	return [...rows.values()];
}

function MarginRow({ same, before }: { readonly same: Alike; readonly before: CheckBefore | null }) {
	const [check] = same;
	const { margin } = check;
	const name =
		same.length === 1
			? say(`pack.check.${check.id}` as TextKey)
			: say("pack.cushions-of", {
					faces: same.map(({ id }) => say(`pack.face.${id.replace("cushion-", "")}` as TextKey)).join(", "),
				});
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
