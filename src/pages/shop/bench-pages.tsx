/** The shop's instruments and benches. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { type BenchView, benchInput, type InstrumentView, instrumentInput } from "../../contract/benches.ts";
import { addBench, addInstrument, readBenches, readInstruments } from "../../operations/benches/benches.ts";
import type { Deps } from "../../operations/deps.ts";
import { validate } from "../../operations/validate.ts";
import { say } from "../../texts/say.ts";
import { unitSymbol } from "../../texts/unit-symbol.ts";
import {
	ErrorSummary,
	type FieldErrors,
	Form,
	type FormValues,
	SelectField,
	Submit,
	TextArea,
	TextField,
} from "../components/form.tsx";
import { readBody } from "../record-form/read-body.ts";
import { readNumber } from "../record-form/read-number.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault, filledIn } from "./form-errors.ts";
import { ShopLayout } from "./shop-layout.tsx";

const UNITS = ["ohm", "mohm", "V", "mV", "A", "W", "g", "kg", "degC", "mm"];

interface Shown {
	readonly request: FastifyRequest;
	readonly instruments: readonly InstrumentView[];
	readonly benches: readonly BenchView[];
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

export function registerBenchPages(app: FastifyInstance, deps: Deps): void {
	const shop = { ...openTo("account"), schema: { hide: true } };
	const shown = async (request: FastifyRequest, values: FormValues, errors: FieldErrors): Promise<Shown> => ({
		request,
		instruments: await readInstruments(deps, callerOf(request)),
		benches: await readBenches(deps, callerOf(request)),
		values,
		errors,
	});
	app.get("/benches", shop, async (request, reply) =>
		sendPage(reply, <BenchPage {...(await shown(request, {}, {}))} />),
	);
	app.post("/instruments", shop, async (request, reply) => {
		const { form } = await readBody(request.body);
		try {
			await addInstrument(deps, callerOf(request), validate(instrumentInput, instrumentOf(form)));
			return reply.redirect("/benches", 303);
		} catch (error) {
			return sendPage(reply, <BenchPage {...(await shown(request, form, errorsOfFault(error)))} />, 400);
		}
	});
	app.post("/benches", shop, async (request, reply) => {
		const { form } = await readBody(request.body);
		const { "bench.label": label, "bench.description": description } = filledIn(form);
		try {
			const input = validate(benchInput, { label, ...(description === undefined ? {} : { description }) });
			await addBench(deps, callerOf(request), input);
			return reply.redirect("/benches", 303);
		} catch (error) {
			const errors = errorsOfFault(error, { "/label": "bench.label", "/description": "bench.description" });
			return sendPage(reply, <BenchPage {...(await shown(request, form, errors))} />, 400);
		}
	});
}

function instrumentOf(form: Readonly<Record<string, string>>): unknown {
	const filled = filledIn(form);
	const number = (name: string) => {
		const typed = filled[name];
		return typed === undefined ? undefined : (readNumber(typed)?.value ?? typed);
	};
	const facts = {
		percentOfReading: number("facts.percentOfReading"),
		counts: number("facts.counts"),
		resolution: number("facts.resolution"),
		rangeHigh: number("facts.rangeHigh"),
		unit: filled["facts.unit"],
		calibratedOn: filled["facts.calibratedOn"],
	};
	return {
		label: filled.label,
		facts: Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)),
	};
}

function BenchPage({ request, instruments, benches, ...field }: Shown) {
	const formToken = formTokenFor(request);
	return (
		<ShopLayout request={request} title={say("shop.benches")} crumbs={[{ href: "/", label: say("shop.orders") }]}>
			<ErrorSummary errors={field.errors} />
			<h2>{say("shop.instruments")}</h2>
			<p>{say("shop.instruments-text")}</p>
			{instruments.length > 0 && (
				<ul>
					{instruments.map((instrument) => (
						<li key={instrument.id}>
							{instrument.label}: {accuracyWords(instrument)}
						</li>
					))}
				</ul>
			)}
			<Form action="/instruments" formToken={formToken}>
				<TextField {...field} name="label" label={say("shop.instrument-label")} />
				<div class="row">
					<TextField
						{...field}
						name="facts.percentOfReading"
						label={say("shop.percent-of-reading")}
						unit="%"
						inputMode="decimal"
					/>
					<TextField {...field} name="facts.counts" label={say("shop.counts")} inputMode="decimal" />
					<TextField {...field} name="facts.resolution" label={say("shop.resolution")} inputMode="decimal" />
				</div>
				<div class="row">
					<SelectField
						{...field}
						name="facts.unit"
						label={say("shop.unit")}
						choices={UNITS.map((value) => ({ value, label: unitSymbol(value) }))}
					/>
					<TextField {...field} name="facts.rangeHigh" label={say("shop.range")} inputMode="decimal" />
					<TextField {...field} name="facts.calibratedOn" label={say("shop.calibrated")} type="date" />
				</div>
				<Submit label={say("shop.add-instrument")} />
			</Form>
			<h2>{say("shop.benches-title")}</h2>
			{benches.length > 0 && (
				<ul>
					{benches.map((bench) => (
						<li key={bench.id}>
							{bench.label}
							{bench.description !== undefined && `: ${bench.description}`}
						</li>
					))}
				</ul>
			)}
			<Form action="/benches" formToken={formToken}>
				<TextField {...field} name="bench.label" label={say("shop.bench-label")} />
				<TextArea
					{...field}
					name="bench.description"
					label={say("shop.bench-description")}
					hint={say("shop.bench-hint")}
				/>
				<Submit label={say("shop.add-bench")} />
			</Form>
		</ShopLayout>
	);
}

function accuracyWords({ facts }: InstrumentView): string {
	const unit = unitSymbol(facts.unit);
	const parts = [
		facts.percentOfReading === undefined ? null : `${facts.percentOfReading} %`,
		facts.counts === undefined
			? null
			: say("shop.counts-of", { counts: facts.counts, resolution: facts.resolution ?? "?", unit }),
	].filter((part) => part !== null);
	const accuracy = parts.length === 0 ? say("shop.accuracy-unknown") : `± (${parts.join(" + ")})`;
	return facts.calibratedOn === undefined
		? accuracy
		: `${accuracy}, ${say("shop.calibrated-on", { date: facts.calibratedOn })}`;
}
