/** The reader's own photos and files of sealed records: each leads to the page where its taker decides what others get. */
import type { ExhibitFileView } from "../../contract/pictures.ts";
import type { OpenedStatement } from "../../records/record-statement.ts";
import { say } from "../../texts/say.ts";
import { viewWords } from "../record-form/photos.tsx";
import { ExhibitThumb } from "./exhibit-thumb.tsx";

export interface RecordFiles {
	readonly exhibits: OpenedStatement["exhibits"];
	readonly files: readonly ExhibitFileView[];
}

export function OwnFiles({ of }: { readonly of: readonly RecordFiles[] }) {
	const own = of.flatMap(({ exhibits, files }) =>
		exhibits.flatMap(({ sha256, view }) => {
			const file = files.find((candidate) => candidate.sha256 === sha256 && candidate.isTaker);
			return file === undefined ? [] : [{ view, file }];
		}),
	);
	if (own.length === 0) return null;
	return (
		<section id="own-files" class="no-print">
			<h2>{say("picture.own-files")}</h2>
			<p>{say("picture.own-files-text")}</p>
			<ul class="thumbs">
				{own.map(({ view, file }) => (
					<li key={`${file.recordId} ${file.sha256} ${view}`}>
						<ExhibitThumb
							recordId={file.recordId}
							sha256={file.sha256}
							title={viewWords(view)}
							fileName={file.fileName}
							file={file}
						/>
					</li>
				))}
			</ul>
		</section>
	);
}
