/** A pack as it was entered, in words: what a sealed assessment rests on. */
import { FACES, type PackagingRequest } from "../../contract/packaging.ts";
import { inMillimetres } from "../../texts/millimetres.ts";
import type { ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import { bagWords, kindWords } from "./pack-words.ts";

type Item = PackagingRequest["item"];
type Pack = PackagingRequest["pack"];
type Route = PackagingRequest["route"];
export type Fact = readonly [term: string, words: string];

/** The item, its pack and its way, each fact a term with its words. */
export function factsOfPack({ item, pack, route }: PackagingRequest, speaker: Speaker = ENGLISH): readonly Fact[] {
	return [...itemFacts(item, speaker), ...packFacts(pack, speaker), ...routeFacts(route, speaker)];
}

function itemFacts(item: Item, speaker: Speaker): Fact[] {
	const { say, writeNumber, writeDigits, between } = speaker;
	const { fragility, heavyCooler, board, value } = item;
	return [
		[say("pack.item"), `${writeNumber(item.massKg)} kg, ${size(speaker, item.lengthM, item.widthM, item.heightM)}`],
		[
			say("pack.fragility"),
			fragility === undefined
				? say("pack.fragility-none")
				: `${writeNumber(fragility.gn)} gₙ, ${say("pack.known-by", { how: say(`pack.basis.${fragility.basis}` as ReportKey) })}`,
		],
		...some(say("pack.velocity"), fragility?.velocityChangeMPerS, (speed) => `${writeNumber(speed)} m/s`),
		...some(say("pack.board"), board, ({ component, boardThicknessM }) =>
			say("pack.board-of", {
				component: component.kind === undefined ? "–" : say(`pack.component-kind.${component.kind}` as ReportKey),
				lengthMm: Number(inMillimetres(component.lengthM)),
				position: say(`pack.position-kind.${component.position}` as ReportKey),
				thicknessMm: Number(inMillimetres(boardThicknessM)),
				edgeMm: Number(inMillimetres(component.boardEdgeM)),
			}),
		),
		...some(say("pack.cooler-mass"), heavyCooler, ({ massKg, support }) =>
			say("pack.cooler-of", { massKg, support: say(`pack.cooler-support.${support}` as ReportKey) }),
		),
		[say("shop.cell"), [say(`shop.cell-kind.${item.cell}` as ReportKey), ...saidOf(item, speaker)].join(between)],
		...some(say("pack.item-value"), value, ({ amount, currency }) => `${writeDigits(String(amount))} ${currency}`),
	];
}

/** What was ticked about the item. */
function saidOf(item: Item, { say }: Speaker): string[] {
	return [
		...(item.edgesPadded === true ? [say("pack.edges-padded")] : []),
		...(item.connectorsCapped === true ? [say("pack.connectors-capped")] : []),
		...(item.makerDeclaresNotSensitive === true ? [say("pack.not-sensitive")] : []),
	];
}

/** The pack alone: cushions, bag, box. */
export function packFacts({ box, innerBox, ...pack }: Pack, speaker: Speaker = ENGLISH): Fact[] {
	const { say, writeNumber, between, colon } = speaker;
	return [
		...cushionsOf(pack.faces, speaker).map(([words, faces]): Fact => [say("pack.face-of", { face: faces }), words]),
		...(innerBox === undefined
			? []
			: [
					[say("pack.inner"), boxWords(innerBox, speaker)] as const,
					...cushionsOf(innerBox.faces, speaker).map(([words, faces]): Fact => [`${say("pack.gap")}, ${faces}`, words]),
				]),
		[say("pack.bag"), pack.bagLayers.map((layer) => bagWords(layer, speaker)).join(between) || say("pack.no-layer")],
		...some(say("pack.desiccant-units"), pack.desiccantUnits, writeNumber),
		...some(say("pack.dunnage"), pack.dunnage, (dunnage) =>
			dunnage
				.map(({ kind, massKg }) =>
					say("pack.dunnage-of", { kind: say(`pack.dunnage-kind.${kind}` as ReportKey), massG: 1000 * massKg }),
				)
				.join(between),
		),
		[
			say("pack.box"),
			[
				boxWords(box, speaker),
				...(pack.grossMassKg === undefined
					? []
					: [`${say("shop.parcel-mass")}${colon}${writeNumber(pack.grossMassKg)} kg`]),
				...(typeof pack.closedHow === "string" ? [pack.closedHow] : []),
			].join(", "),
		],
		...some(say("pack.tried"), pack.cornerDrops, (drops) =>
			drops
				.map(({ orientation, ...drop }) =>
					say("pack.drop-of", { orientation: say(`pack.orientation-kind.${orientation}` as ReportKey), ...drop }),
				)
				.join(between),
		),
	];
}

function routeFacts(route: Route, { say, writeNumber, writeDigits }: Speaker): Fact[] {
	const { temperatureLowDegC: lowDegC, temperatureHighDegC: highDegC } = route;
	return [
		[say("pack.drop-basis"), say(`pack.drop.${route.dropBasis}` as ReportKey)],
		[
			say("pack.route"),
			`${say(`shop.mode-kind.${route.mode}` as ReportKey)}, ${say("pack.days-of", { days: route.transitDays })}`,
		],
		...(lowDegC === undefined && highDegC === undefined
			? []
			: [
					[
						say("pack.temperatures"),
						say("pack.temperatures-of", { lowDegC: lowDegC ?? "–", highDegC: highDegC ?? "–" }),
					] as const,
				]),
		...some(say("pack.humidity"), route.humidityPercent, (percent) => `${writeNumber(percent)} %`),
		...some(say("pack.vibration"), route.vibrationProfileId, (id) => id),
		...some(
			say("pack.carrier-cap"),
			route.carrierCap,
			({ amount, currency }) => `${writeDigits(String(amount))} ${currency}`,
		),
	];
}

/** One fact, or none where nothing was said; an erased text is null. */
function some<Value>(term: string, value: Value | null | undefined, words: (value: Value) => string): Fact[] {
	return value === undefined || value === null ? [] : [[term, words(value)]];
}

function size({ writeNumber }: Speaker, ...metres: readonly number[]): string {
	return `${metres.map((metre) => writeNumber(Number(inMillimetres(metre)))).join(" × ")} mm`;
}

function boxWords(box: Pack["box"], speaker: Speaker): string {
	const { say } = speaker;
	return [
		say("pack.inside", { size: size(speaker, box.innerLengthM, box.innerWidthM, box.innerHeightM) }),
		...(box.edgeCrushKNPerM === undefined ? [] : [say("pack.edge-crush-of", { edgeCrushKNPerM: box.edgeCrushKNPerM })]),
		...(box.caliperM === undefined ? [] : [say("pack.caliper-of", { caliperMm: Number(inMillimetres(box.caliperM)) })]),
		...(box.reused ? [say("pack.was-reused")] : []),
	].join(", ");
}

/** Each different cushion in words, with the faces that have it. */
function cushionsOf(faces: Pack["faces"], speaker: Speaker): [words: string, faces: string][] {
	const { say, between } = speaker;
	const found = new Map<string, string[]>();
	for (const face of FACES) {
		const words =
			faces[face].layers.map((layer) => cushionWords(layer, speaker)).join(between) || say("pack.no-cushion");
		found.set(words, [...(found.get(words) ?? []), say(`pack.face.${face}` as ReportKey)]);
	}
	return [...found].map(([words, names]) => [words, names.join(", ")]);
}

function cushionWords({ foam, thicknessM, pads }: Pack["faces"]["top"]["layers"][number], speaker: Speaker): string {
	const { say, writeDigits } = speaker;
	const [first] = pads ?? [];
	const bearing =
		first === undefined
			? say("pack.full-face")
			: say("pack.pads-of", {
					count: pads?.length ?? 0,
					lengthMm: Number(inMillimetres(first.lengthM)),
					widthMm: Number(inMillimetres(first.widthM)),
				});
	return `${kindWords(foam, speaker)}, ${writeDigits(inMillimetres(thicknessM))} mm, ${bearing}`;
}
