/** Writes what an order's parties take away into a folder: receipts, mails, reports, dossiers, the slip, the paper form, the pack as shipped, the comparison. */
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
	await writeMails(folder, shop, played);
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
	const carrierText = await shop.fetchText(`/api/v1/orders/${played.orderId}/carrier-text`);
	await writeFile(join(folder, "carrier-text.txt"), carrierText);
	for (const edition of ["parties", "expert"]) {
		const dossier = await shop.fetchBytes(`/api/v1/orders/${played.orderId}/dossier.zip?edition=${edition}`);
		await writeFile(join(folder, `dossier-${edition}.zip`), dossier);
	}
	const style = await pages.fetchText("/assets/style.css");
	const order = `/orders/${played.orderId}`;
	const leg = `${order}/consignments/${played.consignmentId}`;
	const sheets = ["slip", "paper-form", "pack", "comparison"].map((sheet) => `${leg}/${sheet}`);
	const settled = [`${leg}/claim`, `${leg}/notice`, `${order}/positions`, `${order}/settlement`];
	if (played.settling !== undefined)
		await writeFile(join(folder, "claim-dates.ics"), await pages.fetchText(`${leg}/claim.ics`));
	for (const path of played.settling === undefined ? sheets : [...sheets, ...settled]) {
		const page = await pages.fetchText(path);
		// Opened from a disk, a page has no service to ask for its style.
		const alone = page.replace('<link rel="stylesheet" href="/assets/style.css"/>', `<style>${style}</style>`);
		await writeFile(join(folder, `${path.split("/").at(-1)}.html`), alone);
	}
}

/** The mails that a mail server would have been given: a link to read the order, and the receipts. */
async function writeMails(folder: string, shop: DemoClient, { orderId, recordIds }: PlayedOrder): Promise<void> {
	const link = await shop.send("POST", "/api/v1/links", { scope: "settle", orderId });
	const mails = [{ kind: "link", linkId: link.id }, ...recordIds.map((recordId) => ({ kind: "receipt", recordId }))];
	for (const [place, input] of mails.entries()) {
		const mail = await shop.send("POST", `/api/v1/orders/${orderId}/mail-text`, input);
		const text = `To: ${mail.to ?? "(no address is known)"}\nSubject: ${mail.subject}\n\n${mail.text}`;
		await writeFile(join(folder, `mail-${place + 1}-${input.kind}.txt`), text);
	}
}
