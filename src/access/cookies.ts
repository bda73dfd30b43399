/** Our cookies: scripts cannot read them, other sites cannot send them along. */

/** Names; over HTTPS the browser then accepts them from this very host only. */
export function cookieNames(publicUrl: string): { readonly session: string; readonly link: string } {
	const prefix = isSecure(publicUrl) ? "__Host-" : "";
	return { session: `${prefix}session`, link: `${prefix}link` };
}

/** Attributes of a cookie that ends at a time. */
export function cookieOptions(publicUrl: string, expires: Date) {
	return { path: "/", httpOnly: true, sameSite: "lax", secure: isSecure(publicUrl), expires } as const;
}

function isSecure(publicUrl: string): boolean {
	return publicUrl.startsWith("https:");
}
