/** The figures of a check with where each comes from: how long, when to stop, limits, what sound boards read, what differs. */
import type { Source } from "../../calculations/sources.ts";
import type { GuidedCheck } from "../../operations/records/guided-record.ts";
import { isTextKey, say, type TextKey, writeNumber } from "../../texts/say.ts";

export function CheckFigures({ check }: { readonly check: GuidedCheck }) {
	const figures = figuresOf(check);
	const stop = check.stopKey !== undefined && isTextKey(check.stopKey) ? say(check.stopKey) : null;
	return (
		<>
			{(check.duration !== undefined || stop !== null) && (
				<p class="hint">
					{durationWords(check)} {stop}
				</p>
			)}
			{figures.length > 0 && (
				<details>
					<summary>{say("checks.figures")}</summary>
					<ul>
						{figures.map(({ words, source }) => (
							<li key={words}>
								{words} {say("checks.figure-source", sourceWords(source))}
							</li>
						))}
					</ul>
				</details>
			)}
		</>
	);
}

interface Figure {
	readonly words: string;
	readonly source: Source;
}

function figuresOf(check: GuidedCheck): Figure[] {
	const unit = check.unitSymbol ?? "";
	const { limits, margin, plausible, stopBelow, duration } = check;
	const figures: Figure[] = [];
	// Points, starts and counts have the one limit that none fails, which their names say.
	if (limits !== undefined && check.kind === "measured")
		figures.push({ words: say("checks.figure-limits", { range: rangeWords(limits, unit) }), source: limits.source });
	if (stopBelow !== undefined)
		figures.push({
			words: say("checks.figure-stop-below", { value: amount(stopBelow.value, unit) }),
			source: stopBelow.source,
		});
	if (plausible !== undefined)
		figures.push({
			words: say("checks.figure-plausible", { range: rangeWords(plausible, unit) }),
			source: plausible.source,
		});
	if (margin !== undefined) {
		const parts = [
			margin.absolute === undefined ? [] : amount(margin.absolute, unit),
			margin.percentOfDeparture === undefined ? [] : amount(margin.percentOfDeparture, "%"),
		].flat();
		figures.push({
			words: say("checks.figure-margin", { margin: parts.join(say("checks.figure-or")) }),
			source: margin.source,
		});
	}
	if (duration !== undefined) figures.push({ words: durationWords(check), source: duration.source });
	return figures;
}

function rangeWords(
	{ low, high }: { readonly low?: number | undefined; readonly high?: number | undefined },
	unit: string,
) {
	if (low === undefined) return say("checks.figure-at-most", { high: amount(high ?? Number.NaN, unit) });
	if (high === undefined) return say("checks.figure-at-least", { low: amount(low, unit) });
	return say("checks.figure-between", { low: amount(low, unit), high: amount(high, unit) });
}

function amount(value: number, unit: string): string {
	return `${writeNumber(value)} ${unit}`.trim();
}

function sourceWords({ document, locator, standing }: Source): Record<string, string> {
	return { document, locator, standing: say(`pack.standing.${standing}` as TextKey) };
}

/** How long a check takes. */
function durationWords({ duration }: Pick<GuidedCheck, "duration">): string {
	if (duration === undefined) return "";
	const { leastMinutes: least, releaseMinutes: release } = duration;
	return release === undefined ? say("checks.duration", { least }) : say("checks.duration-release", { least, release });
}
