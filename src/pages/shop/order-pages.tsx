/** One order: its facts, its legs, what can be done next; the custody line beside it. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { type LinkView, linkInput, type NewLinkView } from "../../contract/access.ts";
import { type ConsignmentView, consignmentFacts, consignmentInput } from "../../contract/orders.ts";
import type { AssessmentView } from "../../contract/packaging.ts";
import { type RecordView, recordInput } from "../../contract/records.ts";
import { makeLink, readLinks, withdrawLink } from "../../operations/access/links.ts";
import type { Deps } from "../../operations/deps.ts";
import { addConsignment, changeConsignment, readConsignment } from "../../operations/orders/consignments.ts";
import { type OrderLine, readOrderLine } from "../../operations/orders/order-line.ts";
import { readAssessments } from "../../operations/packaging/assessments.ts";
import { openRecord } from "../../operations/records/open-record.ts";
import { validate } from "../../operations/validate.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { CustodySpine } from "../components/custody-spine.tsx";
import { ErasedNote } from "../components/erased-note.tsx";
import { ErrorSummary, type FieldErrors, Form, type FormValues, Submit } from "../components/form.tsx";
import { sealedLine } from "../packaging/sealed-packs.tsx";
import { readBody } from "../record-form/read-body.ts";
import { showTime } from "../record-form/shown-time.ts";
import { sendPage } from "../render.ts";
import { ConsignmentFields, consignmentForm, factErrors, factsOf } from "./consignment-fields.tsx";
import { ShopLayout } from "./shop-layout.tsx";

const SHOP = { ...openTo("account"), schema: { hide: true } };
const idOf = (request: FastifyRequest) => (request.params as { id: string }).id;

export function registerOrderPages(app: FastifyInstance, deps: Deps): void {
	app.get("/orders/:id", SHOP, async (request, reply) => {
		const found = await readOrderLine(deps, callerOf(request), idOf(request));
		const links = await readLinks(deps, callerOf(request), found.order.id);
		const legs = found.order.consignments.map((leg) => readAssessments(deps, callerOf(request), leg.id));
		const packs = (await Promise.all(legs)).flat();
		return sendPage(reply, <OrderPage request={request} found={found} links={links} packs={packs} />);
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
				<LegPage request={request} leg={leg} values={form} errors={factErrors(form, error)} />,
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
		return sendPage(reply, <NewLinkPage request={request} link={link} />);
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
}: {
	readonly request: FastifyRequest;
	readonly found: OrderLine;
	readonly links: readonly LinkView[];
	readonly packs: readonly AssessmentView[];
}) {
	const { order } = found;
	const formToken = formTokenFor(request);
	const title = `${order.item.maker} ${order.item.model}`;
	return (
		<ShopLayout
			request={request}
			title={title}
			crumbs={[{ href: "/", label: say("shop.orders") }]}
			spine={<CustodySpine {...found} href={recordHref} />}
		>
			<dl class="facts">
				<dt>{say("shop.owner")}</dt>
				<dd>
					{order.owner.name}, {order.owner.country}
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
			{order.owner.erasedAt === undefined ? (
				<p class="no-print hint">
					<a href={`/parties/${order.owner.id}/erase`}>{say("erasure.link", { name: order.owner.name })}</a>
				</p>
			) : (
				<ErasedNote at={order.owner.erasedAt} />
			)}
			{order.consignments.map((leg) => (
				<Leg
					key={leg.id}
					leg={leg}
					found={found}
					formToken={formToken}
					packs={packs.filter((pack) => pack.consignmentId === leg.id)}
				/>
			))}
			<h2>{say("shop.next-leg")}</h2>
			<Form action={`/orders/${order.id}/consignments`} formToken={formToken}>
				<Submit name="direction" value="to-repairer" kind="quiet" label={say("shop.leg-to-repairer")} />
				<Submit name="direction" value="to-owner" kind="quiet" label={say("shop.leg-to-owner")} />
			</Form>
			<h2>{say("shop.on-the-bench")}</h2>
			<Form action={`/orders/${order.id}/records`} formToken={formToken}>
				<Submit kind="quiet" label={say("shop.open-bench-record")} />
			</Form>
			<Links order={found.order.id} links={links} formToken={formToken} />
		</ShopLayout>
	);
}

/** The page of a record for the shop. */
function recordHref(record: RecordView): string {
	return record.state === "draft" ? `/records/${record.id}` : `/records/${record.id}/receipt`;
}

