/** The dates of a claim about one leg: who and what first, then the law of carriage, the dates, and what they start from. */
import type { LegClaimView } from "../../contract/leg-claim.ts";
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import { watchedPeriods } from "../../operations/claims/watched-periods.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { ErrorSummary, type FieldErrors, Form, type FormValues, Submit } from "../components/form.tsx";
import { Layout } from "../layout.tsx";
import { ClaimFields } from "./claim-fields.tsx";
import { CoverSection } from "./cover-section.tsx";
import { dateName, PeriodSection } from "./period-section.tsx";

export interface PeriodsPageProps {
	readonly order: OrderView;
	readonly leg: ConsignmentView;
	readonly claim: LegClaimView;
	/** Whether the reader is of one of the two sides. */
	readonly mayDraft: boolean;
	/** Null for a reader who cannot note anything. */
	readonly editing: { readonly formToken: string; readonly values: FormValues; readonly errors: FieldErrors } | null;
}

export function PeriodsPage({ order, leg, claim, editing, mayDraft }: PeriodsPageProps) {
	const path = `/orders/${order.id}/consignments/${leg.id}/claim`;
	return (
		<Layout
			title={say("periods.title", { number: leg.leg })}
			crumbs={
				editing === null
					? [{ href: `/orders/${order.id}/comparison`, label: say("comparison-page.title") }]
					: [{ href: `/orders/${order.id}`, label: say("shop.order") }]
			}
		>
			{editing !== null && <ErrorSummary errors={editing.errors} />}
			<p class="lead">{say("periods.lead")}</p>
			<First order={order} claim={claim} />
			<RegimeSection claim={claim} byHand={leg.facts.mode === "carried-by-hand"} />
			<h2>{say("periods.dates")}</h2>
			<p class="hint">{say("periods.today", { date: claim.today })}</p>
			{claim.regime === null && <p>{say("periods.no-dates")}</p>}
			{claim.periods.map((period) => (
				<PeriodSection key={period.ruleId} period={period} />
			))}
			{claim.otherReading !== null && (
				<>
					<h2>{say(`periods.other-damage.${claim.otherReading.damage}` as TextKey)}</h2>
					<p>{say("periods.other-damage-why")}</p>
					{claim.otherReading.periods.map((period) => (
						<PeriodSection key={period.ruleId} period={period} />
					))}
				</>
			)}
			{[...claim.notes, ...claim.cautions].map((text) => (
				<p key={text} class="hint">
					{text}
				</p>
			))}
			{watchedPeriods(claim).some(({ safeDate }) => safeDate !== null) && (
				<p>
					<a href={`${path}.ics`}>{say("periods.calendar")}</a>. {say("periods.calendar-hint")}
				</p>
			)}
			<p>
				<a href="/claim-rules">{say("rules.link")}</a>
			</p>
			{mayDraft && (
				<p>
					<a href={`/orders/${order.id}/consignments/${leg.id}/notice`}>{say("notice.link")}</a>
				</p>
			)}
			<CoverSection cover={claim.cover} hasLeft={claim.events.takenOver !== undefined} told={claim.cautions} />
			<h2>{say("periods.known")}</h2>
			<dl class="facts">
				{Object.entries(claim.events).map(([name, date]) => (
					<>
						<dt>{dateName(name)}</dt>
						<dd>{date}</dd>
					</>
				))}
				{claim.noted.dates?.noticeReceived !== undefined && (
					<>
						<dt>{dateName("noticeReceived")}</dt>
						<dd>{claim.noted.dates.noticeReceived}</dd>
					</>
				)}
			</dl>
			<HolidaySection holidays={claim.holidays} />
			{editing !== null && (
				<Form action={path} formToken={editing.formToken}>
					<h2>{say("periods.note")}</h2>
					<input type="hidden" name="version" value={claim.version} />
					<ClaimFields values={editing.values} errors={editing.errors} />
					<Submit label={say("periods.save")} />
				</Form>
			)}
		</Layout>
	);
}

function First({ order, claim }: { readonly order: OrderView; readonly claim: LegClaimView }) {
	const nameOf = (partyId: string) => (partyId === order.owner.id ? order.owner.name : order.repairer.name);
	const { claimants } = claim;
	return (
		<>
			<h2>{say("periods.first")}</h2>
			<dl class="facts">
				<dt>{say("periods.outer")}</dt>
				<dd>
					{say(
						claim.outerDamage === "seen" && claim.events.noticeSent !== undefined
							? "periods.outer.seen-told"
							: (`periods.outer.${claim.outerDamage}` as TextKey),
					)}
				</dd>
				<dt>{say("periods.who")}</dt>
				<dd>
					{claimants === null
						? say("periods.who.not-read")
						: say(`periods.who.${claimants.who}` as TextKey, {
								document: claimants.document,
								locator: claimants.locator,
							})}{" "}
					{say("periods.sender", { sender: nameOf(claim.consignorId), consignee: nameOf(claim.consigneeId) })}{" "}
					{say("periods.contractor", { name: nameOf(claim.contractorId) })}
				</dd>
				<dt>{say("periods.damage")}</dt>
				<dd>
					{say(`periods.damage.${claim.damage}` as TextKey)}
					{claim.damageBasis === "suggested" && ` (${say("periods.damage-suggested")})`}
				</dd>
			</dl>
		</>
	);
}

function RegimeSection({ claim, byHand }: { readonly claim: LegClaimView; readonly byHand: boolean }) {
	const { regime, suggestion } = claim;
	const name = regime === null ? "" : say(`periods.regime.${regime}` as TextKey);
	return (
		<>
			<h2>{say("periods.regime")}</h2>
			<p>
				{regime === null
					? say(byHand ? "periods.by-hand" : "periods.none-suggested")
					: say(claim.regimeBasis === "chosen" ? "periods.chosen" : "periods.suggested", { regime: name })}
			</p>
			{claim.regimeBasis === "chosen" && regime !== suggestion.regime && (
				<p class="caution">
					{suggestion.regime === null
						? say("periods.chosen-none")
						: say("periods.chosen-other", { regime: say(`periods.regime.${suggestion.regime}` as TextKey) })}
				</p>
			)}
			<ol>
				{suggestion.steps.map(({ question, answer }) => (
					<li key={question}>
						{say(`periods.question.${question}`)} <strong>{say(`periods.answer.${answer}`)}</strong>
					</li>
				))}
			</ol>
			{claim.germanMultimodal && <p>{say("periods.german-multimodal")}</p>}
		</>
	);
}

function HolidaySection({ holidays }: { readonly holidays: LegClaimView["holidays"] }) {
	if (holidays === null) return <p>{say("periods.holidays-none")}</p>;
	const place = [holidays.country, holidays.region].filter((part) => part !== null).join("-");
	return (
		<details>
			<summary>{say("periods.holidays")}</summary>
			<p>{say("periods.holidays-of", { place })}</p>
			<p>{holidays.dates.join(", ")}</p>
			{holidays.doubtful.length > 0 && <p>{say("periods.doubtful", { dates: holidays.doubtful.join(", ") })}</p>}
		</details>
	);
}
