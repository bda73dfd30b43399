/** The checks of one class of the catalogue, in the order in which they are done. */
import type { FastifyRequest } from "fastify";
import { CATALOGUE_VERSION, checksOf } from "../../../catalogue/checks/checks.ts";
import type { ItemClass } from "../../../catalogue/codes.ts";
import { isTextKey, say, type TextKey } from "../../../texts/say.ts";
import { unitSymbol } from "../../../texts/unit-symbol.ts";
import { Caution } from "../../components/form.tsx";
import { checkName } from "../../record-form/check-control.tsx";
import { CheckFigures } from "../../record-form/check-figures.tsx";
import { Collectors } from "../../record-form/collectors.tsx";
import { ShopLayout } from "../shop-layout.tsx";

export function ClassPage({ request, itemClass }: { readonly request: FastifyRequest; readonly itemClass: ItemClass }) {
	const checks = checksOf(itemClass);
	return (
		<ShopLayout
			request={request}
			title={say("catalogue.class-title", { name: say(`shop.class.${itemClass}`) })}
			crumbs={[
				{ href: "/", label: say("shop.orders") },
				{ href: "/catalogue", label: say("catalogue.title") },
			]}
		>
			<p>{say("catalogue.class-text", { version: CATALOGUE_VERSION })}</p>
			<Collectors checks={checks} />
			<ol class="check-list">
				{checks.map((check) => (
					<li key={check.id} id={check.id}>
						<h2>{checkName(check)}</h2>
						{isTextKey(check.hintKey) && <p>{say(check.hintKey)}</p>}
						{check.cautionKeys.filter(isTextKey).map((key) => (
							<Caution key={key}>{say(key)}</Caution>
						))}
						<CheckFigures check={check} />
						<dl class="facts">
							<dt>{say("catalogue.unit")}</dt>
							<dd>
								{check.typedUnits
									.map((unit) => unitSymbol(unit))
									.filter(Boolean)
									.join(", ") || say("catalogue.no-unit")}
							</dd>
							<dt>{say("catalogue.compared")}</dt>
							<dd>{say(`own.comparability.${check.comparability}`)}</dd>
							<dt>{say("catalogue.who")}</dt>
							<dd>
								{say(`catalogue.who.${check.whoCan}`)}
								{check.short && ` · ${say("catalogue.short")}`}
							</dd>
							<dt>{say("catalogue.source")}</dt>
							<dd>
								{check.source.document}, {check.source.locator} (
								{say(`pack.standing.${check.source.standing}` as TextKey)})
							</dd>
						</dl>
					</li>
				))}
			</ol>
		</ShopLayout>
	);
}