function Leg({
	leg,
	found,
	formToken,
	packs,
}: {
	readonly leg: ConsignmentView;
	readonly found: OrderLine;
	readonly formToken: string;
	readonly packs: readonly AssessmentView[];
}) {
	const has = (stage: string) =>
		[...found.records.map(({ view }) => view), ...found.drafts].some(
			(view) => view.consignmentId === leg.id && view.stage === stage,
		);
	const ownerSends = leg.direction === "to-repairer";
	const open = (stage: string, label: TextKey, extra: Readonly<Record<string, string>> = {}) => (
		<Form action={`/consignments/${leg.id}/records`} formToken={formToken}>
			{Object.entries({ stage, ...extra }).map(([name, value]) => (
				<input key={name} type="hidden" name={name} value={value} />
			))}
			<Submit kind="quiet" label={say(label)} />
		</Form>
	);
	const base = `/orders/${leg.orderId}/consignments/${leg.id}`;
	return (
		<section class="leg">
			<h2>
				{say("shop.leg", { number: leg.leg })}: {say(`shop.leg-${leg.direction}` as TextKey)}
			</h2>
			<p>
				{leg.facts.carrier ?? say("shop.no-carrier")}
				{leg.facts.trackingNumber !== undefined && `, ${leg.facts.trackingNumber}`}
				{leg.facts.dispatchedAt !== undefined &&
					`, ${say("shop.dispatched", { time: showTime(leg.facts.dispatchedAt) })}`}
				{leg.facts.deliveredAt !== undefined && `, ${say("shop.delivered", { time: showTime(leg.facts.deliveredAt) })}`}
				{" · "}
				<a href={`/consignments/${leg.id}`}>{say("shop.edit-leg")}</a>
			</p>
			{packs.map((pack) => (
				<p key={pack.id}>
					<a href={`${base}/pack`}>{sealedLine(pack)}</a>
				</p>
			))}
			{!has("departure") && (
				<div class="row">
					{ownerSends
						? open("departure", "shop.ask-owner-departure", { next: "link" })
						: open("departure", "shop.open-short-departure")}
					{!ownerSends && open("departure", "shop.open-full-departure", { depth: "full" })}
				</div>
			)}
			{!has("arrival") && (
				<div class="row">
					{ownerSends
						? open("arrival", "shop.open-intake", { depth: "full" })
						: open("arrival", "shop.ask-owner-arrival", { next: "link" })}
					{!ownerSends && open("arrival", "shop.open-reported", { provenance: "reported-to" })}
				</div>
			)}
			<ul>
				<li>
					<a href={`/consignments/${leg.id}/packaging`}>{say("shop.packaging")}</a>
				</li>
				<li>
					<a href={`${base}/slip`}>{say("shop.slip")}</a>
				</li>
				<li>
					<a href={`${base}/paper-form`}>{say("shop.paper-form")}</a>
				</li>
				<li>
					<a href={`${base}/comparison`}>{say("shop.comparison")}</a>
				</li>
			</ul>
		</section>
	);
}

function Links({
	order,
	links,
	formToken,
}: {
	readonly order: string;
	readonly links: readonly LinkView[];
	readonly formToken: string;
}) {
	return (
		<>
			<h2>{say("shop.links")}</h2>
			{links.length > 0 && (
				<div class="scroll">
					<table>
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
									<td>{say(`shop.scope.${link.scope}` as TextKey)}</td>
									<td>{showTime(link.createdAt)}</td>
									<td>{link.firstUsedAt === null ? say("shop.link-not-opened") : showTime(link.firstUsedAt)}</td>
									<td>
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
				</div>
			)}
			<Form action={`/orders/${order}/links`} formToken={formToken}>
				<Submit kind="quiet" name="scope" value="settle" label={say("shop.make-settle-link")} />
				<Submit kind="quiet" name="scope" value="reader" label={say("shop.make-reader-link")} />
			</Form>
		</>
	);
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

/** Shown once: the address and, to be sent another way, the code. */
export function NewLinkPage({ request, link }: { readonly request: FastifyRequest; readonly link: NewLinkView }) {
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
			<p>
				<a class="button quiet" href={`/orders/${link.orderId}`}>
					{say("shop.back-to-order")}
				</a>
			</p>
		</ShopLayout>
	);
}
