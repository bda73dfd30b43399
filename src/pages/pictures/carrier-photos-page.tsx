/** The photos for the carrier, each to be downloaded under its number. */
import type { CarrierPhotos } from "../../operations/pictures/carrier-photos.ts";
import { say } from "../../texts/say.ts";
import { type Crumb, Layout } from "../layout.tsx";
import { viewWords } from "../record-form/photos.tsx";
import { sizeWords } from "./exhibit-thumb.tsx";

export function CarrierPhotosPage({
	crumbs,
	leg,
	found,
}: {
	readonly crumbs: readonly Crumb[];
	/** The leg that the carrier is told of, in words. */
	readonly leg: string | null;
	readonly found: CarrierPhotos;
}) {
	return (
		<Layout title={say("carrier-photos.title")} crumbs={crumbs}>
			{leg !== null && <p class="lead">{leg}</p>}
			<p>{say("carrier-photos.text", { size: String(found.treeSize) })}</p>
			{found.photos.length === 0 ? (
				<p class="note">{say("carrier-photos.none")}</p>
			) : (
				<table class="stacked">
					<thead>
						<tr>
							{(["number", "what", "file"] as const).map((name) => (
								<th key={name} scope="col">
									{say(`carrier-photos.${name}`)}
								</th>
							))}
						</tr>
					</thead>
					<tbody>
						{found.photos.map(({ number, view, file }) => (
							<tr key={number}>
								<th scope="row">{number}</th>
								<td data-label={say("carrier-photos.what")}>{viewWords(view)}</td>
								<td data-label={say("carrier-photos.file")}>
									{file === null ? (
										<span class="hint">{say("carrier-photos.not")}</span>
									) : (
										<a href={file.path} download={`${number}.jpg`}>
											{number}.jpg, {sizeWords(file.sizeBytes)}
										</a>
									)}
								</td>
							</tr>
						))}
					</tbody>
				</table>
			)}
		</Layout>
	);
}
