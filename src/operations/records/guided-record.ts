/** What the guided pages need beside the record itself: the order, the leg, the checks that need no instruments. */
import type { Caller } from "../../access/caller.ts";
import type { CheckDefinition } from "../../catalogue/checks/check.ts";
import { checksOf } from "../../catalogue/checks/checks.ts";
import type { ConsignmentView, OrderView } from "../../contract/orders.ts";
import type { ExhibitFileView } from "../../contract/pictures.ts";
import type { RecordView } from "../../contract/records.ts";
import type { Deps } from "../deps.ts";
import { readOrder } from "../orders/read-orders.ts";
import { ownCatalogueOf } from "../own-catalogue/own-catalogue.ts";
import { type OfferedCheck, ownPartOf } from "../own-catalogue/own-checks-of.ts";
import { readExhibitFiles } from "../pictures/exhibit-file-views.ts";
import { readRecord } from "./read-record.ts";

/** A check as someone without instruments is asked for it. */
export type GuidedCheck = CheckDefinition;

export interface GuidedRecord {
	readonly record: RecordView;
	readonly order: OrderView;
	readonly consignment: ConsignmentView | null;
	/** Those that need no instruments; `allChecks` has the class's other checks too. */
	readonly checks: readonly GuidedCheck[];
	readonly allChecks: readonly GuidedCheck[];
	/** The class's, those that the shop leaves out too: their cautions hold for its own checks. */
	readonly classChecks: readonly GuidedCheck[];
	/** The shop's own checks for this item, as they were defined when the order began. */
	readonly ownChecks: readonly OfferedCheck[];
	/** Its photos and files, with what they claim and what others get of them. */
	readonly files: readonly ExhibitFileView[];
}

/** The checks of a class that can be done with eyes, a kitchen scale and software. */
export function checksWithoutInstruments(itemClass: OrderView["item"]["class"]): readonly GuidedCheck[] {
	return checksOf(itemClass).filter((check) => check.whoCan === "no-instruments" || check.whoCan === "software");
}

/** The record with its surroundings, for whoever may read it. */
export async function readGuidedRecord(deps: Deps, caller: Caller, recordId: string): Promise<GuidedRecord> {
	const record = await readRecord(deps, caller, recordId);
	const [order, files] = await Promise.all([
		readOrder(deps, caller, record.orderId),
		readExhibitFiles(deps, caller, recordId),
	]);
	const own =
		record.ownCatalogueVersion === null
			? { offered: [], leftOut: [] }
			: ownPartOf(await ownCatalogueOf(deps.database, record.ownCatalogueVersion), order.item);
	// What was read, from a file for instance, is shown.
	const isAsked = ({ id }: GuidedCheck) =>
		!own.leftOut.includes(id) || record.content?.readings?.some(({ check }) => check === id) === true;
	return {
		record,
		order,
		consignment: order.consignments.find((consignment) => consignment.id === record.consignmentId) ?? null,
		checks: checksWithoutInstruments(order.item.class).filter(isAsked),
		classChecks: checksWithoutInstruments(order.item.class),
		allChecks: checksOf(order.item.class).filter(isAsked),
		ownChecks: own.offered,
		files,
	};
}
