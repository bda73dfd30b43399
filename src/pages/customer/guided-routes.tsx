/** `/guided/{record}/{step}`: the guided record, opened by the link made for it. */
import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import type { Caller } from "../../access/caller.ts";
import { callerOf, formTokenFor, openTo } from "../../access/callers.ts";
import { Fault, fault } from "../../faults.ts";
import type { Deps } from "../../operations/deps.ts";
import { givePhotoCode } from "../../operations/pictures/photo-codes.ts";
import { type GuidedRecord, readGuidedRecord } from "../../operations/records/guided-record.ts";
import { powerStop } from "../../operations/records/power-stop.ts";
import { sealingShortcomingsOf, sealRecord } from "../../operations/records/seal-record.ts";
import { faultWords } from "../../texts/fault-words.ts";
import { say } from "../../texts/say.ts";
import type { FieldErrors, FormValues } from "../components/form.tsx";
import { fillChecks, fillStopped } from "../record-form/checks-form.ts";
import { errorsOf } from "../record-form/field-control.tsx";
import type { ReadFile } from "../record-form/file-lines.tsx";
import { fillForm } from "../record-form/fill-form.ts";
import { fillOwnChecks } from "../record-form/own-checks-form.ts";
import type { RefusedFile } from "../record-form/photos.tsx";
import { readBody } from "../record-form/read-body.ts";
import { sendPage } from "../render.ts";
import { bringDiagnostic } from "./bring-diagnostic.ts";
import { bringFiles, takeOut } from "./bring-files.ts";
import { nextStep } from "./progress.ts";
import { CONFIRM } from "./review.tsx";
import { saveStep } from "./save-step.ts";
import { SealedPage } from "./sealed-page.tsx";
import { StepPage, stepPath } from "./step-page.tsx";
import { type Step, stepsOf } from "./steps.ts";

interface Place {
	readonly caller: Caller;
	readonly guided: GuidedRecord;
	readonly step: Step;
}

