/** Namen der Prüfungen. */
import type { ReportTexts } from "../report-texts.ts";

export const checks: ReportTexts["checks"] = {
	"checks.mass": "Masse der Platine",
	"checks.visual-parts": "Alle Teile da, keines lose",
	"checks.visual-cracks": "Keine Risse",
	"checks.visual-burn-marks": "Keine Brandspuren, kein Brandgeruch",
	"checks.visual-liquid-marks": "Keine Flüssigkeitsspuren",
	"checks.visual-connectors": "Stecker gerade und sauber",
	"checks.visual-edge-contacts": "Randkontakte sauber und unversehrt",
	"checks.visual-bracket": "Slotblech und Abdeckung gerade und fest",
	"checks.visual-rattle": "Nichts klappert",
	"checks.visual-fan": "Jeder Lüfter läuft an und dreht sich",
	"checks.resistance-core-rail": "Kaltwiderstand, Kernversorgung gegen Masse",
	"checks.resistance-memory-rail": "Kaltwiderstand, Speicherversorgung gegen Masse",
	"checks.resistance-12v-slot-rail": "Kaltwiderstand, 12 V des Steckplatzes gegen Masse",
	"checks.resistance-12v-auxiliary-rail": "Kaltwiderstand, 12 V des Zusatzsteckers gegen Masse",
	"checks.starts-cold": "Kaltstarts",
	"checks.starts-warm": "Warmstarts",
	"checks.link-width": "Breite der Verbindung unter Last",
	"checks.link-speed": "Geschwindigkeit der Verbindung unter Last",
	"checks.memory-errors": "Speicherfehler",
	"checks.temperature-core": "Kerntemperatur unter Last",
	"checks.fan-speed": "Lüfterdrehzahl unter Last",
	"checks.score": "Punktzahl einer festen Aufgabe",
};
