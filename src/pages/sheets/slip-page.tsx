/** The hand-over slip: one A4 page, black on white, on top of the inner pack. It carries the link, never the code. */
import type { NewLinkView } from "../../contract/access.ts";
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import type { RecordView } from "../../contract/records.ts";
import { itemName } from "../../texts/item-name.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { groupsOfFour, showTime } from "../../texts/shown-time.ts";
import { Form, Submit } from "../components/form.tsx";
import { Layout } from "../layout.tsx";
import { LogFacts } from "../log-mark.tsx";
import { QrCode } from "./qr-code.tsx";

export interface SlipProps {
	readonly order: OrderView;
	readonly consignment: ConsignmentView;
	/** The sealed departure record of this leg. */
	readonly departure: RecordView | null;
	/** Made together with the slip, as its address is given once. */
	readonly link: NewLinkView | null;
	readonly formToken: string;
}

const ORDER_OF_OPENING = 9;
const CAUTIONS = ["static", "cut", "cell", "mains", "children"] as const;

export function SlipPage(props: SlipProps) {
	const { order, consignment, link } = props;
	return (
		<Layout title={say("slip.title")} sheet>
			<Panel {...props} />
			<div class="slip">
				<p>{say("slip.lead")}</p>
				<div class="two-ends">
					<dl class="facts">
						<Fact term="slip.item" told={itemName(order.item)} />
						<Fact term="slip.serial" told={order.item.serialNumber ?? "–"} />
						<Fact term="slip.from" told={nameOf(order, consignment.consignorId)} />
						<Fact term="slip.to" told={nameOf(order, consignment.consigneeId)} />
						<Fact term="slip.tracking" told={consignment.facts.trackingNumber ?? "–"} />
						<Fact term="slip.parcel-mass" told={massWords(consignment.facts.parcelMassKg)} />
					</dl>
					<section>
						<h2>{say("slip.link-title")}</h2>
						{link === null ? (
							<p>{say("slip.link-none")}</p>
						) : (
							<div class="slip-link">
								<QrCode text={link.url} label={say("slip.qr-label", { url: link.url })} />
								<p>
									{say("slip.link-text")}
									<br />
									<span class="fingerprint">{link.url}</span>
								</p>
							</div>
						)}
					</section>
				</div>
				<h2>{say("slip.order-title")}</h2>
				<ol>
					{Array.from({ length: ORDER_OF_OPENING }, (_, index) => (
						<li key={index}>{say(`slip.order-${index + 1}` as TextKey)}</li>
					))}
				</ol>
				<h2>{say("slip.cautions-title")}</h2>
				<ul>
					{CAUTIONS.map((caution) => (
						<li key={caution}>{say(`slip.caution-${caution}`)}</li>
					))}
				</ul>
				<Fingerprint departure={props.departure} />
				<LogFacts of={order} />
				<p>{say("slip.seal-advice")}</p>
			</div>
		</Layout>
	);
}

/** On the screen only: making the link, the code to send apart. */
function Panel({ order, consignment, departure, link, formToken }: SlipProps) {
	const path = `/orders/${order.id}/consignments/${consignment.id}`;
	return (
		<div class="note no-print">
			{link !== null && (
				<>
					<h2>{say("slip.code-title")}</h2>
					<p class="lead">
						<strong class="fingerprint">{link.code}</strong>
					</p>
					<p>{say("slip.code-text")}</p>
				</>
			)}
			{link === null && departure !== null && (
				<Form action={`${path}/slip`} formToken={formToken}>
					<p>{say("slip.make-link-text")}</p>
					<Submit label={say("slip.make-link")} />
				</Form>
			)}
			<p>{say("slip.print-hint")}</p>
			<p>
				<a href={`${path}/paper-form`}>{say("slip.paper-link")}</a> ·{" "}
				<a href={`/orders/${order.id}`}>{say("slip.back")}</a>
			</p>
		</div>
	);
}

function Fingerprint({ departure }: { readonly departure: RecordView | null }) {
	const sealed = departure?.sealed ?? null;
	return (
		<section>
			<h2>{say("slip.fingerprint-title")}</h2>
			{sealed === null ? (
				<p>{say("slip.fingerprint-none")}</p>
			) : (
				<>
					<p>
						<strong class="fingerprint">{groupsOfFour(sealed.fingerprint)}</strong>
					</p>
					<p>
						{say("slip.fingerprint-text")}{" "}
						{say("slip.sealed-at", { time: showTime(sealed.at), index: String(sealed.index) })}
					</p>
				</>
			)}
		</section>
	);
}

function Fact({ term, told }: { readonly term: TextKey; readonly told: string }) {
	return (
		<>
			<dt>{say(term)}</dt>
			<dd>{told}</dd>
		</>
	);
}

function nameOf(order: OrderView, partyId: string): string {
	return partyId === order.owner.id ? order.owner.name : order.repairer.name;
}

function massWords(massKg: number | undefined): string {
	return massKg === undefined ? "–" : `${massKg} kg`;
}
