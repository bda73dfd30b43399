/** The check `static`. */
import { staticProtection } from "../electrostatics/static-protection.ts";
import { sentence } from "../judged.ts";
import type { CheckContext } from "./check-context.ts";
import type { Pack, PackagingCheck, PackedItem } from "./types.ts";
import { worse } from "./verdicts.ts";

/** The three verdicts on the layers count as meets, marginal, falls-short; what nothing proves is provisional at best. */
export function staticCheck({ input: { item, pack } }: CheckContext): PackagingCheck {
	return bagCheck(item, pack.bagLayers);
}

/** The check of the layers alone. */
export function bagCheck(item: PackedItem, layers: Pack["bagLayers"]): PackagingCheck {
	const kind =
		item.class === "graphics-card"
			? "populated-card"
			: item.class === "module" || item.class === "power-supply" || item.class === "drive"
				? "module"
				: "board";
	const answer = staticProtection({
		item: kind,
		layers,
		cell: item.cell,
		edgesPadded: item.edgesPadded,
		connectorsCapped: item.connectorsCapped,
		makerDeclaresNotSensitive: item.makerDeclaresNotSensitive,
	});
	const base = { id: "static" as const, value: null, limit: null, unit: null, margin: null, sources: answer.sources };
	if (answer.status !== "assessed") return { ...base, verdict: "not-assessed", why: answer.reason.message, mend: null };
	const { verdict, evidence, conditions } = answer.result;
	const counted = ({ acceptable: "meets", conditional: "marginal", "not-acceptable": "falls-short" } as const)[verdict];
	const unproven = evidence === "assumed" || evidence === "unknown";
	return {
		...base,
		verdict: unproven ? worse(counted, "provisional") : counted,
		why: conditions[0] ?? sentence("static.holds"),
		mend: counted === "meets" ? null : sentence("static.mend"),
	};
}
