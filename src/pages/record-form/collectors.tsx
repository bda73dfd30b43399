/** The lines that print a diagnostic output to a file, beside the field that takes it. */
import { COLLECTOR_SYSTEMS, type Collector, collectorsFor } from "../../catalogue/collectors.ts";
import type { GuidedCheck } from "../../operations/records/guided-record.ts";
import { say, type TextKey } from "../../texts/say.ts";

export function Collectors({ checks }: { readonly checks: readonly GuidedCheck[] }) {
	const found = collectorsFor(new Set(checks.map((check) => check.id)));
	if (found.length === 0) return null;
	return (
		<details>
			<summary>{say("collectors.title")}</summary>
			<p>{say("collectors.text")}</p>
			<p class="hint">{say("collectors.missing")}</p>
			{COLLECTOR_SYSTEMS.map((system) => {
				const lines = found.filter((collector) => collector.system === system);
				return (
					lines.length > 0 && (
						<section key={system}>
							<h3>{say(`collectors.${system}`)}</h3>
							<dl>
								{lines.map((collector) => (
									<Line key={collector.id} collector={collector} />
								))}
							</dl>
						</section>
					)
				);
			})}
		</details>
	);
}

function Line({ collector }: { readonly collector: Collector }) {
	const notes = [
		collector.administrator ? say("collectors.administrator") : "",
		collector.twice ? say("collectors.twice") : "",
		collector.format === null ? say("collectors.kept") : "",
	].filter((note) => note !== "");
	return (
		<>
			<dt>{say(`collectors.${collector.id}` as TextKey)}</dt>
			<dd>
				<code>{collector.command}</code>
				{notes.length > 0 && <p class="hint">{notes.join(" ")}</p>}
			</dd>
		</>
	);
}
