/** The settings, read once from the environment, checked, with their defaults. Nothing else reads the environment. */
import { isIP } from "node:net";
import { homedir } from "node:os";
import { join, resolve } from "node:path";
import { z } from "zod";
import { sendableAddress } from "../contract/mail-address.ts";
import type { Sender } from "../operations/mail/mail-bytes.ts";
import type { MailServer } from "../operations/mail/smtp-sender.ts";

/** Our choice: some films and whole-trip recordings per order. */
export const DEFAULT_QUOTA_GIB = 64;
export const GIB = 1024 ** 3;
const LOG_LEVELS = ["fatal", "error", "warn", "info", "debug", "trace", "silent"] as const;

export interface Settings {
	readonly host: string;
	readonly port: number;
	readonly dataDir: string;
	/** Private keys, apart from the data where the shop wishes so. */
	readonly keyDir: string;
	/** Both null: the built-in database. */
	readonly databaseUrl: string | null;
	readonly databaseMigrationUrl: string | null;
	readonly publicUrl: string;
	readonly trustProxy: boolean;
	/** Null: no independent time. */
	readonly timeStamps: { readonly url: string; readonly caPath: string; readonly everyMin: number } | null;
	/** Null: no mail is sent. */
	readonly mail: {
		readonly server: Omit<MailServer, "caPem">;
		/** Null: the roots that come with Node.js. */
		readonly caPath: string | null;
		readonly from: Sender;
	} | null;
	/** The most bytes that the exhibits of one order take. */
	readonly exhibitQuotaBytes: number;
	readonly logLevel: (typeof LOG_LEVELS)[number];
}

const postgresUrl = z.url({ protocol: /^postgres(ql)?$/, error: "must be a postgres:// address" });

const httpUrl = z.url({ protocol: /^https?$/, error: "must be an http:// or https:// address" });

/** Ports of RFC 8314, 3: submission with TLS from the first byte, and with STARTTLS. */
const SUBMISSION = { smtps: 465, smtp: 587 };

/** An address of a mail server; `tls` as its scheme has it. */
function serverOf(value: string, context: z.RefinementCtx): Omit<MailServer, "caPem"> {
	const url = URL.canParse(value) ? new URL(value) : null;
	const scheme = url?.protocol.slice(0, -1) ?? "";
	if (url === null || url.hostname === "" || (scheme !== "smtp" && scheme !== "smtps")) {
		context.addIssue("must be an smtp:// or smtps:// address");
		return z.NEVER;
	}
	if (/[^/]/.test(url.pathname) || url.search !== "" || url.hash !== "") {
		context.addIssue("must end after the host and its port");
		return z.NEVER;
	}
	if ((url.username === "") !== (url.password === "")) {
		context.addIssue("must hold both a user and a password, or neither");
		return z.NEVER;
	}
	try {
		const [user, pass] = [decodeURIComponent(url.username), decodeURIComponent(url.password)];
		return {
			host: url.hostname.replace(/^\[|\]$/g, ""),
			port: url.port === "" ? SUBMISSION[scheme] : Number(url.port),
			tls: scheme === "smtps" ? "from-start" : "starttls",
			credentials: user === "" ? null : { user, pass },
		};
	} catch {
		context.addIssue("must have a % in its user or password written as %25");
		return z.NEVER;
	}
}

/** `Shown name <address>`, or the address alone. */
function senderOf(value: string, context: z.RefinementCtx): Sender {
	const [, name = "", inside, alone] = /^\s*(?:"?([^"<>\p{Cc}]*?)"?\s*<([^<>]+)>|([^<>]+?))\s*$/u.exec(value) ?? [];
	const address = sendableAddress(inside ?? alone ?? "");
	if (address === null) {
		context.addIssue("must be an address such as bench@example.org, or Name <bench@example.org>");
		return z.NEVER;
	}
	return { name: name.trim(), address };
}

const environment = z.object({
	HOST: z.string().min(1, "must be an address to listen on").default("127.0.0.1"),
	PORT: z
		.string()
		.regex(/^[0-9]{1,5}$/, "must be a port number")
		.transform(Number)
		.refine((port) => port <= 65535, "must be a port number up to 65535")
		.default(8080),
	DATA_DIR: z.string().min(1, "must be a folder").optional(),
	KEY_DIR: z.string().min(1, "must be a folder").optional(),
	DATABASE_URL: postgresUrl.optional(),
	DATABASE_MIGRATION_URL: postgresUrl.optional(),
	PUBLIC_URL: httpUrl.optional(),
	TRUST_PROXY: z.enum(["true", "false"], "must be true or false").default("false"),
	TIMESTAMP_URL: httpUrl.optional(),
	TIMESTAMP_CA: z.string().optional(),
	TIMESTAMP_EVERY_MIN: z
		.string()
		.regex(/^[1-9][0-9]{0,4}$/, "must be a number of minutes from 1 to 99999")
		.transform(Number)
		.default(60),
	SMTP_URL: z.string().transform(serverOf).optional(),
	SMTP_TLS: z.enum(["required", "none"], "must be required or none").optional(),
	SMTP_CA: z.string().optional(),
	MAIL_FROM: z.string().transform(senderOf).optional(),
	EXHIBIT_QUOTA_GIB: z
		.string()
		.regex(/^[1-9][0-9]{0,5}$/, "must be a whole number of GiB from 1 to 999999")
		.transform(Number)
		.default(DEFAULT_QUOTA_GIB),
	LOG_LEVEL: z.enum(LOG_LEVELS, `must be one of ${LOG_LEVELS.join(", ")}`).default("info"),
});

