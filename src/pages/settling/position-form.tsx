/** Stating a position: the form, and what was sent as the request's shape. */
import type { OrderView } from "../../contract/orders.ts";
import { type PositionView, positionInput } from "../../contract/positions.ts";
import type { RecordView } from "../../contract/records.ts";
import { testName } from "../../operations/settling/settling-words.ts";
import { say, type TextKey } from "../../texts/say.ts";
import {
	Caution,
	CheckField,
	ChoiceField,
	type FieldErrors,
	Form,
	type FormValues,
	SelectField,
	Submit,
	TextArea,
	TextField,
} from "../components/form.tsx";
import { filledIn } from "../shop/form-errors.ts";
import { recordName } from "./position-section.tsx";

const { kind: KINDS } = positionInput.shape;
const TEST = positionInput.shape.test.unwrap().shape;
const STANCES = positionInput.shape.answers.unwrap().shape.stance;

export interface PositionFormState {
	readonly formToken: string;
	readonly sealKey: string;
	/** Party that the reader speaks for. */
	readonly partyId: string;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

/** What cannot be read stays as typed, so that the shape names it. */
export function positionOfForm(form: Readonly<Record<string, string>>): unknown {
	const filled = filledIn(form);
	const { kind = "states", text, consignmentId } = filled;
	const recordIds = Object.keys(filled).flatMap((name) => (name.startsWith("record.") ? [name.slice(7)] : []));
	const dates = (filled["test.dates"] ?? "").split(/[\s,;]+/).filter((date) => date !== "");
	const [positionId, stance] = [filled["answers.positionId"], filled["answers.stance"]];
	const [id, doneBy] = [filled["test.id"], filled["test.doneBy"]];
	// Nothing is filled in for anybody and nothing is dropped: it is sealed for good.
	const isTest = kind !== "states" || [id, doneBy].some((one) => one !== undefined) || dates.length > 0;
	return written({
		kind,
		text,
		consignmentId,
		recordIds: recordIds.length === 0 ? undefined : recordIds,
		answers: positionId === undefined && stance === undefined ? undefined : { positionId, stance },
		test: isTest ? { id, doneBy, dates: dates.length === 0 ? undefined : dates } : undefined,
	});
}

/** Without the members that are not given. */
function written(value: object): unknown {
	return JSON.parse(JSON.stringify(value));
}

export function PositionForm(props: {
	readonly order: OrderView;
	readonly positions: readonly PositionView[];
	readonly records: readonly RecordView[];
	readonly state: PositionFormState;
}) {
	const { order, state } = props;
	const field = { values: { kind: "states", ...state.values }, errors: state.errors };
	const choices = (key: string, codes: readonly string[]) =>
		codes.map((code) => ({ value: code, label: say(`${key}${code}` as TextKey) }));
	const others = props.positions.filter(({ partyId }) => partyId !== state.partyId);
	const sealed = props.records.filter((record) => record.sealed !== null);
	return (
		<Form action={`/orders/${order.id}/positions`} formToken={state.formToken}>
			<h2>{say("settling.new")}</h2>
			<p class="hint">{say("settling.new-hint")}</p>
			<input type="hidden" name="sealKey" value={state.sealKey} />
			<ChoiceField
				{...field}
				name="kind"
				label={say("settling.what")}
				choices={choices("settling.kind.", KINDS.options)}
			/>
			<TextArea {...field} name="text" label={say("settling.text")} rows={8} />
			{others.length > 0 && (
				<div class="row">
					<SelectField
						{...field}
						name="answers.positionId"
						label={say("settling.answer-to")}
						empty={say("settling.answer-none")}
						choices={others.map(({ id, number }) => ({ value: id, label: say("settling.answer-number", { number }) }))}
					/>
					<SelectField
						{...field}
						name="answers.stance"
						label={say("settling.stance")}
						empty={say("settling.choose")}
						choices={choices("settling.stance.", STANCES.options)}
					/>
				</div>
			)}
			<SelectField
				{...field}
				name="consignmentId"
				label={say("settling.leg")}
				empty={say("settling.leg-none")}
				choices={order.consignments.map(({ id, leg }) => ({ value: id, label: say("settling.leg-number", { leg }) }))}
			/>
			{sealed.length > 0 && (
				<fieldset class="field">
					<legend>{say("settling.records")}</legend>
					{sealed.map((record) => (
						<CheckField key={record.id} {...field} name={`record.${record.id}`} label={recordName(order, record)} />
					))}
				</fieldset>
			)}
			<div class="row">
				<SelectField
					{...field}
					name="test.id"
					label={say("settling.which-test")}
					empty={say("settling.test-none")}
					choices={TEST.id.options.map((id) => ({ value: id, label: testName(id) }))}
				/>
				<SelectField
					{...field}
					name="test.doneBy"
					label={say("settling.done-by")}
					empty={say("settling.choose")}
					choices={choices("settling.by.", TEST.doneBy.options)}
				/>
			</div>
			<TextField {...field} name="test.dates" label={say("settling.dates")} hint={say("settling.dates-hint")} />
			<Caution>{say("settling.caution-test")}</Caution>
			<p class="note">{say("settling.seal-note")}</p>
			<Submit label={say("settling.seal")} />
		</Form>
	);
}
