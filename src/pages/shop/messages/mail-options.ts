/** What there is to write about on an order's page, as one list to choose from; and the choice read back. */
import type { LinkView } from "../../../contract/access.ts";
import type { OrderLine } from "../../../operations/orders/order-line.ts";
import { say } from "../../../texts/say.ts";
import { showTime } from "../../../texts/shown-time.ts";
import type { Choice } from "../../components/form.tsx";
import { linkWords, recordWords } from "../link-words.ts";

interface OpenLink {
	readonly id: string;
	readonly isUnused: boolean;
	readonly what: string;
	readonly time: string;
	readonly label: string;
}

/** Links that wait for an answer: neither withdrawn nor over, and their record still a draft. */
export function openLinks(found: OrderLine, links: readonly LinkView[]): OpenLink[] {
	return links
		.filter((link) => link.revokedAt === null)
		.flatMap((link) => {
			const draft = found.drafts.find(({ id }) => id === link.recordId);
			const isAnswered = link.recordId === null ? link.firstUsedAt !== null : draft === undefined;
			if (isAnswered) return [];
			const what = linkWords(found, link);
			const time = showTime(link.createdAt);
			return [
				{
					id: link.id,
					isUnused: link.firstUsedAt === null,
					what,
					time,
					label: say("mail.option.reminder", { what, time }),
				},
			];
		});
}

/** `kind id`, newest first. */
export function mailOptions(found: OrderLine, links: readonly LinkView[]): Choice[] {
	const open = openLinks(found, links);
	const unused = open.filter(({ isUnused }) => isUnused);
	const option =
		(kind: "link" | "code" | "reminder") =>
		({ id, what, time }: OpenLink) => ({
			value: `${kind} ${id}`,
			label: say(`mail.option.${kind}`, { what, time }),
		});
	const receipts = found.records.map(({ view }) => ({
		value: `receipt ${view.id}`,
		label: say("mail.option.receipt", { what: recordWords(found, view), time: showTime(view.sealed?.at ?? "") }),
	}));
	return [
		...unused.map(option("link")).reverse(),
		...receipts.reverse(),
		...open.map(option("reminder")).reverse(),
		...unused.map(option("code")).reverse(),
	];
}

/** What a form asks for, in the API's form; validated by whoever takes it. */
export function askedOf(form: Readonly<Record<string, string>>): Record<string, unknown> {
	const to = form.to?.trim() === "" || form.to === undefined ? {} : { to: form.to.trim() };
	if (form.act === "remind") {
		return { kind: "reminder", linkId: form.remind, afterDays: Number(form.afterDays), ...to };
	}
	const [kind = "", id] = (form.matter ?? "").split(" ");
	return { kind, ...(kind === "receipt" ? { recordId: id } : { linkId: id }), ...to };
}
