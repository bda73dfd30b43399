/** A photo or file in a list: its thumbnail or name, what it shows, when it came, what it claims. */
import type { ExhibitFileView } from "../../contract/pictures.ts";
import { say } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";

/** The page of a file in a record. */
export function exhibitPath(recordId: string, sha256: string): string {
	return `/records/${recordId}/exhibits/${sha256}`;
}

export function ExhibitThumb({
	recordId,
	sha256,
	title,
	fileName,
	file,
}: {
	readonly recordId: string;
	readonly sha256: string;
	readonly title: string;
	/** Where the file is not known any more. */
	readonly fileName: string;
	readonly file: ExhibitFileView | undefined;
}) {
	const name = file?.fileName ?? fileName;
	const isShown = file !== undefined && file.picture !== null && (file.isTaker || file.others !== "nothing");
	const claimed = file === undefined ? null : claimedWords(file);
	return (
		<>
			<a href={exhibitPath(recordId, sha256)}>
				{isShown ? (
					<img src={`/api/v1${exhibitPath(recordId, sha256)}/thumbnail`} alt={title} />
				) : file?.refusal == null ? (
					name
				) : (
					say("picture.no-preview", { name })
				)}
			</a>
			<span class="thumb-title">
				{title}
				{file === undefined ? null : (
					<>
						{!isShown && `, ${sizeWords(file.sizeBytes)}`}
						<br />
						{say("picture.received", { time: showTime(file.receivedAt) })}
						{claimed === null ? null : (
							<>
								<br />
								{say("picture.claimed", { what: claimed })}
							</>
						)}
					</>
				)}
			</span>
		</>
	);
}

/** Time and device as the file says them; null where it says neither. */
function claimedWords({ claimed }: ExhibitFileView): string | null {
	const parts = [claimed?.time == null ? null : claimedTime(claimed.time, claimed.offset), claimed?.device ?? null];
	const said = parts.filter((part) => part !== null);
	return said.length === 0 ? null : said.join(", ");
}

/** A time of a device's clock: with its offset where the file says one, else of a zone that nobody knows. */
export function claimedTime(time: string, offset: string | null): string {
	return offset === null
		? say("picture.claimed-time", { time: time.replace("T", " ") })
		: showTime(`${time}${offset}`, offset);
}

export function sizeWords(sizeBytes: number): string {
	return sizeBytes < 1e6 ? `${Math.ceil(sizeBytes / 1e3)} kB` : `${(sizeBytes / 1e6).toFixed(1)} MB`;
}
