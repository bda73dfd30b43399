/** One photo or file of a record: what it is, what it claims, what others get, and its taker's choices. */
import type { ExhibitFileView } from "../../contract/pictures.ts";
import { say, type TextKey } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";
import { ErrorSummary, type FieldErrors, Form, type FormValues, Submit } from "../components/form.tsx";
import { type Crumb, Layout } from "../layout.tsx";
import { BlackOutTool } from "./black-out-tool.tsx";
import { claimedTime, exhibitPath, sizeWords } from "./exhibit-thumb.tsx";

export interface ExhibitPageProps {
	readonly file: ExhibitFileView;
	readonly crumbs: readonly Crumb[];
	readonly formToken: string;
	readonly values: FormValues;
	readonly errors: FieldErrors;
	/** SHA-256 of a copy that was just made, as the address says it. */
	readonly made: unknown;
}

export function ExhibitPage(props: ExhibitPageProps) {
	const { file, crumbs, errors } = props;
	const shown = shownCopy(file);
	const made = file.isTaker
		? file.copies.find(({ kind, sha256 }) => kind === "blacked-out" && sha256 === props.made)
		: undefined;
	return (
		<Layout title={say("picture.title")} crumbs={crumbs}>
			<ErrorSummary errors={errors} />
			{made !== undefined && <MadeCopy {...props} copySha256={made.sha256} />}
			{file.refusal !== null && <p class="note">{say(`picture.refusal.${file.refusal}`)}</p>}
			{shown !== null && shown !== made?.sha256 && (
				<p>
					<img class="picture" src={copyHref(file, shown)} alt={file.fileName} />
				</p>
			)}
			<Facts file={file} />
			<h2>{say("picture.others")}</h2>
			<p>{say(`picture.others.${isHeldApart(file) ? "apart" : file.others}`)}</p>
			<p>{say(file.isTaker ? "picture.yours" : "picture.not-yours")}</p>
			<Downloads file={file} />
			{file.isTaker && <Choices {...props} />}
			{file.copies.length > 0 && <Copies {...props} />}
			{file.isTaker && file.picture !== null && shown !== null && (
				<BlackOutTool
					action={`${exhibitPath(file.recordId, file.sha256)}/black-out`}
					picture={copyHref(file, wholeCopy(file) ?? shown)}
					{...props}
				/>
			)}
		</Layout>
	);
}

/** Whether nothing is handed out of what could be copied: several brought it and blacked out other parts. */
function isHeldApart({ others, picture }: ExhibitFileView): boolean {
	return others === "nothing" && picture !== null;
}

/** The copy that was just made: what it shows, and whether others get it. */
function MadeCopy({ file, formToken, copySha256 }: ExhibitPageProps & { readonly copySha256: string }) {
	const isGiven = file.others === "blacked-out" && shownCopy(file) === copySha256;
	return (
		<section class="note" role="status">
			<h2>{say("picture.made")}</h2>
			<p>
				<strong>{say(isGiven ? "picture.made-given" : "picture.made-not-given")}</strong>
			</p>
			{!isGiven && <HandOutCopy file={file} formToken={formToken} copySha256={copySha256} />}
			<p>
				<img class="picture" src={copyHref(file, copySha256)} alt={say("picture.made")} />
			</p>
			<p class="hint">{say("picture.made-look")}</p>
		</section>
	);
}

function HandOutCopy({
	file,
	formToken,
	copySha256,
}: Pick<ExhibitPageProps, "file" | "formToken"> & { readonly copySha256: string }) {
	return (
		<Form action={`${exhibitPath(file.recordId, file.sha256)}/hand-out`} formToken={formToken}>
			<input type="hidden" name="copySha256" value={copySha256} />
			<Submit name="choice" value="blacked-out" kind="quiet" label={say("picture.choose.blacked-out")} />
		</Form>
	);
}

/** The copy on the page: the one that others get, or of one's own the whole picture. */
function shownCopy(file: ExhibitFileView): string | null {
	if (file.picture === null) return null;
	const given = file.choices.at(-1)?.copySha256 ?? null;
	if (file.others === "blacked-out" && given !== null) return given;
	return wholeCopy(file) ?? file.copies[0]?.sha256 ?? null;
}

function wholeCopy({ copies }: ExhibitFileView): string | null {
	return copies.find(({ kind }) => kind === "without-metadata")?.sha256 ?? null;
}

