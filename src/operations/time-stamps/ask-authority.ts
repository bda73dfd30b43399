/** Sends a question to the time-stamping authority over HTTP: RFC 3161, 3.4. */
import { StampRefusal } from "./stamp-refusal.ts";

/** For how long an answer is waited for. Our choice: authorities answer within a second or two. */
const ANSWER_S = 30;
/** The largest answer that is read. Our choice: some ten times a token with its whole chain. */
const ANSWER_MOST_BYTES = 128 * 1024;

/**
 * The answer's bytes, whatever they are.
 * @param stop ends the wait at once
 * @throws StampRefusal where there is none; the stop's own reason where it was stopped
 */
export async function askAuthority(
	url: string,
	question: Uint8Array,
	stop: AbortSignal,
	waitS = ANSWER_S,
): Promise<Uint8Array> {
	try {
		const answer = await fetch(url, {
			method: "POST",
			headers: { "content-type": "application/timestamp-query", accept: "application/timestamp-reply" },
			body: Uint8Array.from(question),
			redirect: "manual",
			signal: AbortSignal.any([stop, AbortSignal.timeout(waitS * 1000)]),
		});
		if (answer.status !== 200) {
			await answer.body?.cancel();
			throw new StampRefusal(`http-${answer.status}`);
		}
		const parts: Uint8Array[] = [];
		let size = 0;
		for await (const part of answer.body ?? []) {
			size += part.length;
			if (size > ANSWER_MOST_BYTES) throw new StampRefusal("too-large");
			parts.push(part);
		}
		return Buffer.concat(parts);
	} catch (error) {
		stop.throwIfAborted();
		if (error instanceof StampRefusal) throw error;
		const { name, message, cause } = error as Error;
		if (name === "TimeoutError") throw new StampRefusal("timed-out");
		throw new StampRefusal("unreachable", cause instanceof Error ? cause.message : message);
	}
}
