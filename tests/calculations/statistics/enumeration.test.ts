/** Exact tests against enumeration of every outcome, in whole numbers: nothing of the program's own distributions is used. */
import { describe, expect, test } from "vitest";
import { equalRatesP, rateRatioInterval } from "../../../src/calculations/statistics/rates.ts";
import { clopperPearson, fisherExact } from "../../../src/calculations/statistics/shares.ts";

function choose(n: number, k: number): bigint {
	let product = 1n;
	for (let step = 1; step <= k; step++) product = (product * BigInt(n - k + step)) / BigInt(step);
	return k < 0 || k > n ? 0n : product;
}

describe("Fisher's exact test: all tables of one margin, by BigInt", () => {
	test("every table up to 7 of 7 against 6 of 6: 1e-12", () => {
		for (let n1 = 1; n1 <= 7; n1++) {
			for (let n2 = 1; n2 <= 6; n2++) {
				for (let x1 = 0; x1 <= n1; x1++) {
					for (let x2 = 0; x2 <= n2; x2++) {
						const total = x1 + x2;
						const ways = (k: number) => choose(n1, k) * choose(n2, total - k);
						let [tail, all] = [0n, 0n];
						for (let k = 0; k <= n1; k++) {
							all += ways(k);
							if (ways(k) <= ways(x1)) tail += ways(k);
						}
						const wanted = Number(tail) / Number(all);
						expect(Math.abs(fisherExact([x1, n1], [x2, n2]) - wanted), `${x1}/${n1} ${x2}/${n2}`).toBeLessThan(1e-12);
					}
				}
			}
		}
	});
});

describe("two rates: all splits of the total, whole exposures, by BigInt", () => {
	test("every pair of counts up to 8 over exposures 1 to 5: 1e-12", () => {
		for (const [t1, t2] of [
			[1, 1],
			[1, 5],
			[3, 2],
		] as const) {
			for (let x1 = 0; x1 <= 8; x1++) {
				for (let x2 = 0; x2 <= 8; x2++) {
					const total = x1 + x2;
					const weight = (k: number) => choose(total, k) * BigInt(t1) ** BigInt(k) * BigInt(t2) ** BigInt(total - k);
					let tail = 0n;
					for (let k = 0; k <= total; k++) if (weight(k) <= weight(x1)) tail += weight(k);
					const wanted = Number(tail) / (t1 + t2) ** total;
					expect(Math.abs(equalRatesP(x1, t1, x2, t2) - wanted), `${x1}/${t1} ${x2}/${t2}`).toBeLessThan(1e-12);
				}
			}
		}
	});
});

describe("exact intervals: the tail at each bound, summed by hand, is 2.5 %", () => {
	const tailAbove = (k: number, n: number, p: number) => {
		let sum = 0;
		for (let j = k; j <= n; j++) sum += Number(choose(n, j)) * p ** j * (1 - p) ** (n - j);
		return sum;
	};
	test("shares, n up to 20: 1e-9", () => {
		for (const n of [1, 2, 5, 12, 20]) {
			for (let k = 0; k <= n; k++) {
				const [low, high] = clopperPearson(k, n, 0.95);
				if (k > 0) expect(Math.abs(tailAbove(k, n, low) - 0.025)).toBeLessThan(1e-9);
				if (k < n) expect(Math.abs(1 - tailAbove(k + 1, n, high) - 0.025)).toBeLessThan(1e-9);
			}
		}
	});
	test("the ratio of two rates, from the share", () => {
		const [low, high] = rateRatioInterval(3, 2, 5, 4, 0.95);
		const share = (ratio: number) => (ratio * 2) / (ratio * 2 + 4);
		expect(Math.abs(tailAbove(3, 8, share(low ?? 0)) - 0.025)).toBeLessThan(1e-9);
		expect(Math.abs(1 - tailAbove(4, 8, share(high ?? 0)) - 0.025)).toBeLessThan(1e-9);
	});
});
