/** Rectangles over a picture: drawn with the script, or typed as numbers without it. */
import type { BlackOutInput, ExhibitFileView } from "../../contract/pictures.ts";
import { say } from "../../texts/say.ts";
import { type FieldErrors, Form, type FormValues, Submit } from "../components/form.tsx";
import { readNumber } from "../record-form/read-number.ts";

/** Rows of fields. Our choice; more can be covered by a copy's copy of the page's next visit. */
const ROWS = 6;
const SIDES = ["x", "y", "w", "h"] as const;

/**
 * Whether others get the new copy as soon as it is made: whoever blacks something out wants it hidden. Not where they get
 * a blacked-out copy already: the new one is made of the whole picture, and may show what the earlier one hides.
 */
export function handsOutAtOnce({ others }: Pick<ExhibitFileView, "others">): boolean {
	return others === "without-metadata" || others === "original";
}

export function BlackOutTool({
	file,
	action,
	picture,
	formToken,
	values,
	errors,
}: {
	readonly file: ExhibitFileView;
	readonly action: string;
	/** Address of the whole picture. */
	readonly picture: string;
	readonly formToken: string;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}) {
	const atOnce = handsOutAtOnce(file);
	return (
		<section id="black-out">
			<h2>{say("picture.black-out")}</h2>
			<p>{say("picture.black-out-text")}</p>
			{/* biome-ignore lint/a11y/noNoninteractiveTabindex: the script makes it a drawing area with keys */}
			<div class="black-out" tabIndex={0} role="application" aria-label={say("picture.black-out-area")}>
				<img src={picture} alt="" />
			</div>
			<p class="hint">{say("picture.black-out-fields")}</p>
			<Form action={action} formToken={formToken} id="black-out-form">
				{Array.from({ length: ROWS }, (_, row) => (
					<fieldset key={String(row)} class="rectangle">
						<legend>{say("picture.rectangle", { number: row + 1 })}</legend>
						{errors[`x${row}`] !== undefined && (
							<p class="error" id={`x${row}-error`}>
								{errors[`x${row}`]}
							</p>
						)}
						{SIDES.map((side) => (
							<label key={side}>
								{say(`picture.${side}`)}{" "}
								<input
									id={`${side}${row}`}
									name={`${side}${row}`}
									inputMode="decimal"
									class="short"
									autoComplete="off"
									value={values[`${side}${row}`] ?? ""}
									aria-invalid={errors[`x${row}`] === undefined ? undefined : true}
									aria-describedby={errors[`x${row}`] === undefined ? undefined : `x${row}-error`}
								/>
							</label>
						))}
					</fieldset>
				))}
				<p>{say(atOnce ? "picture.black-out-at-once" : "picture.black-out-later")}</p>
				<Submit label={say(atOnce ? "picture.black-out-hand-out" : "picture.black-out-make")} />
			</Form>
			<script type="module" src="/assets/black-out.js" />
		</section>
	);
}

/** The rectangles of a form; rows that were left empty are none. */
export function readRectangles(form: FormValues): { readonly input: BlackOutInput } | { readonly errors: FieldErrors } {
	const rectangles: BlackOutInput["rectangles"] = [];
	for (let row = 0; row < ROWS; row += 1) {
		const typed = SIDES.map((side) => form[`${side}${row}`]?.trim() ?? "");
		if (typed.every((text) => text === "")) continue;
		const [x = -1, y = -1, w = -1, h = -1] = typed.map((text) => readNumber(text)?.value ?? -1);
		const isInside = x >= 0 && y >= 0 && w > 0 && h > 0 && x + w <= 100 && y + h <= 100;
		if (!isInside) return { errors: { [`x${row}`]: say("picture.black-out-wrong", { number: row + 1 }) } };
		rectangles.push({ x, y, w, h });
	}
	return rectangles.length === 0 ? { errors: { x0: say("picture.black-out-none") } } : { input: { rectangles } };
}
