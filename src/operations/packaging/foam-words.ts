/** A foam as people read it: material and density, how its curve was taken, and how well it is known. */
import { fillerById } from "../../catalogue/fillers.ts";
import { FOAMS, foamById } from "../../catalogue/foams.ts";
import type { ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";

export function foamWords(id: string, { say, writeNumber }: Speaker = ENGLISH): string {
	if (fillerById(id) !== null) return say(`pack.filler.${id}` as ReportKey);
	const foam = foamById(id);
	if (foam === null) return id;
	const density = foam.densityKgPerM3 === null ? "" : `, ${writeNumber(foam.densityKgPerM3)} kg/m³`;
	const drops = say(`pack.drop-number.${foam.dropNumber}` as ReportKey);
	const model = say(foam.model.kind === "stress-energy" ? "pack.model-curve" : "pack.model-gas");
	return `${say(`foam.${foam.material}` as ReportKey)}${density} (${model}, ${drops})`;
}

/** Every foam that is built in, as choices of a form. */
export function foamChoices(): { value: string; label: string }[] {
	return FOAMS.map(({ id }) => ({ value: id, label: foamWords(id) }));
}
