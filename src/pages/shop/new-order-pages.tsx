/** Taking an order in. */
import type { FastifyInstance, FastifyRequest } from "fastify";
import type { Caller } from "../../access/caller.ts";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { ITEM_CLASSES } from "../../catalogue/codes.ts";
import { orderInput } from "../../contract/orders.ts";
import type { OwnCatalogue } from "../../contract/own-catalogue.ts";
import type { Deps } from "../../operations/deps.ts";
import { createOrder } from "../../operations/orders/create-order.ts";
import { readOrders } from "../../operations/orders/read-orders.ts";
import { readOwnCatalogue } from "../../operations/own-catalogue/own-catalogue.ts";
import { validate } from "../../operations/validate.ts";
import { LANGUAGES } from "../../texts/language.ts";
import { say } from "../../texts/say.ts";
import {
	ErrorSummary,
	type FieldErrors,
	FieldGroup,
	Form,
	type FormValues,
	SelectField,
	Submit,
	TextArea,
	TextField,
} from "../components/form.tsx";
import { readBody } from "../record-form/read-body.ts";
import { readAmount, readNumber } from "../record-form/read-number.ts";
import { sendPage } from "../render.ts";
import { errorsOfFault, filledIn } from "./form-errors.ts";
import { ShopLayout } from "./shop-layout.tsx";

/** Fields of the form by the places of the request that they are called otherwise at. */
const FIELDS = { "/item/value/amount": "item.value", "/item/ownClassId": "item.class" };

export function registerNewOrder(app: FastifyInstance, deps: Deps): void {
	const shop = { ...openTo("account"), schema: { hide: true } };
	app.get("/orders/new", shop, async (request, reply) =>
		sendPage(
			reply,
			<NewOrder
				request={request}
				own={await ownClasses(request)}
				values={{ "owner.kind": "consumer", ...(await shopOfLastOrder(deps, callerOf(request))) }}
				errors={{}}
			/>,
		),
	);
	app.post("/orders/new", shop, async (request, reply) => {
		const { form } = await readBody(request.body);
		const own = await ownClasses(request);
		try {
			const order = await createOrder(deps, callerOf(request), validate(orderInput, orderOf(form, own)), null);
			return reply.redirect(`/orders/${order.id}`, 303);
		} catch (error) {
			return sendPage(
				reply,
				<NewOrder request={request} own={own} values={form} errors={orderErrors(form, error)} />,
				400,
			);
		}
	});

	const ownClasses = async (request: FastifyRequest) => (await readOwnCatalogue(deps, callerOf(request))).classes;
}

/** The shop as it stood in its newest order, so that it need not be typed again; what was read in is another shop's. */
async function shopOfLastOrder(deps: Deps, caller: Caller): Promise<FormValues> {
	const { orders } = await readOrders(deps, caller, 10, null);
	const repairer = orders.find(({ readIn, repairer: { erasedAt } }) => readIn === undefined && !erasedAt)?.repairer;
	const parts = ["name", "country", "email", "address"] as const;
	return {
		"repairer.kind": repairer?.kind ?? "business",
		...Object.fromEntries(parts.map((part) => [`repairer.${part}`, repairer?.[part]])),
	};
}

/** What was refused, by field. A warranty takes both what it covers and for how long. */
function orderErrors(form: Readonly<Record<string, string>>, error: unknown): FieldErrors {
	const { "terms.warranty.months": months, "terms.warranty.covers": covers } = filledIn(form);
	return {
		...errorsOfFault(error, FIELDS),
		...(months !== undefined && covers === undefined ? { "terms.warranty.covers": say("shop.covers-missing") } : {}),
		...(months === undefined && covers !== undefined ? { "terms.warranty.months": say("shop.months-missing") } : {}),
	};
}

/** The form's fields as the request's shape; a number that cannot be read stays text, so that the shape names it. */
function orderOf(form: Readonly<Record<string, string>>, own: OwnCatalogue["classes"]): unknown {
	const filled = filledIn(form);
	const number = (name: string) => {
		const typed = filled[name];
		return typed === undefined ? undefined : (readNumber(typed)?.value ?? typed);
	};
	const party = (side: "repairer" | "owner") =>
		only({
			kind: filled[`${side}.kind`],
			name: filled[`${side}.name`],
			country: filled[`${side}.country`]?.toUpperCase(),
			language: filled[`${side}.language`],
			email: filled[`${side}.email`],
			address: filled[`${side}.address`],
		});
	const millimetres = (name: string) => {
		const value = number(name);
		return typeof value === "number" ? value / 1000 : value;
	};
	const ownClass = own.find(({ id }) => id === filled["item.class"]);
	const amount = filled["item.value"];
	const months = number("terms.warranty.months");
	const covers = filled["terms.warranty.covers"];
	return {
		contractKind: filled.contractKind,
		repairer: party("repairer"),
		owner: party("owner"),
		item: only({
			class: ownClass?.treatedAs ?? filled["item.class"],
			ownClassId: ownClass?.id,
			maker: filled["item.maker"],
			model: filled["item.model"],
			serialNumber: filled["item.serialNumber"],
			massKg: number("item.massKg"),
			lengthM: millimetres("item.lengthM"),
			widthM: millimetres("item.widthM"),
			heightM: millimetres("item.heightM"),
			value:
				amount === undefined
					? undefined
					: { amount: readAmount(amount) ?? amount, currency: filled["item.value.currency"]?.toUpperCase() ?? "EUR" },
			boughtOn: filled["item.boughtOn"],
			cell: filled["item.cell"],
		}),
		terms: only({
			reportedFault: filled["terms.reportedFault"],
			agreedWork: filled["terms.agreedWork"],
			warranty: months === undefined && covers === undefined ? undefined : only({ months, covers }),
			carrierContract: {
				toRepairer: filled["terms.carrierContract.toRepairer"],
				toOwner: filled["terms.carrierContract.toOwner"],
			},
		}),
	};
}

