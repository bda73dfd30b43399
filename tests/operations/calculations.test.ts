/** Every worked example that the API publishes, executed: numbers agree to half a unit of the last printed digit. */
import { describe, expect, it } from "vitest";
import { CALCULATIONS } from "../../src/operations/calculations/list.ts";
import { validate } from "../../src/operations/validate.ts";
import { speak } from "../../src/texts/say.ts";

/** Half a unit of the last digit that a number is printed with. */
function half(expected: number): number {
	const digits = String(expected);
	const [mantissa = "", exponent = "0"] = digits.split("e");
	const decimals = mantissa.split(".")[1]?.length ?? 0;
	return 0.5 * 10 ** (Number(exponent) - decimals) + Number.EPSILON;
}

function agrees(got: unknown, expected: unknown, path: string): void {
	if (typeof expected === "number") {
		expect(typeof got, path).toBe("number");
		expect(Math.abs((got as number) - expected), `${path}: ${got} against ${expected}`).toBeLessThanOrEqual(
			half(expected),
		);
	} else if (Array.isArray(expected)) {
		expect(Array.isArray(got), path).toBe(true);
		expected.forEach((entry, index) => {
			agrees((got as unknown[])[index], entry, `${path}/${index}`);
		});
	} else if (expected !== null && typeof expected === "object") {
		for (const [name, entry] of Object.entries(expected))
			agrees((got as Record<string, unknown>)?.[name], entry, `${path}/${name}`);
	} else expect(got, path).toBe(expected);
}

describe("worked examples of the contract", () => {
	it.each(CALCULATIONS.map((operation) => [operation.name, operation] as const))("%s", (_, operation) => {
		const request = validate(operation.request, operation.example.request);
		const answer = speak(operation.assess(request)) as { status: string; result: unknown };
		expect(answer.status).toBe("assessed");
		agrees(answer.result, operation.example.result, "");
		const shape = operation.result.safeParse(JSON.parse(JSON.stringify(answer.result)));
		expect(shape.success ? [] : shape.error.issues).toEqual([]);
	});
});
