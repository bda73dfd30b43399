/** The contract page's rows against the OpenAPI document that the service publishes. The rows are kept here as data. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { customerScene, type Scene } from "../pages/customer-scene.ts";
import { type TestApp, testApp } from "../setup/test-app.ts";

const CALCULATIONS = [
	"impact",
	"pulse",
	"drop-height",
	"cushion",
	"cushion-fit",
	"board-strength",
	"vibration",
	"box-compression",
	"static-protection",
	"desiccant",
	"condensation",
	"reading-comparison",
	"soak",
	"shock-trace",
	"link-judgement",
	"claim-periods",
	"claim-cap",
	"insurance",
	"fault-origin",
	"packaging",
	"packaging-search",
];
const PATHS = [
	"/healthz",
	"/readyz",
	"/api/v1/session",
	"/api/v1/tokens",
	"/api/v1/orders",
	"/api/v1/orders/{id}",
	"/api/v1/parties/{id}",
	"/api/v1/orders/{id}/consignments",
	"/api/v1/consignments/{id}",
	"/api/v1/consignments/{id}/records",
	"/api/v1/records/{id}",
	"/api/v1/records/{id}/seal",
	"/api/v1/records/{id}/receipt",
	"/api/v1/records/{id}/discard",
	"/api/v1/instruments",
	"/api/v1/benches",
	"/api/v1/stock",
	"/api/v1/exhibits",
	"/api/v1/exhibits/{sha256}",
	"/api/v1/consignments/{id}/packaging-assessments",
	"/api/v1/consignments/{id}/transit-recordings",
	"/api/v1/consignments/{id}/comparison",
	"/api/v1/links",
	"/api/v1/orders/{id}/positions",
	"/api/v1/orders/{id}/settlement",
	"/api/v1/orders/{id}/dossier.zip",
	"/api/v1/orders/{id}/report.pdf",
	"/api/v1/log/checkpoint",
	"/api/v1/log/key",
	"/api/v1/log/proof",
	"/api/v1/verify",
	"/api/v1/catalogue/{class}",
	"/api/v1/imports/preview",
];

interface Operation {
	readonly summary?: string;
	readonly "x-callers"?: readonly string[];
	readonly responses?: Readonly<
		Record<string, { readonly content?: Readonly<Record<string, { readonly schema: unknown }>> }>
	>;
}
let shop: TestApp;
let scene: Scene;
let paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
beforeAll(async () => {
	shop = await testApp();
	scene = await customerScene(shop);
	const answer = await shop.app.inject({ url: "/api/v1/openapi.json" });
	expect(answer.json().openapi).toMatch(/^3\.1/);
	paths = answer.json().paths;
});
afterAll(async () => shop?.close());

describe("the OpenAPI document", () => {
	it("has every row of the contract that is built, and no row is forgotten", () => {
		const rows = [
			...PATHS.map((path) => [path, path] as const),
			...CALCULATIONS.map((name) => [name, `/api/v1/calculations/${name}`] as const),
		];
		expect(rows.filter(([, path]) => paths[path] === undefined).map(([row]) => row)).toEqual([]);
	});
	it("says of every operation what it does and who may call it", () => {
		for (const [path, operations] of Object.entries(paths)) {
			for (const [method, operation] of Object.entries(operations)) {
				expect(operation.summary, `${method} ${path}`).toBeTruthy();
				expect(operation["x-callers"]?.length, `${method} ${path}`).toBeGreaterThan(0);
			}
		}
	});
	it("hides no member: whole bodies have exactly the members that their schemas name", async () => {
		const checks: [string, string][] = [
			[`/api/v1/orders/${scene.orderId}`, "/api/v1/orders/{id}"],
			[`/api/v1/consignments/${scene.legId}`, "/api/v1/consignments/{id}"],
			[`/api/v1/records/${scene.departureId}`, "/api/v1/records/{id}"],
			[`/api/v1/records/${scene.recordId}`, "/api/v1/records/{id}"],
			[`/api/v1/consignments/${scene.legId}/comparison`, "/api/v1/consignments/{id}/comparison"],
		];
		for (const [url, path] of checks) {
			const answer = await shop.ask("GET", url);
			expect(answer.statusCode, answer.body).toBe(200);
			const schema = paths[path]?.get?.responses?.["200"]?.content?.["application/json"]?.schema as {
				properties?: Record<string, unknown>;
				required?: string[];
			};
			const members = Object.keys(answer.json());
			for (const member of members)
				expect(Object.keys(schema.properties ?? {}), `${path} names ${member}`).toContain(member);
			for (const required of schema.required ?? []) expect(members, `${url} has ${required}`).toContain(required);
		}
	});
});
