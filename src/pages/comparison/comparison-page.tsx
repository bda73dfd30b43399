/** Both ends of a leg side by side, the same page for both sides. First what a worried person needs; then every check. */
import type { ComparisonView } from "../../contract/comparison.ts";
import type { OrderView } from "../../contract/orders.ts";
import type { ConsignmentComparison } from "../../operations/comparison/compare-consignment.ts";
import { leadScreen } from "../../operations/comparison/lead-screen.ts";
import { isReported, leadWords } from "../../operations/comparison/told-second-hand.ts";
import { untestedChecks } from "../../operations/comparison/untested-checks.ts";
import type { Handled } from "../../operations/comparison/what-next.ts";
import type { SealedRecord } from "../../operations/records/record-views.ts";
import { sealedLateWords } from "../../operations/records/sealed-late.ts";
import { itemName } from "../../texts/item-name.ts";
import { isTextKey, say, speak, type TextKey } from "../../texts/say.ts";
import { groupsOfFour, offsetOf, showTime } from "../../texts/shown-time.ts";
import { ENGLISH } from "../../texts/speaker.ts";
import { CustodySpine } from "../components/custody-spine.tsx";
import { ErasedNote } from "../components/erased-note.tsx";
import { ReadInNote } from "../components/read-in-note.tsx";
import { PlatformNote } from "../customer/platform-note.tsx";
import { Layout } from "../layout.tsx";
import { OwnFiles, type RecordFiles } from "../pictures/own-files.tsx";
import { CheckTable, type Shown } from "./check-table.tsx";
import { ChooseRecords } from "./choose-records.tsx";
import { FirstStateSection } from "./first-state-section.tsx";
import { OriginSection } from "./origin-section.tsx";

export function ComparisonPage(props: {
	readonly found: ConsignmentComparison;
	readonly view: ComparisonView;
	readonly shown: Shown;
	readonly href: (shown: Shown) => string;
	readonly handled: Handled;
	/** The shop alone has a page of the order. */
	readonly isShop: boolean;
	/** Whether the reader may have the order's reports and dossiers. */
	readonly hasPapers: boolean;
	/** Of the records of whoever came by a link: their takers decide what others get. */
	readonly files: readonly RecordFiles[];
}) {
	const { found, view } = props;
	const { order, departure, arrival } = found;
	const both = departure !== null && arrival !== null;
	return (
		<Layout title={say("comparison-page.title")}>
			<p class="step-of">{itemName(order.item)}</p>
			{props.isShop && (
				<p class="no-print">
					<a href={`/orders/${order.id}`}>{say("shop.back-to-order")}</a>
				</p>
			)}
			{order.owner.erasedAt !== undefined && <ErasedNote at={order.owner.erasedAt} />}
			<ReadInNote of={order} />
			{both ? (
				<p class="lead">{leadWords(found)}</p>
			) : (
				<div class="note">
					<h2>{say("comparison-page.not-yet-title")}</h2>
					<p>{say("comparison-page.not-yet")}</p>
				</div>
			)}
			<div class="two-ends">
				<End title={say("comparison-page.left")} record={departure} order={order} />
				<End title={say("comparison-page.arrived")} record={arrival} order={order} />
			</div>
			{both && <FirstScreen found={found} handled={props.handled} />}
			{both && <PlatformNote content={arrival.statement} />}
			{both && <Identity found={found} />}
			{both && view.firstState !== null && <FirstStateSection firstState={view.firstState} />}
			{both && <CheckTable {...props} />}
			{view.origin !== null && <OriginSection origin={view.origin} />}
			<Links found={found} />
			{both && <Untested found={found} />}
			<section>
				<CustodySpine order={order} line={found.line} records={found.records} drafts={[]} href={() => null} />
				<p class="hint">{say("comparison-page.custody-text")}</p>
				<ChooseRecords found={found} />
				<p class="no-print">
					<a href={`/orders/${order.id}/consignments/${found.consignment.id}/pack`}>{say("pack.shipped-title")}</a>
				</p>
				<Fingerprints found={found} />
			</section>
			<OwnFiles of={props.files} />
			{props.hasPapers && (
				<p class="no-print">
					<a href={`/orders/${order.id}/papers`}>{say("papers.link")}</a>
				</p>
			)}
			<p class="note">{say("comparison-page.disclaimer")}</p>
			<p class="hint">{say("comparison-page.both-see")}</p>
			<p class="no-print">
				<a href={`/orders/${found.order.id}/positions`}>{say("settling.positions")}</a>
			</p>
			<p class="hint no-print">{say("comparison-page.print")}</p>
		</Layout>
	);
}

function End({
	title,
	record,
	order,
}: {
	readonly title: string;
	readonly record: SealedRecord | null;
	readonly order: OrderView;
}) {
	if (record === null) {
		return (
			<section>
				<h2>{title}</h2>
				<p>{say("comparison-page.none-sealed")}</p>
			</section>
		);
	}
	const { statement, view } = record;
	const { at, offsetMinutes } = statement.observed;
	const late = sealedLateWords({ seenAt: at, sealedAt: record.entry.time });
	return (
		<section>
			<h2>{title}</h2>
			<p>
				<strong>{say(`arrival.state.${statement.state}` as TextKey)}</strong>
			</p>
			<p class="hint">{say("comparison-page.seen", { time: showTime(at, offsetOf(offsetMinutes)) })}</p>
			{late !== null && <p class="hint">{late}</p>}
			{isReported(record) && <p>{say("comparison-page.reported", { party: holderOf(order, view.holderId) })}</p>}
			{statement.reported?.words && <blockquote dir="auto">{statement.reported.words}</blockquote>}
			{statement.statement && <blockquote dir="auto">{statement.statement}</blockquote>}
		</section>
	);
}

