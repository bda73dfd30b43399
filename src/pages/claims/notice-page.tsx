/** The draft of a notice, what a claims clerk asks for, and the notices that were sent with what shows it. */
import { type NoticeView, noticeInput } from "../../contract/notices.ts";
import type { NoticeDraft } from "../../operations/claims/notice-draft.ts";
import { LANGUAGES } from "../../texts/language.ts";
import { say, type TextKey } from "../../texts/say.ts";
import {
	ErrorSummary,
	type FieldErrors,
	Form,
	type FormValues,
	SelectField,
	Submit,
	TextArea,
	TextField,
} from "../components/form.tsx";
import { Layout } from "../layout.tsx";

export interface Keeping {
	readonly formToken: string;
	readonly sealKey: string;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

export function NoticePage({ draft, keeping }: { readonly draft: NoticeDraft; readonly keeping: Keeping | null }) {
	const { order, leg, period, papers, notices, files } = draft;
	// One at a time, since fields of one name stand once on a page.
	const waiting = notices.find(({ receivedOn }) => receivedOn === null);
	const base = `/orders/${order.id}/consignments/${leg.id}`;
	return (
		<Layout
			title={say("notice.title")}
			crumbs={[{ href: `${base}/claim`, label: say("periods.title", { number: leg.leg }) }]}
		>
			{keeping !== null && <ErrorSummary errors={keeping.errors} />}
			<p class="lead">{say("notice.lead")}</p>
			<p>
				{period === null
					? say("notice.no-rule")
					: say("notice.rule", {
							article: period.article,
							form: say(`periods.form.${period.form}` as TextKey),
							date: period.safeDate ?? say("periods.not-told"),
						})}
			</p>
			{period !== null && period.standing !== "published" && <p class="caution">{say("notice.recalled")}</p>}
			<h2>{say("notice.copy")}</h2>
			<Languages draft={draft} path={`${base}/notice`} />
			<blockquote lang={draft.language}>{draft.text}</blockquote>
			<h2>{say("notice.papers")}</h2>
			<p class="hint">{say("notice.papers-hint")}</p>
			<ul>
				{papers.map(({ id, held, inEdition }) => (
					<li key={id}>
						{say(`notice.paper.${id}`)}:{" "}
						<strong>{say(id === "kept" ? "notice.held.by-you" : `notice.held.${held}`)}</strong>
						{inEdition && `. ${say("notice.edition")}`}
					</li>
				))}
			</ul>
			<h2 id="sent">{say("notice.sent")}</h2>
			{notices.length === 0 && <p>{say("notice.sent-none")}</p>}
			{notices.map((notice) => (
				<SentNotice
					key={notice.id}
					notice={notice}
					files={files}
					path={`${base}/notice`}
					keeping={notice === waiting ? keeping : null}
				/>
			))}
			{keeping !== null && <KeepForm draft={draft} path={`${base}/notice`} keeping={keeping} />}
		</Layout>
	);
}

function Languages({ draft, path }: { readonly draft: NoticeDraft; readonly path: string }) {
	return (
		<p class="no-print">
			{say("notice.language")}:{" "}
			{LANGUAGES.map((language, place) => (
				<>
					{place > 0 && " · "}
					{language === draft.language ? (
						<strong>{say(`notice.language.${language}`)}</strong>
					) : (
						<a href={`${path}?language=${language}`} hreflang={language}>
							{say(`notice.language.${language}`)}
						</a>
					)}
				</>
			))}
		</p>
	);
}

/** Files to choose from, by the numbers that reports give them. */
function fileChoices(files: NoticeDraft["files"]) {
	return files.map(({ number, sha256, fileName, view }) => ({
		value: sha256,
		label: say("notice.file-of", { number, name: fileName ?? view }),
	}));
}

function SentNotice(props: {
	readonly notice: NoticeView;
	readonly files: NoticeDraft["files"];
	readonly path: string;
	readonly keeping: Keeping | null;
}) {
	const { notice, files, keeping } = props;
	const shown = (sha256: string) => {
		const number = files.find((file) => file.sha256 === sha256)?.number ?? say("notice.file-none");
		return <a href={`/api/v1/exhibits/${sha256}`}>{say("notice.file-shown", { number, sha256 })}</a>;
	};
	return (
		<section class="leg">
			<h3>{say("notice.sent-on", { date: notice.sentOn, way: say(`notice.way.${notice.sentBy}`) })}</h3>
			<dl class="facts">
				<dt>{say("notice.sent-proof")}</dt>
				<dd>{notice.proofOfSending ?? say("cover.none-noted")}</dd>
				{notice.sendingFile !== null && (
					<>
						<dt>{say("notice.sent-file")}</dt>
						<dd>{shown(notice.sendingFile)}</dd>
					</>
				)}
				<dt>{say("notice.received")}</dt>
				<dd>{notice.receivedOn ?? say("notice.received-not")}</dd>
				{notice.receivedOn !== null && (
					<>
						<dt>{say("notice.received-proof")}</dt>
						<dd>{notice.proofOfReceipt ?? say("cover.none-noted")}</dd>
					</>
				)}
				{notice.receiptFile !== null && (
					<>
						<dt>{say("notice.received-file")}</dt>
						<dd>{shown(notice.receiptFile)}</dd>
					</>
				)}
			</dl>
			<details>
				<summary>{say("notice.keep-text")}</summary>
				<blockquote lang={notice.language}>{notice.text}</blockquote>
			</details>
			{keeping !== null && (
				<Form action={`${props.path}/${notice.id}/receipt`} formToken={keeping.formToken}>
					<TextField
						values={keeping.values}
						errors={keeping.errors}
						name="receivedOn"
						label={say("notice.received")}
						type="date"
						width="short"
					/>
					<TextField
						values={keeping.values}
						errors={keeping.errors}
						name="proofOfReceipt"
						label={say("notice.received-proof")}
					/>
					{files.length > 0 && (
						<SelectField
							values={keeping.values}
							errors={keeping.errors}
							name="receiptFile"
							label={say("notice.received-file")}
							hint={say("notice.file-hint")}
							empty={say("notice.file-none")}
							choices={fileChoices(files)}
						/>
					)}
					<Submit kind="quiet" label={say("notice.receipt-save")} />
				</Form>
			)}
		</section>
	);
}

function KeepForm(props: { readonly draft: NoticeDraft; readonly path: string; readonly keeping: Keeping }) {
	const { draft, keeping } = props;
	const field = { values: { language: draft.language, text: draft.text, ...keeping.values }, errors: keeping.errors };
	const choices = (key: string, codes: readonly string[]) =>
		codes.map((code) => ({ value: code, label: say(`${key}${code}` as TextKey) }));
	return (
		<Form action={props.path} formToken={keeping.formToken}>
			<h2>{say("notice.keep")}</h2>
			<p class="hint">{say("notice.keep-hint")}</p>
			<input type="hidden" name="sealKey" value={keeping.sealKey} />
			<div class="row">
				<TextField {...field} name="sentOn" label={say("notice.keep-on")} type="date" width="short" />
				<SelectField
					{...field}
					name="sentBy"
					label={say("notice.keep-way")}
					empty={say("settling.choose")}
					choices={choices("notice.way.", noticeInput.shape.sentBy.options)}
				/>
				<SelectField
					{...field}
					name="language"
					label={say("notice.language")}
					choices={choices("notice.language.", noticeInput.shape.language.options)}
				/>
			</div>
			<TextField {...field} name="proofOfSending" label={say("notice.keep-proof")} />
			{draft.files.length > 0 && (
				<SelectField
					{...field}
					name="sendingFile"
					label={say("notice.sent-file")}
					hint={say("notice.file-hint")}
					empty={say("notice.file-none")}
					choices={fileChoices(draft.files)}
				/>
			)}
			<TextArea {...field} name="text" label={say("notice.keep-text")} rows={16} />
			<Submit label={say("notice.keep-save")} />
		</Form>
	);
}
