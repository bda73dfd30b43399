/** Sätze, die kein Programmteil mehr sagt. Versiegelte Bewertungen enthalten ihre Schlüssel. */
import type { ReportTexts } from "../report-texts.ts";

export const retired: ReportTexts["retired"] = {
	"packaging.several-layers": "Mehrere Lagen Schaumstoff auf einer Seite werden noch nicht bewertet.",
	"packaging.face-drops-only":
		"Nur flache Fälle: Die meisten aufgezeichneten Aufschläge trafen Kanten und Ecken, die später kommen.",
	"packaging.later": "Nicht bewertet, weil diese Fassung diese Prüfung noch nicht macht.",
};
