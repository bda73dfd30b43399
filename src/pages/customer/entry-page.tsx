/** Coming in by a link: the code, or why the link does not open. */
import type { LinkView } from "../../contract/access.ts";
import { say } from "../../texts/say.ts";
import { ErrorSummary, type FieldErrors, Form, Submit, TextField } from "../components/form.tsx";
import { Layout } from "../layout.tsx";

/** What a link opens, each in words of its own. */
export type EntryScope = LinkView["scope"];

export function EntryPage({
	scope,
	path,
	formToken,
	code,
	errors,
}: {
	readonly scope: EntryScope;
	readonly path: string;
	readonly formToken: string;
	readonly code: string;
	readonly errors: FieldErrors;
}) {
	return (
		<Layout title={say(`arrival.entry-title-${scope}`)}>
			<ErrorSummary errors={errors} />
			<p class="lead">{say(`arrival.entry-lead-${scope}`)}</p>
			<Form action={path} formToken={formToken}>
				<TextField
					name="code"
					label={say("arrival.entry-code")}
					hint={say("arrival.entry-code-hint")}
					values={{ code }}
					errors={errors}
					inputMode="numeric"
					autoComplete="one-time-code"
					width="short"
				/>
				<Submit label={say("arrival.entry-open")} />
			</Form>
			<p>{say(`arrival.entry-needs-${scope}`)}</p>
			{scope === "record" && <p class="note">{say("arrival.entry-photos-first")}</p>}
		</Layout>
	);
}

/** Why nothing opens here: expired, withdrawn, unknown, not let in. `words` say it, with the mend. */
export function ClosedPage({ title, words }: { readonly title?: string; readonly words: string }) {
	return (
		<Layout title={title ?? say("arrival.entry-closed-title")}>
			<p class="lead">{words}</p>
			<p class="note">{say("arrival.entry-photos-first")}</p>
		</Layout>
	);
}
