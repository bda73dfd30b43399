/** Recorded shocks on threads: the worked example, refusals by name, limits, and a service that goes on serving. Needs the build. */
import { monitorEventLoopDelay } from "node:perf_hooks";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { shockTraceAnswer } from "../../../src/contract/shock-trace.ts";
import { Fault } from "../../../src/faults.ts";
import { assessShockTrace } from "../../../src/operations/shock-trace/assess-shock-trace.ts";
import { makeTraceAssessor } from "../../../src/operations/shock-trace/trace-assessor.ts";
import { classicalPulse } from "../../calculations/shock/classical-pulse.ts";
import { type TestApp, testApp } from "../../setup/test-app.ts";

const URL_OF_TRACE = "/api/v1/calculations/shock-trace";
/** The worked example of the contract: 50 gₙ half sine of 11 ms at 10 kHz. */
const EXAMPLE = {
	sampleRateHz: 10_000,
	accelerationGn: [...classicalPulse("half_sine", 50, 11, 10_000)],
	q: 10,
	peak: "sample",
	frequenciesHz: [100],
};

function wrongIn(request: unknown): string[] {
	try {
		assessShockTrace(JSON.stringify(request));
	} catch (error) {
		if (error instanceof Fault) return error.members.map(({ path }) => path);
		throw error;
	}
	return [];
}

describe("the worked example (half a unit of the last printed digit)", () => {
	it("holds", () => {
		const { result } = assessShockTrace(JSON.stringify(EXAMPLE));
		expect(result?.velocityChangeMPerS).toBeCloseTo(3.433, 3);
		expect(result?.equivalentDropHeightM.restitution0).toBeCloseTo(0.601, 3);
		expect(result?.equivalentDropHeightM.restitutionHalf).toBeCloseTo(0.267, 3);
		expect(result?.equivalentDropHeightM.restitution1).toBeCloseTo(0.15, 3);
		expect(result?.spectrum[0]?.maximaxGn).toBeCloseTo(79.5587, 4);
	});
	it("three axes are answered in the published shape", () => {
		const { accelerationGn, ...more } = EXAMPLE;
		const answer = assessShockTrace(
			JSON.stringify({ ...more, axes: [accelerationGn, accelerationGn, accelerationGn] }),
		);
		expect(shockTraceAnswer.safeParse(answer).error).toBeUndefined();
		expect(answer.result?.axes).toHaveLength(3);
		expect(answer.result?.spectrum[0]?.maximaxGn).toBeCloseTo(Math.sqrt(3) * 79.558726, 4);
	});
});

describe("refused, with the member named", () => {
	it.each([
		["no trace", { accelerationGn: undefined }, ["/accelerationGn"]],
		[
			"a trace given twice",
			{
				axes: [
					[0, 1],
					[0, 1],
					[0, 1],
				],
			},
			["/accelerationGn"],
		],
		[
			"axes of unequal length",
			{
				accelerationGn: undefined,
				axes: [
					[0, 1],
					[0, 1],
					[0, 1, 2],
				],
			},
			["/axes"],
		],
		[
			"two axes",
			{
				accelerationGn: undefined,
				axes: [
					[0, 1],
					[0, 1],
				],
			},
			["/axes"],
		],
		["neither q nor undamped", { q: undefined }, ["/q"]],
		["both", { undamped: true }, ["/q"]],
		["damping beyond critical", { q: 0.5 }, ["/q"]],
		["a frequency over half the sampling rate", { frequenciesHz: [100, 5000] }, ["/frequenciesHz/1"]],
		["a frequency that needs too many zeros", { frequenciesHz: [0.09] }, ["/frequenciesHz/0"]],
		["a whole trace before the shock", { pretriggerSamples: 111 }, ["/pretriggerSamples"]],
		["a filter class of nobody", { filterClass: 100 }, ["/filterClass"]],
		["too many samples", { accelerationGn: new Array(200_001).fill(0) }, ["/accelerationGn"]],
		["a sample that is no number", { accelerationGn: [0, "1"] }, ["/accelerationGn/1"]],
	])("%s", (_, change, expected) => {
		expect(wrongIn({ ...EXAMPLE, ...change })).toEqual(expected);
	});
});

describe("whatever the door accepts", () => {
	const extreme = fc.oneof(
		fc.constantFrom(0, 1e6, -1e6, 5e-324, -5e-324, 1e-300, 1, -1),
		fc.double({ min: -1e6, max: 1e6, noNaN: true }),
	);
	const trace = fc.array(extreme, { minLength: 2, maxLength: 40 });
	const requests = fc.record(
		{
			sampleRateHz: fc.constantFrom(1, 10, 1000, 1e7),
			trace,
			three: fc.boolean(),
			pretriggerSamples: fc.constantFrom(1),
			fullScaleGn: fc.constantFrom(5e-324, 1, 1e6),
			filterClass: fc.constantFrom(60, 180, 600, 1000),
			peak: fc.constantFrom("sample", "parabolic"),
			q: fc.constantFrom(0.5000001, 0.6, 10, 1e6),
			share: fc.constantFrom(1e-5, 1e-3, 0.1, 0.49),
		},
		{ requiredKeys: ["sampleRateHz", "trace", "three", "q", "share"] },
	);
	it("is answered in the published shape: every number is one that JSON holds", () => {
		fc.assert(
			fc.property(requests, ({ trace: samples, three, share, ...more }) => {
				const frequenciesHz = [Math.max(share * more.sampleRateHz, more.sampleRateHz / 100_000)];
				const axes = [samples, samples.map((value) => -value), samples.toReversed()];
				const request = { ...more, frequenciesHz, ...(three ? { axes } : { accelerationGn: samples }) };
				const answer = JSON.parse(JSON.stringify(assessShockTrace(JSON.stringify(request))));
				expect(shockTraceAnswer.safeParse(answer).error).toBeUndefined();
			}),
			{ numRuns: 200 },
		);
	}, 120_000);
});

