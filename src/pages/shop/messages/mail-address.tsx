/** An address that breaks after its signs alone, so that no line of it can be read as a whole one. */
import { say } from "../../../texts/say.ts";

export function MailAddress({ address }: { readonly address: string | null }) {
	if (address === null) return <>{say("mail.to-nobody")}</>;
	return (
		<span class="mail-address">
			{address.split(/(?<=[@.])/).map((part, place) => (
				<>
					{place > 0 && <wbr />}
					{part}
				</>
			))}
		</span>
	);
}
