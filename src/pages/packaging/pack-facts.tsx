/** A pack as it was entered, in words: what a sealed assessment rests on. */
import type { PackagingRequest } from "../../contract/packaging.ts";
import { factsOfPack } from "../../operations/packaging/pack-facts.ts";

export function PackFacts(request: PackagingRequest) {
	return (
		<dl class="facts">
			{factsOfPack(request).map(([term, words]) => (
				<>
					<dt>{term}</dt>
					<dd>{words}</dd>
				</>
			))}
		</dl>
	);
}