describe("on threads", () => {
	const long = JSON.stringify({
		...EXAMPLE,
		accelerationGn: Array.from({ length: 200_000 }, (_, index) => Math.round(5000 * Math.sin(index / 30)) / 100),
		frequenciesHz: Array.from({ length: 100 }, (_, index) => 10 + index),
	});
	it("a long trace does not hold the service up", async () => {
		const assess = makeTraceAssessor();
		await assess(JSON.stringify(EXAMPLE));
		const delay = monitorEventLoopDelay({ resolution: 1 });
		const begun = performance.now();
		delay.enable();
		const answers = await Promise.all([assess(long), assess(long)]);
		delay.disable();
		const tookMs = performance.now() - begun;
		for (const answer of answers) expect(answer.status).toBe("assessed");
		expect(delay.max / 1e6).toBeLessThan(0.1 * tookMs);
	}, 60_000);
	it("one that takes too long ends, and the next is taken", async () => {
		const assess = makeTraceAssessor(1);
		await expect(assess(long)).rejects.toMatchObject({ code: "too-large" });
		await expect(makeTraceAssessor()(JSON.stringify(EXAMPLE))).resolves.toMatchObject({ status: "assessed" });
	});
	it("few wait, more are refused", async () => {
		const assess = makeTraceAssessor();
		const codes = await Promise.all(
			Array.from({ length: 12 }, () =>
				assess(JSON.stringify(EXAMPLE)).then(
					() => "ok",
					(error: Fault) => error.code,
				),
			),
		);
		expect(codes.filter((code) => code === "too-many")).toHaveLength(2);
	});
	it("what would fill the memory is refused as too large", async () => {
		const many = `{"frequenciesHz":[${"1,".repeat(500_000)}1]}`;
		const refusedIn = (mostMemoryMb: number) => makeTraceAssessor(60_000, undefined, mostMemoryMb)(many);
		await expect(refusedIn(64)).rejects.toMatchObject({ code: "too-large" });
		await expect(refusedIn(768), "with room enough for what it is").rejects.toMatchObject({ code: "bad-input" });
	}, 120_000);
});

describe(`POST ${URL_OF_TRACE}`, () => {
	let shop: TestApp;
	beforeAll(async () => {
		shop = await testApp();
	});
	afterAll(() => shop?.close());
	const post = (payload: string, type = "application/json") =>
		shop.app.inject({ method: "POST", url: URL_OF_TRACE, payload, headers: { "content-type": type } });

	it("is open to everyone and answers in words", async () => {
		const answer = await post(JSON.stringify(EXAMPLE));
		expect(answer.statusCode, answer.body).toBe(200);
		expect(answer.json().cautions.every((caution: unknown) => typeof caution === "string")).toBe(true);
		expect(answer.json().result.axes).toBeNull();
	});
	it("executes the example that it publishes", async () => {
		const document = (await shop.app.inject({ url: "/api/v1/openapi.json" })).json();
		const { example } = document.paths[URL_OF_TRACE].post.requestBody.content["application/json"];
		const answer = await post(JSON.stringify(example));
		expect(answer.statusCode, answer.body).toBe(200);
		expect(answer.json().validity).toEqual({ within: true, notes: [] });
		expect(answer.json().result.peakGn).toBeCloseTo(20, 1);
	});
	it("takes more than the 1 MiB of other requests, and no more than 8 MiB", async () => {
		const pad = (bytes: number) => `${JSON.stringify(EXAMPLE)}${" ".repeat(bytes)}`;
		expect((await post(pad(2 * 1024 * 1024))).statusCode).toBe(200);
		const tooLarge = await post(pad(8 * 1024 * 1024));
		expect(tooLarge.statusCode).toBe(413);
		expect(tooLarge.headers["content-type"]).toMatch(/^application\/problem\+json/);
	});
	it("is as strict as the others: text, then shape, each fault by name", async () => {
		expect((await post("")).statusCode).toBe(400);
		expect((await post("{")).json().type).toBe("urn:handover-risk:fault:malformed-json");
		const twice = await post('{"q":1,"q":2}');
		expect(twice.json().errors.map((error: { code: string }) => error.code)).toEqual(["duplicate-member"]);
		expect((await post('{"q":1e400}')).json().errors[0].code).toBe("unsafe-number");
		expect((await post(JSON.stringify({ ...EXAMPLE, tilt: 1 }))).json().errors).toMatchObject([
			{ path: "/tilt", code: "unknown-member" },
		]);
		expect((await post("a=1", "application/x-www-form-urlencoded")).statusCode).toBe(415);
	});
});
