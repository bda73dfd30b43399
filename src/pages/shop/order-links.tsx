/** The links of an order, and a new one as it is shown once. */
import type { FastifyRequest } from "fastify";
import { formTokenFor } from "../../access/callers.ts";
import type { LinkView, NewLinkView } from "../../contract/access.ts";
import type { MailTextView } from "../../contract/mail.ts";
import type { OrderLine } from "../../operations/orders/order-line.ts";
import { say } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";
import { Form, Submit } from "../components/form.tsx";
import { linkWords } from "./link-words.ts";
import { MailText } from "./messages/mail-text.tsx";
import { ShopLayout } from "./shop-layout.tsx";

export function OrderLinks({
	found,
	links,
	formToken,
}: {
	readonly found: OrderLine;
	readonly links: readonly LinkView[];
	readonly formToken: string;
}) {
	const order = found.order.id;
	return (
		<>
			<h2>{say("shop.links")}</h2>
			{links.length > 0 && (
				<table class="stacked">
					<thead>
						<tr>
							<th scope="col">{say("shop.link-for")}</th>
							<th scope="col">{say("shop.link-sent")}</th>
							<th scope="col">{say("shop.link-opened")}</th>
							<th scope="col">{say("shop.link-ends")}</th>
						</tr>
					</thead>
					<tbody>
						{links.map((link) => (
							<tr key={link.id}>
								<th scope="row">{linkWords(found, link)}</th>
								<td data-label={say("shop.link-sent")}>{showTime(link.createdAt)}</td>
								<td data-label={say("shop.link-opened")}>
									{link.firstUsedAt === null ? say("shop.link-not-opened") : showTime(link.firstUsedAt)}
								</td>
								<td data-label={say("shop.link-ends")}>
									{link.revokedAt !== null ? (
										say("shop.link-withdrawn", { time: showTime(link.revokedAt) })
									) : (
										<Form action={`/orders/${order}/links/${link.id}/withdraw`} formToken={formToken}>
											{showTime(link.expiresAt)} <Submit kind="quiet" label={say("shop.withdraw")} />
										</Form>
									)}
								</td>
							</tr>
						))}
					</tbody>
				</table>
			)}
			<Form action={`/orders/${order}/links`} formToken={formToken}>
				<Submit kind="quiet" name="scope" value="settle" label={say("shop.make-settle-link")} />
				<Submit kind="quiet" name="scope" value="reader" label={say("shop.make-reader-link")} />
			</Form>
		</>
	);
}

/** Shown once: the address and, to be sent another way, the code. */
export function NewLinkPage({
	request,
	link,
	mail,
	canSend,
}: {
	readonly request: FastifyRequest;
	readonly link: NewLinkView;
	/** The address as a mail to copy. */
	readonly mail: MailTextView;
	/** Whether there is a mail server. */
	readonly canSend: boolean;
}) {
	return (
		<ShopLayout
			request={request}
			title={say("shop.new-link")}
			crumbs={[{ href: `/orders/${link.orderId}`, label: say("shop.order") }]}
		>
			<p>{say("shop.new-link-text")}</p>
			<dl class="facts">
				<dt>{say("shop.link-address")}</dt>
				<dd>
					<code>{link.url}</code>
				</dd>
				<dt>{say("shop.link-code")}</dt>
				<dd>
					<code class="code">{link.code}</code>
				</dd>
				<dt>{say("shop.link-ends")}</dt>
				<dd>{showTime(link.expiresAt)}</dd>
			</dl>
			<p class="note">{say("shop.new-link-apart")}</p>
			<h2>{say("mail.new-link-mail")}</h2>
			{canSend && mail.to !== null && (
				<Form action={`/orders/${link.orderId}/mails`} formToken={formTokenFor(request)}>
					<input type="hidden" name="matter" value={`link ${link.id}`} />
					<p>{say("mail.new-link-send", { address: mail.to })}</p>
					<Submit name="act" value="send" label={say("mail.send")} />
				</Form>
			)}
			<MailText mail={mail} />
			<p>
				<a class="button quiet" href={`/orders/${link.orderId}`}>
					{say("shop.back-to-order")}
				</a>
			</p>
		</ShopLayout>
	);
}
