/** What a side can do towards a settlement: propose, answer a proposal, reopen; and what was sent as the request's shape. */
import type { ComponentChildren } from "preact";
import { type SettlementStepView, settlementInput } from "../../contract/settlement.ts";
import { say, type TextKey } from "../../texts/say.ts";
import {
	type FieldErrors,
	Form,
	type FormValues,
	SelectField,
	Submit,
	TextArea,
	TextField,
} from "../components/form.tsx";
import { readAmount } from "../record-form/read-number.ts";
import { filledIn } from "../shop/form-errors.ts";

const PROPOSAL = settlementInput.options[0].shape;
const AMOUNT = PROPOSAL.amounts.unwrap().element.shape;
const ROWS = [0, 1] as const;
const AMOUNT_PARTS = ["amount", "currency", "from", "to"] as const;

export interface StepFormState {
	readonly action: string;
	readonly formToken: string;
	readonly sealKey: string;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

/** What cannot be read stays as typed, so that the shape names it. */
export function stepOfForm(form: Readonly<Record<string, string>>): unknown {
	const filled = filledIn(form);
	const words = filled.text === undefined ? {} : { text: filled.text };
	if (filled.act !== "proposes") return { act: filled.act, proposalId: filled.proposalId, ...words };
	const amounts = rowsFilledIn(filled).map((row) => {
		const typed = filled[`amounts.${row}.amount`];
		return {
			amount: typed === undefined ? undefined : (readAmount(typed) ?? typed),
			currency: filled[`amounts.${row}.currency`]?.toUpperCase(),
			from: filled[`amounts.${row}.from`],
			to: filled[`amounts.${row}.to`],
		};
	});
	const { outcome, itemNext } = filled;
	// Nothing is filled in for anybody: it is sealed for good.
	const proposal = {
		act: "proposes",
		outcome,
		itemNext,
		amounts: amounts.length === 0 ? undefined : amounts,
		...words,
	};
	return JSON.parse(JSON.stringify(proposal));
}

/** A row of which anything is filled in counts, so that nothing of it is dropped. */
function rowsFilledIn(filled: Readonly<Record<string, string>>): number[] {
	return ROWS.filter((row) => AMOUNT_PARTS.some((part) => filled[`amounts.${row}.${part}`] !== undefined));
}

/** The form's fields by the places of the request: an empty row is left out of it. */
export function amountFields(form: Readonly<Record<string, string>>): Record<string, string> {
	return Object.fromEntries(
		rowsFilledIn(filledIn(form)).flatMap((row, place) =>
			AMOUNT_PARTS.map((part) => [`/amounts/${place}/${part}`, `amounts.${row}.${part}`]),
		),
	);
}

/** Assent and decline, or retract, of one open proposal. */
export function AnswerForm({
	step,
	isOwn,
	state,
}: {
	readonly step: SettlementStepView;
	readonly isOwn: boolean;
	readonly state: StepFormState;
}) {
	return (
		<StepForm state={state} id={`answer-${step.id}`} proposalId={step.id}>
			<p class="note">{say(isOwn ? "settling.retract-note" : "settling.assent-note")}</p>
			{isOwn ? (
				<Submit name="act" value="retracts" kind="quiet" label={say("settling.retract")} />
			) : (
				<div class="row">
					<Submit name="act" value="assents" label={say("settling.assent")} />
					<Submit name="act" value="declines" kind="quiet" label={say("settling.decline")} />
				</div>
			)}
		</StepForm>
	);
}

export function ReopenForm({ agreedId, state }: { readonly agreedId: string; readonly state: StepFormState }) {
	return (
		<section>
			<h2>{say("settling.reopen-title")}</h2>
			<StepForm state={state} id="reopen" proposalId={agreedId}>
				<p class="note">{say("settling.reopen-note")}</p>
				<Submit name="act" value="reopens" kind="quiet" label={say("settling.reopen")} />
			</StepForm>
		</section>
	);
}

/** The field of words has a label of its own per form, so its id must not stand twice on the page. */
function StepForm(props: {
	readonly state: StepFormState;
	readonly id: string;
	readonly proposalId: string;
	readonly children: ComponentChildren;
}) {
	const { state } = props;
	return (
		<Form action={state.action} formToken={state.formToken}>
			<input type="hidden" name="sealKey" value={state.sealKey} />
			<input type="hidden" name="proposalId" value={props.proposalId} />
			<div class="field">
				<label for={`text-${props.id}`}>{say("settling.words")}</label>
				<textarea id={`text-${props.id}`} name="text" rows={2} />
			</div>
			{props.children}
		</Form>
	);
}

export function ProposalForm({ state }: { readonly state: StepFormState }) {
	const field = { values: state.values, errors: state.errors };
	const choices = (key: string, codes: readonly string[]) =>
		codes.map((code) => ({ value: code, label: say(`${key}${code}` as TextKey) }));
	return (
		<Form action={state.action} formToken={state.formToken}>
			<h2>{say("settling.propose")}</h2>
			<input type="hidden" name="sealKey" value={state.sealKey} />
			<input type="hidden" name="act" value="proposes" />
			<SelectField
				{...field}
				name="outcome"
				label={say("settling.outcome")}
				empty={say("settling.choose")}
				choices={choices("settling.outcome.", PROPOSAL.outcome.options)}
			/>
			{ROWS.map((row) => (
				<div key={row} class="row">
					<TextField
						{...field}
						name={`amounts.${row}.amount`}
						label={say("settling.amount-number", { number: row + 1 })}
						inputMode="decimal"
						width="short"
					/>
					<TextField {...field} name={`amounts.${row}.currency`} label={say("settling.currency")} width="short" />
					<SelectField
						{...field}
						name={`amounts.${row}.from`}
						label={say("settling.from")}
						empty={say("settling.choose")}
						choices={choices("settling.payer.", AMOUNT.from.options)}
					/>
					<SelectField
						{...field}
						name={`amounts.${row}.to`}
						label={say("settling.to")}
						empty={say("settling.choose")}
						choices={choices("settling.payer.", AMOUNT.to.options)}
					/>
				</div>
			))}
			<SelectField
				{...field}
				name="itemNext"
				label={say("settling.item-next")}
				empty={say("settling.choose")}
				choices={choices("settling.item.", PROPOSAL.itemNext.options)}
			/>
			<TextArea {...field} name="text" label={say("settling.words")} rows={4} />
			<p class="note">{say("settling.propose-note")}</p>
			<Submit label={say("settling.propose-seal")} />
		</Form>
	);
}
