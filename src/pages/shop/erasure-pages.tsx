/** Erasing what is known of a person: what goes, what stays, what cannot be called back; then the id, typed. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import type { PartyView } from "../../contract/orders.ts";
import type { Deps } from "../../operations/deps.ts";
import { readParty } from "../../operations/orders/read-party.ts";
import { eraseParty } from "../../operations/parties/erase-party.ts";
import { say } from "../../texts/say.ts";
import { ErrorSummary, type FieldErrors, Form, Submit, TextField } from "../components/form.tsx";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault } from "./form-errors.ts";
import { ShopLayout } from "./shop-layout.tsx";

const SHOP = { ...openTo("account"), schema: { hide: true } };

export function registerErasure(app: FastifyInstance, deps: Deps): void {
	const partyOf = (request: FastifyRequest) =>
		readParty(deps, callerOf(request), (request.params as { id: string }).id);

	app.get("/parties/:id/erase", SHOP, async (request, reply) =>
		sendPage(reply, <ErasurePage request={request} party={await partyOf(request)} value="" errors={{}} />),
	);
	app.post("/parties/:id/erase", SHOP, async (request, reply) => {
		const { form } = await readBody(request.body);
		const party = await partyOf(request);
		const confirm = (form.confirm ?? "").trim();
		try {
			await eraseParty(deps, callerOf(request), party.id, confirm);
			return sendPage(reply, <ErasedPage request={request} party={party} />);
		} catch (error) {
			const errors = errorsOfFault(error);
			return sendPage(reply, <ErasurePage request={request} party={party} value={confirm} errors={errors} />, 400);
		}
	});
}

function ErasurePage(props: {
	readonly request: FastifyRequest;
	readonly party: PartyView;
	readonly value: string;
	readonly errors: FieldErrors;
}) {
	const { request, party, errors } = props;
	return (
		<ShopLayout
			request={request}
			title={say("erasure.title", { name: party.name })}
			crumbs={[{ href: "/", label: say("shop.orders") }]}
		>
			<ErrorSummary errors={errors} />
			<h2>{say("erasure.goes-title")}</h2>
			<p>{say("erasure.goes")}</p>
			<h2>{say("erasure.stays-title")}</h2>
			<p>{say("erasure.stays")}</p>
			<h2>{say("erasure.out-of-reach-title")}</h2>
			<p>{say("erasure.out-of-reach")}</p>
			<p class="note">{say("erasure.final")}</p>
			<Form action={`/parties/${party.id}/erase`} formToken={formTokenFor(request)}>
				<TextField
					name="confirm"
					label={say("erasure.confirm", { id: party.id })}
					values={{ confirm: props.value }}
					errors={errors}
				/>
				<Submit label={say("erasure.now")} />
			</Form>
		</ShopLayout>
	);
}

function ErasedPage({ request, party }: { readonly request: FastifyRequest; readonly party: PartyView }) {
	return (
		<ShopLayout request={request} title={say("erasure.done-title")} crumbs={[{ href: "/", label: say("shop.orders") }]}>
			<p>{say("erasure.done", { id: party.id })}</p>
			<p>{say("erasure.out-of-reach")}</p>
		</ShopLayout>
	);
}
