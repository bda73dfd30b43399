/** Photos and files of a step: what is there already, and a control for more, inside the step's own form. */

import type { ExhibitView } from "../../contract/exhibits.ts";
import type { RecordContentInput } from "../../contract/records.ts";
import { isTextKey, say } from "../../texts/say.ts";
import { type FieldErrors, SelectField, Submit, TextField } from "../components/form.tsx";
import { UploadingField } from "../components/uploading-field.tsx";

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
	readonly exhibits: readonly ExhibitView[];
	readonly refused: readonly RefusedFile[];
	readonly errors: FieldErrors;
}) {
	const { views, errors } = props;
	const [first = "other"] = views;
	return (
		<section class="photos">
			<h2>{say("arrival.photos-add")}</h2>
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
	exhibits,
	removable = false,
}: {
	readonly views: readonly string[];
	readonly content: RecordContentInput;
	readonly exhibits: readonly ExhibitView[];
	readonly removable?: boolean;
}) {
	const shown = (content.exhibits ?? []).filter((exhibit) => views.includes(exhibit.view));
	if (shown.length === 0) return null;
	return (
		<ul class="thumbs">
			{shown.map(({ sha256, view, note }) => {
				const file = exhibits.find((candidate) => candidate.sha256 === sha256);
				const title = [viewWords(view), note].filter(Boolean).join(": ");
				const picture = file !== undefined && /^image\/(jpeg|png|webp)$/.test(file.mediaType);
				return (
					<li key={`${sha256} ${view}`}>
						<a href={`/api/v1/exhibits/${sha256}`}>
							{picture ? (
								<img src={`/api/v1/exhibits/${sha256}`} alt={title} />
							) : (
								(file?.fileName ?? sha256.slice(0, 12))
							)}
						</a>
						<span class="thumb-title">{picture ? title : `${title}, ${sizeWords(file?.sizeBytes ?? 0)}`}</span>
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

function sizeWords(sizeBytes: number): string {
	if (sizeBytes >= 1e9) return `${(sizeBytes / 1e9).toFixed(1)} GB`;
	return sizeBytes < 1e6 ? `${Math.ceil(sizeBytes / 1e3)} kB` : `${(sizeBytes / 1e6).toFixed(1)} MB`;
}
