/**
 * Addresses that we send to. The rule: before the @ a dot-atom of RFC 5321, 4.1.2, in ASCII, at most 64 characters; after it
 * a domain name of at least two labels, in any script. The domain goes out in its ASCII form (RFC 5890; by the URL standard's
 * own conversion). At most 254 characters in that form. What stands in quotes before the @, and other scripts there, would
 * need every server on the way to take them (RFC 6531), so they are refused here and not by a server later.
 */
import { z } from "zod";

const LOCAL_PART = /^[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+(\.[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+)*$/;
const LABEL = /^[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?$/;
const MOST = 254;

/** The address as it goes out; null for what is none. */
export function sendableAddress(address: string): string | null {
	const at = address.lastIndexOf("@");
	const local = address.slice(0, at);
	if (at < 1 || local.length > 64 || !LOCAL_PART.test(local)) return null;
	const domain = asciiDomain(address.slice(at + 1));
	return domain === null || local.length + 1 + domain.length > MOST ? null : `${local}@${domain}`;
}

/** Letters, digits, hyphens and full stops only go into the conversion, so that no other part of a URL can come in. */
function asciiDomain(domain: string): string | null {
	if (!/^[\p{L}\p{M}\p{N}.-]+$/u.test(domain) || !URL.canParse(`http://${domain}/`)) return null;
	const { hostname } = new URL(`http://${domain}/`);
	const labels = hostname.split(".");
	// A name that ends in a number would be read as an address of a machine.
	if (labels.length < 2 || /^\d+$/.test(labels.at(-1) ?? "")) return null;
	return labels.every((label) => LABEL.test(label)) ? hostname : null;
}

export const mailAddress = z
	.string()
	.max(MOST)
	.refine((address) => sendableAddress(address) !== null, {
		error: "an address is letters without accents before the @, and a domain name such as example.org after it",
	});
