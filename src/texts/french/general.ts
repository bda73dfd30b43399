/** Phrases que plusieurs sujets emploient. */
import type { ReportTexts } from "../report-texts.ts";

export const general: ReportTexts["general"] = {
	"general.not-assessed": "Non évalué. Raison : {why}",
	"general.not-legal-advice": "Information générale, pas un conseil juridique.",
	"general.quoted": "« {text} »",
};
