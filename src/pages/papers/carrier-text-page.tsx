/** The text for a carrier's web form, in parts that the form takes. */
import { TEXT_LIMITS } from "../../contract/report.ts";
import type { Language } from "../../texts/language.ts";
import { say } from "../../texts/say.ts";
import { Layout } from "../layout.tsx";

export interface CarrierTextView {
	readonly orderId: string;
	readonly itemName: string;
	readonly size: number;
	readonly leg: number | null;
	readonly language: Language;
	/** Most characters of a part; null without a limit. */
	readonly most: number | null;
	readonly parts: readonly string[];
}

export function CarrierTextPage({ orderId, itemName, size, leg, language, most, parts }: CarrierTextView) {
	return (
		<Layout
			title={say("papers.carrier-text-title")}
			crumbs={[
				{ href: `/orders/${orderId}`, label: itemName },
				{ href: `/orders/${orderId}/papers`, label: say("papers.title") },
			]}
		>
			<p>{say("papers.carrier-text-lead")}</p>
			<form method="get" action={`/orders/${orderId}/carrier-text`} class="field">
				<input type="hidden" name="at" value={size} />
				{leg !== null && <input type="hidden" name="leg" value={leg} />}
				<input type="hidden" name="language" value={language} />
				<label for="most">{say("papers.carrier-text-most")}</label>
				<select id="most" name="most">
					<option value="" selected={most === null}>
						{say("papers.carrier-text-all")}
					</option>
					{TEXT_LIMITS.map((limit) => (
						<option key={limit} value={limit} selected={limit === most}>
							{say("papers.carrier-text-up-to", { most: limit })}
						</option>
					))}
				</select>{" "}
				<button type="submit">{say("papers.carrier-text-split")}</button>
			</form>
			{parts.map((text, index) => (
				<Part key={text} language={language} text={text} part={index + 1} of={parts.length} />
			))}
			<p class="hint">{say("papers.carrier-text-photos")}</p>
			<script type="module" src="/assets/copy-text.js" />
		</Layout>
	);
}

/** Without script the text is marked and copied by hand; the button shows itself with it. */
function Part(props: {
	readonly text: string;
	readonly language: Language;
	readonly part: number;
	readonly of: number;
}) {
	const { text, language, part, of } = props;
	const lines = text.split("\n").length;
	const id = `text-${part}`;
	return (
		<section class="field">
			<label for={id}>{of === 1 ? say("papers.carrier-text") : say("papers.carrier-text-of", { part })}</label>
			<p class="hint" id={`${id}-size`}>
				{say("papers.carrier-text-size", { characters: text.length, lines })}
			</p>
			<textarea
				id={id}
				class="plain-text"
				lang={language}
				readOnly
				rows={Math.min(lines, 40)}
				aria-describedby={`${id}-size`}
			>
				{text}
			</textarea>
			<p>
				<button type="button" hidden data-copies={id} data-done={say("papers.carrier-text-copied")}>
					{say("papers.carrier-text-copy")}
				</button>{" "}
				<span role="status" data-copied={id} />
			</p>
		</section>
	);
}
