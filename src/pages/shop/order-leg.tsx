/** One leg on its order's page: what is noted of it, what can be recorded at its ends, its sheets. */
import type { LegClaimView } from "../../contract/leg-claim.ts";
import type { ConsignmentView } from "../../contract/orders.ts";
import type { AssessmentView } from "../../contract/packaging.ts";
import type { OrderLine } from "../../operations/orders/order-line.ts";
import { oddMass } from "../../operations/records/parcel-mass.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";
import { Countdown } from "../claims/countdown.tsx";
import { CoverLine } from "../claims/cover-section.tsx";
import { Form, Submit } from "../components/form.tsx";
import { sealedLine } from "../packaging/sealed-packs.tsx";

export function OrderLeg({
	leg,
	found,
	formToken,
	packs,
	claim,
}: {
	readonly leg: ConsignmentView;
	readonly found: OrderLine;
	readonly formToken: string;
	readonly packs: readonly AssessmentView[];
	readonly claim: LegClaimView;
}) {
	const has = (stage: string) =>
		[...found.records.map(({ view }) => view), ...found.drafts].some(
			(view) => view.consignmentId === leg.id && view.stage === stage,
		);
	const odd = oddMass(leg.facts.parcelMassKg, found.order.item.massKg);
	const goesOn = found.order.readIn === undefined;
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
			{odd !== null && <p class="note">{say(`arrival.odd-mass.${odd}`)}</p>}
			<Countdown claim={claim} />
			<CoverLine claim={claim} />
			{packs.map((pack) => (
				<p key={pack.id}>
					<a href={`${base}/pack`}>{sealedLine(pack)}</a>
				</p>
			))}
			{goesOn && !has("departure") && (
				<div class="row">
					{ownerSends
						? open("departure", "shop.ask-owner-departure", { next: "link" })
						: open("departure", "shop.open-short-departure")}
					{!ownerSends && open("departure", "shop.open-full-departure", { depth: "full" })}
				</div>
			)}
			{goesOn && !has("arrival") && (
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
				<li>
					<a href={`${base}/claim`}>{say("periods.link")}</a>
				</li>
				<li>
					<a href={`${base}/recordings`}>{say("recording.title")}</a>
				</li>
			</ul>
		</section>
	);
}
