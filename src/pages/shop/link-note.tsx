/** What is known of the card's link, with its judgement. */
import type { RecordContentInput } from "../../contract/records.ts";
import { linkJudgement } from "../../operations/calculations/link-judgement.ts";
import { say, speak } from "../../texts/say.ts";

interface SpokenJudgement {
	readonly result: { readonly judgement: string; readonly why: string } | null;
	readonly reason?: { readonly message: string };
}

export function LinkNote({ link }: { readonly link: NonNullable<RecordContentInput["link"]> }) {
	const judged = speak(linkJudgement.assess(link)) as SpokenJudgement;
	return (
		<div class="note">
			<h3>{say("record.link")}</h3>
			<p>{judged.result?.why ?? say("general.not-assessed", { why: judged.reason?.message ?? "" })}</p>
		</div>
	);
}