function only(members: Readonly<Record<string, unknown>>): Record<string, unknown> {
	return Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined));
}

function NewOrder({
	request,
	own,
	values,
	errors,
}: {
	readonly request: FastifyRequest;
	readonly own: OwnCatalogue["classes"];
	readonly values: FormValues;
	readonly errors: FieldErrors;
}) {
	const field = { values, errors };
	const choices = (key: string, codes: readonly string[]) =>
		codes.map((code) => ({ value: code, label: say(`${key}.${code}` as never) }));
	const sides = choices("shop.side", ["owner", "repairer"]);
	return (
		<ShopLayout request={request} title={say("shop.new-order")} crumbs={[{ href: "/", label: say("shop.orders") }]}>
			<ErrorSummary errors={errors} />
			<Form action="/orders/new" formToken={formTokenFor(request)}>
				<SelectField
					{...field}
					name="contractKind"
					label={say("shop.contract-kind")}
					choices={choices("shop.contract", ["repair", "exchange", "warranty-return"])}
				/>
				<h2>{say("shop.item")}</h2>
				<SelectField
					{...field}
					name="item.class"
					label={say("shop.item-class")}
					choices={[...choices("shop.class", ITEM_CLASSES), ...own.map(({ id, name }) => ({ value: id, label: name }))]}
				/>
				<div class="row">
					<TextField {...field} name="item.maker" label={say("shop.maker")} />
					<TextField {...field} name="item.model" label={say("shop.model")} />
				</div>
				<TextField {...field} name="item.serialNumber" label={say("shop.serial-number")} />
				<div class="row">
					<TextField {...field} name="item.massKg" label={say("shop.mass")} unit="kg" inputMode="decimal" />
					<TextField {...field} name="item.lengthM" label={say("shop.length")} unit="mm" inputMode="decimal" />
					<TextField {...field} name="item.widthM" label={say("shop.width")} unit="mm" inputMode="decimal" />
					<TextField {...field} name="item.heightM" label={say("shop.height")} unit="mm" inputMode="decimal" />
				</div>
				<div class="row">
					<TextField {...field} name="item.value" label={say("shop.value")} inputMode="decimal" />
					<TextField
						{...field}
						name="item.value.currency"
						label={say("shop.currency")}
						hint={say("shop.currency-hint")}
						width="short"
					/>
					<TextField
						{...field}
						name="item.boughtOn"
						label={say("shop.bought-on")}
						hint={say("shop.bought-on-hint")}
						type="date"
						width="short"
					/>
				</div>
				<SelectField
					{...field}
					name="item.cell"
					label={say("shop.cell")}
					empty={say("shop.not-known")}
					choices={choices("shop.cell-kind", ["none", "coin", "lithium-ion", "supercapacitor"])}
				/>
				<PartyFields side="owner" {...field} />
				<PartyFields side="repairer" {...field} />
				<h2>{say("shop.terms")}</h2>
				<TextArea
					{...field}
					name="terms.reportedFault"
					label={say("shop.reported-fault")}
					hint={say("shop.reported-fault-hint")}
				/>
				<TextArea {...field} name="terms.agreedWork" label={say("shop.agreed-work")} />
				<div class="row">
					<TextField
						{...field}
						name="terms.warranty.months"
						label={say("shop.warranty-months")}
						inputMode="numeric"
						width="short"
					/>
					<TextField {...field} name="terms.warranty.covers" label={say("shop.warranty-covers")} />
				</div>
				<div class="row">
					<SelectField
						{...field}
						name="terms.carrierContract.toRepairer"
						label={say("shop.carrier-in")}
						choices={sides}
					/>
					<SelectField
						{...field}
						name="terms.carrierContract.toOwner"
						label={say("shop.carrier-out")}
						choices={[...sides].reverse()}
					/>
				</div>
				<Submit label={say("shop.take-in")} />
			</Form>
		</ShopLayout>
	);
}

function PartyFields({
	side,
	...field
}: {
	readonly side: "owner" | "repairer";
	readonly values: FormValues;
	readonly errors: FieldErrors;
}) {
	const label = (name: string) => say(`shop.party.${name}` as never);
	return (
		<FieldGroup.Provider value={say(`shop.${side}`)}>
			<h2>{say(`shop.${side}`)}</h2>
			<TextField {...field} name={`${side}.name`} label={label("name")} />
			<div class="row">
				<SelectField
					{...field}
					name={`${side}.kind`}
					label={label("kind")}
					choices={["consumer", "business"].map((value) => ({ value, label: label(value) }))}
				/>
				<TextField
					{...field}
					name={`${side}.country`}
					label={label("country")}
					hint={label("country-hint")}
					width="short"
				/>
				<SelectField
					{...field}
					name={`${side}.language`}
					label={label("language")}
					choices={LANGUAGES.map((value) => ({ value, label: say(`papers.language.${value}`) }))}
				/>
			</div>
			<div class="row">
				<TextField {...field} name={`${side}.email`} label={label("email")} type="email" />
				<TextField {...field} name={`${side}.address`} label={label("address")} />
			</div>
		</FieldGroup.Provider>
	);
}
