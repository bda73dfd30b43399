/** Steps towards a settlement over the API: every side and reader against every act in every state, and the sealed form. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { verifyReceipt } from "../../../src/records/verify/verify-receipt.ts";
import { entriesIn } from "../../setup/receipt-entries.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";
import { type Sides, sidesOf, WHO, type Who } from "./sides.ts";

let shop: TestApp;
beforeAll(async () => {
	shop = await testApp();
});
afterAll(async () => shop?.close());

const PROPOSAL = {
	act: "proposes",
	outcome: "part-refund",
	amounts: [{ amount: 120.5, currency: "EUR", from: "repairer", to: "owner" }],
	itemNext: "to-repairer",
	text: "Half of the repair price.",
};
const step = (sides: Sides, who: Who, body: object) => sides.as(who, "POST", "/settlement", body);
async function taken(sides: Sides, who: Who, body: object) {
	const answer = await step(sides, who, body);
	expect(answer.statusCode, answer.body).toBe(201);
	return answer.json();
}
const lastId = (view: { steps: { id: string }[] }) => view.steps.at(-1)?.id ?? "";

/** Brings an order's settlement into a state; gives the proposal that it is about. */
const STATES = {
	"open proposal of the repairer": async (sides: Sides) => lastId(await taken(sides, "repairer", PROPOSAL)),
	"open proposal of the owner": async (sides: Sides) => lastId(await taken(sides, "owner", PROPOSAL)),
	agreed: async (sides: Sides) => {
		const proposalId = lastId(await taken(sides, "repairer", PROPOSAL));
		await taken(sides, "owner", { act: "assents", proposalId });
		return proposalId;
	},
	reopened: async (sides: Sides) => {
		const proposalId = await STATES.agreed(sides);
		await taken(sides, "owner", { act: "reopens", proposalId });
		return proposalId;
	},
	declined: async (sides: Sides) => {
		const proposalId = lastId(await taken(sides, "repairer", PROPOSAL));
		await taken(sides, "owner", { act: "declines", proposalId });
		return proposalId;
	},
} as const;

/** Status codes by state and act: of the repairer, of the owner. */
const EXPECTED: Record<keyof typeof STATES, Record<string, readonly [number, number]>> = {
	"open proposal of the repairer": {
		assents: [403, 201],
		declines: [403, 201],
		retracts: [201, 403],
		reopens: [409, 409],
		proposes: [201, 201],
	},
	"open proposal of the owner": {
		assents: [201, 403],
		declines: [201, 403],
		retracts: [403, 201],
		reopens: [409, 409],
		proposes: [201, 201],
	},
	agreed: {
		assents: [409, 409],
		declines: [409, 409],
		retracts: [409, 409],
		reopens: [201, 201],
		proposes: [409, 409],
	},
	reopened: {
		assents: [409, 409],
		declines: [409, 409],
		retracts: [409, 409],
		reopens: [409, 409],
		proposes: [201, 201],
	},
	declined: {
		assents: [409, 409],
		declines: [409, 409],
		retracts: [409, 409],
		reopens: [409, 409],
		proposes: [201, 201],
	},
};
const OTHERS = {
	reader: 403,
	"record link": 403,
	"link of another order": 404,
	"withdrawn link": 401,
	nobody: 401,
} as const satisfies Record<Exclude<Who, "repairer" | "owner">, number>;

describe("every actor against every act", () => {
	it("has every kind of caller", () => {
		expect([...Object.keys(OTHERS), "repairer", "owner"].sort()).toEqual([...WHO].sort());
	});
	it.each(Object.keys(STATES) as (keyof typeof STATES)[])(
		"while it is: %s",
		async (name) => {
			const fresh = async () => {
				const sides = await sidesOf(shop);
				return { sides, proposalId: await STATES[name](sides) };
			};
			let { sides, proposalId } = await fresh();
			for (const [act, expected] of Object.entries(EXPECTED[name])) {
				const body = () => (act === "proposes" ? PROPOSAL : { act, proposalId });
				for (const [other, code] of Object.entries(OTHERS)) {
					expect((await step(sides, other as Who, body())).statusCode, `${other} ${act}`).toBe(code);
				}
				for (const [place, who] of (["repairer", "owner"] as const).entries()) {
					const answer = await step(sides, who, body());
					expect(answer.statusCode, `${name}: ${who} ${act}: ${answer.body}`).toBe(expected[place]);
					// A step that was taken changes the state: the next one meets it anew.
					if (answer.statusCode === 201) ({ sides, proposalId } = await fresh());
				}
			}
		},
		120_000,
	);
});

