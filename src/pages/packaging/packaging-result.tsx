/** What came out of a pack: what is assessed first, each check with its reason and mend; then what is missing, and why. */
import type { z } from "zod";
import type { packagingCheck, packagingResult } from "../../contract/packaging.ts";
import { isRequiredCheck, reachesItsLimit } from "../../operations/packaging/plan-pack.ts";
import { say, type TextKey, writeNumber } from "../../texts/say.ts";
import { Caution } from "../components/form.tsx";

type Check = z.infer<typeof packagingCheck>;

/** The calculation's answer, its sentences in words. */
export interface SpokenPackaging {
	readonly status: "assessed" | "not-assessed";
	readonly result: z.infer<typeof packagingResult> | null;
	readonly reason?: { readonly message: string };
	readonly cautions: readonly string[];
	readonly validity: { readonly within: boolean; readonly notes: readonly string[] };
}

/** The verdict, and the drop that the pack protects to beside the drop asked for. */
export function Lead({ answer }: { readonly answer: SpokenPackaging }) {
	const { result } = answer;
	if (result === null) return <p class="lead">{say("general.not-assessed", { why: answer.reason?.message ?? "" })}</p>;
	const drop = result.checks.find((check) => check.id === "drop-height");
	const { protectedDropHeightM: dropM, protectedBandM: band } = result;
	return (
		<>
			<p class="lead">
				<Verdict of={result.verdict} /> {say(`pack.verdict-text.${result.verdict}` as TextKey)}
			</p>
			{dropM === null || band === null ? (
				<p class="lead">{drop?.why}</p>
			) : (
				<p class="lead">
					{say(dropM > 0 ? "pack.protects" : "pack.protects-none", { dropM, lowM: band[0], highM: band[1] })}{" "}
					{typeof drop?.limit === "number" && say("pack.design", { designM: drop.limit })}
				</p>
			)}
			{dropM !== null && drop?.verdict === "not-assessed" && <p>{drop.why}</p>}
			{answer.cautions.map((caution) => (
				<Caution key={caution}>{caution}</Caution>
			))}
		</>
	);
}

/** Every check that was made, then what was not. */
export function Checks({ answer }: { readonly answer: SpokenPackaging }) {
	const checks = answer.result?.checks ?? [];
	const made = checks.filter((check) => check.sources.length > 0 || check.value !== null);
	const missing = checks.filter((check) => !made.includes(check));
	if (checks.length === 0) return null;
	return (
		<>
			<table class="stacked checks">
				<caption>{say("pack.checks")}</caption>
				<thead>
					<tr>
						<th scope="col">{say("pack.check")}</th>
						<th scope="col">{say("pack.verdict")}</th>
						<th scope="col" class="number">
							{say("pack.value")}
						</th>
						<th scope="col" class="number">
							{say("pack.limit")}
						</th>
						<th scope="col" class="number">
							{say("pack.margin")}
						</th>
						<th scope="col">{say("pack.why")}</th>
					</tr>
				</thead>
				<tbody>
					{made.map((check) => (
						<CheckRow key={check.id} check={check} />
					))}
				</tbody>
			</table>
			{missing.length > 0 && <Missing checks={missing} />}
		</>
	);
}

/** What was not assessed, with the reason once for all that share it; first what a verdict needs. */
function Missing({ checks }: { readonly checks: readonly Check[] }) {
	const reasons = [...new Set(checks.map((check) => check.why))];
	const list = (label: TextKey, some: readonly Check[]) =>
		some.length > 0 && (
			<li>
				<strong>{say(label)}</strong> {some.map((check) => say(`pack.check.${check.id}` as TextKey)).join(", ")}
			</li>
		);
	return (
		<>
			<h3>{say("pack.missing")}</h3>
			{reasons.map((why) => {
				const here = checks.filter((check) => check.why === why);
				return (
					<>
						<p>{why}</p>
						<ul>
							{list(
								"pack.needed",
								here.filter((check) => isRequiredCheck(check.id)),
							)}
							{list(
								"pack.not-needed",
								here.filter((check) => !isRequiredCheck(check.id)),
							)}
						</ul>
					</>
				);
			})}
		</>
	);
}

/** What holds for the whole answer. */
export function Notes({ answer }: { readonly answer: SpokenPackaging }) {
	return (
		<>
			{answer.validity.notes.map((note) => (
				<p key={note} class="hint">
					{note}
				</p>
			))}
		</>
	);
}

function CheckRow({ check }: { readonly check: Check }) {
	const quantity = (value: number | null) =>
		value === null ? "–" : `${writeNumber(value)} ${check.unit ?? ""}`.trim();
	// Some are to reach their limit, such as the protected drop; a peak is to stay below it.
	const bound = check.limit === null ? "–" : `${reachesItsLimit(check.id) ? "≥" : "≤"} ${quantity(check.limit)}`;
	return (
		<tr>
			<th scope="row">{say(`pack.check.${check.id}` as TextKey)}</th>
			<td data-label={say("pack.verdict")}>
				<Verdict of={check.verdict} />
			</td>
			<td class="number" data-label={say("pack.value")}>
				{quantity(check.value)}
			</td>
			<td class="number" data-label={say("pack.limit")}>
				{bound}
			</td>
			<td class="number" data-label={say("pack.margin")}>
				{check.margin === null ? "–" : `${writeNumber(Math.round(100 * check.margin)).replace("-", "−")} %`}
			</td>
			<td data-label={say("pack.why")}>
				{check.why} {check.mend !== null && <strong>{check.mend}</strong>}
				<details>
					<summary>{say("pack.sources")}</summary>
					<ul>
						{check.sources.map((source) => (
							<li key={`${source.id} ${source.locator}`} class="source">
								{source.document}: {source.locator} ({say(`pack.standing.${source.standing}` as TextKey)})
							</li>
						))}
					</ul>
				</details>
			</td>
		</tr>
	);
}

/** The word of a verdict; colour only underlines it. */
export function Verdict({ of }: { readonly of: Check["verdict"] }) {
	const tone = of === "falls-short" ? " bad" : of === "meets" ? " good" : "";
	return <strong class={`verdict${tone}`}>{say(`pack.verdict.${of}` as TextKey)}</strong>;
}
