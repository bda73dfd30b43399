/** The forms of an order's messages. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../../access/callers.ts";
import { type MailTextView, mailInput } from "../../../contract/mail.ts";
import { readLinks } from "../../../operations/access/links.ts";
import type { Deps } from "../../../operations/deps.ts";
import {
	askForMail,
	chooseMails,
	mailTextAgain,
	mailTextOf,
	readMails,
	sendAgain,
} from "../../../operations/mail/ask-for-mail.ts";
import { readOrderLine } from "../../../operations/orders/order-line.ts";
import { validate } from "../../../operations/validate.ts";
import { say } from "../../../texts/say.ts";
import { ErrorSummary, type FormValues } from "../../components/form.tsx";
import { readBody } from "../../record-form/read-body.ts";
import { sendPage } from "../../render.ts";
import { errorsOfFault } from "../form-errors.ts";
import { ShopLayout } from "../shop-layout.tsx";
import { askedOf } from "./mail-options.ts";
import { MailText } from "./mail-text.tsx";
import { MessageSection } from "./message-section.tsx";

const SHOP = { ...openTo("account"), schema: { hide: true } };
/** Members of the request, where the form's own fields differ. */
const FIELDS = { "/linkId": "matter", "/recordId": "matter", "/kind": "matter" };

export function registerMessages(app: FastifyInstance, deps: Deps): void {
	const orderOf = (request: FastifyRequest) => (request.params as { id: string }).id;
	const back = (request: FastifyRequest, reply: FastifyReply) =>
		reply.redirect(`/orders/${orderOf(request)}#messages`, 303);

	app.post("/orders/:id/mails", SHOP, async (request, reply) => {
		const { form } = await readBody(request.body);
		try {
			const input = validate(mailInput, askedOf(form));
			if (form.act !== "show") {
				await askForMail(deps, callerOf(request), orderOf(request), input);
				return back(request, reply);
			}
			const text = await mailTextOf(deps, callerOf(request), orderOf(request), input);
			return sendText(request, reply, text, input.kind === "receipt" ? input.recordId : undefined);
		} catch (error) {
			return sendRefused(request, reply, form, error);
		}
	});

	app.post("/orders/:id/mails/:mail", SHOP, async (request, reply) => {
		const { form } = await readBody(request.body);
		const { mail } = request.params as { mail: string };
		try {
			if (form.act !== "show") {
				await sendAgain(deps, callerOf(request), orderOf(request), mail);
				return back(request, reply);
			}
			const { mails } = await readMails(deps, callerOf(request), orderOf(request));
			const subject = mails.find(({ id, kind }) => id === mail && kind === "receipt")?.subject;
			return sendText(request, reply, await mailTextAgain(deps, callerOf(request), orderOf(request), mail), subject);
		} catch (error) {
			return sendRefused(request, reply, {}, error);
		}
	});

	app.post("/orders/:id/mail-choice", SHOP, async (request, reply) => {
		const { form } = await readBody(request.body);
		await chooseMails(deps, callerOf(request), orderOf(request), {
			toOwner: form.toOwner === "yes",
			toRepairer: form.toRepairer === "yes",
			periods: form.periods === "yes",
			periodsToOwner: form.periodsToOwner === "yes",
		});
		return back(request, reply);
	});

	function sendText(request: FastifyRequest, reply: FastifyReply, mail: MailTextView, receiptOf: string | undefined) {
		return sendPage(
			reply,
			<ShopLayout
				request={request}
				title={say("mail.text-title")}
				crumbs={[{ href: `/orders/${orderOf(request)}`, label: say("shop.order") }]}
			>
				<p>{say("mail.text-hint")}</p>
				<MailText
					mail={mail}
					{...(receiptOf === undefined ? {} : { attachment: `/api/v1/records/${receiptOf}/receipt` })}
				/>
			</ShopLayout>,
		);
	}

	/** The section by itself, with what was wrong. */
	async function sendRefused(request: FastifyRequest, reply: FastifyReply, form: FormValues, error: unknown) {
		const isReminder = form.act === "remind";
		const errors = errorsOfFault(error, isReminder ? { ...FIELDS, "/linkId": "remind" } : FIELDS);
		const caller = callerOf(request);
		const found = await readOrderLine(deps, caller, orderOf(request));
		const [links, messages] = await Promise.all([
			readLinks(deps, caller, found.order.id),
			readMails(deps, caller, found.order.id),
		]);
		return sendPage(
			reply,
			<ShopLayout
				request={request}
				title={say("mail.title")}
				crumbs={[{ href: `/orders/${found.order.id}`, label: say("shop.order") }]}
			>
				<ErrorSummary errors={errors} />
				<MessageSection {...{ found, links, messages, errors }} values={form} formToken={formTokenFor(request)} />
			</ShopLayout>,
			400,
		);
	}
}