export function registerGuidedRecord(app: FastifyInstance, deps: Deps): void {
	const routes = { ...openTo("link:record"), schema: { hide: true } };

	app.get("/guided/:id", routes, async (request, reply) => {
		const { guided } = await placeOf(request);
		const { record, checks } = guided;
		if (record.content === null) return reply.redirect(`/guided/${record.id}/receipt`, 303);
		return reply.redirect(stepPath(record.id, nextStep(stepsOf(record.stage), record.content, checks)), 303);
	});

	app.get("/guided/:id/receipt", routes, async (request, reply) => {
		const { guided } = await placeOf(request);
		if (guided.record.sealed === null) return reply.redirect(`/guided/${guided.record.id}`, 303);
		return sendPage(reply, <SealedPage guided={guided} />);
	});

	app.get("/guided/:id/:step", routes, async (request, reply) => {
		const place = await placeOf(request);
		if (place.guided.record.content === null) {
			return reply.redirect(`/guided/${place.guided.record.id}/receipt`, 303);
		}
		return sendStep(request, reply, place, {});
	});

	app.post("/guided/:id/:step", routes, async (request, reply) => {
		const place = await placeOf(request);
		const { record } = place.guided;
		if (record.content === null) return reply.redirect(`/guided/${record.id}/receipt`, 303);
		const sent = await readBody(request.body);
		const act = sent.form.act ?? "stay";
		const version = Number(sent.form.version);
		if (act === "seal") return seal(request, reply, place, version, sent.form);

		const saved = await saveStep(deps, place.caller, place.guided, place.step, version, sent.form);
		await takeOut(deps, place.caller, record.id, sent.form);
		const photos = await bringFiles(deps, place.caller, place.guided, place.step, sent);
		const { refused, notices, read } = place.step.parts.includes("file")
			? await bringDiagnostic(deps, place.caller, place.guided, sent)
			: { refused: photos, notices: [], read: [] };
		if (notices.length > 0 && refused.length === 0) {
			return sendStep(request, reply, await placeOf(request), { notices, read });
		}
		if (saved.problems.length > 0 || saved.stale || refused.length > 0) {
			return sendStep(request, reply, await placeOf(request), {
				typed: saved.stale || saved.problems.length > 0 ? sent.form : {},
				errors: errorsOf(saved.problems),
				refused,
				notices,
				read,
				stale: saved.stale,
				status: saved.stale ? 409 : 400,
			});
		}
		const steps = stepsOf(record.stage);
		const next = steps[steps.findIndex((step) => step.id === place.step.id) + 1] ?? place.step;
		return reply.redirect(stepPath(record.id, act === "next" ? next : place.step), 303);
	});

	async function placeOf(request: FastifyRequest): Promise<Place> {
		const caller = callerOf(request);
		const { id, step = "" } = request.params as { id: string; step?: string };
		const guided = await readGuidedRecord(deps, caller, id);
		const steps = stepsOf(guided.record.stage);
		const found = steps.find((candidate) => candidate.id === step);
		if (step !== "" && found === undefined) throw fault("not-found");
		const [first] = steps;
		if (first === undefined) throw fault("not-found");
		return { caller, guided, step: found ?? first };
	}

	async function seal(
		request: FastifyRequest,
		reply: FastifyReply,
		place: Place,
		version: number,
		form: FormValues,
	): Promise<FastifyReply> {
		const { record } = place.guided;
		if (form[CONFIRM] !== "yes") {
			const errors = { [CONFIRM]: say("arrival.review.confirm-missing") };
			return sendStep(request, reply, place, { errors, status: 400 });
		}
		try {
			await sealRecord(deps, place.caller, record.id, version);
			return reply.redirect(`/guided/${record.id}/receipt`, 303);
		} catch (error) {
			if (!(error instanceof Fault)) throw error;
			if (error.code === "already-sealed") return reply.redirect(`/guided/${record.id}/receipt`, 303);
			if (error.code !== "bad-input" && error.code !== "version-stale") throw error;
			return sendStep(request, reply, await placeOf(request), {
				errors: error.members.length > 0 ? {} : { [CONFIRM]: faultWords(error.code, error.facts) },
				stale: error.code === "version-stale",
				status: error.status,
			});
		}
	}

	async function sendStep(
		request: FastifyRequest,
		reply: FastifyReply,
		place: Place,
		shown: {
			readonly typed?: FormValues;
			readonly errors?: FieldErrors;
			readonly refused?: readonly RefusedFile[];
			readonly notices?: readonly string[];
			readonly read?: readonly ReadFile[];
			readonly stale?: boolean;
			readonly status?: number;
		},
	): Promise<FastifyReply> {
		const { guided, step } = place;
		const photoCode = step.views.length === 0 ? null : await givePhotoCode(deps, place.caller, guided.record.id);
		const content = guided.record.content ?? {};
		const shortcomings = step.parts.includes("review") ? await sealingShortcomingsOf(deps, guided.record.id) : [];
		const kept = {
			...fillForm(step.fields, content),
			...(step.needsPower === true && powerStop(content) !== null ? fillStopped(guided.checks, content) : {}),
			...fillChecks(guided.checks, content),
			...(step.parts.includes("own-checks") ? fillOwnChecks(content) : {}),
		};
		const page = (
			<StepPage
				guided={guided}
				step={step}
				values={Object.keys(shown.typed ?? {}).length > 0 ? (shown.typed ?? {}) : kept}
				errors={shown.errors ?? {}}
				shortcomings={shortcomings}
				refused={shown.refused ?? []}
				notices={shown.notices ?? []}
				read={shown.read ?? []}
				stale={shown.stale ?? false}
				photoCode={photoCode}
				formToken={formTokenFor(request)}
				now={deps.now()}
			/>
		);
		return sendPage(reply, page, shown.status ?? 200);
	}
}
