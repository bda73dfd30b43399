/** Which figure for the item's strength carries the verdict, and what the others would give. */
import type { z } from "zod";
import type { packagingResult } from "../../contract/packaging.ts";
import { say, type TextKey } from "../../texts/say.ts";

export function FragilityHeadline({ fragility }: { readonly fragility: z.infer<typeof packagingResult>["fragility"] }) {
	const basis = (code: string) => say(`pack.basis.${code}` as TextKey);
	return (
		<>
			<p class="lead">
				{say("pack.rests-on", { basis: basis(fragility.basis), limitGn: fragility.limitGn })}
				{fragility.basis === "board-strength" && ` ${say("pack.screen-only")}`}
			</p>
			{fragility.others.length > 0 && (
				<ul>
					{fragility.others.map((other) => (
						<li key={other.basis}>
							{say(other.verdict === null ? "pack.other-limit" : "pack.other-verdict", {
								basis: basis(other.basis),
								limitGn: other.limitGn,
								standing: say(`pack.standing.${other.standing}` as TextKey),
								verdict: other.verdict === null ? "" : say(`pack.verdict.${other.verdict}` as TextKey),
							})}
						</li>
					))}
				</ul>
			)}
		</>
	);
}
