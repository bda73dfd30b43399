/** The arrival record on paper: the same steps in the same order, to be filled with a pen. */
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import type { GuidedCheck } from "../../operations/records/guided-record.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { unitSymbol } from "../../texts/unit-symbol.ts";
import { ARRIVAL_STEPS, type Step } from "../customer/steps.ts";
import { Layout } from "../layout.tsx";
import { checkName } from "../record-form/check-control.tsx";
import type { Field } from "../record-form/field.ts";
import { viewWords } from "../record-form/photos.tsx";

/** Steps that only the page has. */
const ON_SCREEN_ONLY = ["file", "review"];

export function PaperForm({
	order,
	consignment,
	checks,
}: {
	readonly order: OrderView;
	readonly consignment: ConsignmentView;
	readonly checks: readonly GuidedCheck[];
}) {
	const steps = ARRIVAL_STEPS.filter((step) => !ON_SCREEN_ONLY.includes(step.id));
	return (
		<Layout title={say("slip.paper-title")} sheet>
			<div class="paper">
				<p>{say("slip.paper-lead")}</p>
				<dl class="facts">
					<dt>{say("slip.item")}</dt>
					<dd>
						{order.item.maker} {order.item.model}
					</dd>
					<dt>{say("slip.tracking")}</dt>
					<dd>{consignment.facts.trackingNumber ?? <Blank />}</dd>
				</dl>
				{steps.map((step, index) => (
					<PaperStep key={step.id} step={step} number={index + 1} checks={checks} />
				))}
				<section class="paper-step">
					<h2>{say("slip.paper-signature")}</h2>
					<Line />
					<p class="hint">{say("slip.paper-provenance")}</p>
				</section>
			</div>
		</Layout>
	);
}

function PaperStep({
	step,
	number,
	checks,
}: {
	readonly step: Step;
	readonly number: number;
	readonly checks: readonly GuidedCheck[];
}) {
	const own = checks.filter((check) => step.checks?.(check) === true);
	return (
		<section class="paper-step">
			<h2>{say("slip.paper-step", { number, title: say(step.title) })}</h2>
			{[...step.texts, ...step.cautions].map((key) => (
				<p key={key}>{say(key)}</p>
			))}
			{step.parts.includes("wait") && <p>{say("slip.paper-wait")}</p>}
			{step.views.length > 0 && (
				<p>
					{say("slip.paper-photos")}:{" "}
					{step.views.map((view) => (
						<Tick key={view} label={view === "other" ? "" : viewWords(view)} />
					))}
				</p>
			)}
			{step.fields.map((field) => (
				<PaperField key={field.name} field={field} />
			))}
			{own.length > 0 && (
				<table>
					<tbody>
						{own.map((check) => (
							<tr key={check.id}>
								<th scope="row">{checkName(check)}</th>
								<td>
									<PaperCheck check={check} />
								</td>
								<td>
									{say("slip.paper-not-tested")} <Blank />
								</td>
							</tr>
						))}
					</tbody>
				</table>
			)}
		</section>
	);
}

function PaperCheck({ check }: { readonly check: GuidedCheck }) {
	switch (check.kind) {
		case "visual":
			return (
				<>
					<Tick label={say("arrival.check.good")} />
					<Tick label={say("arrival.check.bad")} />
				</>
			);
		case "outcome":
			return (
				<>
					{say("arrival.check.trials")} <Blank /> {say("arrival.check.successes")} <Blank />
				</>
			);
		case "count":
			return (
				<>
					{say("arrival.check.count")} <Blank /> {say("arrival.check.exposure")} <Blank />{" "}
					{check.exposureUnits.map((unit) => unitSymbol(unit)).join(" / ")}
				</>
			);
		default:
			return (
				<>
					<Blank /> {check.typedUnits.map((unit) => unitSymbol(unit)).join(" / ")}
				</>
			);
	}
}

function PaperField({ field }: { readonly field: Field }) {
	const label = `${say(field.label)} `;
	switch (field.kind) {
		case "yes-no":
			return (
				<p>
					{label}
					<Tick label={say("arrival.yes")} />
					<Tick label={say("arrival.no")} />
				</p>
			);
		case "choice":
		case "choices":
			return (
				<p>
					{label}({say(field.kind === "choice" ? "slip.paper-choose" : "slip.paper-tick-all")})
					<br />
					{field.codes.map((code) => (
						<Tick key={code} label={say(`${field.options}.${code}` as TextKey)} />
					))}
				</p>
			);
		case "quantity":
			return (
				<p>
					{label}
					<Blank /> {field.units.map((unit) => unitSymbol(unit)).join(" / ")}
				</p>
			);
		case "text":
		case "lines":
			return (
				<div>
					{label}
					<Line />
					{(field.kind === "lines" || field.long === true) && <Line />}
				</div>
			);
		default:
			return (
				<p>
					{label}
					<Blank />
				</p>
			);
	}
}

function Tick({ label }: { readonly label: string }) {
	return (
		<span class="tick-label">
			<span class="tick" /> {label}
		</span>
	);
}

function Blank() {
	return <span class="blank" />;
}

function Line() {
	return <span class="blank line" />;
}
