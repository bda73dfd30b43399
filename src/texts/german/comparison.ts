/** Sätze des Vergleichs: was zwei Protokolle nebeneinander sagen. Sie beschreiben Messwerte, nie den Anteil einer Person. */
import type { ReportTexts } from "../report-texts.ts";

export const comparison: ReportTexts["comparison"] = {
	"comparison.tested-at-neither-end": "Es wurde an keinem Ende geprüft.",
	"comparison.not-tested-at-departure": "Es wurde vor dem Versand nicht geprüft, daher gibt es nichts zum Vergleichen.",
	"comparison.not-tested-on-arrival": "Es wurde nach der Ankunft nicht geprüft. Das ist kein Fehler.",
	"comparison.other-instrument":
		"Es wurden zwei verschiedene Messgeräte benutzt. Ein solcher Messwert hängt vom Messgerät ab, daher sind die beiden nicht vergleichbar.",
	"comparison.instrument-unknown":
		"An einem Ende ist das Messgerät nicht festgehalten. Ein solcher Messwert ist nur mit demselben Messgerät vergleichbar.",
	"comparison.other-bench":
		"Die beiden Messwerte stammen von verschiedenen Prüfplätzen. Ein solcher Messwert hängt vom ganzen Aufbau ab, daher sind die beiden nicht vergleichbar.",
	"comparison.bench-unknown":
		"An einem Ende ist der Prüfplatz nicht festgehalten. Ein solcher Messwert ist nur am selben Prüfplatz vergleichbar.",
	"comparison.no-uncertainty-stated":
		"An einem Ende ist die Genauigkeit des Messgeräts nicht festgehalten, daher sind die beiden Messwerte nicht vergleichbar.",
	"comparison.no-exposure":
		"An einem Ende ist nicht festgehalten, wie lange gezählt wurde, daher sind die Raten nicht vergleichbar.",
	"comparison.other-exposure":
		"An den beiden Enden wurde über verschiedene Bezugsgrößen gezählt, daher sind die Raten nicht vergleichbar.",
	"comparison.other-condition":
		"Der Messwert wurde unter einer anderen Bedingung genommen, als diese Prüfung verlangt, und beantwortet sie daher nicht.",
	"comparison.other-unit": "Die beiden Enden hielten es in Einheiten fest, die sich nicht ineinander umrechnen lassen.",
	"comparison.other-definition": "Die beiden Enden hielten unter dieser Nummer verschiedene Prüfungen fest.",
	"comparison.other-driver":
		"Der Prüfplatz ist derselbe, der Treiber aber nicht, daher sind die beiden nicht vergleichbar.",
	"comparison.other-firmware":
		"Der Prüfplatz ist derselbe, die Firmware aber nicht, daher sind die beiden nicht vergleichbar.",
	"comparison.other-ambient":
		"Der Prüfplatz ist derselbe, doch war der Raum an einem Ende wärmer, daher sind die beiden nicht vergleichbar.",
	"comparison.within-margin": "Die Differenz mit ihrer Unsicherheit liegt innerhalb der Spanne von {margin}{unit}.",
	"comparison.equal": "Die beiden Messwerte sind gleich.",
	"comparison.beyond-uncertainty":
		"Die Messwerte liegen {difference}{unit} auseinander, mehr als die Unsicherheit der Differenz, {uncertainty}{unit}.",
	"comparison.within-uncertainty":
		"Die Messwerte liegen {difference}{unit} auseinander, und die Unsicherheit der Differenz ist {uncertainty}{unit}. Das zeigt weder eine Veränderung noch, dass es keine gibt.",
	"comparison.spread-unknown":
		"Die Genauigkeit ist nicht an beiden Enden festgehalten, und Wiederholungen zeigen sie nicht. Ob die Differenz etwas bedeutet, lässt sich nicht sagen.",
	"comparison.rates-differ":
		"{departure} in {departureExposure} {unit} vor dem Versand, {arrival} in {arrivalExposure} {unit} nach der Ankunft. Zufall allein ergäbe kaum zwei so verschiedene Zählungen.",
	"comparison.rates-open":
		"{departure} in {departureExposure} {unit} vor dem Versand, {arrival} in {arrivalExposure} {unit} nach der Ankunft. So kleine Zählungen zeigen nicht, ob sich die Rate geändert hat.",
	"comparison.shares-differ":
		"{departure} von {departureTrials} Versuchen gelangen vor dem Versand, {arrival} von {arrivalTrials} nach der Ankunft. Zufall allein ergäbe kaum zwei so verschiedene Ergebnisse.",
	"comparison.shares-open":
		"{departure} von {departureTrials} Versuchen gelangen vor dem Versand, {arrival} von {arrivalTrials} nach der Ankunft. So wenige Versuche zeigen nicht, ob sich der Anteil geändert hat.",
	"comparison.scores-differ":
		"Die Punktzahlen, {departure} vor dem Versand und {arrival} nach der Ankunft, liegen weiter auseinander als ihre Streuung.",
	"comparison.scores-equivalent": "Die Punktzahlen liegen mit ihrer Streuung innerhalb von {margin} beieinander.",
	"comparison.scores-open":
		"Die Punktzahlen, {departure} vor dem Versand und {arrival} nach der Ankunft, liegen innerhalb ihrer Streuung. Das zeigt weder eine Veränderung noch, dass es keine gibt.",
	"comparison.no-spread":
		"Die Läufe zeigen keine Streuung, an der die Differenz zu messen wäre. Mehr Läufe an jedem Ende täten es.",
	"comparison.adjusted":
		"Für sich allein fiele die Differenz auf, doch wurden {count} Differenzen zugleich geprüft, und unter so vielen ist eine wie diese durch Zufall zu erwarten.",
	"comparison.nothing-found": "An keinem Ende wurde etwas gefunden.",
	"comparison.found-on-arrival": "Nach der Ankunft gefunden und vor dem Versand nicht.",
	"comparison.found-at-departure-only": "Vor dem Versand gefunden und nach der Ankunft nicht.",
	"comparison.found-at-both": "An beiden Enden gefunden.",
	"comparison.note-bursts":
		"Der Test nimmt die Ereignisse als unabhängig. Wenn Fehler in Schüben kommen, zählen Sie jeden Schub einmal.",
	"comparison.note-resolution-only":
		"Von einem Messgerät ist nur der kleinste Schritt bekannt, nicht die Genauigkeit. Die Unsicherheit ist dann zu klein.",
	"comparison.note-bursts-counted": "Ereignisse, die zusammen kamen, wurden als ein Schub gezählt.",
	"comparison.note-few-runs":
		"Weniger als vier Läufe an einem Ende: Wie weit Läufe streuen, ist kaum bekannt, und nur große Differenzen können sich zeigen.",
	"comparison.note-control":
		"Das beruht darauf, dass das Kontrollstück selbst zwischen den beiden Prüfplätzen unverändert blieb.",
	"comparison.ratio-within":
		"Das Verhältnis, mit seiner Unsicherheit {low} bis {high}, liegt innerhalb von {percent} % um eins.",
	"comparison.ratio-differs":
		"Das Verhältnis ist {ratio}, und mit seiner Unsicherheit, {low} bis {high}, enthält es die Eins nicht.",
	"comparison.ratio-undecided":
		"Das Verhältnis ist {ratio}, mit seiner Unsicherheit {low} bis {high}. Das zeigt weder eine Veränderung noch, dass es keine gibt.",
	"comparison.ratio-open": "Ein Wert ist von null nicht zu unterscheiden, daher hat das Verhältnis keine Grenzen.",
	"comparison.control-not-for-counts":
		"Die beiden Messwerte stammen von verschiedenen Prüfplätzen, und ein Kontrollstück macht Zählungen oder Starts nicht vergleichbar.",
	"comparison.control-not-measured":
		"Die beiden Messwerte stammen von verschiedenen Prüfplätzen, und das Kontrollstück wurde nicht an beiden gemessen.",
	"comparison.control-other-bench":
		"Das Kontrollstück wurde an einem anderen Prüfplatz gemessen als der Gegenstand, daher verbindet es die beiden nicht.",
	"comparison.control-no-spread":
		"Das Kontrollstück wurde gemessen, doch zeigen die Läufe keine Streuung, an der die Differenz zu messen wäre. Mehr Läufe an jedem Prüfplatz täten es.",
	"comparison.control-within":
		"Am Kontrollstück gemessen ist das Verhältnis {low} bis {high} und liegt innerhalb von {percent} % um eins.",
	"comparison.control-differs":
		"Am Kontrollstück gemessen, das zeigt, um wie viel sich die Prüfplätze unterscheiden, ist das Verhältnis {ratio}, mit seiner Streuung {low} bis {high}.",
	"comparison.control-undecided":
		"Am Kontrollstück gemessen ist das Verhältnis {ratio}, mit seiner Streuung {low} bis {high}. Das zeigt weder eine Veränderung noch, dass es keine gibt.",
	"comparison.counter-rose": "Der Zähler stand vor dem Versand bei {departure} und nach der Ankunft bei {arrival}.",
	"comparison.counter-same": "Der Zähler stand an beiden Enden bei {arrival}.",
	"comparison.counter-fell":
		"Der Zähler stand vor dem Versand bei {departure} und nach der Ankunft bei {arrival}. Ein solcher Zähler fällt nie: Er wurde zurückgesetzt, ein Teil wurde getauscht, oder dies ist ein anderer Gegenstand.",
	"comparison.counter-full":
		"Der Zähler steht dort, wo er nicht mehr weiterzählt, daher ist ein Schritt nicht zu sehen.",
	"comparison.outcome-compared": "Die beiden Protokolle wurden Prüfung für Prüfung verglichen.",
	"comparison.outcome-identity-mismatch":
		"Merkmale, die Gegenstände unterscheiden, weichen voneinander ab; die beiden Protokolle nennen also verschiedene Gegenstände. Solange das so steht, vergleicht das Folgende zwei Gegenstände.",
	"comparison.outcome-no-departure":
		"Es gibt kein Protokoll aus der Zeit vor dem Versand, daher kann nichts verglichen werden.",
	"comparison.outcome-not-tested":
		"Nach der Ankunft wurde nichts geprüft. Das ist kein Fehler; wie der Gegenstand arbeitet, ist noch nicht bekannt.",
	"comparison.outcome-no-arrival": "Es gibt noch kein Protokoll der Ankunft.",
	"comparison.outcome-work-before":
		"Am Gegenstand wurde gearbeitet, bevor er nach der Ankunft zum ersten Mal geprüft wurde; dieses Protokoll zeigt daher nicht den Zustand, in dem er ankam.",
	"comparison.outcome-state-conflict":
		"Nach der Ankunft war etwas gut, das vor dem Versand nicht gut war. Die beiden Protokolle passen nicht zusammen, daher lohnt es, beide noch einmal anzusehen.",
	"comparison.outcome-moisture-hold":
		"Es wurde Feuchtigkeit gesehen. Schalten Sie den Gegenstand nicht ein; er muss zuerst trocknen. Prüfungen vorher sagen wenig.",
};
