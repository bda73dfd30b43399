/** The file that a diagnostic program wrote: kept as an exhibit, and read where its format is known. */
import type { GuidedRecord } from "../../operations/records/guided-record.ts";
import { readingWords } from "../../texts/reading-words.ts";
import { say } from "../../texts/say.ts";
import { ChoiceField, type FieldErrors, Submit, TextArea } from "../components/form.tsx";
import { UploadingField } from "../components/uploading-field.tsx";
import { checkName } from "../record-form/check-control.tsx";
import { Collectors } from "../record-form/collectors.tsx";
import { FileLines, type ReadFile } from "../record-form/file-lines.tsx";
import { ExhibitList, type RefusedFile } from "../record-form/photos.tsx";

/** View of the exhibit. */
export const DIAGNOSTIC = "diagnostic-output";
/** Names of the controls. */
export const FILE = { upload: "file.upload", paste: "file.paste", load: "file.load" };
export const LOADS = ["load", "idle", "unknown"] as const;

export function DiagnosticFile({
	guided,
	errors,
	refused,
	notices,
	read: files,
}: {
	readonly guided: GuidedRecord;
	readonly errors: FieldErrors;
	readonly refused: readonly RefusedFile[];
	readonly notices: readonly string[];
	readonly read: readonly ReadFile[];
}) {
	const content = guided.record.content ?? {};
	const read = (content.readings ?? []).filter((reading) => reading.importSha256 !== undefined);
	return (
		<section>
			<Collectors checks={guided.allChecks} />
			<ExhibitList views={[DIAGNOSTIC]} content={content} exhibits={guided.exhibits} removable />
			{refused.map((file) => (
				<p class="error" key={file.fileName}>
					{say("arrival.file-refused", { file: file.fileName, why: file.why })}
				</p>
			))}
			{notices.map((notice) => (
				<p class="note" key={notice}>
					{notice}
				</p>
			))}
			{files.map((file) => (
				<FileLines key={file.fileName} file={file} />
			))}
			{read.length > 0 && (
				<dl class="facts">
					{read.map((reading) => (
						<>
							<dt>
								{checkName(guided.allChecks.find((check) => check.id === reading.check) ?? unnamed(reading.check))}
							</dt>
							<dd>{readingWords(reading)}</dd>
						</>
					))}
				</dl>
			)}
			<ChoiceField
				name={FILE.load}
				label={say("arrival.file.load")}
				values={{ [FILE.load]: "unknown" }}
				errors={errors}
				choices={LOADS.map((load) => ({ value: load, label: say(`arrival.file.load.${load}`) }))}
			/>
			<UploadingField
				target={{ record: guided.record.id }}
				name={FILE.upload}
				label={say("arrival.file.add")}
				values={{}}
				errors={errors}
			/>
			<TextArea name={FILE.paste} label={say("record.file-paste")} values={{}} errors={errors} rows={3} />
			<Submit label={say("arrival.file.add")} name="act" value="stay" kind="quiet" />
		</section>
	);
}

function unnamed(id: string) {
	return { id, nameKey: "" };
}
