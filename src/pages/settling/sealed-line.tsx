/** When and through what something was sealed, its fingerprint, and its receipt. */
import { say } from "../../texts/say.ts";
import { groupsOfFour, showTime } from "../../texts/shown-time.ts";

export interface SealedThing {
	readonly id: string;
	readonly sealedAt: string;
	readonly sealedBy: string;
	readonly index: number;
	readonly fingerprint: string;
}

export function SealedLine({ orderId, sealed }: { readonly orderId: string; readonly sealed: SealedThing }) {
	const isLink = sealed.sealedBy.startsWith("lnk_");
	return (
		<details>
			<summary>{say("settling.sealed", { time: showTime(sealed.sealedAt), index: String(sealed.index) })}</summary>
			<p>
				{say(isLink ? "settling.through-link" : "settling.by-account", { id: sealed.sealedBy })}.{" "}
				<a href={`/api/v1/orders/${orderId}/sealed/${sealed.id}/receipt`}>{say("settling.receipt")}</a>
			</p>
			<p class="fingerprint">{groupsOfFour(sealed.fingerprint)}</p>
		</details>
	);
}

/** A text as it was typed, or that it was erased. */
export function Words({ text }: { readonly text: string | null }) {
	return <blockquote dir="auto">{text ?? say("settling.erased")}</blockquote>;
}
