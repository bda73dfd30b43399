/** The page on which a pack is planned: what comes out, what is asked, what was sealed. */
import type { FastifyRequest } from "fastify";
import { formTokenFor } from "../../../access/callers.ts";
import type { ConsignmentView, OrderView } from "../../../contract/orders.ts";
import type { AssessmentView } from "../../../contract/packaging.ts";
import { packagingSearchRequest } from "../../../contract/packaging-search.ts";
import type { StockView } from "../../../contract/stock.ts";
import type { PackPlan } from "../../../operations/packaging/plan-pack.ts";
import { itemName } from "../../../texts/item-name.ts";
import { say, speak } from "../../../texts/say.ts";
import { groupsOfFour, showTime } from "../../../texts/shown-time.ts";
import { ErrorSummary, type FieldErrors, Form, type FormValues, SelectField, Submit } from "../../components/form.tsx";
import type { SpokenPackaging } from "../../packaging/packaging-result.tsx";
import { SealedPacks } from "../../packaging/sealed-packs.tsx";
import { ShopLayout } from "../shop-layout.tsx";
import { type Before, writeBefore } from "./before.ts";
import { choices } from "./field-parts.ts";
import { PlanOutcome } from "./plan-outcome.tsx";
import { PlannerFields } from "./planner-fields.tsx";

export interface PlannerPageProps {
	readonly request: FastifyRequest;
	readonly order: OrderView;
	readonly leg: ConsignmentView;
	readonly stock: StockView;
	readonly assessments: readonly AssessmentView[];
	readonly values: FormValues;
	readonly errors: FieldErrors;
	/** What came out; null before anything was computed. */
	readonly outcome: { readonly plan: PackPlan; readonly item: Parameters<typeof PlanOutcome>[0]["item"] } | null;
	readonly before: Before | null;
	/** Tells one act of sealing from the same one sent twice. */
	readonly sealKey: string;
	/** The assessment that was sealed just now. */
	readonly sealed: AssessmentView | null;
}

export function PlannerPage(props: PlannerPageProps) {
	const { request, order, leg, stock, values, errors, outcome, sealed } = props;
	return (
		<ShopLayout
			request={request}
			title={say("pack.title")}
			wide
			crumbs={[
				{ href: "/", label: say("shop.orders") },
				{ href: `/orders/${order.id}`, label: itemName(order.item) },
			]}
		>
			{sealed !== null && (
				<div class="note" role="status">
					<p>{say("pack.was-sealed", { time: showTime(sealed.sealedAt) })}</p>
					<p class="fingerprint">{groupsOfFour(sealed.fingerprint)}</p>
					<p>
						<a href={`/consignments/${leg.id}/packaging/${sealed.id}/sheet`}>{say("pack.sheet-of-sealed")}</a>
					</p>
				</div>
			)}
			<p>
				{say("pack.planning")} <a href="/stock">{say("stock.title")}</a>
			</p>
			<p id="not-anew" class="note" role="status" hidden>
				{say("pack.not-anew")}
			</p>
			<div class="planner">
				<div id="outcome">
					<ErrorSummary errors={errors} />
					{outcome === null ? (
						<p class="note">{say("pack.nothing-yet")}</p>
					) : (
						<PlanOutcome {...outcome} before={props.before} basis={values["route.dropBasis"] ?? ""} />
					)}
				</div>
				<div id="asked">
					<Form action={`/consignments/${leg.id}/packaging`} formToken={formTokenFor(request)} id="plan-form">
						<Submit name="act" value="plan" label={say("pack.compute")} />
						<PlannerFields values={values} errors={errors} stock={stock} />
						<Submit name="act" value="plan" label={say("pack.compute")} />
						<h2>{say("pack.search")}</h2>
						<p>{say(stock.boxes.length * stock.foams.length === 0 ? "pack.search-empty" : "pack.search-text")}</p>
						<SelectField
							values={values}
							errors={errors}
							name="search.objective"
							label={say("pack.objective")}
							choices={choices("pack.objective-kind", packagingSearchRequest.shape.objective.options)}
						/>
						<Submit name="act" value="search" kind="quiet" label={say("pack.search-stock")} />
						<div id="as-planned">{outcome !== null && <AsPlanned {...props} plan={outcome.plan} />}</div>
					</Form>
				</div>
			</div>
			{props.assessments.length > 0 && (
				<>
					<p>
						<a href={`/orders/${order.id}/consignments/${leg.id}/pack`}>{say("pack.shipped-page")}</a>
					</p>
					<SealedPacks assessments={props.assessments} />
				</>
			)}
			<script type="module" src="/assets/planner.js" />
		</ShopLayout>
	);
}

/** What may be done with exactly the pack that was looked at. */
function AsPlanned({ plan, sealKey }: PlannerPageProps & { readonly plan: PackPlan }) {
	return (
		<>
			<input type="hidden" name="seen" value={plan.requestSha256} />
			<input type="hidden" name="sealKey" value={sealKey} />
			<input type="hidden" name="before" value={writeBefore(speak(plan.answer) as SpokenPackaging)} />
			<h2>{say("pack.sheet")}</h2>
			<p>{say("pack.sheet-text")}</p>
			<Submit name="act" value="sheet" kind="quiet" label={say("pack.sheet-make")} />
			<h2>{say("pack.seal")}</h2>
			<p class="note">{say("pack.seal-who")}</p>
			<Submit name="act" value="seal" kind="quiet" label={say("pack.seal")} />
		</>
	);
}
