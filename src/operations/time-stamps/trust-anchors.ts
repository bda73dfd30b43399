/** The certificates that the shop trusts for time stamps, from its PEM file. */
import { Certificate } from "pkijs";

const PEM = /-----BEGIN CERTIFICATE-----([A-Za-z0-9+/=\s]+)-----END CERTIFICATE-----/g;

/** @throws Error where the text holds no certificate, or one that cannot be read */
export function trustAnchors(pem: string): Certificate[] {
	const found = [...pem.matchAll(PEM)].map(([, base64 = ""]) => Certificate.fromBER(Buffer.from(base64, "base64")));
	if (found.length === 0) throw new Error("it holds no certificate in PEM form");
	return found;
}
