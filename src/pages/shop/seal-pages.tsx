/** Sealing a record, and its receipt. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { recordInput } from "../../contract/records.ts";
import { readAccountName } from "../../operations/access/account-name.ts";
import type { Deps } from "../../operations/deps.ts";
import { readOrderLine } from "../../operations/orders/order-line.ts";
import { type GuidedRecord, readGuidedRecord } from "../../operations/records/guided-record.ts";
import { openRecord } from "../../operations/records/open-record.ts";
import { sealingShortcomingsOf, sealRecord } from "../../operations/records/seal-record.ts";
import { validate } from "../../operations/validate.ts";
import { itemName } from "../../texts/item-name.ts";
import { isTextKey, say, type TextKey } from "../../texts/say.ts";
import { groupsOfFour, showTime } from "../../texts/shown-time.ts";
import { CustodySpine } from "../components/custody-spine.tsx";
import { ErrorSummary, type FieldErrors, Form, Submit } from "../components/form.tsx";
import { StatementFacts } from "../components/statement-facts.tsx";
import { LogFacts, PartySignature } from "../log-mark.tsx";
import { checkName } from "../record-form/check-control.tsx";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { showClaimed } from "./days.ts";
import { errorsOfFault } from "./form-errors.ts";
import { pageWords } from "./page-words.ts";
import { fieldsOf } from "./record-fields.ts";
import { ShopLayout } from "./shop-layout.tsx";

const SHOP = { ...openTo("account"), schema: { hide: true } };

export function registerSeal(app: FastifyInstance, deps: Deps): void {
	const guidedOf = (request: FastifyRequest) =>
		readGuidedRecord(deps, callerOf(request), (request.params as { id: string }).id);

	app.get("/records/:id/seal", SHOP, async (request, reply) => {
		const guided = await guidedOf(request);
		if (guided.record.state !== "draft") return reply.redirect(`/records/${guided.record.id}/receipt`, 303);
		return send(request, reply, guided, {}, 200);
	});
	app.post("/records/:id/seal", SHOP, async (request, reply) => {
		const guided = await guidedOf(request);
		const { form } = await readBody(request.body);
		try {
			await sealRecord(deps, callerOf(request), guided.record.id, Number(form.version));
			return reply.redirect(`/records/${guided.record.id}/receipt`, 303);
		} catch (error) {
			return send(request, reply, await guidedOf(request), errorsOfFault(error), 400);
		}
	});

	app.get("/records/:id/receipt", SHOP, async (request, reply) => {
		const guided = await guidedOf(request);
		if (guided.record.sealed === null) return reply.redirect(`/records/${guided.record.id}`, 303);
		const found = await readOrderLine(deps, callerOf(request), guided.order.id);
		const record = found.records.find(({ view }) => view.id === guided.record.id);
		if (record === undefined) throw new Error(`record ${guided.record.id} is not on its order's line`);
		const { view, statement } = record;
		const { sealed } = view;
		if (sealed === null) throw new Error(`record ${view.id} is not sealed`);
		const account = await readAccountName(deps, callerOf(request), sealed.by);
		return sendPage(
			reply,
			<ShopLayout
				request={request}
				title={say(`record.title-${view.stage}` as TextKey)}
				crumbs={crumbsOf(guided)}
				head={
					view.supersededBy !== null && (
						<p class="note">
							{say("record.superseded")} <a href={`/records/${view.supersededBy}/receipt`}>{say("record.successor")}</a>
						</p>
					)
				}
				spine={
					<CustodySpine
						{...found}
						href={(one) => (one.state === "draft" ? `/records/${one.id}` : `/records/${one.id}/receipt`)}
					/>
				}
			>
				<dl class="facts">
					<dt>{say("record.fingerprint")}</dt>
					<dd class="fingerprint">{groupsOfFour(sealed.fingerprint)}</dd>
					<dt>{say("record.observed")}</dt>
					<dd>{showClaimed(statement.observed)}</dd>
					<dt>{say("record.sealed")}</dt>
					<dd>{showTime(sealed.at)}</dd>
					<dt>{say("record.sealed-by")}</dt>
					<dd>{sealedByWords(sealed.by, account)}</dd>
					{sealed.by.startsWith("lnk_") && (
						<>
							<dt>{say("log.party-signature")}</dt>
							<dd>
								<PartySignature sealed={sealed} />
							</dd>
						</>
					)}
					<dt>{say("record.log-entry")}</dt>
					<dd>{String(sealed.index)}</dd>
				</dl>
				<p class="no-print">
					<a class="button" href={`/api/v1/records/${view.id}/receipt`}>
						{say("record.download-receipt")}
					</a>
				</p>
				<p class="hint">{say("record.receipt-text")}</p>
				<StatementFacts statement={statement} checks={guided.allChecks} recordId={view.id} files={guided.files} />
				<LogFacts of={guided.order} />
				<Form action={`/records/${view.id}/amend`} formToken={formTokenFor(request)}>
					<Submit kind="quiet" label={say("record.amend")} />
				</Form>
			</ShopLayout>,
		);
	});

	app.post("/records/:id/amend", SHOP, async (request, reply) => {
		const { record } = await guidedOf(request);
		const input = validate(recordInput, {
			stage: record.stage,
			depth: record.depth,
			provenance: record.provenance,
			amends: record.id,
		});
		const place = record.consignmentId === null ? { orderId: record.orderId } : { consignmentId: record.consignmentId };
		const opened = await openRecord(deps, callerOf(request), place, input, null);
		return reply.redirect(`/records/${opened.id}`, 303);
	});

	async function send(
		request: FastifyRequest,
		reply: FastifyReply,
		guided: GuidedRecord,
		errors: FieldErrors,
		status: number,
	) {
		const { record, allChecks } = guided;
		const missing = await sealingShortcomingsOf(deps, record.id);
		const entered = new Set((record.content?.readings ?? []).map((reading) => reading.check));
		const untested = allChecks.filter((check) => (record.depth === "full" || check.short) && !entered.has(check.id));
		return sendPage(
			reply,
			<ShopLayout
				request={request}
				title={say("record.seal")}
				crumbs={[
					...crumbsOf(guided),
					{ href: `/records/${record.id}`, label: say(`record.title-${record.stage}` as TextKey) },
				]}
			>
				<ErrorSummary errors={errors} />
				{missing.length > 0 && (
					<>
						<h2>{say("record.missing")}</h2>
						<ul>
							{missing.map((one) => (
								<li key={one.path}>
									<a href={`/records/${record.id}#${one.path.slice(1).replaceAll("/", ".")}`}>
										{memberName(one.path, guided)}
									</a>
									{memberName(one.path, guided).endsWith("?") ? " " : ": "}
									{pageWords(one)}
								</li>
							))}
						</ul>
					</>
				)}
				{untested.length > 0 && (
					<>
						<h2>{say("record.will-be-untested")}</h2>
						<ul>
							{untested.map((check) => (
								<li key={check.id}>{checkName(check)}</li>
							))}
						</ul>
					</>
				)}
				<p class="note">{say("record.seal-text")}</p>
				{missing.length === 0 && (
					<Form action={`/records/${record.id}/seal`} formToken={formTokenFor(request)}>
						<input type="hidden" name="version" value={record.version} />
						<Submit label={say("record.seal-now")} />
					</Form>
				)}
				<p>
					<a href={`/records/${record.id}`}>{say("record.back")}</a>
				</p>
			</ShopLayout>,
			status,
		);
	}
}

function sealedByWords(id: string, account: string | null): string {
	if (account !== null) return say("record.by-account-named", { id, name: account });
	return say(id.startsWith("lnk_") ? "record.through-link" : "record.by-account", { id });
}

function crumbsOf({ order }: GuidedRecord) {
	return [
		{ href: "/", label: say("shop.orders") },
		{ href: `/orders/${order.id}`, label: itemName(order.item) },
	];
}

/** A member of the draft, in the words of its question; of a list, the check or the files that it is about. */
export function memberName(path: string, { record, allChecks }: Pick<GuidedRecord, "record" | "allChecks">): string {
	const name = path.slice(1).replaceAll("/", ".");
	const field = fieldsOf(record).find((candidate) => candidate.name === name);
	if (field !== undefined) return say(field.label);
	const [list = "", index = ""] = path.slice(1).split("/");
	const reading = list === "readings" ? record.content?.readings?.[Number(index)]?.check : undefined;
	const check = allChecks.find(({ id }) => id === reading);
	if (check !== undefined) return checkName(check);
	const key = `record.member.${list === "readings" || list === "exhibits" ? list : name}`;
	return say(isTextKey(key) ? key : "record.member.other");
}
