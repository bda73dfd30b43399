/** Was Messungen zählen, in Worten. */
import type { ReportTexts } from "../report-texts.ts";

export const units: ReportTexts["units"] = {
	"unit.errors": "Fehler",
	"unit.points": "Punkte",
	"unit.lanes": "Lanes",
	"unit.runs": "Läufe",
	"unit.starts": "Starts",
	"unit.rpm": "min⁻¹",
};
