/** Looks again and again for mails to write while the service runs. */
import { readFile } from "node:fs/promises";
import { setTimeout as sleep } from "node:timers/promises";
import { createSecureContext } from "node:tls";
import type { Deps } from "../operations/deps.ts";
import { queueNotices } from "../operations/mail/notice-mails.ts";
import { queuePeriods } from "../operations/mail/period-mails.ts";
import { type Mailing, sendDueMail } from "../operations/mail/send-due-mail.ts";
import { sendBySmtp } from "../operations/mail/smtp-sender.ts";
import type { Settings } from "./settings.ts";

/** Our choice: a mail that is due goes out within this time, unless others are before it. */
const LOOK_EVERY_S = 5;

/** Our choice: dates change once a day, and a day begins at another hour elsewhere. */
const PERIODS_EVERY_S = 6 * 3600;

/** Starts looking and gives the function that ends it: a mail whose text has begun is waited for, briefly. */
export function startMailing(deps: Deps, mailing: Mailing, lookEveryS = LOOK_EVERY_S): () => Promise<void> {
	const stopping = new AbortController();
	const { signal } = stopping;
	let periodsAt = Number.NEGATIVE_INFINITY;
	const look = async () => {
		await queueNotices(deps);
		if (performance.now() - periodsAt > PERIODS_EVERY_S * 1000) {
			periodsAt = performance.now();
			await queuePeriods(deps);
		}
		while (!signal.aborted && (await sendDueMail(deps, mailing, signal)) !== "nothing-due");
	};
	const ended = (async () => {
		while (!signal.aborted) {
			await look().catch((error: Error) => {
				if (!signal.aborted) deps.log.error({ err: error }, "mailing failed");
			});
			await sleep(lookEveryS * 1000, undefined, { signal }).catch(() => {});
		}
	})();
	return async () => {
		stopping.abort();
		await ended;
	};
}

/** @throws Error that names the setting, where the roots cannot be read */
export async function mailingOf({ mail }: Settings): Promise<Mailing | null> {
	if (mail === null) return null;
	const { caPath, from } = mail;
	const server = { ...mail.server, caPem: caPath === null ? null : await rootsIn(caPath) };
	return { from, give: (envelope, bytes, stop) => sendBySmtp(server, envelope, bytes, stop) };
}

async function rootsIn(caPath: string): Promise<string> {
	try {
		const pem = await readFile(caPath, "utf8");
		createSecureContext({ ca: pem });
		if (!pem.includes("-----BEGIN CERTIFICATE-----")) throw new Error("it holds no certificate (PEM)");
		return pem;
	} catch (error) {
		throw new Error(`setting SMTP_CA: ${caPath}: ${(error as Error).message}`);
	}
}
