/** A diagnostic output that someone adds: read where its format is known, kept as it is where not. */
import type { Caller } from "../../access/caller.ts";
import { Fault } from "../../faults.ts";
import type { Deps } from "../../operations/deps.ts";
import { bringExhibit, fetchExhibit } from "../../operations/exhibits/exhibits.ts";
import type { GuidedRecord } from "../../operations/records/guided-record.ts";
import { IMPORT_MOST_BYTES, importIntoDraft } from "../../operations/records/import-into-draft.ts";
import { readRecord } from "../../operations/records/read-record.ts";
import { badMemberWords } from "../../texts/fault-words.ts";
import { say } from "../../texts/say.ts";
import { checkName } from "../record-form/check-control.tsx";
import type { ReadFile } from "../record-form/file-lines.tsx";
import { importWords } from "../record-form/import-words.ts";
import type { RefusedFile } from "../record-form/photos.tsx";
import type { SentFile, SentForm } from "../record-form/read-body.ts";
import { uploadedFiles } from "../record-form/uploaded-files.ts";
import { changeExhibits, reasonOf } from "./bring-files.ts";
import { DIAGNOSTIC, FILE } from "./diagnostic-file.tsx";

type SmallFile = Pick<SentFile, "fileName" | "bytes">;

export interface BroughtDiagnostic {
	readonly refused: readonly RefusedFile[];
	/** What became of each file that was taken. */
	readonly notices: readonly string[];
	/** Those that were read. */
	readonly read: readonly ReadFile[];
}

export async function bringDiagnostic(
	deps: Deps,
	caller: Caller,
	guided: GuidedRecord,
	sent: SentForm,
): Promise<BroughtDiagnostic> {
	const refused: RefusedFile[] = [];
	const notices: string[] = [];
	const read: ReadFile[] = [];
	const load = sent.form[FILE.load];
	const { found, lost } = await uploadedFiles(deps, caller, guided.record.id, sent.form, FILE.upload);
	refused.push(...lost.map((error) => ({ fileName: say("upload.lost"), why: reasonOf(error) })));
	for (const { sha256, fileName } of found.filter((file) => file.sizeBytes > IMPORT_MOST_BYTES)) {
		await keepDiagnostic(deps, caller, guided.record.id, sha256);
		notices.push(say("arrival.file.kept-large", { file: fileName }));
	}
	const files: SmallFile[] = [...sent.files, ...(await smallOnes(deps, caller, found))];
	const pasted = sent.form[FILE.paste] ?? "";
	if (pasted.trim() !== "") files.push({ fileName: "pasted.txt", bytes: Buffer.from(`${pasted}\n`) });
	for (const file of files) {
		try {
			const under = load === "load" || load === "idle" ? load : undefined;
			const { notice, lines } = await readOrKeep(deps, caller, guided, file, under);
			notices.push(notice);
			if (lines !== null) read.push(lines);
		} catch (error) {
			if (!(error instanceof Fault)) throw error;
			refused.push({ fileName: file.fileName, why: reasonOf(error) });
		}
	}
	return { refused, notices, read };
}

async function readOrKeep(
	deps: Deps,
	caller: Caller,
	guided: GuidedRecord,
	file: SmallFile,
	load: "load" | "idle" | undefined,
): Promise<{ readonly notice: string; readonly lines: ReadFile | null }> {
	const { id } = guided.record;
	try {
		const { version } = await readRecord(deps, caller, id);
		const { taken, identityDiffers, preview } = await importIntoDraft(deps, caller, id, version, file, load);
		const names = taken.map((check) => nameOf(guided, check)).join(", ");
		const said =
			names === ""
				? say("arrival.file.read-none", { file: file.fileName })
				: say("arrival.file.read", { file: file.fileName, readings: names });
		const differs =
			identityDiffers.length === 0
				? null
				: say("arrival.file.differs", { members: identityDiffers.map(memberName).join(", ") });
		const notice = [said, ...(differs === null ? [] : [differs]), ...importWords(preview, taken)].join(" ");
		return { notice, lines: { fileName: file.fileName, preview, taken } };
	} catch (error) {
		const member = error instanceof Fault && error.code === "bad-input" ? error.members[0] : undefined;
		if (member === undefined || !member.code.startsWith("import-refused")) throw error;
		const { sha256 } = await bringExhibit(deps, caller, id, file);
		await keepDiagnostic(deps, caller, id, sha256);
		const why = badMemberWords(member.code, member.facts).message;
		return { notice: say("arrival.file.kept", { file: file.fileName, why }), lines: null };
	}
}

/** Keeps a file with the record without reading it. */
export async function keepDiagnostic(deps: Deps, caller: Caller, recordId: string, sha256: string): Promise<void> {
	await changeExhibits(deps, caller, recordId, (exhibits) =>
		exhibits.some((exhibit) => exhibit.sha256 === sha256) ? exhibits : [...exhibits, { sha256, view: DIAGNOSTIC }],
	);
}

/** Uploads that are read, with their bytes. */
async function smallOnes(
	deps: Deps,
	caller: Caller,
	uploaded: readonly { readonly sha256: string; readonly sizeBytes: number }[],
): Promise<SmallFile[]> {
	const small = uploaded.filter(({ sizeBytes }) => sizeBytes <= IMPORT_MOST_BYTES);
	return Promise.all(small.map(({ sha256 }) => fetchExhibit(deps, caller, sha256)));
}

function nameOf(guided: GuidedRecord, check: string): string {
	const found = guided.allChecks.find((candidate) => candidate.id === check);
	return found === undefined ? check : checkName(found);
}

/** The member of an identity in words; ids that people do not type have their code. */
function memberName(member: string): string {
	if (member === "serialNumber") return say("arrival.serial-number");
	return member === "model" ? say("arrival.model") : member;
}
