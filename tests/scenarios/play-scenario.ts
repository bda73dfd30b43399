/** Plays a scenario of `demo-data/scenarios` through the API: order, legs, records sealed in order, then the comparison. */
import { expect } from "vitest";
import type { ComparisonView } from "../../src/contract/comparison.ts";
import type { TestApp } from "../setup/test-app.ts";

type Json = Readonly<Record<string, unknown>>;

export interface Scenario {
	readonly id: string;
	readonly title: string;
	readonly benches: readonly string[];
	readonly instruments: Readonly<Record<string, Json>>;
	readonly legs: readonly ("to-owner" | "to-repairer")[];
	readonly records: readonly { readonly leg: number; readonly stage: string; readonly content: Json }[];
	/** The leg compared, from 1; and the query of the comparison. */
	readonly compareLeg?: number;
	readonly query?: Readonly<Record<string, string>>;
	/** Places in `records` of two records to compare in place of the leg's ends. */
	readonly between?: readonly [number, number];
	readonly calculations?: readonly { readonly name: string; readonly request: Json; readonly expect: Json }[];
	readonly expect: ScenarioOutcome;
}

/** What a fair expert expects; a member that is not there is not asked. */
export interface ScenarioOutcome {
	readonly outcome?: string;
	readonly identity?: Json;
	readonly betterOnArrival?: readonly string[];
	readonly checks?: Readonly<
		Record<string, { verdict?: string; direction?: string; departure?: string | null; arrival?: string | null }>
	>;
	readonly changes?: readonly { readonly check: string; readonly kind: string }[];
	readonly changeLegs?: Readonly<
		Record<string, { readonly within: readonly number[]; readonly not: readonly number[] }>
	>;
	readonly widened?: Readonly<Record<string, number>>;
	readonly stay?: Readonly<Record<string, "owner" | "repairer">>;
	/** Null: nothing to explain. */
	readonly origins?: Readonly<Record<string, string>> | null;
	readonly first?: string;
	readonly turnsOn?: string;
	readonly missing?: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
	readonly nextTests?: readonly string[];
	/** All of them; and those that must not be among them. */
	readonly tests?: readonly string[];
	readonly noTests?: readonly string[];
	readonly firstStateGrade?: string | null;
	readonly notExcluded?: readonly string[];
	readonly link?: Readonly<Record<string, string>>;
	readonly leadCertain?: readonly string[];
	readonly leadNext?: readonly string[];
	readonly leadNextNot?: readonly string[];
}

export interface Played {
	readonly view: ComparisonView;
	readonly page: string;
	readonly orderId: string;
	readonly legIds: readonly string[];
	/** The query that was asked. */
	readonly query: string;
	readonly ownerId: string;
	readonly repairerId: string;
}

const ORDER = {
	contractKind: "repair",
	repairer: { kind: "business", country: "AT", name: "Werkbank Lindental" },
	owner: { kind: "consumer", country: "DE", name: "Mara Quist" },
	item: { class: "graphics-card", maker: "Brookmere", model: "Heron 12", serialNumber: "BM12-40118" },
	terms: {
		reportedFault: "Memory errors.",
		agreedWork: "Mend them.",
		carrierContract: { toRepairer: "owner", toOwner: "repairer" },
	},
};

export async function playScenario(shop: TestApp, scenario: Scenario): Promise<Played> {
	const made = async (url: string, body: unknown) => {
		const answer = await shop.ask("POST", url, body);
		expect(answer.statusCode, answer.body).toBe(201);
		return answer.json();
	};
	const names = new Map<string, string>();
	for (const label of scenario.benches) names.set(`bench:${label}`, (await made("/api/v1/benches", { label })).id);
	for (const [label, instrument] of Object.entries(scenario.instruments)) {
		names.set(`instrument:${label}`, (await made("/api/v1/instruments", instrument)).id);
	}
	const order = await made("/api/v1/orders", ORDER);
	const legIds: string[] = [];
	for (const direction of scenario.legs) {
		const facts = { mode: "road", bookedBy: "consignor" };
		legIds.push((await made(`/api/v1/orders/${order.id}/consignments`, { direction, facts })).id);
	}
	const recordIds: string[] = [];
	for (const { leg, stage, content } of scenario.records) {
		const body = { stage, depth: "full", content: named(content, names) };
		const draft = await made(`/api/v1/consignments/${legIds[leg - 1]}/records`, body);
		const sealed = await shop.ask("POST", `/api/v1/records/${draft.id}/seal`, undefined, { "if-match": '"v1"' });
		expect(sealed.statusCode, sealed.body).toBe(200);
		recordIds.push(draft.id);
	}
	const legId = legIds[(scenario.compareLeg ?? 1) - 1];
	const [from, to] = scenario.between ?? [];
	const query = new URLSearchParams({
		...scenario.query,
		...(from === undefined || to === undefined ? {} : { from: recordIds[from] ?? "", to: recordIds[to] ?? "" }),
	});
	const answer = await shop.ask("GET", `/api/v1/consignments/${legId}/comparison?${query}`);
	expect(answer.statusCode, answer.body).toBe(200);
	const page = await shop.ask("GET", `/orders/${order.id}/consignments/${legId}/comparison?${query}`);
	expect(page.statusCode, page.body).toBe(200);
	return {
		view: answer.json(),
		page: page.body,
		orderId: order.id,
		legIds,
		query: String(query),
		ownerId: order.owner.id,
		repairerId: order.repairer.id,
	};
}

/** References such as `bench:shop` become the ids that the service gave. */
function named(content: unknown, names: ReadonlyMap<string, string>): unknown {
	if (typeof content === "string") return names.get(content) ?? content;
	if (Array.isArray(content)) return content.map((entry) => named(entry, names));
	if (content === null || typeof content !== "object") return content;
	return Object.fromEntries(Object.entries(content).map(([name, entry]) => [name, named(entry, names)]));
}
