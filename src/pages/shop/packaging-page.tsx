/** The page on which a pack is planned: what comes out, what is asked, what was sealed. */
import type { FastifyRequest } from "fastify";
import { formTokenFor } from "../../access/callers.ts";
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import type { AssessmentView } from "../../contract/packaging.ts";
import type { PackPlan } from "../../operations/packaging/plan-pack.ts";
import { say, speak } from "../../texts/say.ts";
import { ErrorSummary, type FieldErrors, Form, type FormValues, Submit } from "../components/form.tsx";
import { CushionFigure } from "../packaging/cushion-figure.tsx";
import { DropTables } from "../packaging/drop-tables.tsx";
import { Checks, Lead, Notes, type SpokenPackaging } from "../packaging/packaging-result.tsx";
import { SealedPacks } from "../packaging/sealed-packs.tsx";
import { groupsOfFour, showTime } from "../record-form/shown-time.ts";
import { PackFields } from "./pack-fields.tsx";
import { ShopLayout } from "./shop-layout.tsx";

export interface PackagingPageProps {
	readonly request: FastifyRequest;
	readonly order: OrderView;
	readonly leg: ConsignmentView;
	readonly assessments: readonly AssessmentView[];
	readonly values: FormValues;
	readonly errors: FieldErrors;
	/** What came out; null before anything was computed. */
	readonly plan: PackPlan | null;
	/** Tells one act of sealing from the same one sent twice. */
	readonly sealKey: string;
	/** The assessment that was sealed just now. */
	readonly sealed: AssessmentView | null;
}

export function PackagingPage(props: PackagingPageProps) {
	const { request, order, leg, values, errors, plan, sealed } = props;
	return (
		<ShopLayout
			request={request}
			title={say("pack.title")}
			crumbs={[
				{ href: "/", label: say("shop.orders") },
				{ href: `/orders/${order.id}`, label: `${order.item.maker} ${order.item.model}` },
			]}
		>
			<ErrorSummary errors={errors} />
			{sealed !== null && (
				<div class="note" role="status">
					<p>{say("pack.was-sealed", { time: showTime(sealed.sealedAt) })}</p>
					<p class="fingerprint">{groupsOfFour(sealed.fingerprint)}</p>
				</div>
			)}
			{plan !== null && <Outcome plan={plan} basis={values["route.dropBasis"] ?? ""} />}
			<p id="form">{say("pack.planning")}</p>
			<Form action={`/consignments/${leg.id}/packaging`} formToken={formTokenFor(request)}>
				<PackFields values={values} errors={errors} />
				<Submit name="act" value="plan" label={say("pack.compute")} />
				{plan !== null && (
					<>
						<input type="hidden" name="seen" value={plan.requestSha256} />
						<input type="hidden" name="sealKey" value={props.sealKey} />
						<p class="note">{say("pack.seal-who")}</p>
						<Submit name="act" value="seal" kind="quiet" label={say("pack.seal")} />
					</>
				)}
			</Form>
			{props.assessments.length > 0 && (
				<>
					<p>
						<a href={`/orders/${order.id}/consignments/${leg.id}/pack`}>{say("pack.shipped-page")}</a>
					</p>
					<SealedPacks assessments={props.assessments} />
				</>
			)}
		</ShopLayout>
	);
}

function Outcome({ plan, basis }: { readonly plan: PackPlan; readonly basis: string }) {
	const answer = speak(plan.answer) as SpokenPackaging;
	return (
		<section class="result">
			<h2>{say("pack.result")}</h2>
			<Lead answer={answer} />
			{plan.drop !== null && (
				<DropTables drop={plan.drop} basis={basis} protectedM={answer.result?.protectedDropHeightM ?? null}>
					<Notes answer={answer} />
				</DropTables>
			)}
			{plan.curves.map((curve) => (
				<CushionFigure key={curve.faces.join()} curve={curve} id="plan" />
			))}
			<Checks answer={answer} />
		</section>
	);
}