function copyHref({ recordId, sha256 }: ExhibitFileView, copySha256: string): string {
	return `/api/v1${exhibitPath(recordId, sha256)}/copies/${copySha256}`;
}

function Facts({ file }: { readonly file: ExhibitFileView }) {
	return (
		<dl class="facts">
			<dt>{say("picture.file")}</dt>
			<dd>{file.fileName}</dd>
			<dt>{say("picture.kind")}</dt>
			<dd>
				{file.mediaType}, {sizeWords(file.sizeBytes)}
				{file.picture !== null && `, ${file.picture.width} × ${file.picture.height}`}
			</dd>
			<dt>{say("picture.received-at")}</dt>
			<dd>{showTime(file.receivedAt)}</dd>
			{file.claimed !== null && (
				<>
					<dt>{say("picture.claims")}</dt>
					<dd>
						{claims(file.claimed)} <span class="hint">{say("picture.claims-hint")}</span>
					</dd>
				</>
			)}
			<dt>{say("picture.original")}</dt>
			<dd>
				<code>{file.sha256}</code> <span class="hint">{say("picture.original-hint")}</span>
			</dd>
		</dl>
	);
}

function claims({ time, offset, device, hasPlace }: NonNullable<ExhibitFileView["claimed"]>): string {
	const said = [
		...(time === null ? [] : [say("picture.claims-time", { time: claimedTime(time, offset) })]),
		...(device === null ? [] : [say("picture.claims-device", { device })]),
		...(hasPlace === true ? [say("picture.claims-place")] : []),
	];
	return `${said.length === 0 ? say("picture.claims-nothing") : said.join(", ")}.`;
}

function Downloads({ file }: { readonly file: ExhibitFileView }) {
	if (!file.isTaker && file.others !== "original") return null;
	return (
		<p>
			<a class="button" href={`/api/v1/exhibits/${file.sha256}`}>
				{say("picture.download-original")}
			</a>
		</p>
	);
}

function Choices({ file, formToken }: ExhibitPageProps) {
	if (file.mediaType === "text/plain") return null;
	const place = file.claimed?.hasPlace === true ? "-place" : "";
	const back = file.picture === null ? "nothing" : "without-metadata";
	return (
		<>
			<p class="hint">{say("picture.hand-out-text")}</p>
			<Form action={`${exhibitPath(file.recordId, file.sha256)}/hand-out`} formToken={formToken}>
				{file.others !== "original" && (
					<Submit name="choice" value="original" kind="quiet" label={say(`picture.choose.original${place}`)} />
				)}
				{file.others !== back && (
					<Submit name="choice" value="without-metadata" kind="quiet" label={say(`picture.choose.${back}`)} />
				)}
			</Form>
			{file.choices.length > 0 && (
				<>
					<h3>{say("picture.choices")}</h3>
					<ul>
						{file.choices.map(({ choice, copySha256, at }) => (
							<li key={at}>
								{say(`picture.choice.${choice}`, { time: showTime(at), copy: copySha256?.slice(0, 12) ?? "" })}
							</li>
						))}
					</ul>
				</>
			)}
		</>
	);
}

function Copies({ file, formToken }: ExhibitPageProps) {
	const given = file.others === "blacked-out" ? shownCopy(file) : null;
	const head = (["copy", "copy-size", "copy-hash"] as const).map((name) => (
		<th key={name} scope="col">
			{say(`picture.${name}`)}
		</th>
	));
	return (
		<>
			<h2>{say("picture.copies")}</h2>
			<table class="stacked">
				<thead>
					<tr>{head}</tr>
				</thead>
				<tbody>
					{file.copies.map(({ kind, sha256, sizeBytes, madeAt }) => (
						<tr key={sha256}>
							<th scope="row">
								<a href={copyHref(file, sha256)}>
									{say(`picture.copy.${kind}` as TextKey, { time: showTime(madeAt) })}
								</a>
								{file.others === kind && (given ?? sha256) === sha256 && ` (${say("picture.handed-out-now")})`}
								{file.isTaker && kind === "blacked-out" && given !== sha256 && (
									<HandOutCopy file={file} formToken={formToken} copySha256={sha256} />
								)}
							</th>
							<td data-label={say("picture.copy-size")}>{sizeWords(sizeBytes)}</td>
							<td data-label={say("picture.copy-hash")}>
								<code>{sha256}</code>
							</td>
						</tr>
					))}
				</tbody>
			</table>
		</>
	);
}
