/**
 * A dossier: what a party takes to whoever has to decide. Everything that the log holds of the order up to a size, as
 * files that standard programs check, the exhibits, the report, and the page that verifies without a network. The same
 * size, edition and language give the same bytes, as long as nothing that is noted outside the log changed. The guide is in
 * the report's language and stands alone: verifiers that were handed out know one name for it, and take no other beside it.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Caller } from "../../access/caller.ts";
import type { DossierEdition } from "../../contract/report.ts";
import { fault } from "../../faults.ts";
import { canonicalBytes, type JsonValue, sha256Hex } from "../../records/canonical.ts";
import { receiptBytes } from "../../records/receipt.ts";
import { say } from "../../texts/say.ts";
import { speakerOf } from "../../texts/speaker.ts";
import { VERIFY_COMMANDS } from "../../texts/verify-commands.ts";
import type { Deps } from "../deps.ts";
import { composeReport } from "../report/compose-report.ts";
import { readReportFacts } from "../report/read-report-facts.ts";
import type { AskedReport } from "../report/report-facts.ts";
import type { ReportWriter } from "../report/report-writer.ts";
import { bagOf } from "./bag.ts";
import { fileOf } from "./dossier-file.ts";
import { exhibitFiles } from "./exhibit-files.ts";
import { logFiles } from "./log-files.ts";
import { orderFile } from "./order-file.ts";
import { storedZip, zipBytes } from "./stored-zip.ts";

/** As built: the page has the verifier inside. */
const OFFLINE_FILE = fileURLToPath(new URL("../../../dist/pages/browser/verify-offline.html", import.meta.url));

export interface Dossier {
	readonly name: string;
	/** The same for the same bytes: SHA-256 of the bag's two manifests. */
	readonly tag: string;
	readonly sizeBytes: number;
	/** Its bytes from `start` up to `end`, which is left out. */
	readonly bytes: (start: number, end: number) => AsyncGenerator<Uint8Array>;
}

/** @throws not-found; not-sealed where the order has no entry in the log; too-large */
export async function buildDossier(
	deps: Deps & { readonly writeReport: ReportWriter },
	caller: Caller,
	orderId: string,
	asked: AskedReport<DossierEdition>,
): Promise<Dossier> {
	const facts = await readReportFacts(deps, caller, orderId, asked);
	const { edition, language } = asked;
	const { checkpoint, asOf, exhibits, handOuts, legs, readIn } = facts;
	if (facts.records.length === 0) throw fault("not-sealed");
	const receipt = await facts.receipt(orderId, []);
	const comparisons = legs.map(({ view }) => view) as unknown as JsonValue;
	const payload = [
		fileOf("report.pdf", await deps.writeReport(composeReport(facts))),
		fileOf("receipt.json", receiptBytes(receipt)),
		fileOf("comparison.json", canonicalBytes({ comparisons, language, orderId, treeSize: checkpoint.size })),
		fileOf("order.json", orderFile(facts.order)),
		fileOf("verify-offline.html", readFileSync(OFFLINE_FILE)),
		...logFiles(facts, receipt),
		...(await exhibitFiles(deps, exhibits, handOuts, readIn !== null)),
	];
	const folder = `dossier-${edition}-${checkpoint.size}-${orderId}${language === "en" ? "" : `-${language}`}`;
	const bag = bagOf(
		folder,
		payload,
		[fileOf("VERIFY.txt", speakerOf(language).say("dossier.verify-text", VERIFY_COMMANDS))],
		[
			["Bagging-Date", asOf.toISOString().slice(0, 10)],
			["External-Identifier", orderId],
			["External-Description", say("dossier.description", { size: String(checkpoint.size), edition })],
		],
	);
	const zip = storedZip(bag, asOf);
	const manifests = bag.filter(({ path }) => path.endsWith("manifest-sha256.txt"));
	return {
		name: `${folder}.zip`,
		tag: sha256Hex(Buffer.from(manifests.map(({ sha256 }) => sha256).join())),
		sizeBytes: zip.sizeBytes,
		bytes: (start, end) => zipBytes(zip, start, end),
	};
}
