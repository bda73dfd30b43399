/** `/records/{id}`: the shop fills a record in, on one page; every press of a button saves. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { callerOf, openTo } from "../../access/callers.ts";
import { EXHIBIT_VIEWS } from "../../catalogue/codes.ts";
import type { BenchView, InstrumentView } from "../../contract/benches.ts";
import type { PhotoCodeView } from "../../contract/pictures.ts";
import type { RecordContentInput } from "../../contract/records.ts";
import { Fault, fault } from "../../faults.ts";
import { makeLink } from "../../operations/access/links.ts";
import { readBenches, readInstruments } from "../../operations/benches/benches.ts";
import type { Deps } from "../../operations/deps.ts";
import { bringExhibit, fetchExhibit } from "../../operations/exhibits/exhibits.ts";
import { newLinkText } from "../../operations/mail/ask-for-mail.ts";
import { givePhotoCode } from "../../operations/pictures/photo-codes.ts";
import { type GuidedRecord, readGuidedRecord } from "../../operations/records/guided-record.ts";
import { IMPORT_MOST_BYTES, importIntoDraft } from "../../operations/records/import-into-draft.ts";
import { notedTimes } from "../../operations/records/noted-times.ts";
import { discardDraft, saveDraft } from "../../operations/records/save-draft.ts";
import { badMemberWords, faultWords } from "../../texts/fault-words.ts";
import { say, type TextKey } from "../../texts/say.ts";
import type { FieldErrors, FormValues } from "../components/form.tsx";
import { keepDiagnostic } from "../customer/bring-diagnostic.ts";
import type { Form } from "../record-form/field.ts";
import { errorsOf } from "../record-form/field-control.tsx";
import type { ReadFile } from "../record-form/file-lines.tsx";
import { importWords } from "../record-form/import-words.ts";
import { readBody, type SentFile } from "../record-form/read-body.ts";
import { refuseTimes } from "../record-form/refuse-times.ts";
import { uploadedFiles } from "../record-form/uploaded-files.ts";
import { sendPage } from "../render.ts";
import { NewLinkPage } from "./order-links.tsx";
import { pageWords } from "./page-words.ts";
import { fillRecordForm, readRecordForm } from "./read-record-form.ts";
import { RecordEditor } from "./record-editor.tsx";
import { fieldsOf } from "./record-fields.ts";

const SHOP = { ...openTo("account"), schema: { hide: true } };

interface Shown {
	readonly typed?: FormValues;
	readonly errors?: FieldErrors;
	readonly notes?: readonly string[];
	readonly read?: ReadFile | null;
	readonly status?: number;
}

export function registerRecordEditor(app: FastifyInstance, deps: Deps): void {
	app.get("/records/:id", SHOP, async (request, reply) => {
		const guided = await guidedOf(request);
		if (guided.record.state !== "draft") return reply.redirect(`/records/${guided.record.id}/receipt`, 303);
		return send(request, reply, guided, {});
	});

	app.post("/records/:id", SHOP, async (request, reply) => {
		const guided = await guidedOf(request);
		const { record } = guided;
		if (record.content === null) return reply.redirect(`/records/${record.id}/receipt`, 303);
		const { form, files } = await readBody(request.body);
		if (form.act === "discard") {
			await discardDraft(deps, callerOf(request), record.id, record.version);
			return reply.redirect(`/orders/${record.orderId}`, 303);
		}
		if (Number(form.version) !== record.version) {
			return send(request, reply, guided, { typed: form, errors: { form: faultWords("version-stale") }, status: 412 });
		}
		const fields = fieldsOf(record);
		const typed = readRecordForm(fields, guided.allChecks, guided.ownChecks, form, record.content);
		const noted = await notedTimes(deps.database, record);
		const read = refuseTimes(typed, fields, record.content, noted, deps.now());
		const problems: Record<string, string | undefined> = { ...errorsOf(read.problems) };
		const content = await withPhotos(request, guided, read.content, form, files, problems);
		await saveDraft(deps, callerOf(request), record.id, record.version, content);
		const { notes, read: file } = await takeFile(request, record.id, form, files, problems);
		const failed = Object.keys(problems).length > 0;
		if (failed || notes.length > 0) {
			const typed = read.problems.length > 0 ? { typed: form } : {};
			return send(request, reply, await guidedOf(request), {
				...typed,
				errors: problems,
				notes,
				read: file,
				status: failed ? 400 : 200,
			});
		}
		return reply.redirect(form.act === "seal" ? `/records/${record.id}/seal` : `/records/${record.id}`, 303);
	});

	app.get("/records/:id/link", SHOP, async (request, reply) => {
		const { record } = await guidedOf(request);
		if (record.state !== "draft") throw fault("already-sealed");
		const link = await makeLink(deps, callerOf(request), {
			scope: "record",
			orderId: record.orderId,
			recordId: record.id,
		});
		const mail = await newLinkText(deps, link);
		return sendPage(reply, <NewLinkPage {...{ request, link, mail }} canSend={deps.canMail} />);
	});

	const guidedOf = (request: FastifyRequest) =>
		readGuidedRecord(deps, callerOf(request), (request.params as { id: string }).id);

	/** Photos chosen in the guided controls; one that is refused stops no other. */
	async function withPhotos(
		request: FastifyRequest,
		guided: GuidedRecord,
		content: RecordContentInput,
		form: Form,
		files: readonly SentFile[],
		problems: Record<string, string | undefined>,
	): Promise<RecordContentInput> {
		const removed = form["photos.remove"];
		let exhibits = (content.exhibits ?? []).filter((exhibit) => `${exhibit.sha256} ${exhibit.view}` !== removed);
		for (const file of [...sentPhotos(request, guided, files), ...(await uploadedPhotos(request, guided, form))]) {
			const { view } = file;
			try {
				const sha256 = await file.bring();
				exhibits = [...exhibits.filter((other) => other.sha256 !== sha256 || other.view !== view), { sha256, view }];
			} catch (error) {
				if (!(error instanceof Fault) || error.status >= 500) throw error;
				problems[`photo.${view}`] = wordsOf(error);
			}
		}
		const { exhibits: _, ...others } = content;
		return exhibits.length === 0 ? others : { ...others, exhibits };
	}

	function sentPhotos(request: FastifyRequest, guided: GuidedRecord, files: readonly SentFile[]) {
		return EXHIBIT_VIEWS.flatMap((view) =>
			files
				.filter((file) => file.field === `photo.${view}`)
				.map((file) => ({
					view,
					bring: async () => (await bringExhibit(deps, callerOf(request), guided.record.id, file)).sha256,
				})),
		);
	}

	async function uploadedPhotos(request: FastifyRequest, guided: GuidedRecord, form: Form) {
		const photos = EXHIBIT_VIEWS.map(async (view) => {
			const { found, lost } = await uploadedFiles(deps, callerOf(request), guided.record.id, form, `photo.${view}`);
			return [
				...found.map(({ bring }) => ({ view, bring })),
				...lost.map((error) => ({ view, bring: (): Promise<string> => Promise.reject(error) })),
			];
		});
		return (await Promise.all(photos)).flat();
	}

	/** A diagnostic output, as a file or pasted; says what was understood and what was not. */
	async function takeFile(
		request: FastifyRequest,
		recordId: string,
		form: Form,
		files: readonly SentFile[],
		problems: Record<string, string | undefined>,
	): Promise<{ readonly notes: string[]; readonly read: ReadFile | null }> {
		const nothing = { notes: [], read: null };
		const pasted = (form["file.paste"] ?? "").trim();
		const uploads = await uploadedFiles(deps, callerOf(request), recordId, form, "file.upload");
		const [uploaded] = uploads.found;
		const [lost] = uploads.lost;
		if (lost !== undefined) {
			problems["file.upload"] = wordsOf(lost);
			return nothing;
		}
		if (uploaded !== undefined && uploaded.sizeBytes > IMPORT_MOST_BYTES) {
			await keepDiagnostic(deps, callerOf(request), recordId, uploaded.sha256);
			return { notes: [say("arrival.file.kept-large", { file: uploaded.fileName })], read: null };
		}
		const file =
			uploaded === undefined
				? files.find((candidate) => candidate.field === "file.upload")
				: await fetchExhibit(deps, callerOf(request), uploaded.sha256);
		const bytes = file?.bytes ?? (pasted === "" ? null : Buffer.from(`${form["file.paste"]}\n`));
		if (bytes === null) {
			if (file !== undefined) problems["file.upload"] = faultWords("too-large");
			return nothing;
		}
		const { record } = await guidedOf(request);
		const load = form["file.load"] === "load" || form["file.load"] === "idle" ? form["file.load"] : undefined;
		try {
			const named = { fileName: file?.fileName ?? "pasted.txt", bytes };
			const imported = await importIntoDraft(deps, callerOf(request), recordId, record.version, named, load);
			const notes = [
				say("record.import-taken", { format: imported.preview.format, count: imported.taken.length }),
				...imported.preview.warnings.map((warning) => warning.message),
				...importWords(imported.preview, imported.taken),
				...imported.identityDiffers.map((member) =>
					say("record.import-identity", { member: say(`record.member.${member}` as TextKey) }),
				),
			];
			return { notes, read: { fileName: named.fileName, preview: imported.preview, taken: imported.taken } };
		} catch (error) {
			if (!(error instanceof Fault) || error.status >= 500) throw error;
			const unread = error.members[0];
			if (file === undefined || unread?.code.startsWith("import-refused") !== true) {
				problems["file.upload"] = wordsOf(error);
				return nothing;
			}
			// A file that is for people to read, or that is damaged, is evidence all the same.
			const caller = callerOf(request);
			const { sha256 } = await bringExhibit(deps, caller, recordId, { fileName: file.fileName, bytes });
			await keepDiagnostic(deps, caller, recordId, sha256);
			const why = badMemberWords(unread.code, unread.facts).message;
			return { notes: [say("arrival.file.kept", { file: file.fileName, why })], read: null };
		}
	}

	async function send(
		request: FastifyRequest,
		reply: FastifyReply,
		guided: GuidedRecord,
		shown: Shown,
	): Promise<FastifyReply> {
		const caller = callerOf(request);
		const [instruments, benches, photoCode]: [InstrumentView[], BenchView[], PhotoCodeView] = await Promise.all([
			readInstruments(deps, caller),
			readBenches(deps, caller),
			givePhotoCode(deps, caller, guided.record.id),
		]);
		const content = guided.record.content ?? {};
		const kept = fillRecordForm(fieldsOf(guided.record), guided.allChecks, content);
		return sendPage(
			reply,
			<RecordEditor
				request={request}
				guided={guided}
				instruments={instruments}
				benches={benches}
				values={shown.typed ?? kept}
				errors={shown.errors ?? {}}
				notes={shown.notes ?? []}
				read={shown.read ?? null}
				photoCode={photoCode}
				now={deps.now()}
			/>,
			shown.status ?? 200,
		);
	}
}

function wordsOf(found: Fault): string {
	const [member] = found.members;
	if (member === undefined) return faultWords(found.code, found.facts);
	return pageWords(member);
}
