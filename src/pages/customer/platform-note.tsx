/** Did not start on this platform: what is excluded, what is left open. */

import { powerStop } from "../../operations/records/power-stop.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { type PlatformFacts, platformFinding } from "./platform.ts";

export function PlatformNote({ content }: { readonly content: PlatformFacts }) {
	const finding = platformFinding(content);
	if (finding === null) return null;
	return (
		<section class="note">
			<h2>{say("arrival.platform-title")}</h2>
			<p>
				{finding.platforms >= 2
					? say("arrival.platform-two", { count: finding.platforms })
					: say("arrival.platform-text")}
			</p>
			<h3>{say("arrival.excluded")}</h3>
			<Causes keys={finding.excluded} />
			<h3>{say("arrival.open")}</h3>
			<Causes keys={finding.open} />
			{finding.platforms < 2 && powerStop(content) === null && <p>{say("arrival.platform-next")}</p>}
		</section>
	);
}

function Causes({ keys }: { readonly keys: readonly TextKey[] }) {
	if (keys.length === 0) return <p>{say("arrival.excluded-none")}</p>;
	return (
		<ul>
			{keys.map((key) => (
				<li key={key}>{say(key)}</li>
			))}
		</ul>
	);
}
