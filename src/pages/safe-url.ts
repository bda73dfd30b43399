/**
 * An address for `href` or `src` that was not written by us: only our own paths, http(s), and mails to someone pass. A mail
 * opens in a program of the reader's, who sees it before it goes.
 */
export function safeUrl(address: string): string {
	if (/^\/(?!\/)/.test(address) || /^#/.test(address)) return address;
	return URL.canParse(address) && /^(https?|mailto):$/.test(new URL(address).protocol) ? address : "#";
}
