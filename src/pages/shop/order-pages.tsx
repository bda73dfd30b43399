/** One order: its facts, its legs, what can be done next; the custody line beside it. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { type LinkView, linkInput } from "../../contract/access.ts";
import type { LegClaimView } from "../../contract/leg-claim.ts";
import type { MailList } from "../../contract/mail.ts";
import { type ConsignmentView, consignmentFacts, consignmentInput } from "../../contract/orders.ts";
import type { AssessmentView } from "../../contract/packaging.ts";
import { type RecordView, recordInput } from "../../contract/records.ts";
import type { SettlementStepView } from "../../contract/settlement.ts";
import { makeLink, readLinks, withdrawLink } from "../../operations/access/links.ts";
import { readLegClaim } from "../../operations/claims/leg-claim.ts";
import type { Deps } from "../../operations/deps.ts";
import { newLinkText, readMails } from "../../operations/mail/ask-for-mail.ts";
import { addConsignment, changeConsignment, readConsignment } from "../../operations/orders/consignments.ts";
import { readOrderAttention } from "../../operations/orders/marked-orders.ts";
import type { OrderAttention } from "../../operations/orders/order-attention.ts";
import { type OrderLine, readOrderLine } from "../../operations/orders/order-line.ts";
import { readAssessments } from "../../operations/packaging/assessments.ts";
import { openRecord } from "../../operations/records/open-record.ts";
import { readSettlement } from "../../operations/settling/settlement.ts";
import { validate } from "../../operations/validate.ts";
import { itemName } from "../../texts/item-name.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { CustodySpine } from "../components/custody-spine.tsx";
import { ErasedNote } from "../components/erased-note.tsx";
import { ErrorSummary, type FieldErrors, Form, type FormValues, Submit } from "../components/form.tsx";
import { ReadInNote } from "../components/read-in-note.tsx";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { ConsignmentFields, consignmentForm, factErrors, factsOf } from "./consignment-fields.tsx";
import { MessageSection } from "./messages/message-section.tsx";
import { OrderLeg } from "./order-leg.tsx";
import { NewLinkPage, OrderLinks } from "./order-links.tsx";
import { OrderStanding } from "./order-standing.tsx";
import { ShopLayout } from "./shop-layout.tsx";

const SHOP = { ...openTo("account"), schema: { hide: true } };
const idOf = (request: FastifyRequest) => (request.params as { id: string }).id;

export function registerOrderPages(app: FastifyInstance, deps: Deps): void {
	app.get("/orders/:id", SHOP, async (request, reply) => {
		const found = await readOrderLine(deps, callerOf(request), idOf(request));
		const links = await readLinks(deps, callerOf(request), found.order.id);
		const legs = found.order.consignments.map((leg) => readAssessments(deps, callerOf(request), leg.id));
		const packs = (await Promise.all(legs)).flat();
		const messages = await readMails(deps, callerOf(request), found.order.id);
		const claims = await Promise.all(
			found.order.consignments.map((leg) => readLegClaim(deps, callerOf(request), leg.id)),
		);
		const attention = await readOrderAttention(deps, callerOf(request), found.order.id);
		const settlement = await readSettlement(deps, callerOf(request), found.order.id);
		const settled = settlement.steps.find(({ id }) => id === settlement.agreedId) ?? null;
		return sendPage(reply, <OrderPage {...{ request, found, links, packs, claims, messages, attention, settled }} />);
	});

	app.post("/orders/:id/consignments", SHOP, async (request, reply) => {
		const { form } = await readBody(request.body);
		const input = validate(consignmentInput, {
			direction: form.direction,
			facts: { mode: "road", bookedBy: "consignor" },
		});
		const leg = await addConsignment(deps, callerOf(request), idOf(request), input, null);
		return reply.redirect(`/consignments/${leg.id}`, 303);
	});

	app.get("/consignments/:id", SHOP, async (request, reply) => {
		const leg = await readConsignment(deps, callerOf(request), idOf(request));
		return sendPage(reply, <LegPage request={request} leg={leg} values={consignmentForm(leg)} errors={{}} />);
	});
	app.post("/consignments/:id", SHOP, async (request, reply) => {
		const { form } = await readBody(request.body);
		const leg = await readConsignment(deps, callerOf(request), idOf(request));
		try {
			const facts = validate(consignmentFacts, factsOf(form));
			await changeConsignment(deps, callerOf(request), leg.id, Number(form.version), facts);
			return reply.redirect(`/orders/${leg.orderId}`, 303);
		} catch (error) {
			return sendPage(
				reply,
				<LegPage request={request} leg={leg} values={form} errors={factErrors(form, error, deps.now())} />,
				400,
			);
		}
	});

	app.post("/consignments/:id/records", SHOP, async (request, reply) => {
		const { form } = await readBody(request.body);
		const input = validate(recordInput, {
			stage: form.stage,
			depth: form.depth ?? "short",
			provenance: form.provenance ?? "recorded-by-holder",
		});
		const record = await openRecord(deps, callerOf(request), { consignmentId: idOf(request) }, input, null);
		return reply.redirect(form.next === "link" ? `/records/${record.id}/link` : `/records/${record.id}`, 303);
	});
	app.post("/orders/:id/records", SHOP, async (request, reply) => {
		const { form } = await readBody(request.body);
		const input = validate(recordInput, { stage: "bench", depth: form.depth ?? "full" });
		const record = await openRecord(deps, callerOf(request), { orderId: idOf(request) }, input, null);
		return reply.redirect(`/records/${record.id}`, 303);
	});

	app.post("/orders/:id/links", SHOP, async (request, reply) => {
		const { form } = await readBody(request.body);
		const input = validate(linkInput, {
			scope: form.scope,
			orderId: idOf(request),
			...(form.recordId === undefined ? {} : { recordId: form.recordId }),
		});
		const link = await makeLink(deps, callerOf(request), input);
		const mail = await newLinkText(deps, link);
		return sendPage(reply, <NewLinkPage {...{ request, link, mail }} canSend={deps.canMail} />);
	});
	app.post("/orders/:id/links/:link/withdraw", SHOP, async (request, reply) => {
		await withdrawLink(deps, callerOf(request), (request.params as { link: string }).link);
		return reply.redirect(`/orders/${idOf(request)}`, 303);
	});
}

function OrderPage({
	request,
	found,
	links,
	packs,
	messages,
	claims,
	attention,
	settled,
}: {
	readonly request: FastifyRequest;
	readonly found: OrderLine;
	readonly links: readonly LinkView[];
	readonly packs: readonly AssessmentView[];
	readonly messages: MailList;
	/** One per leg, in the legs' order. */
	readonly claims: readonly LegClaimView[];
	readonly attention: OrderAttention | null;
	/** The proposal that both sides agreed on. */
	readonly settled: SettlementStepView | null;
}) {
	const { order } = found;
	const formToken = formTokenFor(request);
	const title = itemName(order.item);
	return (
		<ShopLayout
			request={request}
			title={title}
			crumbs={[{ href: "/", label: say("shop.orders") }]}
			head={<OrderStanding attention={attention} settled={settled} />}
			spine={<CustodySpine {...found} href={recordHref} />}
		>
			<dl class="facts">
				<dt>{say("shop.owner")}</dt>
				<dd>
					{order.owner.name}, {order.owner.country}
				</dd>
				<dt>{say("shop.item-class")}</dt>
				<dd>
					{order.item.ownClassName === undefined
						? say(`shop.class.${order.item.class}`)
						: say("shop.own-class", {
								name: order.item.ownClassName,
								treatedAs: say(`shop.class.${order.item.class}`),
							})}
				</dd>
				<dt>{say("shop.serial-number")}</dt>
				<dd>{order.item.serialNumber ?? say("shop.not-known")}</dd>
				<dt>{say("shop.contract-kind")}</dt>
				<dd>{say(`shop.contract.${order.contractKind}` as TextKey)}</dd>
				<dt>{say("shop.reported-fault")}</dt>
				<dd>{order.terms.reportedFault}</dd>
				<dt>{say("shop.agreed-work")}</dt>
				<dd>{order.terms.agreedWork}</dd>
				{order.terms.warranty !== undefined && (
					<>
						<dt>{say("shop.warranty")}</dt>
						<dd>
							{say("shop.warranty-of", { months: order.terms.warranty.months })} {order.terms.warranty.covers}
						</dd>
					</>
				)}
			</dl>
			<ReadInNote of={order} />
			<p class="no-print">
				<a href={`/orders/${order.id}/papers`}>{say("papers.link")}</a> ·{" "}
				<a href={`/orders/${order.id}/carrier-photos`}>{say("carrier-photos.link")}</a> ·{" "}
				<a href={`/orders/${order.id}/photo-code`}>{say("photo-code.check")}</a>
			</p>
			{order.owner.erasedAt === undefined ? (
				<p class="no-print hint">
					<a href={`/parties/${order.owner.id}/erase`}>{say("erasure.link", { name: order.owner.name })}</a>
				</p>
			) : (
				<ErasedNote at={order.owner.erasedAt} />
			)}
			{order.consignments.map((leg, place) => (
				<OrderLeg
					key={leg.id}
					leg={leg}
					found={found}
					formToken={formToken}
					packs={packs.filter((pack) => pack.consignmentId === leg.id)}
					claim={claims[place] as LegClaimView}
				/>
			))}
			{order.readIn === undefined && <GoingOn orderId={order.id} formToken={formToken} />}
			<h2>{say("settling.settlement")}</h2>
			<ul>
				<li>
					<a href={`/orders/${order.id}/positions`}>{say("settling.positions")}</a>
				</li>
				<li>
					<a href={`/orders/${order.id}/settlement`}>{say("settling.settlement")}</a>
				</li>
			</ul>
			{order.readIn === undefined && <OrderLinks found={found} links={links} formToken={formToken} />}
			<MessageSection {...{ found, links, messages, formToken }} />
		</ShopLayout>
	);
}

