/**
 * The newest checkpoint at the foot of every page that someone of an order sees, and on the sheets that are printed:
 * whoever has seen one can later ask whether the log still begins with it, so that two logs cannot be kept. Where the
 * browser can, `browser/device.ts` asks at every page, and signs what was done through a link.
 */

import type { FastifyInstance } from "fastify";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { callerOf } from "../access/callers.ts";
import type { OrderView } from "../contract/orders.ts";
import type { RecordView } from "../contract/records.ts";
import { leavesToSign } from "../operations/access/party-signatures.ts";
import type { Deps } from "../operations/deps.ts";
import { type CheckpointFacts, readCheckpointFacts } from "../operations/log/read-log.ts";
import { say } from "../texts/say.ts";
import { groupsOfFour, showTime } from "../texts/shown-time.ts";
import { ReadInNote } from "./components/read-in-note.tsx";

/** Hex digits of the root at the foot of a page; sheets and receipts hold all of them. Our choice: 64 bits. */
const SHORT = 16;

interface Mark extends CheckpointFacts {
	/** What the reader's device may sign; null for readers that did not come by a link. */
	readonly device: { readonly linkId: string; readonly leaves: readonly string[] } | null;
}

const noted = new WeakMap<object, Mark>();

/** Looks the checkpoint up once per page, for callers that we know. */
export function registerLogMark(app: FastifyInstance, deps: Deps): void {
	app.addHook("preHandler", async (request) => {
		const isPage = (request.routeOptions.schema as { hide?: boolean } | undefined)?.hide === true;
		const caller = callerOf(request);
		if (!isPage || caller.kind === "nobody") return;
		const facts = await readCheckpointFacts(deps);
		if (facts === null) return;
		const device = caller.kind === "link" ? { linkId: caller.linkId, leaves: await leavesToSign(deps, caller) } : null;
		noted.set(request, { ...facts, device });
	});
}

/** What the page that answers this request may print. */
export function logMarkOf(request: object): Mark | null {
	return noted.get(request) ?? null;
}

export const LogMark = createContext<Mark | null>(null);

/** For the foot of a page: the checkpoint, and what the reader's device makes of it. */
export function LogFoot() {
	const mark = useContext(LogMark);
	if (mark === null) return null;
	return (
		<>
			<p class="log-mark">
				{say("log.foot", { size: mark.size })}{" "}
				<span class="fingerprint">{groupsOfFour(mark.rootSha256.slice(0, SHORT))}</span>
			</p>
			<p
				class="log-mark"
				id="log-seen"
				role="status"
				data-first={say("log.seen-first")}
				data-consistent={say("log.seen-consistent", { size: "{size}", time: "{time}" })}
				data-inconsistent={say("log.seen-inconsistent", { size: "{size}", time: "{time}" })}
				data-unknown={say("log.seen-unknown")}
				data-keep={say("log.seen-keep")}
			>
				{say("log.seen-by-hand")}
			</p>
			{mark.device !== null && mark.device.leaves.length > 0 && (
				<p
					class="log-mark"
					id="device-signature"
					role="status"
					data-link={mark.device.linkId}
					data-leaves={mark.device.leaves.join(" ")}
					data-signed={say("log.device-signed")}
					data-unable={say("log.device-unable")}
					data-failed={say("log.device-failed")}
					data-again={say("log.device-again")}
				>
					{say("log.device-unsigned")}
				</p>
			)}
			<script type="module" src="/assets/device.js" />
		</>
	);
}

/** The whole checkpoint, for sheets and receipts; of an order that was read in, whose log it is. */
export function LogFacts({ of }: { readonly of: OrderView }) {
	const mark = useContext(LogMark);
	if (of.readIn !== undefined) return <ReadInNote of={of} />;
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

/** Whether a device signed a sealed record, and when; the page's script fills it in where it signs that very entry now. */
export function PartySignature({ sealed }: { readonly sealed: NonNullable<RecordView["sealed"]> }) {
	return sealed.partySignedAt === null ? (
		<span data-when-signed={say("log.device-signed-now")} data-leaf={sealed.leafSha256}>
			{say("log.party-unsigned")}
		</span>
	) : (
		<span>{say("log.party-signed", { time: showTime(sealed.partySignedAt) })}</span>
	);
}
