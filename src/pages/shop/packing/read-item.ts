/** The item of a form as a request's: what it is, what it withstands, its board and its cooler. */
import { knownFragilityGn } from "../../../operations/packaging/known-fragility.ts";
import { say } from "../../../texts/say.ts";
import { type FormReader, FROM_MILLIMETRES, given, readMoney } from "../../record-form/form-reader.ts";

export function readItem(reader: FormReader, itemClass: string): Record<string, unknown> {
	const board = readBoard(reader);
	return given({
		class: itemClass,
		massKg: reader.number("item.massKg", "/item/massKg"),
		lengthM: reader.number("item.lengthMm", "/item/lengthM", FROM_MILLIMETRES),
		widthM: reader.number("item.widthMm", "/item/widthM", FROM_MILLIMETRES),
		heightM: reader.number("item.heightMm", "/item/heightM", FROM_MILLIMETRES),
		fragility: readFragility(reader, itemClass, board),
		board,
		heavyCooler: readCooler(reader),
		cell: reader.text("item.cell", "/item/cell") || "none",
		edgesPadded: reader.ticked("item.edgesPadded"),
		connectorsCapped: reader.ticked("item.connectorsCapped"),
		makerDeclaresNotSensitive: reader.ticked("item.makerDeclaresNotSensitive"),
		value: readMoney(reader, "item.value", "/item/value"),
	});
}

/** The figure typed; without one, what its class or its described board gives, if the basis says so. */
function readFragility(reader: FormReader, itemClass: string, board: unknown): Record<string, unknown> | undefined {
	const typedGn = reader.number("item.gn", "/item/fragility/gn");
	const basis = reader.text("item.basis", "/item/fragility/basis") || "our-choice";
	const velocityChangeMPerS = reader.number("item.velocityMPerS", "/item/fragility/velocityChangeMPerS");
	const gn = typedGn ?? knownFragilityGn(basis, itemClass, board);
	if (gn !== null) return given({ gn, basis, velocityChangeMPerS });
	if (basis !== "our-choice")
		reader.wrong("item.gn", say(`pack.fragility-missing.${basis}` as "pack.fragility-missing.class"));
	return undefined;
}

function readCooler(reader: FormReader): Record<string, unknown> | undefined {
	const massKg = reader.number("cooler.massKg", "/item/heavyCooler/massKg");
	if (massKg === undefined) return undefined;
	return { massKg, support: reader.text("cooler.support", "/item/heavyCooler/support") };
}

/** Described by its thickness and a component; nothing where neither is. */
function readBoard(reader: FormReader): Record<string, unknown> | undefined {
	const metres = (field: string, pointer: string) => reader.number(field, `/item/board/${pointer}`, FROM_MILLIMETRES);
	const number = (field: string, pointer: string) => reader.number(field, `/item/board/${pointer}`);
	const boardThicknessM = metres("board.thicknessMm", "boardThicknessM");
	const lengthM = metres("board.componentMm", "component/lengthM");
	const boardEdgeM = metres("board.edgeMm", "component/boardEdgeM");
	const plate = given({
		lengthM: metres("board.plateLengthMm", "plate/lengthM"),
		widthM: metres("board.plateWidthMm", "plate/widthM"),
		massKg: number("board.plateMassKg", "plate/massKg"),
		modulusGPa: number("board.modulusGPa", "plate/modulusGPa"),
		poissonRatio: number("board.poissonRatio", "plate/poissonRatio"),
	});
	const support = reader.text("board.support", "/item/board/plate/support");
	const naturalFrequencyHz = number("board.frequencyHz", "naturalFrequencyHz");
	if ([boardThicknessM, lengthM, boardEdgeM, naturalFrequencyHz].every((value) => value === undefined))
		return undefined;
	return given({
		component: given({
			kind: reader.text("board.component", "/item/board/component/kind"),
			lengthM,
			position: reader.text("board.position", "/item/board/component/position"),
			boardEdgeM,
		}),
		boardThicknessM,
		plate: Object.keys(plate).length === 0 ? undefined : { ...plate, support },
		naturalFrequencyHz,
		amplification: number("board.amplification", "amplification"),
		pulseDurationMs: number("board.pulseMs", "pulseDurationMs"),
	});
}
