/** Phrases qu’aucun code ne dit plus. Des évaluations scellées contiennent leurs clés. */
import type { ReportTexts } from "../report-texts.ts";

export const retired: ReportTexts["retired"] = {
	"packaging.several-layers": "Plusieurs couches de mousse sur une face ne sont pas encore évaluées.",
	"packaging.face-drops-only":
		"Chutes à plat seulement : la plupart des impacts relevés étaient sur des arêtes et des coins, qui viennent plus tard.",
	"packaging.later": "Non évalué, parce que cette version ne fait pas encore ce contrôle.",
};