function holderOf({ owner, repairer }: OrderView, holderId: string): string {
	return holderId === owner.id ? owner.name : repairer.name;
}

/** Which bytes were compared: whoever holds a receipt can check that they are these. */
function Fingerprints({ found }: { readonly found: ConsignmentComparison }) {
	const ends = [
		["comparison-page.left", found.departure],
		["comparison-page.arrived", found.arrival],
	] as const;
	return (
		<dl class="facts">
			{ends.map(([title, record]) => (
				<>
					<dt>
						{say(title)}, {say("comparison-page.fingerprint")}
					</dt>
					<dd class={record === null ? undefined : "fingerprint"}>
						{record === null ? say("comparison-page.none-sealed") : groupsOfFour(record.view.sealed?.fingerprint ?? "")}
					</dd>
				</>
			))}
		</dl>
	);
}

function FirstScreen({ found, handled }: { readonly found: ConsignmentComparison; readonly handled: Handled }) {
	const findings = leadScreen(found, (at, offsetMinutes) => showTime(at, offsetOf(offsetMinutes)), ENGLISH, handled);
	return (
		<>
			<Sentences title="comparison-page.certain" none="comparison-page.certain-none" sentences={findings.certain} />
			<Sentences
				title="comparison-page.uncertain"
				none="comparison-page.uncertain-none"
				sentences={findings.uncertain}
			/>
			<Sentences title="comparison-page.between" none="comparison-page.between-none" sentences={findings.placed} />
			<Sentences title="comparison-page.next" none="comparison-page.between-none" sentences={findings.next} />
			{findings.elsewhere.length > 0 && (
				<Sentences
					title="comparison-page.elsewhere"
					none="comparison-page.between-none"
					sentences={findings.elsewhere}
				/>
			)}
		</>
	);
}

function Sentences({
	title,
	none,
	sentences,
}: {
	readonly title: TextKey;
	readonly none: TextKey;
	readonly sentences: readonly string[];
}) {
	return (
		<section>
			<h2>{say(title)}</h2>
			{sentences.length === 0 ? (
				<p>{say(none)}</p>
			) : (
				<ul>
					{sentences.map((sentence) => (
						<li key={sentence}>{sentence}</li>
					))}
				</ul>
			)}
		</section>
	);
}

function Identity({ found }: { readonly found: ConsignmentComparison }) {
	const { identity } = found.comparison;
	const { of, compared } = identity.withoutPower;
	const rows = [
		["agree", identity.agree],
		["differ", identity.differ],
		["read-alike", identity.readAlike],
		["not-seen", identity.notSeen],
	] as const;
	return (
		<section>
			<h2>{say("comparison-page.identity")}</h2>
			{of > 0 && (
				<p>
					{say(`comparison-page.identity.${compared > 0 ? "without-power" : "none-compared"}`, identity.withoutPower)}
				</p>
			)}
			{identity.likelySlips.map((mark) => (
				<p key={mark} class="note">
					{say("comparison-page.identity.slip", { mark: markWords(mark) })}
				</p>
			))}
			<dl class="facts">
				{rows
					.filter(([, marks]) => marks.length > 0)
					.map(([kind, marks]) => (
						<>
							<dt>{say(`comparison-page.identity.${kind}`)}</dt>
							<dd>{marks.map(markWords).join(", ")}</dd>
						</>
					))}
			</dl>
		</section>
	);
}

/** A mark by name; a natural mark is named by its own description. */
function markWords(mark: string): string {
	const key = `comparison-page.identity.${mark}`;
	return isTextKey(key) ? say(key) : mark;
}

function Links({ found }: { readonly found: ConsignmentComparison }) {
	const { departure, arrival } = found.link;
	if (departure === null && arrival === null) return null;
	const words = (judged: typeof departure) => {
		if (judged === null) return say("comparison-page.not-recorded");
		return speak(judged.status === "assessed" ? judged.result.why : judged.reason.message);
	};
	return (
		<section>
			<h2>{say("comparison-page.link")}</h2>
			<dl class="facts">
				<dt>{say("comparison-page.left")}</dt>
				<dd>{words(departure)}</dd>
				<dt>{say("comparison-page.arrived")}</dt>
				<dd>{words(arrival)}</dd>
			</dl>
		</section>
	);
}

function Untested({ found }: { readonly found: ConsignmentComparison }) {
	const lacking = untestedChecks(found.comparison.rows);
	return (
		<section>
			<h2>{say("comparison-page.untested")}</h2>
			<p>{say("comparison-page.untested-text")}</p>
			{lacking.length === 0 && <p>{say("comparison-page.untested-none")}</p>}
			{lacking.map(({ where, kinds }) => (
				<div key={where}>
					<h3>{say(`comparison-page.untested.${where}`)}</h3>
					<dl class="facts">
						{kinds.map(([kind, checks]) => (
							<>
								<dt>{kind}</dt>
								<dd>{checks}</dd>
							</>
						))}
					</dl>
				</div>
			))}
		</section>
	);
}
