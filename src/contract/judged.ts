/** A judged value as answers give it: its sentences in words, its sources with how well each is known. */
import { z } from "zod";
import { STANDINGS } from "../calculations/sources.ts";

const source = z.strictObject({
	id: z.string(),
	document: z.string(),
	locator: z.string(),
	standing: z.enum(STANDINGS),
});
export const sources = z.array(source);

const support = {
	cautions: z.array(z.string()),
	validity: z.strictObject({ within: z.boolean(), notes: z.array(z.string()) }),
	sources,
};

/** The value, or why there is none. */
export function judged<Result extends z.ZodType>(result: Result) {
	return z.discriminatedUnion("status", [
		z.strictObject({ status: z.literal("assessed"), result, ...support }),
		z.strictObject({
			status: z.literal("not-assessed"),
			result: z.null(),
			reason: z.strictObject({ code: z.string(), message: z.string() }),
			...support,
		}),
	]);
}
