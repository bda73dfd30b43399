/** One date of a claim, with everything that has to be known to rely on it or not. */
import type { ComponentChildren } from "preact";
import type { LegClaimView } from "../../contract/leg-claim.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { daysLeft } from "./countdown.tsx";

type Period = LegClaimView["periods"][number];

export function PeriodSection({ period }: { readonly period: Period }) {
	const { safeDate, endsOn, rolledTo, alternatives, skipped, missing, notice } = period;
	return (
		<section class="leg" id={period.ruleId}>
			<h3>{period.what}</h3>
			{period.standing !== "published" && (
				<p class="caution">{say(`periods.standing.${period.standing}` as TextKey)}</p>
			)}
			<dl class="facts">
				<dt>{say("periods.safe")}</dt>
				<dd>
					{safeDate === null ? (
						say(missing.length === 0 ? "periods.no-date" : "periods.missing", {
							events: missing.map(dateName).join(", "),
						})
					) : (
						<>
							<strong>{safeDate}</strong>, {daysLeft(period.leftDays)}
						</>
					)}
				</dd>
				{endsOn !== null && <Fact term="periods.ends">{endsOn}</Fact>}
				{rolledTo !== null && rolledTo !== endsOn && <Fact term="periods.rolled">{rolledTo}</Fact>}
				{alternatives.length > 0 && (
					<Fact term="periods.other">
						<ul>
							{alternatives.map((one) => (
								<li key={one.reading}>
									{one.endsOn ?? say("periods.not-told")}: {one.reading}
								</li>
							))}
						</ul>
					</Fact>
				)}
				{skipped.length > 0 && <Fact term="periods.skipped">{skipped.join(", ")}</Fact>}
				<Fact term="periods.form">{say(`periods.form.${period.form}` as TextKey)}</Fact>
				<Fact term="periods.if-missed">{say(`periods.consequence.${period.consequence}` as TextKey)}</Fact>
				<Fact term="periods.article">
					{period.article}.{" "}
					{period.readOn === null ? say("periods.not-read") : say("periods.read-on", { date: period.readOn })}
				</Fact>
				<Fact term="periods.standing">{say(`periods.standing.${period.standing}` as TextKey)}</Fact>
				{notice !== null && <Fact term="periods.notice">{say(`periods.notice.${notice}` as TextKey)}</Fact>}
			</dl>
		</section>
	);
}

export function dateName(event: string): string {
	return say(`periods.date.${event}` as TextKey);
}

function Fact(props: { readonly term: TextKey; readonly children: ComponentChildren }) {
	return (
		<>
			<dt>{say(props.term)}</dt>
			<dd>{props.children}</dd>
		</>
	);
}
