/** Writes what an order's parties take away into a folder: receipts, reports, dossiers, the slip, the paper form, the pack as shipped, the comparison. */
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { DemoClient } from "./demo-client.ts";
import type { PlayedOrder } from "./scenario.ts";

/** `shop` has the API token, `pages` the session that pages ask for. */
export async function handOut(
	outFolder: string,
	shop: DemoClient,
	pages: DemoClient,
	played: PlayedOrder,
): Promise<void> {
	const folder = join(outFolder, played.title.toLowerCase().replace(/[^a-z]+/g, "-"));
	await mkdir(folder, { recursive: true });
	for (const recordId of played.recordIds) {
		await writeFile(
			join(folder, `receipt-${recordId}.json`),
			await shop.fetchText(`/api/v1/records/${recordId}/receipt`),
		);
	}
	const comparison = await shop.fetchText(`/api/v1/consignments/${played.consignmentId}/comparison`);
	await writeFile(join(folder, "comparison.json"), comparison);
	const reports = `/api/v1/orders/${played.orderId}/report.pdf`;
	for (const edition of ["parties", "expert", "carrier"]) {
		const report = await shop.fetchBytes(`${reports}?edition=${edition}`);
		await writeFile(join(folder, `report-${edition}.pdf`), report);
	}
	for (const language of ["de", "fr"]) {
		const report = await shop.fetchBytes(`${reports}?language=${language}`);
		await writeFile(join(folder, `report-parties-${language}.pdf`), report);
	}
	for (const edition of ["parties", "expert"]) {
		const dossier = await shop.fetchBytes(`/api/v1/orders/${played.orderId}/dossier.zip?edition=${edition}`);
		await writeFile(join(folder, `dossier-${edition}.zip`), dossier);
	}
	const style = await pages.fetchText("/assets/style.css");
	for (const sheet of ["slip", "paper-form", "pack", "comparison"]) {
		const page = await pages.fetchText(`/orders/${played.orderId}/consignments/${played.consignmentId}/${sheet}`);
		// Opened from a disk, a page has no service to ask for its style.
		const alone = page.replace('<link rel="stylesheet" href="/assets/style.css"/>', `<style>${style}</style>`);
		await writeFile(join(folder, `${sheet}.html`), alone);
	}
}
