/**
 * Random vibration of transport, points in Hz and gₙ²/Hz. Only the first has points and level both read; where points are
 * from memory, that they integrate to the stated level is a consistency check and no proof.
 */

import { cite, type DocumentId, type Source } from "../calculations/sources.ts";
import type { VibrationProfile } from "../calculations/vibration/random-profile.ts";

type Points = readonly (readonly [frequencyHz: number, gn2PerHz: number])[];

function profile(id: string, points: Points, statedGnRms: number | null, source: Source): VibrationProfile {
	return { id, points: points.map(([frequencyHz, gn2PerHz]) => ({ frequencyHz, gn2PerHz })), statedGnRms, source };
}
const remembered = (document: DocumentId, place: string) => cite(document, `${place}, points`, "from-memory");

/** The shape of the truck profile of 2016, by its lowest level. */
const TRUCK_2016: Points = [
	[1, 0.0004],
	[3, 0.01],
	[4, 0.01],
	[6, 0.0004],
	[12, 0.0004],
	[16, 0.002],
	[25, 0.002],
	[30, 0.0004],
	[40, 0.002],
	[80, 0.002],
	[100, 0.0002],
	[200, 0.00001],
];
const TRUCK_BEFORE: Points = [
	[1, 0.00005],
	[4, 0.01],
	[16, 0.01],
	[40, 0.001],
	[80, 0.001],
	[200, 0.00001],
];
const times = (points: Points, factor: number): Points =>
	points.map(([frequencyHz, density]) => [frequencyHz, density * factor]);

export const VIBRATION_PROFILES: readonly VibrationProfile[] = [
	profile(
		"jis-z-0200-2020",
		[
			[2, 0.0005],
			[4, 0.012],
			[18, 0.012],
			[40, 0.001],
			[200, 0.0005],
		],
		0.604,
		cite("jis-z-0200", "2020 edition, random vibration, points and overall level", "published"),
	),
	profile(
		"jis-z-0232-2004",
		[
			[3, 0.0005],
			[6, 0.012],
			[18, 0.012],
			[40, 0.001],
			[200, 0.0005],
		],
		0.59,
		remembered("jis-z-0232", "2004 edition"),
	),
	profile(
		"board-unpackaged",
		[
			[5, 0.01],
			[20, 0.02],
			[500, 0.02],
		],
		3.13,
		cite("board-random-guide", "bare board, random vibration", "published"),
	),
	profile(
		"board-packaged",
		[
			[5, 0.015],
			[40, 0.015],
			[500, 0.00015],
		],
		null,
		cite("desktop-board-specification", "packaged board, random vibration", "published"),
	),
	profile(
		"system",
		[
			[5, 0.001],
			[20, 0.01],
			[500, 0.01],
		],
		2.2,
		cite("board-random-guide", "system, random vibration", "published"),
	),
	profile(
		"common-carrier",
		[
			[1, 0.0001],
			[4, 0.01],
			[100, 0.01],
			[200, 0.001],
		],
		1.15,
		cite("common-carrier-notes", "points and level as printed", "published"),
	),
	profile(
		"mil-std-810-highway-vertical",
		[
			[10, 0.015],
			[40, 0.015],
			[500, 0.00015],
		],
		1.04,
		remembered("mil-std-810-vibration", "vertical"),
	),
	profile(
		"mil-std-810-highway-transverse",
		[
			[10, 0.00013],
			[20, 0.00065],
			[30, 0.00065],
			[78, 0.00002],
			[79, 0.00019],
			[120, 0.00019],
			[500, 0.00001],
		],
		0.2,
		remembered("mil-std-810-vibration", "transverse"),
	),
	profile(
		"mil-std-810-highway-longitudinal",
		[
			[10, 0.0065],
			[20, 0.0065],
			[120, 0.0002],
			[121, 0.003],
			[200, 0.003],
			[240, 0.0015],
			[340, 0.00003],
			[500, 0.00015],
		],
		0.74,
		remembered("mil-std-810-vibration", "longitudinal"),
	),
	profile(
		"astm-d4169-2009-truck-1",
		times(TRUCK_BEFORE, 2),
		0.73,
		remembered("astm-d4169", "truck before 2016, level I"),
	),
	profile("astm-d4169-2009-truck-2", TRUCK_BEFORE, 0.52, remembered("astm-d4169", "truck before 2016, level II")),
	profile(
		"astm-d4169-2009-truck-3",
		times(TRUCK_BEFORE, 0.5),
		0.37,
		remembered("astm-d4169", "truck before 2016, level III"),
	),
	profile("astm-d4169-2016-truck-low", TRUCK_2016, 0.4, remembered("astm-d4169", "truck of 2016, low, 40 min")),
	profile(
		"astm-d4169-2016-truck-medium",
		times(TRUCK_2016, 1.8),
		0.54,
		remembered("astm-d4169", "truck of 2016, medium, 15 min"),
	),
	profile(
		"astm-d4169-2016-truck-high",
		times(TRUCK_2016, 3),
		0.7,
		remembered("astm-d4169", "truck of 2016, high, 5 min"),
	),
	profile(
		"astm-d4169-2016-air-2",
		[
			[2, 0.0002],
			[12, 0.01],
			[100, 0.01],
			[300, 0.00001],
		],
		1.05,
		remembered("astm-d4169", "air of 2016, level II (the edition of 2022 states 0.16 to 0.29)"),
	),
	profile(
		"astm-d4169-rail-2",
		[
			[1, 0.00001],
			[2, 0.001],
			[50, 0.001],
			[90, 0.0004],
			[200, 0.00001],
		],
		0.29,
		remembered("astm-d4169", "rail, level II"),
	),
	profile(
		"ista-3a-road",
		[
			[1, 0.0007],
			[3, 0.02],
			[5, 0.02],
			[7, 0.001],
			[12, 0.001],
			[15, 0.004],
			[24, 0.004],
			[28, 0.001],
			[36, 0.001],
			[42, 0.003],
			[75, 0.003],
			[200, 0.000004],
		],
		0.53,
		remembered("ista-3a", "over the road"),
	),
];

/** The profile where none is asked for: the only one with points and level read. Source: the contract page. */
export const DEFAULT_VIBRATION_PROFILE = "jis-z-0200-2020";

/** A profile by id; null for none. */
export function vibrationProfileById(id: string): VibrationProfile | null {
	return VIBRATION_PROFILES.find((one) => one.id === id) ?? null;
}
