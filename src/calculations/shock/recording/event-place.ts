/** Where on the custody line an event lies, by its time on the recorder's clock and by how far that clock may be off. */

/** A span of the line; times in milliseconds since 1970. */
export interface TimedSpan {
	readonly startsMs: number;
	readonly endsMs: number;
}

export type EventPlace =
	/** Inside one span, whatever the clock's error. */
	| { readonly status: "in-span"; readonly spans: readonly [number] }
	/** In one of several spans, or of one and what lies beside the line. */
	| { readonly status: "in-one-of"; readonly spans: readonly number[]; readonly mayLieOutside: boolean }
	| { readonly status: "outside"; readonly spans: readonly [] }
	| {
			readonly status: "cannot-be-placed";
			readonly spans: readonly [];
			readonly reason: "no-clock" | "clock-not-known" | "no-line";
	  };

/** @param timeMs null where the recording does not say when it began; @param clockUncertaintyS null where nobody said */
export function eventPlace(
	timeMs: number | null,
	clockUncertaintyS: number | null,
	spans: readonly TimedSpan[],
): EventPlace {
	const unplaced = (reason: "no-clock" | "clock-not-known" | "no-line") =>
		({ status: "cannot-be-placed", spans: [], reason }) as const;
	if (timeMs === null) return unplaced("no-clock");
	if (clockUncertaintyS === null) return unplaced("clock-not-known");
	if (spans.length === 0) return unplaced("no-line");
	const [earliest, latest] = [timeMs - clockUncertaintyS * 1000, timeMs + clockUncertaintyS * 1000];
	const touched = spans.flatMap((span, index) => (span.startsMs <= latest && span.endsMs >= earliest ? [index] : []));
	const [only] = touched;
	if (only === undefined) return { status: "outside", spans: [] };
	const first = Math.min(...touched.map((index) => spans[index]?.startsMs ?? 0));
	const last = Math.max(...touched.map((index) => spans[index]?.endsMs ?? 0));
	const mayLieOutside = !(first <= earliest && latest <= last);
	if (touched.length === 1 && !mayLieOutside) return { status: "in-span", spans: [only] };
	return { status: "in-one-of", spans: touched, mayLieOutside };
}
