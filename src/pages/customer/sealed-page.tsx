/** After the seal: the receipt to keep, the fingerprint, what comes next. Prints on one page. */
import type { GuidedRecord } from "../../operations/records/guided-record.ts";
import type { OpenedStatement } from "../../records/record-statement.ts";
import { say } from "../../texts/say.ts";
import { groupsOfFour, showTime } from "../../texts/shown-time.ts";
import { Layout } from "../layout.tsx";
import { LogFacts, PartySignature } from "../log-mark.tsx";
import { OwnFiles } from "../pictures/own-files.tsx";

export function SealedPage({ guided }: { readonly guided: GuidedRecord }) {
	const { record, order } = guided;
	const { sealed } = record;
	if (sealed === null) throw new Error(`record ${record.id} is not sealed`);
	return (
		<Layout title={say("arrival.done-title")}>
			<p class="lead">
				{say(record.stage === "departure" ? "arrival.title-departure" : "arrival.title")}: {order.item.maker}{" "}
				{order.item.model}
			</p>
			<p>{say("arrival.receipt.text")}</p>
			<p class="no-print">
				<a class="button" href={`/api/v1/records/${record.id}/receipt`} download={`handover-receipt-${record.id}.json`}>
					{say("arrival.receipt.download")}
				</a>
			</p>
			<dl class="facts">
				<dt>{say("arrival.receipt.sealed-at")}</dt>
				<dd>{showTime(sealed.at)}</dd>
				<dt>{say("arrival.receipt.by")}</dt>
				<dd>
					{say(sealed.by.startsWith("lnk_") ? "arrival.receipt.sealed-through" : "arrival.receipt.sealed-by", {
						id: sealed.by,
					})}
				</dd>
				{sealed.by.startsWith("lnk_") && (
					<>
						<dt>{say("log.party-signature")}</dt>
						<dd>
							<PartySignature sealed={sealed} />
						</dd>
					</>
				)}
				<dt>{say("arrival.receipt.record")}</dt>
				<dd>
					{record.id}, {say("arrival.receipt.entry", { index: String(sealed.index) })}
				</dd>
				<dt>{say("arrival.receipt.fingerprint")}</dt>
				<dd class="fingerprint">{groupsOfFour(sealed.fingerprint)}</dd>
			</dl>
			<LogFacts of={order} />
			<OwnFiles of={[{ exhibits: (sealed.statement as unknown as OpenedStatement).exhibits, files: guided.files }]} />
			<p class="note">{say("arrival.receipt.next")}</p>
			{record.consignmentId !== null && (
				<p class="no-print">
					<a href={`/orders/${order.id}/consignments/${record.consignmentId}/comparison`}>
						{say("arrival.receipt.comparison")}
					</a>
				</p>
			)}
			<p class="no-print hint">{say("arrival.receipt.print")}</p>
		</Layout>
	);
}
