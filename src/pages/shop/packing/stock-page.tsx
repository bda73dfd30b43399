/** What the shop packs with: boxes, foam sheets with what is known of their foam, bags. */
import type { FastifyRequest } from "fastify";
import type { ComponentChildren } from "preact";
import { formTokenFor } from "../../../access/callers.ts";
import type { StockKind, StockView } from "../../../contract/stock.ts";
import { foamChoices } from "../../../operations/packaging/foam-words.ts";
import { bagWords, kindWords } from "../../../operations/packaging/pack-words.ts";
import { sheetFit } from "../../../operations/packaging/sheet-fit.ts";
import { inMillimetres } from "../../../texts/millimetres.ts";
import { say, type TextKey, writeNumber } from "../../../texts/say.ts";
import {
	Caution,
	ErrorSummary,
	type FieldErrors,
	Form,
	type FormValues,
	SelectField,
	Submit,
	TextArea,
	TextField,
} from "../../components/form.tsx";
import { ShopLayout } from "../shop-layout.tsx";
import { UNKNOWN_FOAM } from "./cushion-names.ts";
import type { Fields } from "./field-parts.ts";
import { BagLayers, BoxFields } from "./pack-parts-fields.tsx";
import { BY_POINTS } from "./read-stock.ts";

interface StockPageProps {
	readonly request: FastifyRequest;
	readonly stock: StockView;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

export function StockPage({ request, stock, ...field }: StockPageProps) {
	const formToken = formTokenFor(request);
	return (
		<ShopLayout request={request} title={say("stock.title")} crumbs={[{ href: "/", label: say("shop.orders") }]}>
			<ErrorSummary errors={field.errors} />
			<p>{say("stock.text")}</p>
			<p>
				<a href="/foam-drops">{say("drops.title")}</a>
			</p>
			<Shelf kind="boxes" formToken={formToken} things={stock.boxes.map((box) => [box, boxWords(box)])}>
				<Keep kind="boxes" formToken={formToken} {...field}>
					<BoxFields prefix="box" {...field} />
				</Keep>
			</Shelf>
			<Shelf
				kind="foams"
				formToken={formToken}
				things={stock.foams.map((sheet) => [
					sheet,
					<>
						{kindWords(sheet.foam)}, {writeNumber(Number(inMillimetres(sheet.thicknessM)))} mm
						<Fit foam={sheet.foam} />
					</>,
				])}
			>
				<Keep kind="foams" formToken={formToken} {...field}>
					<FoamFields {...field} />
				</Keep>
			</Shelf>
			<Shelf
				kind="bags"
				formToken={formToken}
				things={stock.bags.map((bag) => [bag, bag.layers.map((layer) => bagWords(layer)).join("; ")])}
			>
				<Keep kind="bags" formToken={formToken} {...field}>
					<p class="hint">{say("stock.bag-text")}</p>
					<BagLayers {...field} />
				</Keep>
			</Shelf>
		</ShopLayout>
	);
}

interface Thing {
	readonly id: string;
	readonly price?: { readonly amount: number; readonly currency: string } | undefined;
}

/** The things of a kind, each with the way off the shelf, and the form for one more. */
function Shelf({
	kind,
	formToken,
	things,
	children,
}: {
	readonly kind: StockKind;
	readonly formToken: string;
	readonly things: readonly (readonly [Thing, ComponentChildren])[];
	readonly children: ComponentChildren;
}) {
	return (
		<section id={kind}>
			<h2>{say(`stock.${kind}`)}</h2>
			{things.length === 0 ? (
				<p>{say("stock.none")}</p>
			) : (
				<Form action={`/stock/${kind}`} formToken={formToken}>
					<table class="stacked shelf">
						<thead>
							<tr>
								<th scope="col">{say("stock.name")}</th>
								<th scope="col">{say("stock.what")}</th>
								<th scope="col" class="number">
									{say(PRICE_OF[kind])}
								</th>
								<th scope="col">
									<span class="unseen">{say("stock.remove")}</span>
								</th>
							</tr>
						</thead>
						<tbody>
							{things.map(([{ id, price }, words]) => (
								<tr key={id}>
									<th scope="row">{id}</th>
									<td data-label={say("stock.what")}>{words}</td>
									<td class="number" data-label={say(PRICE_OF[kind])}>
										{price === undefined ? "–" : `${price.amount} ${price.currency}`}
									</td>
									<td>
										<button type="submit" class="quiet small" name="remove" value={id}>
											{say("stock.remove")} <span class="unseen">{id}</span>
										</button>
									</td>
								</tr>
							))}
						</tbody>
					</table>
				</Form>
			)}
			{children}
		</section>
	);
}

const PRICE_OF = { boxes: "stock.price", foams: "stock.price-per-m2", bags: "stock.price" } as const satisfies Record<
	StockKind,
	TextKey
>;

function Keep({
	kind,
	formToken,
	children,
	...field
}: Fields & { readonly kind: StockKind; readonly formToken: string; readonly children: ComponentChildren }) {
	const own = (name: string) => field.errors[name] !== undefined || (field.values[name] ?? "") !== "";
	return (
		<details open={own(`${kind}.id`) || own("foam.points")}>
			<summary>{say(`stock.add-${kind}`)}</summary>
			<Form action={`/stock/${kind}`} formToken={formToken}>
				<TextField {...field} name={`${kind}.id`} label={say("stock.name")} hint={say("stock.name-hint")} />
				{children}
				<div class="row">
					<TextField {...field} name={`${kind}.priceAmount`} label={say(PRICE_OF[kind])} inputMode="decimal" />
					<TextField {...field} name={`${kind}.priceCurrency`} label={say("pack.currency")} width="short" />
				</div>
				<Submit label={say("stock.keep")} />
			</Form>
		</details>
	);
}

function FoamFields(field: Fields) {
	return (
		<>
			<Caution>{say("pack.cutting-caution")}</Caution>
			<div class="row">
				<SelectField
					{...field}
					name="foam.foam"
					label={say("pack.foam")}
					choices={[
						{ value: BY_POINTS, label: say("stock.by-points") },
						...foamChoices(),
						{ value: UNKNOWN_FOAM, label: say("pack.unknown-foam") },
					]}
				/>
				<TextField {...field} name="foam.thicknessMm" label={say("pack.thickness")} unit="mm" inputMode="decimal" />
			</div>
			<TextArea {...field} name="foam.points" label={say("stock.points")} hint={say("stock.points-hint")} rows={6} />
		</>
	);
}

/** How well the points of a foam fit, and how far they reach. */
function Fit({ foam }: { readonly foam: StockView["foams"][number]["foam"] }) {
	const fit = sheetFit(foam);
	if (fit === null) return null;
	const [low, high] = fit.energyDensityRangeKJPerM3;
	return (
		<span class="check-detail">
			{say("stock.fit", {
				a: fit.aKPa,
				b: fit.bPerKPa,
				least: fit.minimumCushionFactor,
				low,
				high,
			})}{" "}
			{fit.predictionIntervalPercent === null || fit.residualPercent === null || fit.r2 === null
				? say("stock.fit-two")
				: say("stock.fit-interval", {
						residual: fit.residualPercent,
						interval: fit.predictionIntervalPercent,
						r2: fit.r2,
					})}
		</span>
	);
}

function boxWords(box: StockView["boxes"][number]): string {
	const size = [box.innerLengthM, box.innerWidthM, box.innerHeightM]
		.map((side) => writeNumber(Number(inMillimetres(side))))
		.join(" × ");
	return [
		say("pack.inside", { size: `${size} mm` }),
		...(box.edgeCrushKNPerM === undefined ? [] : [say("pack.edge-crush-of", { edgeCrushKNPerM: box.edgeCrushKNPerM })]),
		...(box.caliperM === undefined ? [] : [say("pack.caliper-of", { caliperMm: Number(inMillimetres(box.caliperM)) })]),
		...(box.reused ? [say("pack.was-reused")] : []),
	].join(", ");
}
