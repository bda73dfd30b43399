/** The forms for an own check and an own class, empty or with what is being changed. */
import { checksOf } from "../../../catalogue/checks/checks.ts";
import { ITEM_CLASSES } from "../../../catalogue/codes.ts";
import type { OwnCatalogue } from "../../../contract/own-catalogue.ts";
import { say, type TextKey } from "../../../texts/say.ts";
import {
	CheckField,
	type FieldErrors,
	Form,
	type FormValues,
	SelectField,
	Submit,
	TextArea,
	TextField,
} from "../../components/form.tsx";
import { checkName } from "../../record-form/check-control.tsx";
import { DefinitionFields } from "../own-checks.tsx";

interface FormProps {
	readonly values: FormValues;
	readonly errors: FieldErrors;
	readonly formToken: string;
	readonly changed: string | null;
}

const WHO = ["no-instruments", "software", "meter", "repairer-only"] as const;

export function OwnCheckForm({
	check,
	values,
	errors,
	formToken,
}: FormProps & { readonly check: OwnCatalogue["checks"][number] | null }) {
	const field = { values, errors };
	const part = (name: string) => ({ name: `check.${name}`, label: say(`own.${name}` as TextKey), ...field });
	const open = check !== null || Object.keys(errors).some((name) => name.startsWith("check."));
	return (
		<details open={open}>
			<summary>
				{check === null ? say("catalogue.add-check") : say("catalogue.change-check", { name: check.definition.name })}
			</summary>
			<Form action="/catalogue/checks" formToken={formToken}>
				{check !== null && <input type="hidden" name="id" value={check.id} />}
				<DefinitionFields field={part} />
				<p class="hint">{say("catalogue.five")}</p>
				<TextArea {...field} name="check.how" label={say("catalogue.how")} hint={say("catalogue.how-hint")} rows={3} />
				<SelectField
					{...field}
					name="check.whoCan"
					label={say("catalogue.who")}
					choices={WHO.map((value) => ({ value, label: say(`catalogue.who.${value}`) }))}
				/>
				<TextField
					{...field}
					name="check.caution"
					label={say("catalogue.caution")}
					hint={say("catalogue.caution-hint")}
				/>
				<fieldset>
					<legend>{say("catalogue.for-classes")}</legend>
					{errors["check.classes"] !== undefined && <p class="error">{errors["check.classes"]}</p>}
					{ITEM_CLASSES.map((one) => (
						<CheckField key={one} {...field} name={`check.class.${one}`} label={say(`shop.class.${one}`)} />
					))}
				</fieldset>
				<Buttons changing={check !== null} />
			</Form>
		</details>
	);
}

export function OwnClassForm({
	own,
	checks,
	values,
	errors,
	formToken,
}: FormProps & { readonly own: OwnCatalogue["classes"][number] | null; readonly checks: OwnCatalogue["checks"] }) {
	const field = { values, errors };
	const open = own !== null || Object.keys(errors).some((name) => name.startsWith("class."));
	return (
		<details open={open}>
			<summary>{own === null ? say("catalogue.add-class") : say("catalogue.change-check", { name: own.name })}</summary>
			<Form action="/catalogue/classes" formToken={formToken}>
				{own !== null && <input type="hidden" name="id" value={own.id} />}
				<TextField {...field} name="class.name" label={say("catalogue.class-name")} />
				<SelectField
					{...field}
					name="class.treatedAs"
					label={say("catalogue.treated-as")}
					hint={say("catalogue.treated-as-hint")}
					choices={ITEM_CLASSES.map((value) => ({ value, label: say(`shop.class.${value}`) }))}
				/>
				{checks.length > 0 && (
					<fieldset>
						<legend>{say("catalogue.class-checks")}</legend>
						<p class="hint">{say("catalogue.five")}</p>
						{errors["class.ownChecks"] !== undefined && <p class="error">{errors["class.ownChecks"]}</p>}
						{checks.map((check) => (
							<CheckField key={check.id} {...field} name={`class.own.${check.id}`} label={check.definition.name} />
						))}
					</fieldset>
				)}
				{own === null ? (
					<p class="hint">{say("catalogue.left-out-after")}</p>
				) : (
					<fieldset>
						<legend>{say("catalogue.left-out")}</legend>
						<p class="hint">{say("catalogue.left-out-hint")}</p>
						{checksOf(own.treatedAs).map((check) => (
							<CheckField key={check.id} {...field} name={`class.out.${check.id}`} label={checkName(check)} />
						))}
					</fieldset>
				)}
				<Buttons changing={own !== null} />
			</Form>
		</details>
	);
}

function Buttons({ changing }: { readonly changing: boolean }) {
	return (
		<p class="buttons">
			<Submit label={say("catalogue.keep")} />
			{changing && <a href="/catalogue">{say("catalogue.back")}</a>}
		</p>
	);
}
