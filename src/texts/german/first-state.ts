/** Was die erste Prüfung nach der Ablieferung ausschließt und was nicht; wie Fehlendes noch zu bekommen ist. */
import type { ReportTexts } from "../report-texts.ts";

export const firstState: ReportTexts["firstState"] = {
	"first-state.same-item-yes":
		"Mindestens drei Merkmale stimmen überein, mehr als eines davon haben Gegenstände eines Modells nicht gemeinsam: Es ist der Gegenstand, der abging.",
	"first-state.same-item-no":
		"Zu wenige Merkmale stimmen überein, um einen anderen Gegenstand auszuschließen: Dazu braucht es die Seriennummer oder Gerätekennung, ein weiteres Merkmal, das Gegenstände eines Modells nicht gemeinsam haben, und ein drittes.",
	"first-state.same-item-how": "Fotografieren Sie die Seriennummer und die Merkmale, die das Abgangsprotokoll nennt.",
	"first-state.untouched-yes": "Vor der Prüfung wurde nichts repariert, neu aufgespielt, gereinigt oder zerlegt.",
	"first-state.untouched-no": "Es ist nicht festgehalten, dass vor der Prüfung nichts daran gemacht wurde.",
	"first-state.first-attempt-yes": "Das erste Einschalten seit der Ablieferung ist festgehalten.",
	"first-state.first-attempt-no": "Frühere Versuche, ihn einzuschalten, sind nicht ausgeschlossen.",
	"first-state.soon-yes": "Er wurde innerhalb von 48 Stunden geprüft, nachdem er in Händen war.",
	"first-state.soon-no":
		"Er wurde später als 48 Stunden geprüft, nachdem er in Händen war, oder die Zeiten sind nicht festgehalten.",
	"first-state.dry-yes": "Er hatte Zeit, sich zu erwärmen, und es wurde keine Feuchtigkeit gesehen.",
	"first-state.dry-no":
		"Feuchtigkeit beim ersten Einschalten ist nicht ausgeschlossen: Sie wurde gesehen, es wurde nicht nach ihr gesucht, oder die Wartezeit ist nicht festgehalten.",
	"first-state.bench-good-yes":
		"Ein anderes, bekannt gutes Stück funktionierte dort vorher und nachher: Netzteil, Kabel und Bildschirm sind in Ordnung.",
	"first-state.bench-good-no":
		"Ein Fehler des Netzteils, der Kabel, des Steckplatzes oder des Bildschirms dort ist nicht ausgeschlossen.",
	"first-state.bench-good-how":
		"Probieren Sie am selben Platz ein anderes, bekannt gutes Stück, eingesteckt bei ausgeschaltetem Strom, und schreiben Sie es auf.",
	"first-state.other-computer-yes": "Er wurde in zwei Computern erprobt.",
	"first-state.other-computer-no":
		"Er wurde in einem Computer erprobt: Dass die beiden nicht zueinander passen, ist nicht ausgeschlossen.",
	"first-state.other-computer-how":
		"Wenn kein Stoppzeichen gesehen wurde, probieren Sie ihn in einem zweiten Computer anderer Bauart. Der von Bekannten genügt.",
	"first-state.set-up-recorded-yes": "Computer, Steckplatz, Netzteil und Treiber sind festgehalten.",
	"first-state.set-up-recorded-no": "Worin er erprobt wurde, ist nicht vollständig festgehalten.",
	"first-state.set-up-recorded-how": "Schreiben Sie Computer, Steckplatz, Netzteil und Treiber auf.",
	"first-state.filmed-yes": "Das Auspacken wurde gefilmt.",
	"first-state.filmed-no":
		"Das Auspacken wurde nicht gefilmt. Was vor dem ersten Foto geschah, beruht auf dem, was Personen sagen.",
	"first-state.tested-no": "Er wurde nicht eingeschaltet. Wie er arbeitet, ist nicht bekannt.",
	"first-state.tested-how":
		"Prüfen Sie ihn, wenn er trocken ist und heil aussieht, oder einigen Sie sich auf einen neutralen Prüfplatz: Senden Sie ihn im geschlossenen Beutel dorthin.",
	"first-state.none":
		"Es gibt noch keinen Erstzustand: Was gesehen wurde, steht fest, wie er arbeitet, ist nicht bekannt.",
	"first-state.void-item":
		"Die beiden Protokolle nennen verschiedene Gegenstände, daher ist dies kein Erstzustand des Gegenstands, der abging.",
	"first-state.void-work": "Vor der Prüfung wurde daran gearbeitet, daher zeigt dies nicht den Zustand, in dem er kam.",
	"first-state.weak-bench": "Er funktionierte dort nicht, und dass der Prüfplatz dort gut war, ist nicht gezeigt.",
	"first-state.weak-computer": "Er funktionierte in diesem einen Computer nicht.",
	"first-state.weak-marks":
		"Es wurden zu wenige Merkmale verglichen, um sicher zu sein, dass es derselbe Gegenstand ist.",
	"first-state.fair": "Ein brauchbarer Erstzustand: Zeit, Film, erster Versuch oder Aufbau ist nicht festgehalten.",
	"first-state.full": "Ein vollständiger Erstzustand.",
	"first-state.grade-full": "vollständig",
	"first-state.grade-fair": "brauchbar",
	"first-state.grade-weak": "schwach",
	"first-state.grade-void": "hinfällig",
	"first-state.grade-none": "noch keiner",
};
