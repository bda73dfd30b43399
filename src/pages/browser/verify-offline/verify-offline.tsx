/** The offline page: verifies receipts and dossiers in the browser, from a disk, with the very code that the service runs. */
import { render } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { verifyFile } from "../../../records/verify/dossier/verify-file.ts";
import type { Verification } from "../../../records/verify/verify-receipt.ts";
import { VerificationView, type VerifiedFile } from "../../verify/verification-view.tsx";
import { verifyWords } from "../../verify/words.ts";
import { hashSlices, readWhole, sourceOn, UnreadableFile } from "./brought-files.ts";
import { FilesField, filesIn, putFile, TextArea, TextField, textIn } from "./fields.tsx";

interface Shown {
	readonly verification: Verification;
	readonly file: VerifiedFile;
}

function OfflinePage() {
	const [message, setMessage] = useState("");
	const [shown, setShown] = useState<Shown | null>(null);
	const form = useRef<HTMLFormElement>(null);

	const verify = async () => {
		setShown(null);
		try {
			setShown(await verifyForm(form.current, setMessage));
			setMessage("");
		} catch (error) {
			if (!(error instanceof UnreadableFile)) throw error;
			const { fileName } = error;
			setMessage(
				fileName === null ? verifyWords("verify.no-file") : verifyWords("verify.unreadable-file", { name: fileName }),
			);
		}
	};
	useDrop((file) => {
		putFile(form.current, "receipt", file);
		void verify();
	});
	// Whoever listens to the page is led to the outcome.
	useEffect(() => {
		if (shown !== null) document.getElementById("outcome")?.focus();
	}, [shown]);

	return (
		<div class="single">
			<main id="content">
				<h1>{verifyWords("verify.title")}</h1>
				<p class="lead no-print">{verifyWords("verify.offline-lead")}</p>
				<form
					class="no-print"
					ref={form}
					onSubmit={(event) => {
						event.preventDefault();
						void verify();
					}}
				>
					<FilesField
						name="receipt"
						label={verifyWords("verify.file")}
						hint={verifyWords("verify.file-hint-offline")}
						multiple={false}
					/>
					<TextArea name="key" label={verifyWords("verify.key")} hint={verifyWords("verify.key-hint")} />
					<fieldset class="field" aria-describedby="printed-hint">
						<legend>{verifyWords("verify.printed")}</legend>
						<p class="hint" id="printed-hint">
							{verifyWords("verify.printed-hint")}
						</p>
						<TextField name="size" label={verifyWords("verify.printed-size")} width="short" />
						<TextField name="root" label={verifyWords("verify.printed-root")} width="long" />
					</fieldset>
					<FilesField
						name="earlier"
						label={verifyWords("verify.earlier-files")}
						hint={verifyWords("verify.earlier-files-hint")}
						multiple
					/>
					<FilesField
						name="exhibits"
						label={verifyWords("verify.exhibit-files")}
						hint={verifyWords("verify.exhibit-files-hint")}
						multiple
					/>
					<button type="submit">{verifyWords("verify.act")}</button>
					<p role="status">{message}</p>
				</form>
				{shown === null ? null : <VerificationView {...shown} />}
			</main>
		</div>
	);
}

/** Verifies what a form holds. @param tell told how far a large file is read @throws UnreadableFile */
async function verifyForm(form: HTMLFormElement | null, tell: (message: string) => void): Promise<Shown> {
	const [receipt] = filesIn(form, "receipt");
	if (receipt === undefined) throw new UnreadableFile(null);
	const files = [];
	for (const file of filesIn(form, "exhibits")) {
		files.push(await hashSlices(file, (percent) => tell(verifyWords("verify.reading", { name: file.name, percent }))));
	}
	const typed = (name: string) => textIn(form, name);
	const earlier = await Promise.all(filesIn(form, "earlier").map(readWhole));
	const keys = [typed("key")].filter((text) => text !== "");
	const printed = [`${typed("size")} ${typed("root")}`].filter((text) => text !== " ");
	const reading = (percent: number) => tell(verifyWords("verify.reading", { name: receipt.name, percent }));
	const whole = async () => (await readWhole(receipt)).bytes;
	const verification = await verifyFile(sourceOn(receipt), { keys, printed, earlier, files }, whole, reading);
	return { verification, file: await hashSlices(receipt, reading) };
}

/** Takes a file that is dropped anywhere on the page; without this the browser would leave the page for it. */
function useDrop(take: (file: File) => void): void {
	useEffect(() => {
		const over = (event: DragEvent) => event.preventDefault();
		const drop = (event: DragEvent) => {
			event.preventDefault();
			const file = event.dataTransfer?.files[0];
			if (file !== undefined) take(file);
		};
		document.addEventListener("dragover", over);
		document.addEventListener("drop", drop);
		return () => {
			document.removeEventListener("dragover", over);
			document.removeEventListener("drop", drop);
		};
	});
}

const place = document.getElementById("page");
if (place !== null) render(<OfflinePage />, place);
