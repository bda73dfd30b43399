/** The shop's instruments and benches. */
import { z } from "zod";
import { TYPED_UNITS, type TypedUnit } from "../calculations/quantities.ts";
import { civilDate, id, text } from "./common.ts";

export const typedUnit = z.enum(Object.keys(TYPED_UNITS) as [TypedUnit, ...TypedUnit[]]);

export const instrumentFacts = z.strictObject({
	/** Accuracy as the data sheet gives it: ± (percent of reading + counts of the last digit). */
	percentOfReading: z.number().min(0).max(100).optional(),
	counts: z.number().min(0).max(10_000).optional(),
	/** Size of one count, in `unit`, in the range used. */
	resolution: z.number().positive().max(1e15).optional(),
	rangeHigh: z.number().positive().max(1e15).optional(),
	unit: typedUnit,
	calibratedOn: civilDate.optional(),
});
export type InstrumentFacts = z.infer<typeof instrumentFacts>;

export const instrumentInput = z.strictObject({ label: text(100), facts: instrumentFacts });
export type InstrumentInput = z.infer<typeof instrumentInput>;
export const instrumentView = instrumentInput.extend({ id: id("ins") });
export type InstrumentView = z.infer<typeof instrumentView>;
export const instrumentList = z.strictObject({ instruments: z.array(instrumentView) });

export const benchInput = z.strictObject({ label: text(100), description: text(1000).optional() });
export type BenchInput = z.infer<typeof benchInput>;
export const benchView = benchInput.extend({ id: id("ben") });
export type BenchView = z.infer<typeof benchView>;
export const benchList = z.strictObject({ benches: z.array(benchView) });
