/** A recorded shock from the text of its request to the answer in words; runs on a thread of its own. */
import type { Axes } from "../../calculations/shock/trace/oscillator-responses.ts";
import { shockTrace } from "../../calculations/shock/trace/shock-trace.ts";
import { type ShockTraceAnswer, shockTraceRequest } from "../../contract/shock-trace.ts";
import { speak } from "../../texts/say.ts";
import { parseStrictJson } from "../strict-json.ts";
import { validate } from "../validate.ts";

/** @throws malformed-json, bad-input */
export function assessShockTrace(text: string): ShockTraceAnswer {
	const { accelerationGn = [], axes, ...input } = validate(shockTraceRequest, parseStrictJson(text));
	const traces = (axes ?? [accelerationGn]).map((trace) => Float64Array.from(trace)) as unknown as Axes;
	return speak(shockTrace({ ...input, axes: traces })) as unknown as ShockTraceAnswer;
}
