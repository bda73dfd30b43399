/** What the carrier pays at most: the whole of it, and one line for the order's page. */
import type { LegClaimView, LegCover } from "../../contract/leg-claim.ts";
import { say, type TextKey, writeNumber } from "../../texts/say.ts";

const percentOf = (share: number) => Number((100 * share).toPrecision(2));

export function CoverSection({
	cover,
	hasLeft,
	told,
}: {
	readonly cover: LegCover;
	/** Whether the parcel is on its way, or was. */
	readonly hasLeft: boolean;
	/** What the page has said already. */
	readonly told: readonly string[];
}) {
	const { value, source, packing, expectedLoss } = cover;
	const money = (amount: { readonly amount: number; readonly currency: string } | null) =>
		amount === null ? say("cover.none-noted") : `${amount.amount.toFixed(2)} ${amount.currency}`;
	return (
		<section id="cover">
			<h2>{say("cover.title")}</h2>
			{!hasLeft && <p class="hint">{say("cover.lead")}</p>}
			<dl class="facts">
				{(cover.capSdr !== null || cover.capAmount !== null) && (
					<>
						<dt>{say("cover.limit")}</dt>
						<dd>
							{cover.capAmount !== null && <strong>{money(cover.capAmount)}</strong>}
							{[
								cover.capSdr === null ? null : say("cover.sdr", { sdr: cover.capSdr }),
								cover.shareOfValue === null || value === null
									? null
									: say("cover.share", {
											percent: percentOf(cover.shareOfValue),
											amount: value.amount.toFixed(2),
											currency: value.currency,
										}),
							]
								.filter((part) => part !== null)
								.map((part, index) => (index === 0 && cover.capAmount === null ? part : `, ${part}`))}
						</dd>
					</>
				)}
				{cover.massCoveringValueKg !== null && (
					<>
						<dt>{say("cover.mass")}</dt>
						<dd>{writeNumber(cover.massCoveringValueKg)} kg</dd>
					</>
				)}
				{source !== null && (
					<>
						<dt>{say("cover.source")}</dt>
						<dd>
							{source.document}, {source.locator}. {say(`periods.standing.${source.standing}` as TextKey)}
						</dd>
					</>
				)}
				<dt>{say("cover.declared")}</dt>
				<dd>{money(cover.declaredValue)}</dd>
				<dt>{say("cover.insured")}</dt>
				<dd>{money(cover.insuredValue)}</dd>
				{expectedLoss !== null && (
					<>
						<dt>{say("cover.average")}</dt>
						<dd>
							{say("cover.average-of", { amount: expectedLoss.amount.toFixed(2), currency: expectedLoss.currency })}
						</dd>
					</>
				)}
				{packing !== null && (
					<>
						<dt>{say("cover.packing")}</dt>
						<dd>
							{say("cover.packing-of", {
								cost: packing.cost.amount,
								currency: packing.cost.currency,
								points: 100 * packing.probabilityDrop,
							})}
						</dd>
					</>
				)}
			</dl>
			{isDeclaredAbove(cover) && <p>{say("cover.declared-counts", { declared: money(cover.declaredValue) })}</p>}
			{cover.notes
				.filter((note) => !told.includes(note))
				.map((note) => (
					<p key={note} class="hint">
						{note}
					</p>
				))}
		</section>
	);
}

/** A value that was declared to the carrier, and agreed with it, takes the place of a lower limit. */
function isDeclaredAbove({ capAmount, declaredValue }: LegCover): boolean {
	return capAmount !== null && declaredValue !== null && declaredValue.amount > capAmount.amount;
}

export function CoverLine({ claim }: { readonly claim: LegClaimView }) {
	const { capAmount, capSdr, shareOfValue, declaredValue, insuredValue, source } = claim.cover;
	const limit =
		capAmount !== null && shareOfValue !== null
			? say(isDeclaredAbove(claim.cover) ? "cover.line-declared" : "cover.line", {
					amount: capAmount.amount.toFixed(2),
					currency: capAmount.currency,
					percent: percentOf(shareOfValue),
					declared: declaredValue === null ? "" : `${declaredValue.amount.toFixed(2)} ${declaredValue.currency}`,
				})
			: capSdr !== null
				? say("cover.line-sdr", { sdr: capSdr })
				: null;
	if (limit === null && insuredValue === null) return null;
	return (
		<p class="hint">
			<a href={`/orders/${claim.orderId}/consignments/${claim.consignmentId}/claim#cover`}>
				{[
					limit,
					limit !== null && source?.standing === "from-memory" ? say("cover.recalled") : null,
					insuredValue === null
						? null
						: say("cover.line-insured", { amount: insuredValue.amount.toFixed(2), currency: insuredValue.currency }),
				]
					.filter((part) => part !== null)
					.join(" ")}
			</a>
		</p>
	);
}
