/** Certificates for a mail server in tests, made by `openssl`: an authority of its own and what it signs. All names are invented. */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

export interface MailCertificates {
	/** The authority's root. */
	readonly caPem: string;
	readonly caPath: string;
	/** A folder with `key.pem` and `cert.pem` for a host's name, signed by the authority, or by nobody else than itself. */
	of(host: string, by: "authority" | "itself"): string;
	remove(): void;
}

export function mailCertificates(): MailCertificates {
	const folder = mkdtempSync(join(tmpdir(), "handover-certificates-"));
	const openssl = (command: string) =>
		execFileSync("openssl", command.split(" "), { cwd: folder, stdio: ["ignore", "pipe", "pipe"] });
	const newKey = "-newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes -sha256";
	openssl(`req -x509 ${newKey} -keyout ca.key -out ca.pem -days 30 -subj /CN=invented-authority`);
	let made = 0;
	return {
		caPem: readFileSync(join(folder, "ca.pem"), "utf8"),
		caPath: join(folder, "ca.pem"),
		of(host, by) {
			made += 1;
			const name = `server-${made}`;
			mkdirSync(join(folder, name));
			const out = `-keyout ${name}/key.pem -subj /CN=${host}`;
			const names = `subjectAltName=DNS:${host}`;
			if (by === "itself") openssl(`req -x509 ${newKey} ${out} -out ${name}/cert.pem -days 30 -addext ${names}`);
			else {
				writeFileSync(join(folder, `${name}.ext`), names);
				openssl(`req -new ${newKey} ${out} -out ${name}.csr`);
				openssl(
					`x509 -req -in ${name}.csr -CA ca.pem -CAkey ca.key -CAcreateserial -days 30 -out ${name}/cert.pem -extfile ${name}.ext`,
				);
			}
			return join(folder, name);
		},
		remove: () => rmSync(folder, { recursive: true, force: true }),
	};
}