/**
 * The settings of an environment. An empty variable counts as not set.
 * @throws Error with one line that names the first wrong setting and the mend
 */
export function readSettings(variables: Readonly<Record<string, string | undefined>>): Settings {
	const given = Object.fromEntries(Object.entries(variables).filter(([, value]) => value !== ""));
	const outcome = environment.safeParse(given);
	if (!outcome.success) {
		const issue = outcome.error.issues[0];
		const name = String(issue?.path[0]);
		// An address of a database or a mail server holds a password, which belongs in no log.
		const value =
			name.startsWith("DATABASE_") || name === "SMTP_URL"
				? "it is something else"
				: `it is ${JSON.stringify(given[name])}`;
		throw new Error(`setting ${name} ${issue?.message}; ${value}`);
	}
	const read = outcome.data;
	if ((read.DATABASE_URL === undefined) !== (read.DATABASE_MIGRATION_URL === undefined)) {
		throw new Error(
			"settings DATABASE_URL and DATABASE_MIGRATION_URL come together: set both, or neither for the built-in database",
		);
	}
	const dataDir = resolve(read.DATA_DIR ?? defaultDataDir(given));
	if ((read.TIMESTAMP_URL === undefined) !== (read.TIMESTAMP_CA === undefined)) {
		throw new Error(
			"settings TIMESTAMP_URL and TIMESTAMP_CA come together: set both, or neither to go without independent time",
		);
	}
	if ((read.SMTP_URL === undefined) !== (read.MAIL_FROM === undefined)) {
		throw new Error("settings SMTP_URL and MAIL_FROM come together: set both, or neither to send no mail");
	}
	for (const name of ["SMTP_TLS", "SMTP_CA"] as const) {
		if (read[name] !== undefined && read.SMTP_URL === undefined)
			throw new Error(`setting ${name} goes with SMTP_URL: set both, or leave it out to send no mail`);
	}
	return {
		host: read.HOST,
		port: read.PORT,
		dataDir,
		keyDir: resolve(read.KEY_DIR ?? join(dataDir, "keys")),
		databaseUrl: read.DATABASE_URL ?? null,
		databaseMigrationUrl: read.DATABASE_MIGRATION_URL ?? null,
		publicUrl: (
			read.PUBLIC_URL ?? `http://${read.HOST.includes(":") ? `[${read.HOST}]` : read.HOST}:${read.PORT}`
		).replace(/\/+$/, ""),
		trustProxy: read.TRUST_PROXY === "true",
		timeStamps:
			read.TIMESTAMP_URL === undefined || read.TIMESTAMP_CA === undefined
				? null
				: { url: read.TIMESTAMP_URL, caPath: resolve(read.TIMESTAMP_CA), everyMin: read.TIMESTAMP_EVERY_MIN },
		mail:
			read.SMTP_URL === undefined || read.MAIL_FROM === undefined
				? null
				: {
						server: protectedServer(read.SMTP_URL, read.SMTP_TLS),
						caPath: read.SMTP_CA === undefined ? null : resolve(read.SMTP_CA),
						from: read.MAIL_FROM,
					},
		exhibitQuotaBytes: read.EXHIBIT_QUOTA_GIB * GIB,
		logLevel: read.LOG_LEVEL,
	};
}

/**
 * The server with what protects the line to it: TLS unless the shop says otherwise. A mail holds links, so this is never left to
 * what the server offers. On this machine there is no line.
 */
function protectedServer(server: Omit<MailServer, "caPem">, said: "required" | "none" | undefined) {
	if (server.tls === "from-start") {
		if (said === "none") throw new Error("setting SMTP_TLS cannot be none with smtps:// in SMTP_URL: set one of them");
		return server;
	}
	const isHere = isThisMachine(server.host);
	if (said === "none" && server.credentials !== null && !isHere) {
		throw new Error("setting SMTP_TLS cannot be none where SMTP_URL holds a password: it would go in plain");
	}
	return { ...server, tls: (said ?? (isHere ? "none" : "required")) === "none" ? ("none" as const) : server.tls };
}

function isThisMachine(host: string): boolean {
	return host === "localhost" || host === "::1" || (isIP(host) === 4 && host.startsWith("127."));
}

/** `handover-risk` in the user's data directory; for root a folder of the system, since the database does not run as root. */
function defaultDataDir(variables: Readonly<Record<string, string | undefined>>): string {
	if (process.platform === "win32") return join(variables.LOCALAPPDATA ?? homedir(), "handover-risk");
	if (process.platform === "darwin") return join(homedir(), "Library", "Application Support", "handover-risk");
	if (process.getuid?.() === 0) return "/var/lib/handover-risk";
	return join(variables.XDG_DATA_HOME ?? join(homedir(), ".local", "share"), "handover-risk");
}
