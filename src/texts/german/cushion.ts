/** Hinweise zu Polstern. */
import type { ReportTexts } from "../report-texts.ts";

export const cushion: ReportTexts["cushion"] = {
	"cushion.unknown-foam":
		"Der Schaumstoff ist nicht bekannt. Seine Dicke allein setzt eine Untergrenze, die kein Polster unterbietet; ob dieses ihr nahekommt, ist nicht bekannt.",
	"cushion.temperature-range": "Die Daten des Schaumstoffs reichen von {low} bis {high} °C.",
	"cushion.outside-energy":
		"Die Energiedichte von {energy} kJ/m³ liegt außerhalb des geprüften Bereichs von {low} bis {high} kJ/m³.",
	"cushion.outside-thickness":
		"Die Dicke liegt außerhalb des Bereichs der Daten des Schaumstoffs, {low} bis {high} mm.",
	"cushion.outside-thin": "Die Daten des Schaumstoffs beginnen bei einer Dicke von {low} mm.",
	"cushion.crushed":
		"Bei dieser Energie wird der Schaumstoff ganz zusammengedrückt: Der Spitzenwert liegt jenseits dessen, was sein Modell angeben kann.",
	"cushion.unlikely-set":
		"Ein kleinster Polsterfaktor von {factor} ist besser als jeder gemessene Schaumstoff: Prüfen Sie Einheiten und Ziffern des Satzes.",
	"cushion.outside-temperature": "Die Daten des Schaumstoffs gelten für {low} bis {high} °C.",
	"cushion.locked": "Bei dieser Energie würde der Satz den Schaumstoff um mehr als seine eigene Dicke stauchen.",
	"cushion.note-plank": "Die Einheit des veröffentlichten Satzes ist erschlossen.",
	"cushion.note-memory":
		"Die Kurve ist erinnert, nicht gelesen: Bestätigen Sie sie mit der Kurve des Lieferanten oder mit Fallversuchen.",
	"cushion.note-derived": "Der Satz ist aus anderen Daten abgeleitet, mit einem erinnerten Faktor darin.",
	"cushion.note-own": "Ihr eigener Satz, ohne Vorhersageintervall.",
	"cushion.fit-impossible-point":
		"Punkt {number} hat einen Polsterfaktor unter 1, den kein Schaumstoff erreicht: Prüfen Sie Einheiten und Ziffern.",
	"cushion.fit-mixed-drops": "Erste und spätere Fälle sind gemischt. Passen Sie sie getrennt an.",
	"cushion.fit-one-energy":
		"Alle Punkte haben dieselbe Energiedichte. Fügen Sie einen bei anderer Flächenpressung, Höhe oder Dicke hinzu.",
	"cushion.fit-not-rising": "Die Spannung steigt nicht mit der Energie: Prüfen Sie die Punkte.",
	"cushion.fit-impossible-set": "Die Anpassung ergäbe einen Polsterfaktor unter 1, den kein Schaumstoff erreicht.",
	"cushion.fit-two-points": "Zwei Punkte passen genau zu jedem Satz, daher ist nicht bekannt, wie gut er gilt.",
	"cushion.fit-unlikely":
		"Ein kleinster Polsterfaktor von {factor} ist besser als jeder gemessene Schaumstoff: Prüfen Sie die Punkte.",
	"cushion.filler-bubble":
		"Luftpolsterfolie ist kein Hauptpolster: Keine Kurve davon war zu lesen, sie lädt Platinen auf, und unter kleinen Auflagen platzt sie.",
	"cushion.filler-air-pillow":
		"Luftkissen sind kein Hauptpolster: Keine Kurve davon war zu lesen, und eines, das undicht ist, hält nichts.",
	"cushion.filler-paper":
		"Knüllpapier ist kein Hauptpolster: Keine Kurve davon war zu lesen, und es bleibt nach dem ersten Fall zusammengedrückt.",
	"cushion.filler-loose": "Loses Füllmaterial ist Füllung, kein Hauptpolster: Der Gegenstand sinkt unterwegs hindurch.",
	"cushion.filler-insert":
		"Ein Formteil aus einem Ladenkarton ist kein Hauptpolster für einen anderen Gegenstand oder eine zweite Reise: Keine Kurve davon ist bekannt.",
	"cushion.note-points": "Angepasst an Ihre eigenen Punkte; das Band ist das Vorhersageintervall eines weiteren Falls.",
	"cushion.note-two-points": "Angepasst an zwei Punkte, die jeder Satz trifft: Wie gut er gilt, ist nicht bekannt.",
};
