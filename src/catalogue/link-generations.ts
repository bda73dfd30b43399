/**
 * Speeds of PCI Express links by generation, GT/s, and what a lane carries, GB/s in one direction (GB = 10⁹ bytes).
 * Generation follows from the speed by this table only: 20 or 25 GT/s is no generation.
 * Source: published, a link rate table in open hardware notes (0.250, 0.500, 0.985, 1.969, 3.938 GB/s a lane), computed
 * as GT/s × code ÷ 8 with 8b/10b for generations 1 and 2 and 128b/130b for 3 to 5; generation 6 carries 8 GB/s raw.
 */
export const LINK_GENERATIONS: Readonly<Record<number, number>> = { 1: 2.5, 2: 5, 3: 8, 4: 16, 5: 32, 6: 64 };

/** GB/s of one lane by speed in GT/s. */
export const LANE_GBYTE_PER_S: Readonly<Record<number, number>> = {
	2.5: (2.5 * 8) / 10 / 8,
	5: (5 * 8) / 10 / 8,
	8: (8 * 128) / 130 / 8,
	16: (16 * 128) / 130 / 8,
	32: (32 * 128) / 130 / 8,
	64: 8,
};

/** Widths that a link can have. Source: from memory, PCI Express base specification. */
export const LINK_WIDTHS: readonly number[] = [1, 2, 4, 8, 12, 16, 32];
