/** The page on which a pack is planned: what is asked, what comes out, what was sealed. */
import type { FastifyRequest } from "fastify";
import { formTokenFor } from "../../access/callers.ts";
import { FOAMS } from "../../catalogue/foams.ts";
import { DROP_BASES } from "../../contract/handling.ts";
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import { type AssessmentView, FACES } from "../../contract/packaging.ts";
import type { PackCurve } from "../../operations/packaging/pack-curves.ts";
import { say, type TextKey } from "../../texts/say.ts";
import {
	Caution,
	CheckField,
	ErrorSummary,
	type FieldErrors,
	Form,
	type FormValues,
	SelectField,
	Submit,
	TextField,
} from "../components/form.tsx";
import { groupsOfFour, showTime } from "../record-form/shown-time.ts";
import { BAG_LAYERS } from "./packaging-form.ts";
import { PackagingResult, type SpokenPackaging } from "./packaging-result.tsx";
import { ShopLayout } from "./shop-layout.tsx";

const LAYER_KINDS = [
	"shielding-metal-in",
	"shielding-metal-out",
	"moisture-barrier",
	"dissipative",
	"low-charging-film",
	"conductive-film",
	"plain-film",
	"bubble-plain",
	"bubble-low-charging",
	"kitchen-foil",
];

export interface PackagingPageProps {
	readonly request: FastifyRequest;
	readonly order: OrderView;
	readonly leg: ConsignmentView;
	readonly assessments: readonly AssessmentView[];
	readonly values: FormValues;
	readonly errors: FieldErrors;
	readonly answer: SpokenPackaging | null;
	readonly curves: readonly PackCurve[];
	readonly sealed: AssessmentView | null;
}

export function PackagingPage(props: PackagingPageProps) {
	const { request, order, leg, values, errors, answer, sealed } = props;
	const field = { values, errors };
	return (
		<ShopLayout
			request={request}
			title={say("pack.title")}
			crumbs={[
				{ href: "/", label: say("shop.orders") },
				{ href: `/orders/${order.id}`, label: `${order.item.maker} ${order.item.model}` },
			]}
		>
			<ErrorSummary errors={errors} />
			{sealed !== null && (
				<div class="note" role="status">
					<p>{say("pack.was-sealed", { time: showTime(sealed.sealedAt) })}</p>
					<p class="fingerprint">{groupsOfFour(sealed.fingerprint)}</p>
				</div>
			)}
			{answer !== null && <PackagingResult answer={answer} curves={props.curves} />}
			<p>{say("pack.planning")}</p>
			<Form action={`/consignments/${leg.id}/packaging`} formToken={formTokenFor(request)}>
				<h2>{say("pack.item")}</h2>
				<TextField {...field} name="item.massKg" label={say("shop.mass")} unit="kg" inputMode="decimal" width="short" />
				<div class="row">
					<TextField {...field} name="item.lengthMm" label={say("shop.length")} unit="mm" inputMode="decimal" />
					<TextField {...field} name="item.widthMm" label={say("shop.width")} unit="mm" inputMode="decimal" />
					<TextField {...field} name="item.heightMm" label={say("shop.height")} unit="mm" inputMode="decimal" />
				</div>
				<div class="row">
					<TextField
						{...field}
						name="item.gn"
						label={say("pack.fragility")}
						hint={say("pack.fragility-hint")}
						unit="gₙ"
						inputMode="decimal"
					/>
					<SelectField
						{...field}
						name="item.basis"
						label={say("pack.basis")}
						empty="–"
						choices={choices("pack.basis", ["tested", "maker", "board-strength", "class", "our-choice"])}
					/>
				</div>
				<SelectField
					{...field}
					name="item.cell"
					label={say("shop.cell")}
					choices={choices("shop.cell-kind", ["none", "coin", "lithium-ion", "supercapacitor"])}
				/>
				<CheckField {...field} name="item.edgesPadded" label={say("pack.edges-padded")} />

				<h2>{say("pack.cushion")}</h2>
				<Cushion prefix="cushion" {...field} />
				<details>
					<summary>{say("pack.other-faces")}</summary>
					<p class="hint">{say("pack.other-faces-text")}</p>
					{FACES.map((face) => (
						<details key={face}>
							<summary>{say(`pack.face.${face}` as TextKey)}</summary>
							<Cushion prefix={`face.${face}`} optional {...field} />
						</details>
					))}
				</details>

				<h2>{say("pack.bag")}</h2>
				<Caution>{say("pack.bag-caution")}</Caution>
				{BAG_LAYERS.map((place) => (
					<fieldset key={place} class="field">
						<legend>{say("pack.bag-layer", { place })}</legend>
						<div class="row">
							<SelectField
								{...field}
								name={`bag.${place}.kind`}
								label={say("pack.layer-kind")}
								empty={say("pack.no-layer")}
								choices={choices("pack.layer", LAYER_KINDS)}
							/>
							<SelectField
								{...field}
								name={`bag.${place}.evidence`}
								label={say("pack.evidence")}
								choices={choices("pack.evidence", ["measured", "data-sheet", "looks-like", "none"])}
							/>
						</div>
						<CheckField {...field} name={`bag.${place}.closed`} label={say("pack.closed")} />
						<CheckField {...field} name={`bag.${place}.intact`} label={say("pack.intact")} />
					</fieldset>
				))}

				<h2>{say("pack.box")}</h2>
				<div class="row">
					<TextField {...field} name="box.lengthMm" label={say("pack.inner-length")} unit="mm" inputMode="decimal" />
					<TextField {...field} name="box.widthMm" label={say("pack.inner-width")} unit="mm" inputMode="decimal" />
					<TextField {...field} name="box.heightMm" label={say("pack.inner-height")} unit="mm" inputMode="decimal" />
				</div>
				<div class="row">
					<TextField {...field} name="pack.grossMassKg" label={say("shop.parcel-mass")} unit="kg" inputMode="decimal" />
					<TextField {...field} name="pack.closedHow" label={say("pack.closed-how")} />
				</div>
				<CheckField {...field} name="box.reused" label={say("pack.reused")} />

				<h2>{say("pack.route")}</h2>
				<SelectField
					{...field}
					name="route.dropBasis"
					label={say("pack.drop-basis")}
					hint={say("pack.drop-basis-hint")}
					choices={choices("pack.drop", DROP_BASES)}
				/>
				<div class="row">
					<SelectField
						{...field}
						name="route.mode"
						label={say("shop.mode")}
						choices={choices("shop.mode-kind", ["road", "air", "sea", "rail", "mixed", "carried-by-hand"])}
					/>
					<TextField {...field} name="route.transitDays" label={say("pack.days")} inputMode="decimal" />
				</div>
				<Submit name="act" value="plan" label={say("pack.compute")} />
				{answer !== null && (
					<>
						<p class="note">{say("pack.seal-who")}</p>
						<Submit name="act" value="seal" kind="quiet" label={say("pack.seal")} />
					</>
				)}
			</Form>
			{props.assessments.length > 0 && (
				<>
					<h2>{say("pack.sealed-before")}</h2>
					<ul>
						{props.assessments.map((assessment) => (
							<li key={assessment.id}>
								{showTime(assessment.sealedAt)}, <span class="fingerprint">{groupsOfFour(assessment.fingerprint)}</span>
							</li>
						))}
					</ul>
				</>
			)}
		</ShopLayout>
	);
}

