/** One check of the catalogue as form controls: a result, or the reason why it was not tested. */
import type { RecordContentInput } from "../../contract/records.ts";
import type { GuidedCheck } from "../../operations/records/guided-record.ts";
import { readingWords } from "../../texts/reading-words.ts";
import { isTextKey, say } from "../../texts/say.ts";
import {
	Caution,
	ChoiceField,
	type FieldErrors,
	FieldGroup,
	type FormValues,
	SelectField,
	TextField,
} from "../components/form.tsx";
import { CheckFigures } from "./check-figures.tsx";
import { controlName, isFromFile, REASONS, readingOf } from "./checks-form.ts";
import { Quantity } from "./field-control.tsx";

interface CheckProps {
	readonly check: GuidedCheck;
	readonly content: RecordContentInput;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

export function CheckControl({ check, content, values, errors }: CheckProps) {
	const reading = readingOf(check, content);
	return (
		<section class="check">
			{check.kind !== "visual" && (
				<>
					<h2>{checkName(check)}</h2>
					{isTextKey(check.hintKey) && <p class="hint">{say(check.hintKey)}</p>}
				</>
			)}
			<CheckFigures check={check} />
			{reading !== undefined && isFromFile(reading) ? (
				<p>
					{readingWords(reading)} ({say("arrival.check.file")})
				</p>
			) : (
				<FieldGroup.Provider value={checkName(check)}>
					<Controls check={check} values={values} errors={errors} />
				</FieldGroup.Provider>
			)}
		</section>
	);
}

/** The cautions of these checks, each once. */
export function CheckCautions({ checks }: { readonly checks: readonly GuidedCheck[] }) {
	const keys = [...new Set(checks.flatMap((check) => check.cautionKeys))];
	return (
		<>
			{keys.filter(isTextKey).map((key) => (
				<Caution key={key}>{say(key)}</Caution>
			))}
		</>
	);
}

/** The name of a check in words. */
export function checkName(check: Pick<GuidedCheck, "id" | "nameKey">): string {
	return isTextKey(check.nameKey) ? say(check.nameKey) : check.id;
}

type ControlsProps = Omit<CheckProps, "content">;

function Controls(props: ControlsProps) {
	const { check, values, errors } = props;
	const open = ["reason", "remark"].some((part) => {
		const name = controlName(check, part);
		return (values[name] ?? "") !== "" || errors[name] !== undefined;
	});
	return (
		<>
			<Result {...props} />
			<details open={open}>
				<summary>{say("arrival.check.more")}</summary>

				<SelectField
					name={controlName(check, "reason")}
					label={say("arrival.check.not-tested")}
					values={values}
					errors={errors}
					empty="–"
					choices={REASONS.map((reason) => ({ value: reason, label: say(`arrival.not-tested.${reason}`) }))}
				/>
				<TextField
					name={controlName(check, "remark")}
					label={say("arrival.check.remark")}
					values={values}
					errors={errors}
				/>
			</details>
		</>
	);
}

function Result({ check, values, errors }: ControlsProps) {
	const control = (part: string) => ({ name: controlName(check, part), values, errors });
	switch (check.kind) {
		case "visual": {
			const field = control("result");
			return (
				<ChoiceField
					{...field}
					label={checkName(check)}
					hint={isTextKey(check.hintKey) ? say(check.hintKey) : undefined}
					values={{ ...values, [field.name]: values[field.name] ?? "" }}
					choices={[
						{ value: "good", label: say("arrival.check.good") },
						{ value: "bad", label: say("arrival.check.bad") },
						{ value: "", label: say("arrival.no-answer") },
					]}
				/>
			);
		}
		case "outcome":
			return (
				<div class="row">
					<TextField {...control("trials")} label={say("arrival.check.trials")} inputMode="numeric" />
					<TextField {...control("successes")} label={say("arrival.check.successes")} inputMode="numeric" />
				</div>
			);
		case "count":
			return (
				<>
					<TextField {...control("count")} label={say("arrival.check.count")} inputMode="numeric" width="short" />
					<Quantity {...control("exposure")} label={say("arrival.check.exposure")} units={check.exposureUnits} />
				</>
			);
		default:
			return (
				<>
					<Quantity {...control("value")} label={say("arrival.check.value")} units={check.typedUnits} />
					{check.id === "mass" && (
						<TextField
							{...control("resolution")}
							label={say("arrival.check.resolution")}
							inputMode="decimal"
							width="short"
						/>
					)}
				</>
			);
	}
}
