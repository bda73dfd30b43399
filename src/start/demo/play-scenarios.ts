/** Plays the demo's scenarios against a running service, over HTTP only, as its users would. */
import { playComputeCard } from "./compute-card.ts";
import { cookieOf, DemoClient } from "./demo-client.ts";
import { fillShelf } from "./fill-shelf.ts";
import { handOut } from "./hand-out.ts";
import { playLaptopBoard } from "./laptop-board.ts";
import { playOnlyAnEMail } from "./only-an-e-mail.ts";
import { playOtherMeter } from "./other-meter.ts";
import { playYear } from "./play-year.ts";
import type { Shop } from "./scenario.ts";

export interface DemoStage {
	/** Address of the service, without a slash at the end. */
	readonly url: string;
	readonly setUpLink: string;
	/** Folder for what the demo hands to its parties; null where nobody asked for it. */
	readonly outFolder: string | null;
	/** Also the invented year of orders. */
	readonly withYear?: boolean;
}

/** A page worth opening, and how to get in. */
export interface DemoLink {
	readonly title: string;
	readonly url: string;
	/** The six-digit code or the name and passphrase, where the page asks. */
	readonly secret?: string;
}

/** Invented; signs in to the demo alone, whose data are thrown away. */
const ACCOUNT = { name: "bench", passphrase: "an invented passphrase" };

/** Plays everything and gives the pages to look at. */
export async function playScenarios(stage: DemoStage): Promise<DemoLink[]> {
	const { shop, pages } = await openShop(stage);
	const links: DemoLink[] = [
		{
			title: "The repairer's pages",
			url: stage.url,
			secret: `name: ${ACCOUNT.name}, passphrase, these three words: ${ACCOUNT.passphrase}`,
		},
	];
	for (const play of [playComputeCard, playLaptopBoard, playOtherMeter, playOnlyAnEMail]) {
		const played = await play(shop);
		const base = `${stage.url}/orders/${played.orderId}`;
		links.push({ title: played.title, url: `${base}/consignments/${played.consignmentId}/comparison` });
		if (played.link !== null)
			links.push({
				title: "  the owner's link, as on the slip",
				url: played.link.url,
				secret: `code ${played.link.code}`,
			});
		if (played.settling !== undefined)
			links.push({
				title: "  where both sides settled, as the owner sees it",
				url: played.settling.url,
				secret: `code ${played.settling.code}`,
			});
		if (stage.outFolder !== null) await handOut(stage.outFolder, shop.client, pages, played);
	}
	if (stage.withYear) {
		const count = await playYear(shop);
		links.push({ title: `What ${count} invented orders of a year show`, url: `${stage.url}/learning` });
	}
	return links;
}

/** Sets the shop up: account, token, bench, instruments. */
async function openShop(stage: DemoStage): Promise<{ readonly shop: Shop; readonly pages: DemoClient }> {
	const token = stage.setUpLink.slice(stage.setUpLink.lastIndexOf("/") + 1);
	const answer = await fetch(`${stage.url}/api/v1/set-up`, {
		method: "POST",
		headers: { "content-type": "application/json" },
		body: JSON.stringify({ token, ...ACCOUNT }),
	});
	if (!answer.ok) throw new Error(`setting up answered ${answer.status}: ${await answer.text()}`);
	const pages = new DemoClient(stage.url, { cookie: cookieOf(answer) });
	const made = await pages.send("POST", "/api/v1/tokens", { label: "demo" });
	const client = new DemoClient(stage.url, { authorization: `Bearer ${made.token}` });
	const bench = await client.send("POST", "/api/v1/benches", {
		label: "Bench 1",
		description: "Test host with a 16-lane slot at 16 GT/s, bench supply with current limit",
	});
	const meter = await client.send("POST", "/api/v1/instruments", {
		label: "Bench multimeter",
		facts: {
			percentOfReading: 0.1,
			counts: 2,
			resolution: 0.01,
			rangeHigh: 500,
			unit: "ohm",
			calibratedOn: "2026-02-10",
		},
	});
	const scale = await client.send("POST", "/api/v1/instruments", {
		label: "Bench scale",
		facts: { resolution: 1, unit: "g" },
	});
	await fillShelf(client);
	return { shop: { client, benchId: bench.id, meterId: meter.id, scaleId: scale.id }, pages };
}
