/** Photos and files of a step: what is there already, and a control for more, inside the step's own form. */

import type { ExhibitFileView, PhotoCodeView } from "../../contract/pictures.ts";
import type { RecordContentInput } from "../../contract/records.ts";
import { isTextKey, say } from "../../texts/say.ts";
import { type FieldErrors, SelectField, Submit, TextField } from "../components/form.tsx";
import { UploadingField } from "../components/uploading-field.tsx";
import { ExhibitThumb } from "../pictures/exhibit-thumb.tsx";
import { PhotoCodeNote } from "../pictures/photo-code-note.tsx";

/** Names of the controls. */
export const PHOTOS = { files: "photos.files", view: "photos.view", note: "photos.note", remove: "photos.remove" };

/** What a browser offers to choose from. The content of a file decides, not its name. */
const PHOTO_TYPES = "image/*,video/mp4,video/quicktime,video/webm,application/pdf";

/** A file that was sent and not taken. */
export interface RefusedFile {
	readonly fileName: string;
	readonly why: string;
}

export function Photos(props: {
	readonly recordId: string;
	readonly views: readonly string[];
	readonly content: RecordContentInput;
	readonly files: readonly ExhibitFileView[];
	/** To be written beside the board; null where nothing more is added. */
	readonly code: PhotoCodeView | null;
	readonly refused: readonly RefusedFile[];
	readonly errors: FieldErrors;
}) {
	const { views, errors } = props;
	const [first = "other"] = views;
	return (
		<section class="photos">
			<h2>{say("arrival.photos-add")}</h2>
			<PhotoCodeNote code={props.code} />
			<ExhibitList {...props} removable />
			{props.refused.map((file) => (
				<p class="error" key={file.fileName}>
					{say("arrival.file-refused", { file: file.fileName, why: file.why })}
				</p>
			))}
			<SelectField
				name={PHOTOS.view}
				label={say("arrival.photos-view")}
				values={{ [PHOTOS.view]: first }}
				errors={errors}
				choices={views.map((view) => ({ value: view, label: viewWords(view) }))}
			/>
			<UploadingField
				target={{ record: props.recordId }}
				name={PHOTOS.files}
				label={say("arrival.photos-add")}
				hint={say("arrival.photos-hint")}
				values={{}}
				errors={errors}
				accept={PHOTO_TYPES}
				multiple
			/>
			<TextField name={PHOTOS.note} label={say("arrival.photos-note")} values={{}} errors={errors} />
			<Submit label={say("arrival.photos-save")} name="act" value="stay" kind="quiet" />
		</section>
	);
}

/** The files of these views, each with what it shows. */
export function ExhibitList({
	views,
	content,
	recordId,
	files,
	removable = false,
}: {
	readonly views: readonly string[];
	readonly content: RecordContentInput;
	readonly recordId: string;
	readonly files: readonly ExhibitFileView[];
	readonly removable?: boolean;
}) {
	const shown = (content.exhibits ?? []).filter((exhibit) => views.includes(exhibit.view));
	if (shown.length === 0) return null;
	return (
		<ul class="thumbs">
			{shown.map(({ sha256, view, note }) => {
				const title = [viewWords(view), note].filter(Boolean).join(": ");
				return (
					<li key={`${sha256} ${view}`}>
						<ExhibitThumb
							recordId={recordId}
							sha256={sha256}
							title={title}
							fileName={sha256.slice(0, 12)}
							file={files.find((candidate) => candidate.sha256 === sha256)}
						/>
						{removable && (
							<button
								type="submit"
								class="quiet small"
								name={PHOTOS.remove}
								value={`${sha256} ${view}`}
								aria-label={say("arrival.photos-remove-one", { what: title })}
							>
								{say("arrival.photos-remove")}
							</button>
						)}
					</li>
				);
			})}
		</ul>
	);
}

/** What a photo shows, in words. */
export function viewWords(view: string): string {
	const key = `arrival.view.${view}`;
	return isTextKey(key) ? say(key) : view;
}
