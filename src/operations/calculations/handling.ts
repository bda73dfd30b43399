/** `impact`, `pulse`, `drop-height`. */
import { dropHeight as designDrop } from "../../calculations/handling/drop-height.ts";
import { impact as impactOf } from "../../calculations/shock/impact.ts";
import { pulse as pulseOf } from "../../calculations/shock/pulse.ts";
import { DEFAULT_DROP_BASIS, DROP_TABLES, dropTableById, MEASURED_DROPS } from "../../catalogue/drop-tables.ts";
import {
	dropHeightRequest,
	dropHeightResult,
	impactRequest,
	impactResult,
	pulseRequest,
	pulseResult,
} from "../../contract/handling.ts";
import { invalid } from "../../faults.ts";
import { calculation } from "./calculation.ts";

export const impact = calculation({
	name: "impact",
	summary: "Velocities of an impact after a fall, and the peak of a linear cushion.",
	request: impactRequest,
	result: impactResult,
	example: {
		request: { dropHeightM: 0.762, restitution: 0, naturalFrequencyHz: 20 },
		result: { peakGn: 49.54, deflectionM: 0.03076, pulseDurationMs: 25 },
	},
	assess: impactOf,
});

export const pulse = calculation({
	name: "pulse",
	summary: "Velocity change of a shock pulse and the drops that would make it.",
	request: pulseRequest,
	result: pulseResult,
	example: {
		request: { shape: "half-sine", peakGn: 50, durationMs: 11 },
		result: {
			velocityChangeMPerS: 3.434,
			equivalentDropHeightM: { restitution0: 0.601, restitutionHalf: 0.267, restitution1: 0.15 },
		},
	},
	assess: pulseOf,
});

export const dropHeight = calculation({
	name: "drop-height",
	summary: "The design drop by a published basis, beside what was measured in parcel networks.",
	request: dropHeightRequest,
	result: dropHeightResult,
	example: { request: { massKg: 3, tripCoverage: 0.95 }, result: { dropHeightM: 0.8 } },
	assess: ({ basis, ...input }) => {
		const table = dropTableById(basis ?? DEFAULT_DROP_BASIS);
		if (table === null) throw invalid([{ path: "/basis", code: "unknown-id" }]);
		return designDrop({ ...input, table, tables: DROP_TABLES, measured: MEASURED_DROPS });
	},
});
