/** Sätze, die mehrere Themen benutzen. */
import type { ReportTexts } from "../report-texts.ts";

export const general: ReportTexts["general"] = {
	"general.not-assessed": "Nicht bewertet. Grund: {why}",
	"general.not-legal-advice": "Allgemeine Auskunft, keine Rechtsberatung.",
	"general.quoted": "„{text}“",
};