/** What adds to the order. */
function GoingOn({ orderId, formToken }: { readonly orderId: string; readonly formToken: string }) {
	return (
		<>
			<h2>{say("shop.next-leg")}</h2>
			<p class="hint">{say("shop.next-leg-hint")}</p>
			<Form action={`/orders/${orderId}/consignments`} formToken={formToken}>
				<Submit name="direction" value="to-repairer" kind="quiet" label={say("shop.leg-to-repairer")} />
				<Submit name="direction" value="to-owner" kind="quiet" label={say("shop.leg-to-owner")} />
			</Form>
			<h2>{say("shop.on-the-bench")}</h2>
			<Form action={`/orders/${orderId}/records`} formToken={formToken}>
				<Submit kind="quiet" label={say("shop.open-bench-record")} />
			</Form>
		</>
	);
}

/** The page of a record for the shop. */
function recordHref(record: RecordView): string {
	return record.state === "draft" ? `/records/${record.id}` : `/records/${record.id}/receipt`;
}

function LegPage({
	request,
	leg,
	values,
	errors,
}: {
	readonly request: FastifyRequest;
	readonly leg: ConsignmentView;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}) {
	return (
		<ShopLayout
			request={request}
			title={`${say("shop.leg", { number: leg.leg })}: ${say(`shop.leg-${leg.direction}` as TextKey)}`}
			crumbs={[
				{ href: "/", label: say("shop.orders") },
				{ href: `/orders/${leg.orderId}`, label: say("shop.order") },
			]}
		>
			<ErrorSummary errors={errors} />
			<Form action={`/consignments/${leg.id}`} formToken={formTokenFor(request)}>
				<input type="hidden" name="version" value={leg.version} />
				<ConsignmentFields values={values} errors={errors} />
				<Submit label={say("shop.save")} />
			</Form>
		</ShopLayout>
	);
}
