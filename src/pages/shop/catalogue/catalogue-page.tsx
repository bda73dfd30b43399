/** `/catalogue`: the classes with their checks, and what the shop adds to them. */
import type { FastifyRequest } from "fastify";
import type { ComponentChildren } from "preact";
import { formTokenFor } from "../../../access/callers.ts";
import { CATALOGUE_VERSION, checksOf } from "../../../catalogue/checks/checks.ts";
import { ITEM_CLASSES } from "../../../catalogue/codes.ts";
import type { OwnCatalogue } from "../../../contract/own-catalogue.ts";
import { say } from "../../../texts/say.ts";
import { unitSymbol } from "../../../texts/unit-symbol.ts";
import { ErrorSummary, type FieldErrors, Form, type FormValues } from "../../components/form.tsx";
import { limitWords } from "../../record-form/own-reading.tsx";
import { ShopLayout } from "../shop-layout.tsx";
import { OwnCheckForm, OwnClassForm } from "./own-forms.tsx";

export interface CataloguePageProps {
	readonly request: FastifyRequest;
	readonly catalogue: OwnCatalogue;
	/** Id of what is being changed. */
	readonly changed: string | null;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

type Check = OwnCatalogue["checks"][number];
type Class = OwnCatalogue["classes"][number];

export function CataloguePage({ request, catalogue, changed, values, errors }: CataloguePageProps) {
	const formToken = formTokenFor(request);
	const field = { values, errors, formToken, changed };
	return (
		<ShopLayout request={request} title={say("catalogue.title")} crumbs={[{ href: "/", label: say("shop.orders") }]}>
			<ErrorSummary errors={errors} />
			<p>{say("catalogue.text")}</p>
			{catalogue.version > 0 && <p class="hint">{say("catalogue.version", { version: catalogue.version })}</p>}
			<section id="checks">
				<h2>{say("catalogue.own-checks")}</h2>
				<Things
					kind="checks"
					formToken={formToken}
					things={catalogue.checks.map((check) => ({
						id: check.id,
						name: check.definition.name,
						words: checkWords(check),
					}))}
				/>
				<OwnCheckForm {...field} check={catalogue.checks.find(({ id }) => id === changed) ?? null} />
			</section>
			<section id="classes">
				<h2>{say("catalogue.own-classes")}</h2>
				<Things
					kind="classes"
					formToken={formToken}
					things={catalogue.classes.map((one) => ({ id: one.id, name: one.name, words: classWords(one, catalogue) }))}
				/>
				<OwnClassForm
					{...field}
					own={catalogue.classes.find(({ id }) => id === changed) ?? null}
					checks={catalogue.checks}
				/>
			</section>
			<section id="seven">
				<h2>{say("catalogue.seven")}</h2>
				<p class="hint">{say("catalogue.class-text", { version: CATALOGUE_VERSION })}</p>
				<ul>
					{ITEM_CLASSES.map((itemClass) => (
						<li key={itemClass}>
							<a href={`/catalogue/${itemClass}`}>{say(`shop.class.${itemClass}`)}</a>:{" "}
							{say("catalogue.checks-of", { count: checksOf(itemClass).length })}
						</li>
					))}
				</ul>
			</section>
		</ShopLayout>
	);
}

function Things({
	kind,
	formToken,
	things,
}: {
	readonly kind: "checks" | "classes";
	readonly formToken: string;
	readonly things: readonly { readonly id: string; readonly name: string; readonly words: ComponentChildren }[];
}) {
	if (things.length === 0) return <p>{say("catalogue.none")}</p>;
	return (
		<Form action={`/catalogue/${kind}`} formToken={formToken}>
			<table class="stacked shelf">
				<thead>
					<tr>
						<th scope="col">{say("stock.name")}</th>
						<th scope="col">{say("catalogue.definition")}</th>
						<th scope="col">
							<span class="unseen">{say("catalogue.change")}</span>
						</th>
					</tr>
				</thead>
				<tbody>
					{things.map(({ id, name, words }) => (
						<tr key={id}>
							<th scope="row">{name}</th>
							<td data-label={say("catalogue.definition")}>{words}</td>
							<td>
								<a href={`/catalogue?change=${id}#${kind}`}>
									{say("catalogue.change")} <span class="unseen">{name}</span>
								</a>{" "}
								<button type="submit" class="quiet small" name="remove" value={id}>
									{say("catalogue.remove")} <span class="unseen">{name}</span>
								</button>
							</td>
						</tr>
					))}
				</tbody>
			</table>
		</Form>
	);
}

function checkWords({ definition, how, whoCan, caution, classes }: Check) {
	const facts = [
		say(`own.kind.${definition.kind}`),
		...(definition.kind === "measured" ? [unitSymbol(definition.unit)] : []),
		...(limitWords(definition) === "" ? [] : [limitWords(definition)]),
		say(`catalogue.who.${whoCan}`),
	];
	const where = classes.map((one) => say(`shop.class.${one}`)).join(", ");
	return (
		<>
			{facts.filter(Boolean).join(" · ")}
			<br />
			{how}
			{caution !== undefined && (
				<>
					<br />
					<strong>{say("form.caution")}</strong> {caution}
				</>
			)}
			<br />
			<span class="hint">
				{say("catalogue.for")}: {where === "" ? say("catalogue.for-own-only") : where}
			</span>
		</>
	);
}

function classWords({ treatedAs, leftOut, ownChecks }: Class, { checks }: OwnCatalogue) {
	const names = ownChecks.flatMap((id) => checks.find((check) => check.id === id)?.definition.name ?? []);
	return (
		<>
			{say("catalogue.treated-as")}: {say(`shop.class.${treatedAs}`)}
			{leftOut.length > 0 && ` · ${say("catalogue.leaves-out", { count: leftOut.length })}`}
			{names.length > 0 && (
				<>
					<br />
					{names.join("; ")}
				</>
			)}
		</>
	);
}
