/** Whether a guided record may ask for an act that gives the board power, and what its steps are called then. */
import type { GuidedRecord } from "../../operations/records/guided-record.ts";
import { powerStop } from "../../operations/records/power-stop.ts";
import type { TextKey } from "../../texts/say.ts";
import type { Step } from "./steps.ts";

/** Not after a stop, and not where the board is another one than the order's. */
export function mayHavePower(guided: GuidedRecord): boolean {
	return powerStop(guided.record.content ?? {}) === null && !isOtherItem(guided);
}

/** Whether the serial number on the board is another one than the order's. */
export function isOtherItem({ record, order }: GuidedRecord): boolean {
	const entered = record.content?.identity?.serialNumber;
	const expected = order.item.serialNumber;
	return entered !== undefined && expected !== undefined && plain(entered) !== plain(expected);
}

/** The title of a step: after a stop it speaks of no power to come. */
export function titleOf(step: Step, guided: GuidedRecord): TextKey {
	return mayHavePower(guided) ? step.title : (step.titleWithoutPower ?? step.title);
}

/** A serial number without what people add when they copy it. */
function plain(serial: string): string {
	return serial.replaceAll(/[\s-]/g, "").toUpperCase();
}
