/** Mails to the parties of an order. */
import type { FastifyInstance } from "fastify";
import { z } from "zod";
import { callerOf, openTo } from "../access/callers.ts";
import { id } from "../contract/common.ts";
import { mailChoice, mailInput, mailList, mailText, mailView } from "../contract/mail.ts";
import type { Deps } from "../operations/deps.ts";
import { askForMail, chooseMails, mailTextOf, readMails, sendAgain } from "../operations/mail/ask-for-mail.ts";
import { validate } from "../operations/validate.ts";

const order = z.strictObject({ id: id("ord") });
const mailOfOrder = z.strictObject({ id: id("ord"), mail: id("mal") });

export function registerMail(app: FastifyInstance, deps: Deps): void {
	app.get(
		"/api/v1/orders/:id/mails",
		{
			...openTo("account"),
			schema: { summary: "The mails of an order and what became of them.", response: { 200: mailList } },
		},
		async (request) => readMails(deps, callerOf(request), validate(order, request.params).id),
	);
	app.post(
		"/api/v1/orders/:id/mails",
		{
			...openTo("account"),
			schema: {
				summary: "Queue a mail. A link's address or code is made anew when it is written.",
				body: mailInput,
				response: { 201: mailView },
			},
		},
		async (request, reply) => {
			const input = validate(mailInput, request.body);
			const queued = await askForMail(deps, callerOf(request), validate(order, request.params).id, input);
			return reply.status(201).send(queued);
		},
	);
	app.post(
		"/api/v1/orders/:id/mails/:mail/again",
		{
			...openTo("account"),
			schema: { summary: "Queue a mail of the same content once more.", response: { 201: mailView } },
		},
		async (request, reply) => {
			const { id: orderId, mail } = validate(mailOfOrder, request.params);
			return reply.status(201).send(await sendAgain(deps, callerOf(request), orderId, mail));
		},
	);
	app.post(
		"/api/v1/orders/:id/mail-text",
		{
			...openTo("account"),
			schema: {
				summary: "The text of a mail, to be sent by hand. A link's address or code in it is new.",
				body: mailInput,
				response: { 200: mailText },
			},
		},
		async (request) => {
			const input = validate(mailInput, request.body);
			return mailTextOf(deps, callerOf(request), validate(order, request.params).id, input);
		},
	);
	app.put(
		"/api/v1/orders/:id/mail-choice",
		{
			...openTo("account"),
			schema: { summary: "Choose what goes by mail without being asked for each time.", body: mailChoice },
		},
		async (request, reply) => {
			const choice = validate(mailChoice, request.body);
			await chooseMails(deps, callerOf(request), validate(order, request.params).id, choice);
			return reply.status(204).send();
		},
	);
}
