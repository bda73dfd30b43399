/** `/orders/{id}/consignments/{id}/notice`: the draft of a notice, for the two sides. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../../access/callers.ts";
import { fault } from "../../faults.ts";
import { draftNotice, type NoticeDraft } from "../../operations/claims/notice-draft.ts";
import type { Deps } from "../../operations/deps.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { Layout } from "../layout.tsx";
import { sendPage } from "../render.ts";

export function registerNotice(app: FastifyInstance, deps: Deps): void {
	const sides = { ...openTo("account", "link:record", "link:settle"), schema: { hide: true } };
	app.get("/orders/:id/consignments/:consignment/notice", sides, async (request, reply) => {
		const { id, consignment } = request.params as { id: string; consignment: string };
		const draft = await draftNotice(deps, callerOf(request), consignment);
		if (draft.order.id !== id) throw fault("not-found");
		return sendPage(reply, <NoticePage draft={draft} />);
	});
}

function NoticePage({ draft }: { readonly draft: NoticeDraft }) {
	const { order, leg, period, papers } = draft;
	const claim = `/orders/${order.id}/consignments/${leg.id}/claim`;
	return (
		<Layout title={say("notice.title")} crumbs={[{ href: claim, label: say("periods.title", { number: leg.leg }) }]}>
			<p class="lead">{say("notice.lead")}</p>
			<p>
				{period === null
					? say("notice.no-rule")
					: say("notice.rule", {
							article: period.article,
							form: say(`periods.form.${period.form}` as TextKey),
							date: period.safeDate ?? say("periods.not-told"),
						})}
			</p>
			{period !== null && period.standing !== "published" && <p class="caution">{say("notice.recalled")}</p>}
			<p class="hint">{say("notice.languages")}</p>
			<h2>{say("notice.copy")}</h2>
			<blockquote>{draft.text}</blockquote>
			<h2>{say("notice.papers")}</h2>
			<p class="hint">{say("notice.papers-hint")}</p>
			<ul>
				{papers.map(({ id, held }) => (
					<li key={id}>
						{say(`notice.paper.${id}`)}: <strong>{say(`notice.held.${held}`)}</strong>
					</li>
				))}
			</ul>
		</Layout>
	);
}
