/** Faults in words, for problem details and for pages. */
import { isTextKey, say, type TextValues } from "./say.ts";

/** What went wrong, and the mend. */
export function faultWords(code: string, facts: TextValues = {}): string {
	return `${words(`fault.${code}`, facts)} ${words(`fault.${code}.mend`, facts)}`;
}

/** What is wrong with a member or a field, and the mend. */
export function badMemberWords(
	code: string,
	facts: TextValues = {},
): { readonly message: string; readonly mend: string } {
	return { message: words(`bad.${code}`, facts), mend: words(`bad.${code}.mend`, facts) };
}

function words(key: string, facts: TextValues): string {
	if (!isTextKey(key)) throw new Error(`no text for ${key}`);
	return say(key, facts);
}
