/** Ce que comptent les relevés, en mots. */
import type { ReportTexts } from "../report-texts.ts";

export const units: ReportTexts["units"] = {
	"unit.errors": "erreurs",
	"unit.points": "points",
	"unit.lanes": "voies",
	"unit.runs": "passages",
	"unit.starts": "démarrages",
	"unit.rpm": "tr/min",
};
