/**
 * The newest checkpoint at the foot of every page that someone of an order sees, and on the sheets that are printed:
 * whoever has seen one can later ask whether the log still begins with it, so that two logs cannot be kept.
 */
import type { FastifyInstance } from "fastify";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { callerOf } from "../access/callers.ts";
import type { Deps } from "../operations/deps.ts";
import { type CheckpointFacts, readCheckpointFacts } from "../operations/log/read-log.ts";
import { say } from "../texts/say.ts";
import { groupsOfFour, showTime } from "./record-form/shown-time.ts";

/** Hex digits of the root at the foot of a page; sheets and receipts hold all of them. Our choice: 64 bits. */
const SHORT = 16;

const noted = new WeakMap<object, CheckpointFacts>();

/** Looks the checkpoint up once per page, for callers that we know. */
export function registerLogMark(app: FastifyInstance, deps: Deps): void {
	app.addHook("preHandler", async (request) => {
		const isPage = (request.routeOptions.schema as { hide?: boolean } | undefined)?.hide === true;
		if (!isPage || callerOf(request).kind === "nobody") return;
		const facts = await readCheckpointFacts(deps);
		if (facts !== null) noted.set(request, facts);
	});
}

/** What the page that answers this request may print. */
export function logMarkOf(request: object): CheckpointFacts | null {
	return noted.get(request) ?? null;
}

export const LogMark = createContext<CheckpointFacts | null>(null);

/** One line for the foot of a page. */
export function LogFoot() {
	const mark = useContext(LogMark);
	if (mark === null) return null;
	return (
		<p class="log-mark">
			{say("log.foot", { size: mark.size })}{" "}
			<span class="fingerprint">{groupsOfFour(mark.rootSha256.slice(0, SHORT))}</span>
		</p>
	);
}

/** The whole checkpoint, for sheets and receipts. */
export function LogFacts() {
	const mark = useContext(LogMark);
	if (mark === null) return null;
	return (
		<section>
			<h2>{say("log.title")}</h2>
			<p>{say("log.text", { origin: mark.origin, size: mark.size, key: mark.keyIds.join(", ") })}</p>
			<p class="fingerprint">{groupsOfFour(mark.rootSha256)}</p>
			<p>
				{mark.stamp === null
					? say("log.server-clock")
					: say("log.stamped", { size: mark.stamp.size, time: showTime(mark.stamp.time) })}
			</p>
		</section>
	);
}
