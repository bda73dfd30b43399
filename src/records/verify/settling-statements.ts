/**
 * The two forms that the parties seal of what they state and settle, `handover-risk/position/1` and
 * `handover-risk/settlement/1`: member by member, fitting their entry, and naming what they answer, of the same order, by the hash
 * that the receipt's own entries have. Lists of codes are left open: a later one does not make an older reader fail.
 */
import type { JsonNode } from "./canonical-json.ts";
import { Unreadable, why } from "./finding.ts";
import type { ReadEntry } from "./read-entry.ts";
import { hexOf, itemsOf, membersOf, plainText, refuse, textOf } from "./shape.ts";

const ID = /^[a-z]{3}_[0-9a-z]{20}$/;
const CODE = /^[a-z][a-z0-9-]{0,60}$/;
const DATE = /^[0-9]{4}-[0-9]{2}-[0-9]{2}$/;

const FORMS: Readonly<Record<string, { readonly format: string; readonly read: (node: JsonNode) => Said }>> = {
	"position-sealed": { format: "handover-risk/position/1", read: readPosition },
	"settlement-sealed": { format: "handover-risk/settlement/1", read: readSettlementStep },
};

/** By kind of position; any other kind, also one that is added later, may name a test or not. */
const NAMES_TEST: Readonly<Record<string, boolean>> = { states: false, "asks-for-test": true, "offers-test": true };

interface Said {
	readonly id: string;
	readonly orderId: string;
	/** What it answers, and the place of that. */
	readonly about: { readonly id: string; readonly statementSha256: string; readonly where: string } | null;
}

/** @throws Unreadable at the first statement of these forms that has not its form, or does not fit what it names */
export function refuseWrongSettling(entries: readonly ReadEntry[]): void {
	for (const entry of entries) {
		const form = FORMS[entry.kind];
		if (form === undefined || entry.statement === null) continue;
		const { node, format } = entry.statement;
		try {
			if (format !== form.format) refuse("/$format", why("verify.form-constant"), form.format, format);
			const { id, orderId, about } = form.read(node);
			if (id !== entry.subject) refuse("", why("verify.form-told"), entry.subject, id);
			const answered = entries.find(({ subject, kind }) => subject === about?.id && kind === entry.kind);
			if (about === null || answered === undefined) continue;
			if (answered.statementSha256 !== about.statementSha256 || !(answered.index < entry.index))
				refuse(about.where, why("verify.form-answered"), answered.statementSha256 ?? "", about.statementSha256);
			const itsOrder = orderOf(answered);
			if (itsOrder !== null && itsOrder !== orderId)
				refuse("/orderId", why("verify.form-other-order"), itsOrder, orderId);
		} catch (error) {
			if (!(error instanceof Unreadable)) throw error;
			throw new Unreadable({ ...error.details, where: `${entry.where}/statement → ${error.details.where}` });
		}
	}
}

function readPosition(node: JsonNode): Said {
	const member = membersOf(
		node,
		"",
		["$format", "checkIds", "kind", "orderId", "partyId", "positionId", "recordIds", "text"],
		["answers", "consignmentId", "test"],
	);
	const orderId = readParties(member);
	const kind = textOf(member("kind"), "/kind", CODE, "verify.form-kind");
	each(member("checkIds"), "/checkIds", (item, where) => textOf(item, where));
	each(member("recordIds"), "/recordIds", idOf);
	readCommitment(member("text"), "/text");
	const leg = member("consignmentId") as JsonNode | undefined;
	if (leg !== undefined) idOf(leg, "/consignmentId");
	const test = member("test") as JsonNode | undefined;
	const isNamed = NAMES_TEST[kind] ?? test !== undefined;
	if (isNamed !== (test !== undefined)) refuse("/test", why(isNamed ? "verify.form-missing" : "verify.form-unknown"));
	if (test !== undefined) {
		const part = membersOf(test, "/test", ["dates", "doneBy", "id"]);
		textOf(part("id"), "/test/id", CODE, "verify.form-id");
		textOf(part("doneBy"), "/test/doneBy", CODE, "verify.form-id");
		each(part("dates"), "/test/dates", (item, where) => textOf(item, where, DATE, "verify.form-time"));
	}
	const answers = member("answers") as JsonNode | undefined;
	const id = idOf(member("positionId"), "/positionId");
	if (answers === undefined) return { id, orderId, about: null };
	const part = membersOf(answers, "/answers", ["positionId", "stance", "statementSha256"]);
	textOf(part("stance"), "/answers/stance", CODE, "verify.form-id");
	return { id, orderId, about: aboutOf(part, "positionId", "/answers") };
}

function readSettlementStep(node: JsonNode): Said {
	const common = ["$format", "act", "orderId", "partyId", "stepId"];
	const act = node.type === "object" ? node.members.get("act") : undefined;
	const isProposal = act?.type === "text" && act.text === "proposes";
	const own = isProposal ? ["amounts", "itemNext", "outcome"] : ["proposal"];
	const member = membersOf(node, "", [...common, ...own], ["text"]);
	const orderId = readParties(member);
	textOf(member("act"), "/act", CODE, "verify.form-kind");
	const text = member("text") as JsonNode | undefined;
	if (text !== undefined) readCommitment(text, "/text");
	const id = idOf(member("stepId"), "/stepId");
	if (!isProposal) {
		const part = membersOf(member("proposal"), "/proposal", ["statementSha256", "stepId"]);
		return { id, orderId, about: aboutOf(part, "stepId", "/proposal") };
	}
	for (const name of ["itemNext", "outcome"]) textOf(member(name), `/${name}`, CODE, "verify.form-id");
	each(member("amounts"), "/amounts", (item, where) => {
		const part = membersOf(item, where, ["amount", "currency", "from", "to"]);
		const amount = part("amount");
		if (amount.type !== "number" || !(amount.number >= 0)) refuse(`${where}/amount`, why("verify.form-amount"));
		textOf(part("currency"), `${where}/currency`, /^[A-Z]{3}$/);
		for (const name of ["from", "to"]) textOf(part(name), `${where}/${name}`, CODE, "verify.form-id");
	});
	return { id, orderId, about: null };
}

/** The order that an entry's statement names; null where it is not shown. */
function orderOf({ statement }: ReadEntry): string | null {
	return statement?.node.type === "object" ? plainText(statement.node.members.get("orderId")) : null;
}

/** Reads each item of a list. */
function each(node: JsonNode, where: string, read: (item: JsonNode, where: string) => unknown): void {
	for (const [index, item] of itemsOf(node, where).entries()) read(item, `${where}/${index}`);
}

/** The order's id. */
function readParties(member: (name: string) => JsonNode): string {
	idOf(member("partyId"), "/partyId");
	return idOf(member("orderId"), "/orderId");
}

function aboutOf(part: (name: string) => JsonNode, name: string, where: string): NonNullable<Said["about"]> {
	return {
		id: idOf(part(name), `${where}/${name}`),
		statementSha256: hexOf(part("statementSha256"), `${where}/statementSha256`, 32),
		where: `${where}/statementSha256`,
	};
}

function readCommitment(node: JsonNode, where: string): void {
	hexOf(membersOf(node, where, ["commitment"])("commitment"), `${where}/commitment`, 32);
}

function idOf(node: JsonNode, where: string): string {
	return textOf(node, where, ID, "verify.form-id");
}
