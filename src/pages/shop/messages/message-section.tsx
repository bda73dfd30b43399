/** The mails of an order: what was sent when to whom, what became of it, and writing another. */
import type { LinkView } from "../../../contract/access.ts";
import type { MailList, MailView } from "../../../contract/mail.ts";
import type { OrderLine } from "../../../operations/orders/order-line.ts";
import { say, type TextKey } from "../../../texts/say.ts";
import { showTime } from "../../../texts/shown-time.ts";
import {
	type Choice,
	ChoiceField,
	type FieldErrors,
	Form,
	type FormValues,
	Submit,
	TextField,
} from "../../components/form.tsx";
import { MailAddress } from "./mail-address.tsx";
import { mailOptions, openLinks } from "./mail-options.ts";

export interface MessageProps {
	readonly found: OrderLine;
	readonly links: readonly LinkView[];
	readonly messages: MailList;
	readonly formToken: string;
	/** Of the form that writes a mail, where something in it was wrong. */
	readonly values?: FormValues;
	readonly errors?: FieldErrors;
}

export function MessageSection(props: MessageProps) {
	const { found, messages, formToken } = props;
	return (
		<section id="messages">
			<h2>{say("mail.title")}</h2>
			{!messages.canSend && <p class="hint">{say("mail.no-server")}</p>}
			{messages.mails.length > 0 ? (
				<MailTable orderId={found.order.id} messages={messages} formToken={formToken} />
			) : (
				messages.canSend && <p>{say("mail.none")}</p>
			)}
			{found.order.owner.erasedAt === undefined && <WriteMail {...props} />}
			{messages.canSend && <MailChoices {...props} />}
		</section>
	);
}

function MailTable({
	orderId,
	messages,
	formToken,
}: {
	readonly orderId: string;
	readonly messages: MailList;
	readonly formToken: string;
}) {
	return (
		<table class="stacked">
			<thead>
				<tr>
					<th scope="col">{say("mail.column-what")}</th>
					<th scope="col">{say("mail.column-to")}</th>
					<th scope="col">{say("mail.column-state")}</th>
					<th scope="col">{say("mail.column-act")}</th>
				</tr>
			</thead>
			<tbody>
				{messages.mails.map((mail) => (
					<tr key={mail.id}>
						<th scope="row">{say(`mail.kind.${mail.kind}`)}</th>
						<td data-label={say("mail.column-to")}>
							<MailAddress address={mail.to} />
						</td>
						<td data-label={say("mail.column-state")}>
							{stateOf(mail)}
							{mail.answer !== null && mail.state !== "sent" && (
								<span class="hint"> {say("mail.answer", { answer: mail.answer })}</span>
							)}
						</td>
						<td data-label={say("mail.column-act")}>
							{mail.endedAt !== null && mail.reason !== "erased" && (
								<Form action={`/orders/${orderId}/mails/${mail.id}`} formToken={formToken}>
									{messages.canSend && <Submit kind="quiet" name="act" value="send" label={say("mail.again")} />}
									<Submit kind="quiet" name="act" value="show" label={say("mail.again-text")} />
								</Form>
							)}
						</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}

/** What became of a mail, in words. */
function stateOf(mail: MailView): string {
	const time = showTime(mail.endedAt ?? mail.nextTryAt ?? mail.askedAt);
	if (mail.state === "queued" && mail.attempts > 0) {
		return say("mail.state.queued-again", { attempts: mail.attempts, time });
	}
	if (mail.state === "queued") {
		// A mail for later was asked for with days between; one for now is due from its first moment on.
		const isLater = Date.parse(mail.nextTryAt ?? "") - Date.parse(mail.askedAt) > 60_000;
		return isLater
			? say("mail.state.queued-later", { time })
			: say("mail.state.queued", { time: showTime(mail.askedAt) });
	}
	return say(`mail.state.${mail.state}`, {
		time,
		attempts: mail.attempts,
		why: mail.reason === null ? "" : say(`mail.drop.${mail.reason}` as TextKey),
	});
}

function WriteMail({ found, links, messages, formToken, values = {}, errors = {} }: MessageProps) {
	const { owner, id } = found.order;
	const options = mailOptions(found, links);
	if (options.length === 0) return <p class="hint">{say("mail.nothing-to-write")}</p>;
	const remindable: Choice[] = openLinks(found, links).map((link) => ({ value: link.id, label: link.label }));
	return (
		<>
			<h3>{say("mail.write")}</h3>
			<Form action={`/orders/${id}/mails`} formToken={formToken}>
				<ChoiceField
					name="matter"
					label={say("mail.what")}
					hint={say("mail.what-hint")}
					choices={options}
					values={{ matter: options[0]?.value, ...values }}
					errors={errors}
				/>
				<TextField
					name="to"
					type="email"
					label={say("mail.other-address")}
					hint={
						owner.email === undefined
							? say("mail.other-address-hint-none")
							: say("mail.other-address-hint", { address: owner.email })
					}
					values={values}
					errors={errors}
				/>
				{messages.canSend && <Submit name="act" value="send" label={say("mail.send")} />}
				<Submit kind={messages.canSend ? "quiet" : "main"} name="act" value="show" label={say("mail.show")} />
			</Form>
			{messages.canSend && remindable.length > 0 && (
				<>
					<h3>{say("mail.remind")}</h3>
					<Form action={`/orders/${id}/mails`} formToken={formToken}>
						<input type="hidden" name="act" value="remind" />
						<ChoiceField
							name="remind"
							label={say("mail.remind-link")}
							choices={remindable}
							values={{ remind: remindable[0]?.value, ...values }}
							errors={errors}
						/>
						<TextField
							name="afterDays"
							inputMode="numeric"
							width="short"
							label={say("mail.remind-days")}
							unit={say("mail.remind-unit")}
							values={{ afterDays: "7", ...values }}
							errors={errors}
						/>
						<Submit kind="quiet" label={say("mail.remind-set")} />
					</Form>
				</>
			)}
		</>
	);
}

function MailChoices({ found, messages, formToken }: MessageProps) {
	return (
		<Form action={`/orders/${found.order.id}/mail-choice`} formToken={formToken}>
			<fieldset class="field choices">
				<legend>{say("mail.choice")}</legend>
				{(["toOwner", "toRepairer", "periods", "periodsToOwner"] as const).map((name) => (
					<label key={name} class="choice">
						<input type="checkbox" name={name} value="yes" checked={messages.choice[name]} />{" "}
						{say(`mail.choice.${name}`)}
					</label>
				))}
			</fieldset>
			<Submit kind="quiet" label={say("mail.choice-save")} />
		</Form>
	);
}