describe("a settlement", () => {
	it("is agreed by two sealed assents, the second naming the first's exact bytes, and can be reopened", async () => {
		const sides = await sidesOf(shop);
		const proposalId = lastId(await taken(sides, "repairer", PROPOSAL));
		const counterId = lastId(await taken(sides, "owner", { ...PROPOSAL, outcome: "refund", amounts: [] }));
		const agreed = await taken(sides, "owner", { act: "assents", proposalId, text: "Agreed." });
		expect(agreed).toMatchObject({ status: "agreed", agreedId: proposalId });
		expect(agreed.steps.map(({ state }: { state: string | null }) => state)).toEqual(["agreed", "lapsed", null]);
		// Its arrival is still a draft: the shop's list has it among what is settled and what waits.
		const isListed = async (standing: string) => {
			const page = await shop.app.inject({ url: `/?standing=${standing}`, headers: { cookie: shop.sessionCookie } });
			return page.body.includes(`href="/orders/${sides.scene.orderId}"`);
		};
		const standings = ["settled", "attention", "other"];
		expect(await Promise.all(standings.map(isListed))).toEqual([true, true, false]);
		const assentId = lastId(agreed);
		const receipt = await sides.as("owner", "GET", `/sealed/${assentId}/receipt`);
		const { outcome, checks } = verifyReceipt(Buffer.from(receipt.rawPayload));
		expect(checks.filter((check) => check.outcome === "failed")).toEqual([]);
		expect(outcome).toBe("verified");
		const entries = entriesIn(receipt.json());
		const said = (id: string) =>
			JSON.parse(entries.find(({ subject }) => subject === id)?.statement?.toString("utf8") ?? "{}");
		expect(said(proposalId)).toEqual({
			$format: "handover-risk/settlement/1",
			act: "proposes",
			amounts: [{ amount: 120.5, currency: "EUR", from: "repairer", to: "owner" }],
			itemNext: "to-repairer",
			orderId: sides.scene.orderId,
			outcome: "part-refund",
			partyId: sides.repairerId,
			stepId: proposalId,
			text: { commitment: expect.any(String) },
		});
		expect(said(assentId)).toEqual({
			$format: "handover-risk/settlement/1",
			act: "assents",
			orderId: sides.scene.orderId,
			partyId: sides.ownerId,
			proposal: {
				stepId: proposalId,
				statementSha256: entries.find(({ subject }) => subject === proposalId)?.statementSha256,
			},
			stepId: assentId,
			text: { commitment: expect.any(String) },
		});
		const late = await step(sides, "repairer", { act: "assents", proposalId: counterId });
		expect(late.statusCode).toBe(409);
		const reopened = await taken(sides, "repairer", { act: "reopens", proposalId, text: "It failed again." });
		expect(reopened).toMatchObject({ status: "reopened", agreedId: null });
		expect(reopened.steps).toHaveLength(4);
		const second = lastId(await taken(sides, "repairer", { ...PROPOSAL, outcome: "repair-under-warranty" }));
		expect(await taken(sides, "owner", { act: "assents", proposalId: second })).toMatchObject({
			status: "agreed",
			agreedId: second,
		});
	});

	it("is agreed once, though both sides act at the same moment", async () => {
		const sides = await sidesOf(shop);
		const ours = lastId(await taken(sides, "repairer", PROPOSAL));
		const theirs = lastId(await taken(sides, "owner", PROPOSAL));
		const answers = await Promise.all([
			step(sides, "owner", { act: "assents", proposalId: ours }),
			step(sides, "repairer", { act: "assents", proposalId: theirs }),
		]);
		expect(answers.map(({ statusCode }) => statusCode).sort()).toEqual([201, 409]);
	});

	it("is assented to once for one key, though it is sent twice at the same moment", async () => {
		const sides = await sidesOf(shop);
		const proposalId = lastId(await taken(sides, "owner", PROPOSAL));
		const send = () =>
			shop.ask(
				"POST",
				`/api/v1/orders/${sides.scene.orderId}/settlement`,
				{ act: "assents", proposalId },
				{ "idempotency-key": "assent" },
			);
		const answers = await Promise.all([send(), send()]);
		expect(answers.map(({ statusCode }) => statusCode)).toEqual([201, 201]);
		expect((await sides.as("owner", "GET", "/settlement")).json().steps).toHaveLength(2);
	});

	it("refuses what it does not know, and says where", async () => {
		const sides = await sidesOf(shop);
		const amount = { amount: 1, currency: "EUR", from: "owner", to: "repairer" };
		for (const [bad, place] of [
			[{ ...PROPOSAL, outcome: "won" }, "/outcome"],
			[{ ...PROPOSAL, amounts: [{ ...amount, to: "owner" }] }, "/amounts/0/to"],
			[{ ...PROPOSAL, amounts: [{ ...amount, amount: 1.005 }] }, "/amounts/0/amount"],
			[{ ...PROPOSAL, amounts: [{ ...amount, amount: -1 }] }, "/amounts/0/amount"],
			[{ act: "assents", proposalId: `stl_${"0".repeat(20)}` }, "/proposalId"],
			[{ act: "assents" }, "/proposalId"],
		] as const) {
			const refused = await step(sides, "owner", bad);
			expect(refused.statusCode, refused.body).toBe(400);
			expect(refused.body).toContain(`"${place}"`);
		}
	});

	it("is shown with what can be done next to each side, and to a reader without", async () => {
		const sides = await sidesOf(shop);
		const url = `/orders/${sides.scene.orderId}/settlement`;
		const page = async () => (await shop.app.inject({ url, headers: { cookie: shop.sessionCookie } })).body;
		expect(await page()).toContain("Nothing has been proposed yet.");
		const proposalId = lastId(await taken(sides, "owner", PROPOSAL));
		const open = await page();
		expect(open).toContain("Assent: seal this settlement");
		expect(open).toContain("120.50 EUR from the repairer to the owner");
		const field = (name: string) => new RegExp(`name="${name}" value="([^"]*)"`).exec(open)?.[1] ?? "";
		const fields = { formToken: field("formToken"), sealKey: field("sealKey"), act: "assents", proposalId };
		const posted = await shop.app.inject({
			method: "POST",
			url,
			headers: { cookie: shop.sessionCookie, "content-type": "application/x-www-form-urlencoded" },
			payload: new URLSearchParams(fields).toString(),
		});
		expect(posted.statusCode, posted.body).toBe(303);
		const agreed = await page();
		expect(agreed).toContain("Both sides have agreed.");
		expect(agreed).toContain("a new leg with its own departure record");
		expect(agreed).toContain("Reopen the settlement");
		expect(agreed).not.toContain("Seal this proposal");
		// What happens with the item next: the shop opens a leg, and the page waits for its departure record.
		const { legId } = sides.scene;
		const direction = /name="direction" value="([^"]*)"/.exec(agreed)?.[1] ?? "";
		expect(direction).toBe(PROPOSAL.itemNext);
		const opened = await sides.as("repairer", "POST", "/consignments", {
			direction,
			facts: { mode: "road", bookedBy: "consignor" },
		});
		expect(opened.statusCode, opened.body).toBe(201);
		expect(opened.json().id).not.toBe(legId);
		expect(await page()).toContain(`Leg ${opened.json().leg} is open and waits for its departure record.`);
		expect(await page()).not.toContain('name="direction"');
	});
});
