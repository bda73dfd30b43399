/** The forms of own checks and classes, both ways. */
import { checksOf } from "../../../catalogue/checks/checks.ts";
import { ITEM_CLASSES } from "../../../catalogue/codes.ts";
import type { OwnCatalogue } from "../../../contract/own-catalogue.ts";
import type { Form } from "../../record-form/field.ts";
import { definitionOf } from "../../record-form/own-checks-form.ts";

/** What the form says, in the request's shape; what cannot be read stays text, so that the shape names it. */
export function readCheckForm(form: Form): unknown {
	const typed = (part: string) => (form[`check.${part}`] ?? "").trim().replaceAll("\r\n", "\n");
	return {
		definition: definitionOf(typed),
		how: typed("how"),
		whoCan: typed("whoCan"),
		...(typed("caution") === "" ? {} : { caution: typed("caution") }),
		classes: ITEM_CLASSES.filter((one) => form[`check.class.${one}`] === "yes"),
	};
}

/** A check that is left out of one class means nothing in another. */
export function readClassForm(form: Form, { checks }: OwnCatalogue): unknown {
	const treatedAs = ITEM_CLASSES.find((one) => one === form["class.treatedAs"]);
	return {
		name: (form["class.name"] ?? "").trim(),
		treatedAs: treatedAs ?? "",
		leftOut:
			treatedAs === undefined
				? []
				: checksOf(treatedAs).flatMap(({ id }) => (form[`class.out.${id}`] === "yes" ? [id] : [])),
		ownChecks: checks.flatMap(({ id }) => (form[`class.own.${id}`] === "yes" ? [id] : [])),
	};
}

/** Values of the controls for what is being changed. */
export function fillCatalogueForms({ checks, classes }: OwnCatalogue, changed: string | null): Form {
	const check = checks.find(({ id }) => id === changed);
	const own = classes.find(({ id }) => id === changed);
	const form: Record<string, string> = {};
	if (check !== undefined) {
		for (const [part, value] of Object.entries({ ...check.definition, how: check.how, whoCan: check.whoCan }))
			form[`check.${part}`] = String(value);
		if (check.caution !== undefined) form["check.caution"] = check.caution;
		for (const one of check.classes) form[`check.class.${one}`] = "yes";
	}
	if (own !== undefined) {
		form["class.name"] = own.name;
		form["class.treatedAs"] = own.treatedAs;
		for (const id of own.ownChecks) form[`class.own.${id}`] = "yes";
		for (const id of own.leftOut) form[`class.out.${id}`] = "yes";
	}
	return form;
}

/** The form's field of a member that was refused. */
export function fieldOfMember(kind: "checks" | "classes", path: string): string {
	const [first = "", second] = path.slice(1).split("/");
	if (kind === "classes") return `class.${first === "" ? "name" : first}`;
	return `check.${first === "definition" && second !== undefined ? second : first === "" ? "name" : first}`;
}
