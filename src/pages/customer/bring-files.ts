/** Photos and files of a step: brought to the record one by one, so that one that is refused stops no other. */
import type { Caller } from "../../access/caller.ts";
import type { RecordContentInput } from "../../contract/records.ts";
import { Fault } from "../../faults.ts";
import type { Deps } from "../../operations/deps.ts";
import { bringExhibit } from "../../operations/exhibits/exhibits.ts";
import type { GuidedRecord } from "../../operations/records/guided-record.ts";
import { readRecord } from "../../operations/records/read-record.ts";
import { saveDraft } from "../../operations/records/save-draft.ts";
import { faultWords } from "../../texts/fault-words.ts";
import { say } from "../../texts/say.ts";
import type { Form } from "../record-form/field.ts";
import { PHOTOS, type RefusedFile } from "../record-form/photos.tsx";
import type { SentForm } from "../record-form/read-body.ts";
import { type BroughtFile, uploadedFiles } from "../record-form/uploaded-files.ts";
import type { Step } from "./steps.ts";

type Exhibit = NonNullable<RecordContentInput["exhibits"]>[number];

/** The most files that a record holds. Source: the contract's own shape. */
const MOST_FILES = 100;
const TRIES = 3;

/** Brings the files of a form; gives those that were not taken, with the reason. */
export async function bringFiles(
	deps: Deps,
	caller: Caller,
	guided: GuidedRecord,
	step: Step,
	sent: SentForm,
): Promise<RefusedFile[]> {
	const view = step.views.find((candidate) => candidate === sent.form[PHOTOS.view]) ?? step.views[0];
	const refused: RefusedFile[] = [];
	if (view === undefined) return refused;
	const note = noteOf(sent.form);
	const { found, lost } = await uploadedFiles(deps, caller, guided.record.id, sent.form, PHOTOS.files);
	refused.push(...lost.map((error) => ({ fileName: say("upload.lost"), why: reasonOf(error) })));
	const files: BroughtFile[] = [
		...found,
		...sent.files.map((file) => ({
			fileName: file.fileName,
			bring: async () => (await bringExhibit(deps, caller, guided.record.id, file)).sha256,
		})),
	];
	for (const file of files) {
		try {
			if ((guided.record.content?.exhibits ?? []).length >= MOST_FILES) throw new Fault("bad-input");
			const sha256 = await file.bring();
			const exhibit = { sha256, view: view as Exhibit["view"], ...(note === "" ? {} : { note }) };
			await changeExhibits(deps, caller, guided.record.id, (exhibits) =>
				exhibits.some((other) => other.sha256 === sha256 && other.view === view) ? exhibits : [...exhibits, exhibit],
			);
		} catch (error) {
			if (!(error instanceof Fault)) throw error;
			refused.push({ fileName: file.fileName, why: reasonOf(error) });
		}
	}
	return refused;
}

/** Takes the exhibit out that a form's Remove button names. */
export async function takeOut(deps: Deps, caller: Caller, recordId: string, form: Form): Promise<void> {
	const named = form[PHOTOS.remove];
	if (named === undefined) return;
	await changeExhibits(deps, caller, recordId, (exhibits) =>
		exhibits.filter((exhibit) => `${exhibit.sha256} ${exhibit.view}` !== named),
	);
}

/** Changes the list of exhibits alone; where the draft is saved elsewhere at the same moment, once more. */
export async function changeExhibits(
	deps: Deps,
	caller: Caller,
	recordId: string,
	change: (exhibits: readonly Exhibit[]) => readonly Exhibit[],
): Promise<void> {
	for (let attempt = 1; ; attempt += 1) {
		const record = await readRecord(deps, caller, recordId);
		const content = record.content ?? {};
		const before = content.exhibits ?? [];
		const exhibits = change(before);
		if (exhibits === before) return;
		if (exhibits.length > MOST_FILES) throw new Fault("bad-input");
		try {
			await saveDraft(deps, caller, recordId, record.version, { ...content, exhibits: [...exhibits] });
			return;
		} catch (error) {
			if (!(error instanceof Fault) || error.code !== "version-stale" || attempt >= TRIES) throw error;
		}
	}
}

function noteOf(form: Form): string {
	return (form[PHOTOS.note] ?? "").replaceAll("\u0000", "").toWellFormed().trim().slice(0, 500).toWellFormed();
}

/** Why a file was not taken, in words for the person who brought it. */
export function reasonOf(found: Fault): string {
	if (found.code === "bad-input" && found.members.length === 0) return say("arrival.photos-full");
	if (found.members[0]?.code === "empty-file") return say("arrival.photos-empty");
	if (found.code === "unsupported-type") return say("arrival.photos-kind");
	return found.code === "too-large" ? say("arrival.photos-large") : faultWords(found.code, found.facts);
}
