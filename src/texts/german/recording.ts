/** Aufzeichnungen unterwegs: was ein mitgereister Stoßschreiber notierte, und wie wenig oder viel davon etwas sagt. */
import type { ReportTexts } from "../report-texts.ts";

export const recording: ReportTexts["recording"] = {
	"recording.peak-on-inner-box":
		"Der Stoßschreiber saß am Innenkarton. Zwischen ihm und dem Gegenstand liegt ein Polster: Sein Spitzenwert ist nicht der des Gegenstands.",
	"recording.peak-on-outer-box":
		"Der Stoßschreiber saß am Außenkarton. Das Polster liegt zwischen Karton und Gegenstand: Der Spitzenwert am Karton sagt nichts über den des Gegenstands.",
	"recording.peak-in-cushion":
		"Der Stoßschreiber saß im Polster, wo er sich weder mit dem Karton noch mit dem Gegenstand bewegt: Sein Spitzenwert ist nicht der des Gegenstands.",
	"recording.peak-not-known":
		"Es ist nicht bekannt, wo der Stoßschreiber saß, daher wird sein Spitzenwert nicht gegen die Grenze des Gegenstands gehalten.",
	"recording.peak-phone":
		"Ein Telefon hat es aufgezeichnet. Sein Sensor filtert und endet bei einem Bereich, den niemand angibt, daher werden seine Spitzenwerte nicht genommen.",
	"recording.no-pack":
		"Für diese Teilstrecke wurde keine Verpackung versiegelt, daher gibt es keine Grenze, gegen die es zu halten wäre.",
	"recording.no-height": "Die versiegelte Verpackung gab keine Höhe an, bis zu der sie schützt.",
	"recording.peak-above":
		"Am Gegenstand wurden {peakGn} gₙ aufgezeichnet; die Verpackung wurde mit einer Grenze von {limitGn} gₙ bewertet. Ob der Gegenstand noch funktioniert, sagen seine Prüfungen.",
	"recording.peak-open":
		"Mindestens {peakGn} gₙ am Gegenstand, unter der Grenze von {limitGn} gₙ; der wahre Spitzenwert kann höher sein, daher ist es nicht entschieden.",
	"recording.peak-below":
		"{peakGn} gₙ am Gegenstand, innerhalb der Grenze von {limitGn} gₙ, mit der die Verpackung bewertet wurde.",
	"recording.drop-in-cushion":
		"Im Polster ist die Geschwindigkeitsänderung weder die des Kartons noch die des Gegenstands.",
	"recording.drop-not-known": "Es ist nicht bekannt, wo der Stoßschreiber saß, und es wurde kein freier Fall gesehen.",
	"recording.drop-phone":
		"Ein Telefon hat es aufgezeichnet, und es wurde kein freier Fall gesehen: Seine Geschwindigkeitsänderung wird nicht genommen.",
	"recording.drop-slow":
		"Die Abtastung war für diesen Aufschlag zu langsam, und es wurde kein freier Fall gesehen: Seine Geschwindigkeitsänderung wird nicht genommen.",
	"recording.fall-above":
		"Es fiel so lange frei, wie ein Fall aus {lowM} bis {highM} m dauert; die Verpackung schützt bis {protectedM} m.",
	"recording.fall-below":
		"Es fiel so lange frei, wie ein Fall aus {lowM} bis {highM} m dauert, innerhalb der {protectedM} m, bis zu denen die Verpackung schützt.",
	"recording.fall-open":
		"Es fiel so lange frei, wie ein Fall aus {lowM} bis {highM} m dauert; die {protectedM} m, bis zu denen die Verpackung schützt, liegen dazwischen.",
	"recording.equivalent-above":
		"Die Geschwindigkeitsänderung gleicht einem Fall aus {lowM} m bei vollem Rückprall bis {highM} m ohne, mehr als die {protectedM} m, bis zu denen die Verpackung schützt. Es wurde kein freier Fall gesehen: Ein Tritt oder Wurf bewirkt dasselbe.",
	"recording.equivalent-below":
		"Die Geschwindigkeitsänderung gleicht einem Fall aus {lowM} m bei vollem Rückprall bis {highM} m ohne, innerhalb der {protectedM} m, bis zu denen die Verpackung schützt.",
	"recording.equivalent-open":
		"Die Geschwindigkeitsänderung gleicht einem Fall aus {lowM} m bei vollem Rückprall bis {highM} m ohne, und was aufgezeichnet wurde, kann eine Untergrenze sein; gegen die {protectedM} m, bis zu denen die Verpackung schützt, ist es nicht entschieden.",
	"recording.place-no-clock":
		"Die Datei zählt nur ihre Zeit, und niemand hat gesagt, wann ihre erste Zeile aufgezeichnet wurde.",
	"recording.place-clock-not-known": "Niemand hat gesagt, wie weit die Uhr des Stoßschreibers falsch gehen kann.",
	"recording.place-no-line": "Der Auftrag hat noch keine zwei Protokolle, zwischen denen es liegen könnte.",
	"recording.place-in-span": "Es liegt in diesem Abschnitt, was immer der Fehler der Uhr sei.",
	"recording.place-in-one-of": "Nach dem Fehler der Uhr liegt es in einem dieser Abschnitte.",
	"recording.place-in-or-outside":
		"Nach dem Fehler der Uhr liegt es in diesem Abschnitt oder vor oder nach allem, was festgehalten ist.",
	"recording.place-outside": "Es liegt vor oder nach allen Abschnitten zwischen den Protokollen.",
	"recording.says-on-item":
		"Am Gegenstand: Spitzenwerte sind die des Gegenstands selbst und lassen sich gegen seine Grenze halten.",
	"recording.says-on-inner-box":
		"Am Innenkarton: Fälle lassen sich gegen die Verpackung halten; Spitzenwerte sind nicht die des Gegenstands.",
	"recording.says-on-outer-box":
		"Am Außenkarton: Fälle lassen sich gegen die Verpackung halten; über den Spitzenwert des Gegenstands sagt es nichts, da das Polster dazwischen liegt.",
	"recording.says-in-cushion":
		"Im Polster: Nur die Zeit eines freien Falls sagt etwas; Spitzenwerte gehören weder zum Karton noch zum Gegenstand.",
	"recording.says-not-known": "Niemand weiß, wo er saß: Nur die Zeit eines freien Falls sagt etwas.",
	"recording.note-phone":
		"Ein Telefon kann die Zeit eines Falls nehmen. Seine Spitzenwerte werden nicht genommen: Sein Sensor filtert und begrenzt, wie niemand angibt.",
	"recording.note-axes":
		"{axes} von drei Achsen: Ein Stoß von einer anderen Seite zeigt nur seinen Anteil, Spitzenwerte sind daher Untergrenzen.",
	"recording.note-rates":
		"Der Stoßschreiber zeichnet langsam auf und tastet um Aufschläge herum schnell ab. Ein Aufschlag, der nur langsam aufgezeichnet wurde, hat keinen gültigen Spitzenwert und keine gültige Geschwindigkeitsänderung, und ein Schlag zwischen zwei langsamen Abtastungen steht in gar keiner Zeile.",
	"recording.note-no-full-scale":
		"Der Messbereichsendwert des Stoßschreibers ist nicht bekannt, daher ist nicht bekannt, ob ein Spitzenwert abgeschnitten wurde.",
	"recording.note-gaps":
		"{gaps} Zeitabschnitte haben keine Abtastungen. Was in ihnen geschah, steht nicht in dieser Datei.",
	"recording.note-kept": "{found} Aufschläge erreichten die Schwelle; die {kept} größten sind aufbewahrt.",
	"recording.note-cut": "Zeile {line} hat kein Ende und wurde weggelassen; was folgt, fehlt.",
	"recording.supports":
		"Ein aufgezeichneter Aufschlag sagt, dass der Stoßschreiber nach seiner Uhr dort, wo er saß, einem Stoß dieser Größe begegnete. Er sagt nicht, dass sich der Gegenstand dort veränderte: Das sagen die Protokolle davor und danach. Eine Datei ohne Aufschläge sagt dasselbe von ihrem Ort und ihrer Zeit, und nicht mehr.",
	"recording.place": "Wo der Stoßschreiber saß",
	"recording.where-on-item": "am Gegenstand",
	"recording.where-on-inner-box": "am Innenkarton",
	"recording.where-on-outer-box": "am Außenkarton",
	"recording.where-in-cushion": "im Polster",
	"recording.where-not-known": "nicht bekannt",
	"recording.device": "Was es aufzeichnete",
	"recording.device-recorder": "ein Stoßschreiber",
	"recording.device-phone":
		"ein Telefon: Es kann die Zeit eines Falls nehmen, seine Spitzenwerte werden nicht genommen",
	"recording.temperature": "Temperatur",
	"recording.humidity": "Feuchte, %",
	"recording.clock": "Die Uhr kann falsch gehen um",
	"recording.full-scale": "Messbereichsendwert",
	"recording.rates": "{slowest} bis {fastest}",
	"recording.trip": "Die Reise über der Zeit",
	"recording.trip-caption":
		"Kleinste und größte Beschleunigung jedes Abschnitts, dahinter die Abschnitte der Obhutskette, Aufschläge mit Nummer.",
	"recording.trip-caption-no-clock":
		"Kleinste und größte Beschleunigung jedes Abschnitts, Aufschläge mit Nummer. Ohne Uhr oder ohne Protokolle steht kein Abschnitt der Obhutskette dahinter.",
	"recording.trip-description":
		"{events} Aufschläge, der größte mit {greatestGn} gₙ; jeder steht in der Tabelle unten.",
	"recording.axis-hours": "Stunden nach Beginn der Aufzeichnung",
	"recording.axis-minutes": "Minuten nach Beginn der Aufzeichnung",
	"recording.axis-seconds": "Sekunden nach Beginn der Aufzeichnung",
	"recording.axis-gn": "gₙ",
	"recording.axis-ms": "ms von der Spitze",
	"recording.axis-hz": "Frequenz, Hz",
	"recording.axis-response": "größte Antwort, gₙ",
	"recording.band-stay": "bei {holder}",
	"recording.band-transit": "unterwegs",
	"recording.band-nobody": "abgeliefert, nicht in Händen",
	"recording.band-unrecorded": "nicht festgehalten",
	"recording.temperature-over-time": "Temperatur",
	"recording.humidity-over-time": "Feuchte",
	"recording.temperature-ends": "Temperatur zwischen {least} und {greatest} °C.",
	"recording.humidity-ends": "Feuchte zwischen {least} und {greatest} %.",
	"recording.events": "Aufschläge in Zahlen",
	"recording.no-events":
		"Kein Aufschlag erreichte die Schwelle. Das sagt nichts darüber, was die Schwelle oder die Abtastung nicht erfasste.",
	"recording.number": "Nr.",
	"recording.when": "Wann",
	"recording.where": "Abschnitt",
	"recording.peak": "Spitze",
	"recording.duration": "Dauer",
	"recording.velocity-change": "Δv",
	"recording.drop": "Gleicher Fall",
	"recording.not-taken": "nicht genommen",
	"recording.after": "nach {time}",
	"recording.at": "{day}, {clock} (UTC)",
	"recording.lasting-hours": "{value} h",
	"recording.lasting-minutes": "{value} min",
	"recording.lasting-seconds": "{value} s",
	"recording.cannot-be-placed": "nicht zuzuordnen",
	"recording.outside": "außerhalb dessen, was festgehalten ist",
	"recording.or": "oder",
	"recording.span-stay": "ein Aufenthalt",
	"recording.span-transit": "unterwegs",
	"recording.span-nobody": "abgeliefert, nicht in Händen",
	"recording.span-unrecorded": "ein Abschnitt ohne Protokolle",
	"recording.peak-holds": "Die Abtastung war schnell genug dafür: {samples} Abtastungen im Stoß.",
	"recording.doubt-few-samples":
		"Eine Untergrenze: {samples} Abtastungen im Stoß sind zu wenige, fünf sind das Mindeste.",
	"recording.doubt-slow-sampling":
		"Eine Untergrenze: {rate} Abtastungen je Sekunde können die Spitze eines harten Aufschlags nicht sehen, wie viele auch im Stoß liegen.",
	"recording.event-rate": "Abgetastet {rate}-mal je Sekunde.",
	"recording.doubt-clipped": "Eine Untergrenze: Der Stoßschreiber war an seinem Messbereichsendwert.",
	"recording.doubt-phone": "Nicht genommen: Ein Telefon hat es aufgezeichnet.",
	"recording.doubt-one-axis": "Eine Untergrenze: Nicht alle drei Achsen wurden aufgezeichnet.",
	"recording.doubt-cut-trace": "Eine Untergrenze: Abtastungen davon fehlen.",
	"recording.by-rebound":
		"nach der Geschwindigkeitsänderung, von vollem Rückprall bis zu keinem; ein Tritt oder Wurf bewirkt dasselbe",
	"recording.by-fall": "nach der Zeit im freien Fall, zwei Abtastungen mehr oder weniger",
	"recording.trace-title": "Verlauf von Aufschlag {number}",
	"recording.trace-description":
		"Resultierende Beschleunigung um eine Spitze von {peakGn} gₙ, die {durationMs} ms dauert.",
	"recording.spectrum-title": "Antwortspektrum von Aufschlag {number}",
	"recording.spectrum-text": "Die größte Antwort eines Schwingers jeder Frequenz, Überhöhung 10 in Resonanz.",
	"recording.spectrum-description": "Die größte Antwort ist {greatestGn} gₙ bei {frequencyHz} Hz.",
	"recording.board-limit": "nach der Regel für Platinen zulässig",
	"recording.board-frequency": "die Platine",
	"recording.board-no-frequency":
		"Die Eigenfrequenz der Platine ist nicht bekannt: Wo ihre Regel das Spektrum trifft, ist auch nicht bekannt.",
	"recording.board-beyond":
		"Die Eigenfrequenz der Platine von {frequencyHz} Hz liegt außerhalb dessen, was diese Abtastung trägt.",
	"recording.board-not-taken":
		"Die Antwort bei der Eigenfrequenz der Platine, {frequencyHz} Hz, wird nicht genommen: Der Aufschlag ist dafür nicht dicht genug abgetastet.",
	"recording.board-above":
		"Bei der Eigenfrequenz der Platine, {frequencyHz} Hz, ist die Antwort {responseGn} gₙ; die Regel für Platinen lässt {limitGn} gₙ zu. Die Regel ist eine grobe Prüfung, keine Grenze des Brechens.",
	"recording.board-open":
		"Bei der Eigenfrequenz der Platine, {frequencyHz} Hz, ist die Antwort mindestens {responseGn} gₙ; die Regel für Platinen lässt {limitGn} gₙ zu. Es ist nicht entschieden.",
	"recording.board-below":
		"Bei der Eigenfrequenz der Platine, {frequencyHz} Hz, ist die Antwort {responseGn} gₙ, innerhalb der {limitGn} gₙ, die die Regel für Platinen zulässt. Die Regel ist eine grobe Prüfung.",
};
