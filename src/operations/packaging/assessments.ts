/** Sealing the assessment of the pack as shipped, and reading what was sealed. Planning runs are never kept. */
import type { Caller } from "../../access/caller.ts";
import { packaging } from "../../calculations/packaging/packaging.ts";
import { CATALOGUE_VERSION } from "../../catalogue/checks/checks.ts";
import type { AssessmentView, PackagingRequest } from "../../contract/packaging.ts";
import { consignmentById } from "../../database/orders.ts";
import { insertOpenings } from "../../database/records.ts";
import { assessmentsOfConsignment, insertAssessment, isSealed, sealedOfOrder } from "../../database/sealed.ts";
import { fault } from "../../faults.ts";
import { assessmentStatement } from "../../records/assessment-statement.ts";
import { canonicalBytes } from "../../records/canonical.ts";
import { makeCommitter } from "../../records/commitment.ts";
import { openStatement } from "../../records/open-statement.ts";
import type { LoggedEntry, SealedEntry } from "../../records/receipt.ts";
import { packagingInput } from "../calculations/packaging.ts";
import { createOnce } from "../create-once.ts";
import type { Deps } from "../deps.ts";
import { appendToLog } from "../log/append-to-log.ts";
import { callerId, mustBeShop, mustReadOrder } from "../may.ts";
import { refuseReadIn } from "../read-in/refuse-read-in.ts";

/**
 * Computes the pack's adequacy anew and seals it with what it rests on, in one transaction. With a key that was used
 * before, gives what that one sealed.
 */
export async function sealAssessment(
	deps: Deps,
	caller: Caller,
	consignmentId: string,
	request: PackagingRequest,
	idempotencyKey: string | null,
): Promise<AssessmentView> {
	mustBeShop(caller);
	const consignment = await consignmentById(deps.database, consignmentId);
	if (consignment === null) throw fault("not-found");
	await refuseReadIn(deps.database, consignment.order_id);
	const { sources, ...result } = packaging(packagingInput(request));
	const id = await createOnce(deps, caller, idempotencyKey, { consignmentId, ...request }, async (transaction) => {
		const assessmentId = deps.newId("pka");
		const committer = makeCommitter(deps.randomBytes);
		const facts = { assessmentId, orderId: consignment.order_id, consignmentId, ...request, result, sources };
		const statement = assessmentStatement({ ...facts, catalogueVersion: CATALOGUE_VERSION }, committer);
		const statementBytes = canonicalBytes(statement);
		await insertAssessment(transaction, { id: assessmentId, orderId: consignment.order_id, consignmentId });
		const about = { subject: assessmentId, orderId: consignment.order_id };
		await insertOpenings(transaction, about, committer.openings);
		await appendToLog(deps, transaction, {
			kind: "assessment-sealed",
			subject: assessmentId,
			byId: callerId(caller),
			statementBytes,
		});
		return assessmentId;
	});
	const sealed = await readAssessments(deps, caller, consignmentId);
	const found = sealed.find((assessment) => assessment.id === id);
	if (found === undefined) throw new Error(`assessment ${id} was sealed and is not in the log`);
	return found;
}

/** The sealed assessments of a leg, oldest first. */
export async function readAssessments(deps: Deps, caller: Caller, consignmentId: string): Promise<AssessmentView[]> {
	const consignment = await consignmentById(deps.database, consignmentId);
	if (consignment === null) throw fault("not-found");
	mustReadOrder(caller, consignment.order_id);
	const [ids, entries] = await Promise.all([
		assessmentsOfConsignment(deps.database, consignmentId),
		sealedOfOrder(deps.database, consignment.order_id),
	]);
	return entries.filter((entry) => ids.includes(entry.subject)).map((entry) => viewOf(entry, consignmentId));
}

/** The newest one of a leg among an order's entries that were read already. */
export function newestAssessmentIn(entries: readonly LoggedEntry[], consignmentId: string): AssessmentView | null {
	const views = entries
		.filter((entry) => isSealed(entry) && entry.kind === "assessment-sealed")
		.map((entry) => viewOf(entry as SealedEntry, consignmentId));
	return views.findLast(({ statement }) => statement.consignmentId === consignmentId) ?? null;
}

function viewOf(entry: SealedEntry, consignmentId: string): AssessmentView {
	return {
		id: entry.subject,
		consignmentId,
		sealedAt: entry.time.toISOString(),
		index: entry.index,
		fingerprint: entry.statementSha256,
		statement: openStatement(entry.statementBytes, entry.openings) as AssessmentView["statement"],
	};
}
