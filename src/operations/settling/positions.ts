/** What the parties of an order state, each for its own side, sealed as it is stated; and reading it. */
import type { Caller } from "../../access/caller.ts";
import { checksOf } from "../../catalogue/checks/checks.ts";
import type { ItemClass } from "../../catalogue/codes.ts";
import type { PositionInput, PositionView } from "../../contract/positions.ts";
import type { Queryable } from "../../database/connection.ts";
import { consignmentById, itemById, type OrderRow, orderById } from "../../database/orders.ts";
import { insertOpenings } from "../../database/records.ts";
import { sealedOfKind } from "../../database/sealed.ts";
import { insertPosition, lockOrder } from "../../database/settling.ts";
import { type BadMember, fault, invalid } from "../../faults.ts";
import { canonicalBytes } from "../../records/canonical.ts";
import { makeCommitter } from "../../records/commitment.ts";
import { openStatement } from "../../records/open-statement.ts";
import { type OpenedPosition, positionStatement } from "../../records/position-statement.ts";
import type { SealedEntry } from "../../records/receipt.ts";
import { createOnce } from "../create-once.ts";
import type { Deps } from "../deps.ts";
import { appendToLog } from "../log/append-to-log.ts";
import { callerId, mustReadOrder } from "../may.ts";
import { sealedRecordsOfOrder } from "../records/record-views.ts";
import { sideOf } from "./side-of.ts";

/**
 * Seals a position for the caller's side.
 * @throws forbidden for a caller that speaks for no side; bad-input naming what does not belong to the order
 */
export async function statePosition(
	deps: Deps,
	caller: Caller,
	orderId: string,
	input: PositionInput,
	idempotencyKey: string | null,
): Promise<PositionView> {
	mustReadOrder(caller, orderId);
	const order = await orderById(deps.database, orderId);
	if (order === null) throw fault("not-found");
	const partyId = sideOf(caller, order);
	const id = await createOnce(deps, caller, idempotencyKey, { orderId, ...input }, async (transaction) => {
		await lockOrder(transaction, orderId);
		const answered = await refuseForeign(transaction, order, partyId, input);
		const positionId = deps.newId("pos");
		const committer = makeCommitter(deps.randomBytes);
		const { kind, text, consignmentId, recordIds = [], checkIds = [], answers, test } = input;
		const statement = positionStatement(
			{
				positionId,
				orderId,
				partyId,
				kind,
				recordIds,
				checkIds,
				...(consignmentId === undefined ? {} : { consignmentId }),
				...(answers === undefined || answered === null
					? {}
					: { answers: { ...answers, statementSha256: answered.statementSha256 } }),
				...(test === undefined ? {} : { test: { id: test.id, doneBy: test.doneBy, dates: test.dates ?? [] } }),
			},
			text,
			committer,
		);
		await insertPosition(transaction, { id: positionId, orderId });
		await insertOpenings(transaction, { subject: positionId, orderId }, committer.openings);
		await appendToLog(deps, transaction, {
			kind: "position-sealed",
			subject: positionId,
			byId: callerId(caller),
			statementBytes: canonicalBytes(statement),
		});
		return positionId;
	});
	const found = (await readPositions(deps, caller, orderId)).find((position) => position.id === id);
	if (found === undefined) throw new Error(`position ${id} was sealed and is not in the log`);
	return found;
}

/** The positions of both sides, in the order of the log, as it stood at a size. */
export async function readPositions(
	deps: Deps,
	caller: Caller,
	orderId: string,
	size = Number.POSITIVE_INFINITY,
): Promise<PositionView[]> {
	mustReadOrder(caller, orderId);
	if ((await orderById(deps.database, orderId)) === null) throw fault("not-found");
	const sealed = await sealedOfKind(deps.database, orderId, "position-sealed");
	const entries = sealed.filter(({ index }) => index < size);
	const numbers = new Map(entries.map(({ subject }, place) => [subject, place + 1]));
	return entries.map((entry) => viewOf(entry, numbers));
}

function viewOf(entry: SealedEntry, numbers: ReadonlyMap<string, number>): PositionView {
	const said = openStatement(entry.statementBytes, entry.openings) as unknown as OpenedPosition;
	const { answers, test } = said;
	return {
		id: entry.subject,
		orderId: said.orderId,
		number: numbers.get(entry.subject) ?? 0,
		partyId: said.partyId,
		kind: said.kind,
		text: said.text,
		consignmentId: said.consignmentId ?? null,
		recordIds: [...said.recordIds],
		checkIds: [...said.checkIds],
		answers:
			answers === undefined
				? null
				: {
						positionId: answers.positionId,
						number: numbers.get(answers.positionId) ?? 0,
						stance: answers.stance,
					},
		test: test === undefined ? null : { ...test, dates: [...test.dates] },
		sealedAt: entry.time.toISOString(),
		sealedBy: entry.byId,
		index: entry.index,
		fingerprint: entry.statementSha256,
	};
}

/**
 * Gives the position that is answered. Ids stand in plain in what is sealed, so none is taken that the order does not have.
 * @throws bad-input naming each
 */
async function refuseForeign(
	transaction: Queryable,
	order: OrderRow,
	partyId: string,
	{ consignmentId, recordIds = [], checkIds = [], answers }: PositionInput,
): Promise<SealedEntry | null> {
	const leg = consignmentId === undefined ? null : await consignmentById(transaction, consignmentId);
	const records = recordIds.length + checkIds.length === 0 ? [] : await sealedRecordsOfOrder(transaction, order.id);
	const item = await itemById(transaction, order.item_id);
	const known = new Set([
		...checksOf(item?.class as ItemClass).map(({ id }) => id),
		...records.flatMap(({ statement }) => statement.readings.map(({ check }) => check)),
	]);
	const positions = answers === undefined ? [] : await sealedOfKind(transaction, order.id, "position-sealed");
	const answered = positions.find(({ subject }) => subject === answers?.positionId) ?? null;
	const isOwn =
		answered !== null && (openStatement(answered.statementBytes, []) as unknown as OpenedPosition).partyId === partyId;
	const bad: BadMember[] = [
		...(consignmentId !== undefined && leg?.order_id !== order.id
			? [{ path: "/consignmentId", code: "unknown-id" }]
			: []),
		...recordIds.flatMap((id, index) =>
			records.some(({ view }) => view.id === id) ? [] : [{ path: `/recordIds/${index}`, code: "no-such-record" }],
		),
		...checkIds.flatMap((id, index) => (known.has(id) ? [] : [{ path: `/checkIds/${index}`, code: "unknown-check" }])),
		...(answers !== undefined && answered === null ? [{ path: "/answers/positionId", code: "unknown-id" }] : []),
		...(isOwn ? [{ path: "/answers/positionId", code: "own-position" }] : []),
	];
	if (bad.length > 0) throw invalid(bad);
	return answered;
}
