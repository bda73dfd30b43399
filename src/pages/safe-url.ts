/** An address for `href` or `src` that was not written by us: only our own paths and http(s) pass. */
export function safeUrl(address: string): string {
	if (/^\/(?!\/)/.test(address) || /^#/.test(address)) return address;
	return URL.canParse(address) && /^https?:$/.test(new URL(address).protocol) ? address : "#";
}
