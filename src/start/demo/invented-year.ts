/**
 * A year of 400 invented orders, the same every time: what left, how it was packed, what became of it. Made up by a seeded
 * generator from the shares below, which no study stands behind; they exist so that the page about learning has something
 * to be careful with.
 */
import { createHash } from "node:crypto";

export interface InventedOrder {
	readonly number: number;
	/** `YYYY-MM-DD`. */
	readonly sentOn: string;
	readonly carrier: string;
	readonly box: "small" | "large";
	readonly foam: "pe-plank-23c" | "epp-30.4-mean-2-to-5";
	readonly soakHours: number;
	readonly outcome: "as-left" | "changed" | "dead" | "untested" | "silent";
	readonly padsShifted: boolean | null;
	readonly cornersCrushed: boolean | null;
	readonly tagTripped: boolean | null;
	readonly newErrors: boolean | null;
}

const ORDERS = 400;
const FIRST_DAY = Date.UTC(2025, 9, 1);
const DAY_MS = 86_400_000;
const SEED = 20_251_001;
/** Name, share of the parcels, share of changed or dead. */
const CARRIERS = [
	["Eilbote Süd", 0.55, 0.03],
	["Fuhrwerk Lindental", 0.3, 0.05],
	["Paketlinie Ost", 0.15, 0.03],
] as const;
const SHARES = { silent: 0.17, untested: 0.04, dead: 0.35, noted: 0.8, tag: 0.09, corner: 0.12, errors: 0.05 };

export function inventedYear(): InventedOrder[] {
	const random = generator(SEED);
	const chance = (share: number) => random() < share;
	return Array.from({ length: ORDERS }, (_, index) => {
		const carrier = drawn(random());
		const foam = chance(0.6) ? "pe-plank-23c" : "epp-30.4-mean-2-to-5";
		const soakHours = [0, 4, 24][Math.floor(3 * random())] ?? 0;
		const isBad = chance(carrier[2] + (soakHours === 0 ? 0.03 : 0));
		const isDead = chance(SHARES.dead);
		const isSilent = chance(SHARES.silent);
		const isUntested = chance(SHARES.untested);
		const outcome = isSilent
			? "silent"
			: isUntested
				? "untested"
				: isBad
					? isDead
						? "dead"
						: "changed"
					: ("as-left" as const);
		const isNoted = chance(SHARES.noted);
		const told = { pads: chance(foam === "pe-plank-23c" ? 0.14 : 0.06), corner: chance(SHARES.corner) };
		const [tag, errors] = [chance(SHARES.tag), chance(SHARES.errors)];
		return {
			number: index + 1,
			sentOn: new Date(FIRST_DAY + Math.floor((index * 365 * DAY_MS) / ORDERS)).toISOString().slice(0, 10),
			carrier: carrier[0],
			box: chance(0.5) ? "small" : "large",
			foam,
			soakHours,
			outcome,
			padsShifted: isSilent || !isNoted ? null : told.pads,
			cornersCrushed: isSilent || !isNoted ? null : told.corner,
			tagTripped: isSilent ? null : tag,
			newErrors: outcome === "as-left" || outcome === "changed" ? errors : null,
		};
	});
}

function drawn(at: number): (typeof CARRIERS)[number] {
	let below = 0;
	for (const carrier of CARRIERS) {
		below += carrier[1];
		if (at < below) return carrier;
	}
	return CARRIERS[0];
}

/** Numbers from 0 to under 1, the same for the same seed: the beginning of SHA-256 over seed and place. */
function generator(seed: number): () => number {
	let place = 0;
	return () => {
		const hash = createHash("sha256").update(`${seed}/${place++}`).digest();
		return hash.readUInt32BE(0) / 2 ** 32;
	};
}
