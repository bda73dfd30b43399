/** When a draft's temperatures were last changed: the wait of a parcel is counted from then where no time in hand is given. */
import type { RecordContentInput } from "../../contract/records.ts";

/**
 * The content with the time at which its two temperatures came to be what they are. It stays while they stay, whatever else
 * is saved, and is the service's to say: what a caller sends for it counts for nothing.
 */
export function notedTemperatures(
	before: RecordContentInput,
	content: RecordContentInput,
	now: Date,
): RecordContentInput {
	if (content.parcel === undefined) return content;
	const { temperaturesNotedAt: _, ...parcel } = content.parcel;
	if (parcel.temperature === undefined || content.setUp?.ambient === undefined) return { ...content, parcel };
	const kept = sameTemperatures(before, content) ? before.parcel?.temperaturesNotedAt : undefined;
	return { ...content, parcel: { ...parcel, temperaturesNotedAt: kept ?? now.toISOString() } };
}

function sameTemperatures(one: RecordContentInput, other: RecordContentInput): boolean {
	const said = ({ parcel, setUp }: RecordContentInput) =>
		[parcel?.temperature, setUp?.ambient].map((quantity) => `${quantity?.value} ${quantity?.unit}`).join();
	return said(one) === said(other);
}
