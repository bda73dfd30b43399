/**
 * A time-stamping authority on this machine for tests: a certificate authority and its signers made by `openssl`, and an
 * HTTP server whose answers `openssl ts -reply` makes. What `openssl ts` refuses to make (a signer of the wrong usage) is
 * made by `openssl cms` over a time stamp of its own. All names are invented.
 */
import { execFileSync } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** How a signer's certificate differs from a right one. */
export interface SignerKind {
	readonly usage?: string;
	/** YYYYMMDDHHMMSSZ. */
	readonly from?: string;
	readonly to?: string;
}

export interface TestAuthority {
	readonly folder: string;
	/** The trust anchor, PEM. */
	readonly caPem: string;
	readonly caPath: string;
	/** Makes another signer under the same authority, for `forge`. */
	addSigner(name: string, kind: SignerKind): void;
	/** The answer to a question, by `openssl ts -reply`. */
	reply(question: Uint8Array, options?: { readonly digests?: string }): Buffer;
	/** An answer with the time stamp of a right one, signed by any signer, by `openssl cms -sign`. */
	forge(question: Uint8Array, signer: string, options?: string): Buffer;
	/** What `openssl ts -verify` says of a token over data, under this authority. */
	opensslVerify(token: Uint8Array, data: Uint8Array): string;
	remove(): void;
}

export function makeTestAuthority(name = "invented"): TestAuthority {
	const folder = mkdtempSync(join(tmpdir(), "handover-authority-"));
	const openssl = (command: string) =>
		execFileSync("openssl", command.split(" "), { cwd: folder, stdio: ["ignore", "pipe", "pipe"] });
	const put = (file: string, content: string | Uint8Array) => writeFileSync(join(folder, file), content);
	const get = (file: string) => readFileSync(join(folder, file));
	put("index.txt", "");
	put("serial", "1000");
	put("tsa-serial", "01");
	put("ca.cnf", CA_SETTINGS);
	openssl(
		`req -x509 -config ca.cnf -extensions authority -newkey rsa:2048 -nodes -sha256 -keyout ca.key -out ca.pem -days 3650 -subj /CN=${name}-test-authority`,
	);
	const authority: TestAuthority = {
		folder,
		caPem: get("ca.pem").toString(),
		caPath: join(folder, "ca.pem"),
		addSigner(signer, { usage = "critical,timeStamping", from = "20200101000000Z", to = "20400101000000Z" }) {
			const extended = usage === "" ? "" : `extendedKeyUsage = ${usage}\n`;
			put(`${signer}.ext`, `keyUsage = critical,digitalSignature\nsubjectKeyIdentifier = hash\n${extended}`);
			openssl(
				`req -new -config ca.cnf -newkey rsa:2048 -nodes -keyout ${signer}.key -out ${signer}.csr -subj /CN=${name}-${signer}`,
			);
			openssl(
				`ca -config ca.cnf -batch -notext -cert ca.pem -keyfile ca.key -in ${signer}.csr -out ${signer}.pem -startdate ${from} -enddate ${to} -extfile ${signer}.ext`,
			);
		},
		reply(question, { digests = "sha256" } = {}) {
			put("tsa.cnf", `${TSA_SETTINGS}digests = ${digests}\n`);
			put("query.tsq", question);
			openssl(
				"ts -reply -config tsa.cnf -section own -queryfile query.tsq -signer signer.pem -inkey signer.key -chain ca.pem -out reply.tsr",
			);
			return get("reply.tsr");
		},
		forge(question, signer, options = "-cades") {
			authority.reply(question);
			openssl("ts -reply -config tsa.cnf -section own -in reply.tsr -token_out -out token.der");
			openssl("cms -verify -noverify -inform DER -in token.der -out info.der");
			openssl(
				`cms -sign -binary -nodetach -md sha256 -econtent_type ${TST_INFO} -signer ${signer}.pem -inkey ${signer}.key -in info.der -outform DER -out forged.der ${options}`.trim(),
			);
			// TimeStampResp: the granted status, then the token.
			return der(0x30, Buffer.concat([der(0x30, Buffer.from("020100", "hex")), get("forged.der")]));
		},
		opensslVerify(token, data) {
			put("stored.der", token);
			put("stamped", data);
			return openssl("ts -verify -in stored.der -token_in -data stamped -CAfile ca.pem").toString();
		},
		remove: () => rmSync(folder, { recursive: true, force: true }),
	};
	authority.addSigner("signer", {});
	return authority;
}

const TST_INFO = "1.2.840.113549.1.9.16.1.4";

const CA_SETTINGS = `
[ca]
default_ca = own
[own]
database = index.txt
serial = serial
new_certs_dir = .
default_md = sha256
policy = any
unique_subject = no
[any]
commonName = supplied
[req]
distinguished_name = dn
[dn]
[authority]
basicConstraints = critical,CA:TRUE
keyUsage = critical,keyCertSign,cRLSign
subjectKeyIdentifier = hash
`;

const TSA_SETTINGS = `
[tsa]
default_tsa = own
[own]
serial = tsa-serial
crypto_device = builtin
signer_digest = sha256
default_policy = 1.3.6.1.4.1.99999.1
other_policies = 1.3.6.1.4.1.99999.2
accuracy = secs:1
ordering = no
tsa_name = yes
ess_cert_id_chain = no
ess_cert_id_alg = sha256
`;

/** A DER element: tag, length in its shortest form, content. */
export function der(tag: number, content: Uint8Array): Buffer {
	const size = content.length;
	const length =
		size < 128 ? [size] : size < 256 ? [0x81, size] : size < 65536 ? [0x82, size >> 8, size & 255] : undefined;
	if (length === undefined) throw new Error("too long for a test");
	return Buffer.concat([Uint8Array.of(tag, ...length), content]);
}

export interface AuthorityServer {
	readonly url: string;
	/** Questions asked so far. */
	readonly asked: readonly Buffer[];
	/** What to do with the next questions. */
	answer(how: (question: Buffer, response: ServerResponse) => void): void;
	close(): Promise<void>;
}

/** Serves the authority over HTTP; from the start it answers rightly. */
export async function serveAuthority(authority: TestAuthority): Promise<AuthorityServer> {
	const asked: Buffer[] = [];
	let how = (question: Buffer, response: ServerResponse): void => {
		response.setHeader("content-type", "application/timestamp-reply").end(authority.reply(question));
	};
	const server = createServer(async (request: IncomingMessage, response: ServerResponse) => {
		const parts: Buffer[] = [];
		for await (const part of request) parts.push(part as Buffer);
		asked.push(Buffer.concat(parts));
		how(Buffer.concat(parts), response);
	});
	server.listen(0, "127.0.0.1");
	await once(server, "listening");
	return {
		url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/stamps`,
		asked,
		answer(next) {
			how = next;
		},
		async close() {
			server.closeAllConnections();
			server.close();
			await once(server, "close");
		},
	};
}
