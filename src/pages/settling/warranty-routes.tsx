/** `/orders/{id}/warranty`, for the shop and for every link of the order. What is asked stands in the address; nothing is kept. */
import type { FastifyInstance } from "fastify";
import { callerOf, openTo } from "../../access/callers.ts";
import { type WarrantyQuery, type WarrantyView, warrantyQuery } from "../../contract/warranty.ts";
import { Fault } from "../../faults.ts";
import type { Deps } from "../../operations/deps.ts";
import { readOrder } from "../../operations/orders/read-orders.ts";
import { readWarranty } from "../../operations/settling/read-warranty.ts";
import { validate } from "../../operations/validate.ts";
import { say } from "../../texts/say.ts";
import { daysLeft } from "../claims/countdown.tsx";
import {
	ErrorSummary,
	type FieldErrors,
	type FormValues,
	SelectField,
	Submit,
	TextField,
} from "../components/form.tsx";
import { sendPage } from "../render.ts";
import { errorsOfFault, filledIn } from "../shop/form-errors.ts";
import { SettlingLayout } from "./settling-layout.tsx";

const QUESTIONS = ["sameFault", "samePart", "eventSince"] as const;
const WORDS = {
	sameFault: "warranty.ask-same-fault",
	samePart: "warranty.ask-same-part",
	eventSince: "warranty.ask-event-since",
} as const;

export function registerWarrantyPage(app: FastifyInstance, deps: Deps): void {
	const readers = { ...openTo("account", "link:record", "link:settle", "link:reader"), schema: { hide: true } };
	app.get("/orders/:id/warranty", readers, async (request, reply) => {
		const caller = callerOf(request);
		const order = await readOrder(deps, caller, (request.params as { id: string }).id);
		const query = Object.entries(request.query as Record<string, string | string[]>);
		const values = filledIn(Object.fromEntries(query.map(([name, value]) => [name, [value].flat().at(-1) ?? ""])));
		const { asked, errors } = read(values);
		const found = await readWarranty(deps, caller, order.id, asked);
		return sendPage(
			reply,
			<SettlingLayout order={order} title={say("warranty.title")} caller={caller}>
				<ErrorSummary errors={errors} />
				<p class="lead">{say("warranty.lead")}</p>
				<Terms found={found} />
				<h2>{say("warranty.new")}</h2>
				<form method="get" action={`/orders/${order.id}/warranty`}>
					<TextField
						{...{ values, errors }}
						name="failedOn"
						label={say("warranty.failed-on")}
						type="date"
						width="short"
					/>
					{QUESTIONS.map((name) => (
						<SelectField
							key={name}
							{...{ values: { ...values, [name]: values[name] ?? "not-known" }, errors }}
							name={name}
							label={say(WORDS[name])}
							choices={(["yes", "no", "not-known"] as const).map((value) => ({
								value,
								label: say(`warranty.answer.${value}`),
							}))}
						/>
					))}
					<Submit label={say("warranty.look")} />
				</form>
				<p class="hint">{say("warranty.not-kept")}</p>
				<Sides found={found} />
				<Floors found={found} />
			</SettlingLayout>,
			Object.keys(errors).length > 0 ? 400 : 200,
		);
	});
}

function read(values: FormValues): { readonly asked: WarrantyQuery; readonly errors: FieldErrors } {
	try {
		return { asked: validate(warrantyQuery, values), errors: {} };
	} catch (error) {
		if (!(error instanceof Fault)) throw error;
		return { asked: {}, errors: errorsOfFault(error) };
	}
}

function Terms({ found }: { readonly found: WarrantyView }) {
	return (
		<dl class="facts">
			<dt>{say("warranty.terms")}</dt>
			<dd>
				{found.months === null
					? say("warranty.no-terms")
					: say("warranty.months", { months: found.months, covers: found.covers ?? "" })}
			</dd>
			<dt>{say("warranty.starts")}</dt>
			<dd>{say(`warranty.start.${found.startBasis}`, { date: found.startsOn ?? "" })}</dd>
			{found.endsOn !== null && (
				<>
					<dt>{say("warranty.ends")}</dt>
					<dd>
						<strong>{found.endsOn}</strong>, {daysLeft(found.leftDays)}
					</dd>
				</>
			)}
		</dl>
	);
}

function Sides({ found }: { readonly found: WarrantyView }) {
	return (
		<>
			<p>
				{say("warranty.time")}: <strong>{say(`warranty.time.${found.time}`)}</strong>
			</p>
			{(["for", "against", "open"] as const).map((side) => (
				<section key={side}>
					<h3>{say(`warranty.${side}`)}</h3>
					{found[side].length === 0 ? (
						<p>{say("warranty.nothing")}</p>
					) : (
						<ul>
							{found[side].map((why) => (
								<li key={why}>{why}</li>
							))}
						</ul>
					)}
				</section>
			))}
		</>
	);
}

function Floors({ found }: { readonly found: WarrantyView }) {
	return (
		<>
			<h2>{say("warranty.floors")}</h2>
			{found.floors.length === 0 && <p>{say("warranty.floors-none")}</p>}
			{found.floors.map(({ text, document, locator, readOn }) => (
				<p key={text}>
					{text} <span class="source">{say("warranty.floor-read", { document, locator, date: readOn })}</span>
				</p>
			))}
		</>
	);
}
