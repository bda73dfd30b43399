/** Beide Enden einer Reise nebeneinander. Es sagt, was sicher ist und was nicht, und nie, warum. */
import type { ReportTexts } from "../report-texts.ts";

export const comparisonPage: ReportTexts["comparisonPage"] = {
	"comparison-page.lead.compared":
		"Beide Enden dieser Reise sind festgehalten. Hier steht, was sie zeigen, zuerst was sicher ist, dann was nicht.",
	"comparison-page.lead.reported":
		"Hier steht, was von beiden Enden dieser Reise vorliegt, zuerst was sicher ist, dann was nicht.",
	"comparison-page.reported-by.departure":
		"Zustand beim Abgang: berichtet von {party}, nicht vom Besitzer selbst festgehalten.",
	"comparison-page.reported-by.arrival":
		"Zustand nach der Ankunft: berichtet von {party}, nicht vom Besitzer selbst festgehalten.",
	"comparison-page.reported-by.bench":
		"Zustand am Prüfplatz: berichtet von {party}, nicht vom Besitzer selbst festgehalten.",
	"comparison-page.lead.identity-mismatch":
		"Die beiden Protokolle nennen nicht dieselbe Platine. Solange das offen ist, kann nichts anderes verglichen werden.",
	"comparison-page.lead.no-first-state":
		"Ein Ende dieser Reise nennt keinen Erstzustand, daher ist das meiste nicht vergleichbar. Was festgehalten wurde, bleibt festgehalten.",
	"comparison-page.lead.state-conflict":
		"Nach der Ankunft ist etwas besser als beim Abgang. Das geschieht nicht von selbst, daher ist eines der beiden Protokolle noch einmal anzusehen.",
	"comparison-page.lead.moisture-hold":
		"Es wurde Feuchtigkeit gesehen. Die Platine bleibt ohne Strom, bis das geklärt ist, und die Prüfungen warten.",
	"comparison-page.next.keep": "Lassen Sie die Platine, die Verpackung und alle Fotos, wie sie sind.",
	"comparison-page.next.own-record":
		"Ein Ende ist nur berichtet. Wer die Platine damals hatte, kann noch selbst festhalten, was zu sehen war, solange es in Erinnerung ist.",
	"comparison-page.next.settled": "Beide Seiten haben sich geeinigt. Bewahren Sie Ihre Quittungen auf.",
	"comparison-page.next.conflict":
		"Beide Seiten wiederholen die Prüfung, die besser ausfiel, mit einem anderen Kabel und zählen zehn Starts. Ein Protokoll wird durch ein neues berichtigt, das es nennt, nie überschrieben.",
	"comparison-page.next.stop":
		"Ein Stoppzeichen ist festgehalten: Schalten Sie die Platine nicht wieder ein, bevor beide Seiten dem zustimmen.",
	"comparison-page.next.moisture":
		"Lassen Sie die Platine ohne Strom. Fotografieren Sie, was nass ist, bevor es trocknet, und sprechen Sie dann miteinander.",
	"comparison-page.next.identity": "Beide Seiten sehen sich Seriennummer und Merkmale noch einmal an, mit Fotos.",
	"comparison-page.next.second-platform":
		"Sie wurde in einem Computer erprobt. Ein Versuch in einem zweiten, von anderer Bauart, würde jetzt am meisten sagen, außer es gab ein Stoppzeichen.",
	"comparison-page.next.control":
		"Probieren Sie ein anderes, bekannt gutes Teil am selben Platz mit denselben Kabeln: Es zeigt, ob der Computer in Ordnung ist.",
	"comparison-page.next.untested":
		"Einige Prüfungen wurden beim Abgang gemacht und nach der Ankunft nicht. Am einfachsten holen Sie jetzt die nach, die kein Messgerät brauchen.",
	"comparison-page.next.same-instrument":
		"Einige Werte sind nur mit demselben Messgerät oder Prüfplatz vergleichbar. Dafür muss die Platine zurück an den Prüfplatz, an dem sie geprüft wurde.",
	"comparison-page.next.carrier":
		"Wenn das Paket oder die Platine beschädigt ist, zeigen Sie es dem Frachtführer bald und schriftlich an. Die Frist dafür kann kurz sein.",
	"comparison-page.next.all-well":
		"Beide Enden stimmen überein, soweit sie geprüft wurden. Bewahren Sie Ihre Quittungen auf.",
	"comparison-page.next.talk": "Beide Seiten lesen diese Seite zusammen; sie ist für beide gleich.",
	"comparison-page.checks-apart":
		"Die Messwerte beider Protokolle stehen nebeneinander, damit nichts Festgehaltenes verborgen bleibt. Was sich geändert hat, lässt sich daraus nicht sagen, aus dem oben genannten Grund.",
	"comparison-page.column.check": "Prüfung",
	"comparison-page.column.departure": "Beim Abgang",
	"comparison-page.column.arrival": "Nach der Ankunft",
	"comparison-page.column.verdict": "Verglichen",
	"comparison-page.verdict.differs": "verändert",
	"comparison-page.verdict.equivalent": "gleich",
	"comparison-page.verdict.inconclusive": "offen",
	"comparison-page.verdict.not-comparable": "nicht vergleichbar",
	"comparison-page.verdict.not-tested": "nicht geprüft",
	"comparison-page.verdict.not-assessed": "nicht bewertet",
	"comparison-page.direction.worse": "zum Schlechteren",
	"comparison-page.direction.better": "zum Besseren",
	"comparison-page.direction.sideways": "weder besser noch schlechter",
	"comparison-page.not-recorded": "nicht festgehalten",
	"comparison-page.untested.both": "An keinem Ende geprüft",
	"comparison-page.untested.departure": "Beim Abgang nicht geprüft, nur nach der Ankunft",
	"comparison-page.untested.arrival": "Nach der Ankunft nicht geprüft, nur beim Abgang",
	"comparison-page.untested-kind.looked": "Angesehen",
	"comparison-page.untested-kind.starts": "Starts und Versuche",
	"comparison-page.untested-kind.resistance": "Widerstände",
	"comparison-page.untested-kind.voltage": "Spannungen",
	"comparison-page.untested-kind.values": "Andere Werte",
	"comparison-page.untested-kind.counted": "Gezählt",
	"comparison-page.untested-none": "Nichts fehlt.",
	"comparison-page.certain.differs": "{check}: verändert, {direction}.",
	"comparison-page.certain.bad-arrival": "{check}: nach der Ankunft außerhalb der Grenzen; beim Abgang {before}.",
	"comparison-page.certain.point-arrival": "„{check}“: nach der Ankunft nicht, wie es sein soll; beim Abgang {before}.",
	"comparison-page.certain.point-both": "„{check}“: an beiden Enden nicht, wie es sein soll.",
	"comparison-page.certain.point-departure": "„{check}“: beim Abgang nicht, wie es sein soll.",
	"comparison-page.certain.bad-both": "{check}: an beiden Enden außerhalb der Grenzen.",
	"comparison-page.certain.apart":
		"Jedes Ende wird für sich an den Grenzen gemessen; nur die Größe eines Unterschieds braucht an beiden dieselben Mittel.",
	"comparison-page.certain.bad-departure": "{check}: beim Abgang außerhalb der Grenzen.",
	"comparison-page.certain.same": "An beiden Enden gleich: {checks}.",
	"comparison-page.certain.good-both": "An beiden Enden innerhalb der Grenzen, soweit geprüft: {checks}.",
	"comparison-page.certain.same-board": "Die Seriennummer ist an beiden Enden dieselbe.",
	"comparison-page.certain.states":
		"Was die Protokolle im Ganzen sagen: „{left}“ beim Abgang, „{arrived}“ nach der Ankunft.",
	"comparison-page.certain.as-reported": "Das Protokoll dessen, was berichtet wurde, sagt: {words}",
	"comparison-page.certain.state-left": "Das Protokoll vom Abgang sagt „{state}“.",
	"comparison-page.certain.state-left-reported":
		"Das Protokoll dessen, was berichtet wurde, sagt „{state}“ beim Abgang.",
	"comparison-page.certain.state-arrived": "Das Protokoll von der Ankunft sagt „{state}“.",
	"comparison-page.certain.state-arrived-reported":
		"Das Protokoll dessen, was berichtet wurde, sagt „{state}“ nach der Ankunft.",
	"comparison-page.certain.stop": "Nach der Ankunft wurde ein Stoppzeichen vermerkt: {signs}.",
	"comparison-page.certain.stop-point":
		"Bei {checks} war der Befund nach der Ankunft nicht, wie er sein soll. Das gilt als Stoppzeichen.",
	"comparison-page.certain.wet": "Nach der Ankunft wurde Nässe vermerkt.",
	"comparison-page.certain.parcel-damage": "Nach der Ankunft wurde ein Schaden am Äußeren des Pakets vermerkt.",
	"comparison-page.before-point.proven-good": "wie es sein soll",
	"comparison-page.before-point.held-as-tested": "wie es sein soll, soweit geprüft",
	"comparison-page.before-point.inconclusive": "nicht eindeutig",
	"comparison-page.before-point.none": "nicht geprüft",
	"comparison-page.before.proven-good": "innerhalb",
	"comparison-page.before.held-as-tested": "innerhalb, soweit geprüft",
	"comparison-page.before.inconclusive": "nicht eindeutig",
	"comparison-page.before.none": "nicht gegen eine Grenze geprüft",
	"comparison-page.uncertain.times":
		"Die angegebenen Zeiten widersprechen einander: Etwas wurde gesehen, bevor es da gewesen sein kann. Eine davon stimmt nicht; welche, geht aus nichts hervor.",
	"comparison-page.uncertain.better": "Nach der Ankunft besser als beim Abgang: {checks}.",
	"comparison-page.uncertain.tested-once": "Nur an einem Ende geprüft: {checks}.",
	"comparison-page.uncertain.untested": "An keinem Ende geprüft: {count} Prüfungen. Sie sind weiter unten aufgeführt.",
	"comparison-page.uncertain.row": "{check}: {why}",
	"comparison-page.adjusted-for":
		"{count} Differenzen von Messwerten und Punktzahlen wurden zugleich geprüft. Jede muss unter allen herausragen, um Veränderung genannt zu werden.",
	"comparison-page.first-state.excluded": "Was sie ausschließt",
	"comparison-page.first-state.not-excluded": "Was sie nicht ausschließt",
	"comparison-page.first-state.grade": "Als Erstzustand: {grade}. {why}",
	"comparison-page.origin-text":
		"Jede Zeile nennt etwas, das hinter einer Veränderung stehen kann, und die Befunde, die es besser oder schlechter erklärt als die anderen. Befunde, die von ein und derselben Tatsache erzählen, zählen zusammen einmal.",
	"comparison-page.origin.origin": "Kann dahinterstehen",
	"comparison-page.origin.for": "Passt besser",
	"comparison-page.origin.against": "Passt schlechter",
	"comparison-page.origin.support": "Zusammen",
	"comparison-page.origin.open": "Nichts bisher Gefundenes betrifft: {origins}.",
	"comparison-page.origin.turns": "Ohne diesen Befund stünde eine andere Zeile zuerst: {finding}",
	"comparison-page.missing.departure": "Beim Abgang",
	"comparison-page.missing.transit": "Unterwegs",
	"comparison-page.missing.arrival": "Nach der Ankunft",
	"comparison-page.tests": "Prüfungen, die als nächste am meisten sagen würden",
	"comparison-page.disclaimer":
		"Diese Seite vergleicht, was zwei Personen festgehalten haben. Sie bewertet Messwerte, nicht Menschen. Ob jemand etwas schuldet, wird hier nicht entschieden. Allgemeine Auskunft, keine Rechtsberatung.",
	"comparison-page.record.departure": "Abgangsprotokoll vom {time}",
	"comparison-page.record.arrival": "Ankunftsprotokoll vom {time}",
	"comparison-page.record.bench": "Prüfplatzprotokoll vom {time}",
	"comparison-page.change.lost": "{check}: gut laut „{after}“, nicht gut laut „{before}“. Dazwischen: {spans}.",
	"comparison-page.change.mended": "{check}: nicht gut laut „{after}“, gut laut „{before}“. Dazwischen: {spans}.",
	"comparison-page.change.conflict":
		"{check}: nicht gut laut „{after}“, gut laut „{before}“. Dazwischen war es unterwegs, daher ist eines der beiden noch einmal anzusehen.",
	"comparison-page.change.first-seen":
		"{check}: nicht gut laut „{before}“, dem ersten, das es prüfte. Niemand hat festgehalten, wie es vorher war.",
	"comparison-page.change.widened": "Ein Protokoll dazwischen hat es nicht entschieden, daher ist die Stelle weit.",
	"comparison-page.span.stay": "bei {holder}",
	"comparison-page.span.transit": "unterwegs",
	"comparison-page.span.nobody": "abgeliefert, noch in niemandes Händen",
	"comparison-page.span.unrecorded": "ein Wechsel der Hände, dessen Zeit niemand festgehalten hat",
	"comparison-page.imported": "aus einer Datei gelesen",
	"comparison-page.reported-reading": "wie berichtet",
};
