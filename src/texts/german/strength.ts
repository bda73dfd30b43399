/** Hinweise zu Platinenfestigkeit, Schwingung, gestapelten Kartons und Trockenmittel. */
import type { ReportTexts } from "../report-texts.ts";

export const strength: ReportTexts["strength"] = {
	"strength.screen":
		"Nur eine grobe Prüfung: Die Regel gilt für dünne, große Platinen mit kleinen Bauteilen. Für eine steife Platine mit großen Bauteilen, etwa eine Grafikkarte mit schwerem Kühler, wurde sie im Druck kritisiert.",
	"strength.no-frequency":
		"Ohne die Eigenfrequenz der Platine lässt sich kein Stoß angeben: Wie die Platine gehalten ist, entscheidet sie. Siehe die Liste nach Frequenz.",
	"strength.plate":
		"Die Frequenz ist die einer einfachen Platte. Die Tabelle des Buchs selbst weicht für Platinen um 3 bis 9 % von dieser Formel ab; Bauteile und Kühler sind nicht darin.",
	"vibration.points-not-rising": "Die Punkte stehen nicht in steigender Frequenz.",
	"vibration.profile-only": "Nur der Gesamtpegel des Profils: Geben Sie für eine Antwort eine Eigenfrequenz an.",
	"vibration.outside-profile":
		"Die Eigenfrequenz liegt außerhalb des Profils, daher wird die Antwort in Resonanz nicht angegeben, nur die über das Band des Profils.",
	"vibration.low-q":
		"Die Antwort in Resonanz gilt für schwach gedämpfte Platinen, eine Überhöhung über 10; hier ist sie {q}.",
	"vibration.not-damage":
		"Gleiche Gesamtpegel sind nicht gleiche Schäden: Ein veröffentlichter Vergleich fand Unterschiede bis zum Hundertfachen.",
	"box.top-to-bottom": "Für gewöhnliche Faltkartons, von oben nach unten belastet, die gerade aufeinander stehen.",
	"box.beyond-days":
		"Die Verluste mit der Zeit sind für höchstens {days} Tage bekannt; darüber wurde der letzte Wert genommen.",
	"box.flute-assumed": "Es war keine Welle angegeben, daher wurde C genommen.",
	"desiccant.missing": "Diese Regel braucht: {members}.",
	"desiccant.humidity": "Diese Regel hat Zahlen für eine Endfeuchte von {list} %.",
	"desiccant.sealed":
		"Für eine verschlossene Sperre: Kein Beutel hilft einer Hülle, die nicht verschlossen ist, oder einem einfachen Abschirmbeutel.",
	"desiccant.long-storage":
		"Diese Regel ist für lange Lagerung: Sie kennt weder die Güte der Sperre noch die Zeit, daher verlangt sie viel.",
	"desiccant.no-dunnage": "Diese Regel zählt Papier, Pappe und Schaumstoff in der Sperre nicht mit.",
	"desiccant.paper":
		"Papier und Pappe in der Sperre halten weit mehr Wasser, als die Luft oder die Sperre hereinlässt: Lassen Sie sie draußen.",
};
