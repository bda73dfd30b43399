/** Parts of a pack in words: what a cushion is made of, a layer of the bag. */
import type { FoamInput } from "../../contract/cushion.ts";
import type { PackagingRequest } from "../../contract/packaging.ts";
import type { ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";
import { foamWords } from "./foam-words.ts";

export function kindWords(foam: FoamInput, speaker: Speaker = ENGLISH): string {
	const { say } = speaker;
	if ("unknown" in foam) return say("pack.unknown-foam");
	if ("id" in foam) return foamWords(foam.id, speaker);
	if ("points" in foam) return say("pack.own-points", { count: foam.points.length });
	return foam.model === "stress-energy"
		? say("pack.own-set", { a: foam.aKPa, b: foam.bPerKPa })
		: say("pack.own-gas-set");
}

export function bagWords(layer: PackagingRequest["pack"]["bagLayers"][number], { say }: Speaker = ENGLISH): string {
	return [
		say(`pack.layer.${layer.kind}` as ReportKey),
		say(layer.closed ? "pack.is-closed" : "pack.is-open"),
		say(layer.intact ? "pack.is-intact" : "pack.not-intact"),
		...(layer.stapled === true ? [say("pack.is-stapled")] : []),
		...(layer.reused === true ? [say("pack.was-reused")] : []),
		say("pack.known-by", { how: say(`pack.evidence.${layer.evidence}` as ReportKey) }),
	].join(", ");
}
