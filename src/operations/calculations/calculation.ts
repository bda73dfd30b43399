/** One calculation as the API offers it: its name, the shapes of request and result, a worked example, and the act. */
import type { z } from "zod";
import type { Judged } from "../../calculations/judged.ts";

export interface CalculationOperation {
	/** Path name under `/api/v1/calculations/`. */
	readonly name: string;
	/** One line for the OpenAPI document. */
	readonly summary: string;
	readonly request: z.ZodType;
	/** Shape of `result`, sentences already turned into words. */
	readonly result: z.ZodType;
	/** A request, and members that the `result` of its answer must have; published in OpenAPI and executed by a test. */
	readonly example: { readonly request: unknown; readonly result: Readonly<Record<string, unknown>> };
	/** Resolves ids to tables of the catalogue and calls the calculation. Pure: no I/O, stores nothing. */
	assess(request: unknown): Judged<unknown>;
}

/** Defines an operation; ties the request's schema to what `assess` takes. */
export function calculation<Request>(definition: {
	readonly name: string;
	readonly summary: string;
	readonly request: z.ZodType<Request>;
	readonly result: z.ZodType;
	readonly example: { readonly request: Request; readonly result: Readonly<Record<string, unknown>> };
	assess(request: Request): Judged<unknown>;
}): CalculationOperation {
	return definition as CalculationOperation;
}
