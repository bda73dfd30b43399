/** The shop's own checks that someone without instruments is asked for. */

import { needsNoInstruments, type OfferedCheck } from "../../operations/own-catalogue/own-checks-of.ts";
import type { GuidedRecord } from "../../operations/records/guided-record.ts";
import { offeredIn } from "../record-form/own-checks-form.ts";

export function ownChecksAsked({ record, ownChecks }: GuidedRecord): readonly OfferedCheck[] {
	return offeredIn(record.content ?? {}, ownChecks).filter(needsNoInstruments);
}
