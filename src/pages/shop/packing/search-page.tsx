/** What a search of the stock found, best first, and why the rest was left out. */
import type { FastifyRequest } from "fastify";
import { formTokenFor } from "../../../access/callers.ts";
import type { ConsignmentView, OrderView } from "../../../contract/orders.ts";
import type { PackagingSearchAnswer } from "../../../contract/packaging-search.ts";
import type { StockView } from "../../../contract/stock.ts";
import { itemName } from "../../../texts/item-name.ts";
import { inMillimetres } from "../../../texts/millimetres.ts";
import { say, type TextKey, writeNumber } from "../../../texts/say.ts";
import { Form, Submit } from "../../components/form.tsx";
import { Verdict } from "../../packaging/packaging-result.tsx";
import type { Form as SentForm } from "../../record-form/field.ts";
import { ShopLayout } from "../shop-layout.tsx";
import { type Design, fieldsOfDesign } from "./take-design.ts";

export interface SearchPageProps {
	readonly request: FastifyRequest;
	readonly order: OrderView;
	readonly leg: ConsignmentView;
	readonly stock: StockView;
	/** The planner's form, which goes on with the design that is taken. */
	readonly form: SentForm;
	readonly answer: PackagingSearchAnswer;
	readonly objective: string;
}

export function SearchPage({ request, order, leg, stock, form, answer, objective }: SearchPageProps) {
	const action = `/consignments/${leg.id}/packaging`;
	const { act: _act, formToken: _token, before: _before, seen: _seen, ...carried } = form;
	return (
		<ShopLayout
			request={request}
			title={say("pack.found-title")}
			crumbs={[
				{ href: "/", label: say("shop.orders") },
				{ href: `/orders/${order.id}`, label: itemName(order.item) },
				{ href: action, label: say("pack.title") },
			]}
		>
			<Form action={action} formToken={formTokenFor(request)}>
				{Object.entries(carried).map(([name, value]) => (
					<input key={name} type="hidden" name={name} value={value} />
				))}
				<input type="hidden" name="act" value="plan" />
				{answer.status === "not-assessed" ? (
					<p class="lead">{say("general.not-assessed", { why: answer.reason.message })}</p>
				) : (
					<Found found={answer.result} notes={answer.validity.notes} stock={stock} objective={objective} />
				)}
				<Submit label={say("pack.back-to-plan")} kind="quiet" />
			</Form>
		</ShopLayout>
	);
}

type FoundResult = Extract<PackagingSearchAnswer, { status: "assessed" }>["result"];

function Found({
	found,
	notes,
	stock,
	objective,
}: {
	readonly found: FoundResult;
	readonly notes: readonly string[];
	readonly stock: StockView;
	readonly objective: string;
}) {
	const left = Object.entries(found.excluded)
		.filter(([, count]) => (count ?? 0) > 0)
		.sort(([, a], [, b]) => (b ?? 0) - (a ?? 0));
	return (
		<>
			<p class="lead">
				{say(found.designs.length === 0 ? "pack.found-none" : "pack.found", {
					considered: found.considered.toLocaleString("en"),
					given: found.designs.length,
					objective: say(`pack.objective-kind.${objective}` as TextKey),
				})}
			</p>
			{notes.map((note) => (
				<p key={note} class="hint">
					{note}
				</p>
			))}
			<ol class="designs">
				{found.designs.map((design) => (
					<DesignItem key={JSON.stringify(design.axes) + design.boxId} design={design} stock={stock} />
				))}
			</ol>
			<table>
				<caption>{say("pack.left-out")}</caption>
				<thead>
					<tr>
						<th scope="col">{say("pack.left-out-why")}</th>
						<th scope="col" class="number">
							{say("pack.left-out-count")}
						</th>
					</tr>
				</thead>
				<tbody>
					{left.map(([reason, count]) => (
						<tr key={reason}>
							<th scope="row">{say(`pack.excluded.${reason}` as TextKey)}</th>
							<td class="number">{(count ?? 0).toLocaleString("en")}</td>
						</tr>
					))}
				</tbody>
			</table>
		</>
	);
}

function DesignItem({ design, stock }: { readonly design: Design; readonly stock: StockView }) {
	const result = design.packaging.status === "assessed" ? design.packaging.result : null;
	const title = say(design.innerBoxId === null ? "pack.design-single" : "pack.design-double", {
		box: design.boxId,
		inner: design.innerBoxId ?? "",
	});
	return (
		<li>
			<h2>
				{title}
				{result !== null && (
					<>
						: <Verdict of={result.verdict} />
					</>
				)}
			</h2>
			<dl class="facts">
				<dt>{say("pack.margin")}</dt>
				<dd>{writeNumber(Math.round(100 * design.margin)).replace("-", "−")} %</dd>
				{result !== null && result.protectedDropHeightM !== null && (
					<>
						<dt>{say("pack.check.drop-height")}</dt>
						<dd>{writeNumber(result.protectedDropHeightM)} m</dd>
					</>
				)}
				<dt>{say("pack.cost")}</dt>
				<dd>{design.cost === null ? say("pack.no-cost") : `${design.cost.amount} ${design.cost.currency}`}</dd>
				<dt>{say("pack.volume")}</dt>
				<dd>{writeNumber(1000 * design.volumeM3)} l</dd>
				{(["height", "length", "width"] as const).map((axis) => (
					<>
						<dt>{say(`pack.axis.${axis}`)}</dt>
						<dd>
							{cushionWords(design.axes[axis].around)}
							{design.axes[axis].gap !== null &&
								`; ${say("pack.in-gap", { cushion: cushionWords(design.axes[axis].gap) })}`}
						</dd>
					</>
				))}
				<dt>{say("pack.bag")}</dt>
				<dd>{design.bagId ?? say("pack.no-layer")}</dd>
			</dl>
			<Submit name="take" value={JSON.stringify(fieldsOfDesign(design, stock))} label={say("pack.take-design")} />
		</li>
	);
}

function cushionWords(cushion: Design["axes"]["length"]["around"]): string {
	if (cushion === null) return say("pack.no-cushion");
	const sheets = cushion.sheets.map(({ id, count }) => `${count} × ${id}`).join(" + ");
	const [pad] = cushion.pads ?? [];
	if (pad === undefined) return `${sheets}, ${say("pack.full-face")}`;
	const millimetres = (metres: number) => Math.round(Number(inMillimetres(metres)));
	return `${sheets}, ${say(cushion.pads?.length === 1 ? "pack.pad-of-size" : "pack.pads-of-size", {
		count: cushion.pads?.length ?? 0,
		lengthMm: millimetres(pad.lengthM),
		widthMm: millimetres(pad.widthM),
	})}`;
}
