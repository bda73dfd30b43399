/** The pages of the customer's side, and those that both sides read. What goes wrong on them is told as a page. */
import type { FastifyInstance } from "fastify";
import type { Deps } from "../../operations/deps.ts";
import { registerNotice } from "../claims/notice-routes.tsx";
import { registerPeriods } from "../claims/periods-routes.tsx";
import { registerRules } from "../claims/rules-page.tsx";
import { registerComparison } from "../comparison/comparison-routes.tsx";
import { registerSealedPacks } from "../packaging/sealed-packs-routes.tsx";
import { registerPapers } from "../papers/papers-routes.tsx";
import { registerPicturePages } from "../pictures/pictures-routes.tsx";
import { registerRecordings } from "../recordings/recordings-routes.tsx";
import { registerPositions } from "../settling/positions-routes.tsx";
import { registerSettlement } from "../settling/settlement-routes.tsx";
import { registerWarrantyPage } from "../settling/warranty-routes.tsx";
import { registerSheets } from "../sheets/sheet-routes.tsx";
import { registerContinue } from "./continue-pages.tsx";
import { registerLinkEntry, sendClosed } from "./entry-routes.tsx";
import { registerGuidedRecord } from "./guided-routes.tsx";

export function registerCustomerPages(app: FastifyInstance, deps: Deps): void {
	app.register(async (pages) => {
		pages.setErrorHandler(sendClosed);
		registerLinkEntry(pages, deps);
		registerContinue(pages, deps);
		registerGuidedRecord(pages, deps);
		registerComparison(pages, deps);
		registerPeriods(pages, deps);
		registerRules(pages, deps);
		registerNotice(pages, deps);
		registerPositions(pages, deps);
		registerSettlement(pages, deps);
		registerWarrantyPage(pages, deps);
		registerSealedPacks(pages, deps);
		registerRecordings(pages, deps);
		registerSheets(pages, deps);
		registerPapers(pages, deps);
		registerPicturePages(pages, deps);
	});
}