function choices(key: string, codes: readonly string[]) {
	return codes.map((value) => ({ value, label: say(`${key}.${value}` as TextKey) }));
}

function Cushion({
	prefix,
	optional = false,
	...field
}: {
	readonly prefix: string;
	readonly optional?: boolean;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}) {
	const foams = FOAMS.map((foam) => ({
		value: foam.id,
		label: `${foam.material}${foam.densityKgPerM3 === null ? "" : `, ${foam.densityKgPerM3} kg/m³`} (${say(`pack.drop-number.${foam.dropNumber}` as TextKey)}, ${say(foam.model.kind === "stress-energy" ? "pack.model-curve" : "pack.model-gas")})`,
	}));
	return (
		<>
			<SelectField
				{...field}
				name={`${prefix}.foam`}
				label={say("pack.foam")}
				{...(optional ? { empty: say("pack.same") } : {})}
				choices={[...foams, { value: "unknown", label: say("pack.unknown-foam") }]}
			/>
			<div class="row">
				<TextField
					{...field}
					name={`${prefix}.thicknessMm`}
					label={say("pack.thickness")}
					unit="mm"
					inputMode="decimal"
				/>
				<TextField
					{...field}
					name={`${prefix}.padCount`}
					label={say("pack.pad-count")}
					hint={say("pack.pad-hint")}
					inputMode="numeric"
				/>
				<TextField
					{...field}
					name={`${prefix}.padLengthMm`}
					label={say("pack.pad-length")}
					unit="mm"
					inputMode="decimal"
				/>
				<TextField
					{...field}
					name={`${prefix}.padWidthMm`}
					label={say("pack.pad-width")}
					unit="mm"
					inputMode="decimal"
				/>
			</div>
		</>
	);
}
