/** Sätze dazu, woher ein Fehler kommen kann. Sie sprechen von Befunden unter einer Herkunft, nie von deren Wahrscheinlichkeit, und nie vom Anteil einer Person. */
import type { ReportTexts } from "../report-texts.ts";

export const origin: ReportTexts["origin"] = {
	"origin.missed-before-dispatch": "Es war vor dem Versand da und wurde nicht gesehen",
	"origin.transit-shock": "Ein Stoß unterwegs",
	"origin.transit-vibration": "Schwingungen unterwegs",
	"origin.unseated": "Etwas hat seinen Platz verlassen",
	"origin.moisture": "Feuchtigkeit",
	"origin.receiver-handling": "Auspacken, Umgang oder erstes Einschalten",
	"origin.set-up": "Der Computer oder Prüfplatz, in dem es erprobt wurde",
	"origin.software-state": "Software oder Einstellungen",
	"origin.other-item": "Es ist ein anderer Gegenstand",
	"origin.other-part": "Ein anderes Teil fiel später aus",
	"origin.intermittent": "Ein Fehler, der kommt und geht, an beiden Enden",
	"origin.record-in-doubt": "Ein Protokoll trägt nicht, was es sagt",
	"origin.none-of-these": "Keines davon",
	"origin.support-supports": "die Befunde passen hierzu besser als zu den anderen",
	"origin.support-does-not-support": "die Befunde passen hierzu schlechter als zu den anderen",
	"origin.support-neutral": "die Befunde weisen in beide Richtungen",
	"origin.support-not-tested": "nichts bisher Gefundenes betrifft dies",
	"origin.why-supports":
		"Tatsachen, die hierzu besser passen als zu den anderen: {countedFor}. Keine passt schlechter.",
	"origin.why-does-not-support":
		"Tatsachen, die hierzu schlechter passen als zu den anderen: {countedAgainst}. Keine passt besser.",
	"origin.why-neutral":
		"Tatsachen, die hierzu besser passen als zu den anderen: {countedFor}; schlechter: {countedAgainst}.",
	"origin.why-not-tested": "Nichts, was gesucht und gefunden oder gesucht und nicht gefunden wurde, betrifft dies.",
	"origin.why-ruled-out": "Ein Befund lässt hierfür keinen Raum.",
	"origin.why-ratio-weighed":
		"Nach den angegebenen Zahlen sind die Befunde unter dieser Herkunft {ratio}-mal so wahrscheinlich wie unter den anderen zusammen, gewichtet wie angegeben.",
	"origin.why-ratio-best":
		"Nach den angegebenen Zahlen sind die Befunde unter dieser Herkunft {ratio}-mal so wahrscheinlich wie unter derjenigen anderen, die sie am besten erklärt.",
	"origin.why-ratio-unbounded": "Nach den angegebenen Zahlen sind die Befunde unter jeder anderen Herkunft unmöglich.",
	"origin.scale-none": "keine Stütze für das eine gegenüber dem anderen",
	"origin.scale-weak": "schwache Stütze",
	"origin.scale-moderate": "mäßige Stütze",
	"origin.scale-moderately-strong": "mäßig starke Stütze",
	"origin.scale-strong": "starke Stütze",
	"origin.scale-very-strong": "sehr starke Stütze",
	"origin.scale-extremely-strong": "äußerst starke Stütze",
	"origin.scale-other-weak": "schwache Stütze für die anderen",
	"origin.scale-other-moderate": "mäßige Stütze für die anderen",
	"origin.scale-other-moderately-strong": "mäßig starke Stütze für die anderen",
	"origin.scale-other-strong": "starke Stütze für die anderen",
	"origin.scale-other-very-strong": "sehr starke Stütze für die anderen",
	"origin.scale-other-extremely-strong": "äußerst starke Stütze für die anderen",
	"origin.note-no-rule": "Für den Befund {finding} gibt es keine Regel und keine Zahl, daher sagt er hier nichts.",
	"origin.note-none-of-these":
		"Die angegebenen Wahrscheinlichkeiten lassen nichts für eine Herkunft, an die niemand gedacht hat. Einige Prozent täten es.",
	"origin.caution-not-who":
		"Dies sagt, welche Befunde zu welcher Herkunft passen. Es sagt nicht, wie wahrscheinlich eine Herkunft ist, und entscheidet nichts zwischen den Parteien.",
	"origin.caution-both-can-stand":
		"Eine Lötstelle, die unter einem Stoß brach, kann vorher schwach gewesen sein. Beides kann gelten; das eine spricht nicht gegen das andere.",
	"origin.capped-judgement":
		"Zahlen, die allein auf Einschätzung beruhen, tragen kein Verhältnis über {cap}. Das Wort ist wie für {cap} gewählt.",
	"origin.capped-cases": "Die gezählten Fälle tragen kein Verhältnis über {cap}. Das Wort ist wie für {cap} gewählt.",
	"origin.test-informs": "Dieser Test lässt {bits} Bit über die Herkunft erwarten.",
	"origin.test-separates-one": "Dieser Test unterscheidet zwei der Herkünfte, die noch offen sind.",
	"origin.test-separates": "Dieser Test unterscheidet Herkünfte, die noch offen sind, {pairs} Paare davon.",
	"origin.test-breaks-custody":
		"Dieser Test ändert, wer den Gegenstand hat, oder was noch zu sehen ist. Nur wenn beide Seiten zustimmen, und nach allen anderen Prüfungen.",
	"origin.test-destructive": "Dieser Test zerstört, was er ansieht. Nur wenn beide Seiten zustimmen, und zuallerletzt.",
	"origin.finding-marks-differ": "Merkmale, die keine Reparatur ändert, weichen zwischen den beiden Protokollen ab.",
	"origin.finding-marks-agree": "Merkmale, die zwei Gegenstände unterscheiden, stimmen in beiden Protokollen überein.",
	"origin.finding-number-agrees":
		"Seriennummer oder Gerätekennung ist an beiden Enden dieselbe. Ein Aufkleber allein kann vertauscht werden: Ein anderer Gegenstand ist damit nicht ausgeschlossen.",
	"origin.finding-start-missed-before": "Ein Start misslang vor dem Versand.",
	"origin.finding-long-clean-test-before":
		"Vor dem Versand bestand er viele Kaltstarts und Stunden unter Last ohne Aussetzer.",
	"origin.finding-fault-at-repaired-spot": "Der Fehler liegt dort, wo repariert wurde.",
	"origin.finding-fault-at-other-part": "Der Fehler liegt an einem Teil, das die Reparatur nicht berührt hat.",
	"origin.finding-old-damage-seen": "Es wurden Korrosion oder Schäden gesehen, die lange zum Entstehen brauchen.",
	"origin.finding-parcel-damaged": "Das Paket war außen beschädigt, als es kam.",
	"origin.finding-indicator-tripped":
		"Ein Stoß- oder Kippindikator am Paket hatte ausgelöst. Das allein ist kein Schaden.",
	"origin.finding-shock-beyond-design":
		"Ein Stoßschreiber, dessen Platz im Paket bekannt ist, zeichnete einen Stoß auf, der über die Auslegung von Verpackung und Platine hinausgeht.",
	"origin.finding-no-shock-recorded":
		"Ein Stoßschreiber lief den ganzen Weg mit und zeichnete keinen Stoß über der Auslegung auf.",
	"origin.finding-new-mechanical-damage":
		"Nach der Ankunft wurde mechanischer Schaden gesehen, der vor dem Versand nicht da war.",
	"origin.finding-pack-mark-matches": "Eine Spur in der Verpackung liegt dort, wo der Schaden am Gegenstand ist.",
	"origin.finding-cushion-intact": "Die Innenverpackung wurde heil und an ihrem Platz gefunden.",
	"origin.finding-parts-loosened":
		"Schrauben, Slotblech, Kühler oder Wärmeleitpads wurden lose oder verschoben gefunden.",
	"origin.finding-cooler-unsupported": "Ein schwerer Kühler reiste ohne Abstützung.",
	"origin.finding-wetness-seen": "Es wurden Feuchtigkeit, Rückstände oder ein nasser Indikator gesehen.",
	"origin.finding-unpacking-filmed": "Das Auspacken wurde ohne Schnitt gefilmt.",
	"origin.finding-bag-found-open": "Der innere Beutel wurde aufgeschnitten oder offen gefunden.",
	"origin.finding-lead-of-other-supply": "Es wurde ein Anschlusskabel benutzt, das zu einem anderen Netzteil gehört.",
	"origin.finding-reseating-cured": "Neu eingesteckt, und nichts sonst, war der Fehler behoben.",
	"origin.finding-good-at-first-then-bad": "Beim ersten Einschalten funktionierte er und fiel bald danach aus.",
	"origin.finding-good-on-arrival":
		"Er wurde nach der Ankunft geprüft und war gut. Was erst später wuchs, ist damit nicht ausgeschlossen.",
	"origin.finding-errors-grew-later": "Fehler fehlten zunächst und nahmen über Wochen des Gebrauchs zu.",
	"origin.finding-control-item-good":
		"Ein anderes, bekannt gutes Stück funktionierte am selben Prüfplatz, vorher und nachher.",
	"origin.finding-slot-limits": "Steckplatz oder Computer dort können nicht mehr, als gemessen wurde.",
	"origin.finding-good-on-other-computer": "Nach der Ankunft funktionierte er in einem anderen Computer.",
	"origin.finding-bad-on-departure-bench":
		"Er zeigt denselben Fehler an dem Prüfplatz, an dem er vor dem Versand gut war.",
	"origin.finding-picture-before-driver": "Er gibt ein Bild, bevor der Treiber lädt, und versagt danach.",
	"origin.finding-other-driver-cured": "Ein anderer Treiber oder ein sauberes System behob es.",
	"origin.finding-some-starts-good": "Nach der Ankunft gelangen einige Starts und einige nicht.",
	"origin.finding-better-on-arrival": "Nach der Ankunft war etwas gut, das vor dem Versand nicht gut war.",
	"origin.finding-record-contradicts-itself":
		"Ein Protokoll enthält Zeiten oder Werte, die nicht zusammen wahr sein können.",
	"origin.recorded-peak":
		"Ein Stoßschreiber am Gegenstand (Aufzeichnung {recording}, Aufschlag {impact}) zeichnete unterwegs {peakGn} gₙ auf; die Verpackung wurde mit einer Grenze von {limitGn} gₙ bewertet. Aufzeichnungen sind nicht versiegelt.",
	"origin.recorded-peak-within-design":
		"Ein Stoßschreiber am Gegenstand (Aufzeichnung {recording}, Aufschlag {impact}) zeichnete unterwegs {peakGn} gₙ auf; die Verpackung wurde mit einer Grenze von {limitGn} gₙ bewertet. Das entspricht einem Fall aus {lowM} bis {highM} m, innerhalb der {designM} m, für die eine Verpackung auf diesem Weg bewertet wird. Aufzeichnungen sind nicht versiegelt.",
	"origin.recorded-drop":
		"Ein Stoßschreiber im Paket (Aufzeichnung {recording}, Aufschlag {impact}) zeichnete unterwegs auf, was ein Fall aus {lowM} bis {highM} m bewirkt; die Verpackung schützt bis {protectedM} m. Aufzeichnungen sind nicht versiegelt.",
	"origin.recorded-board":
		"Nach einem Stoßschreiber am Gegenstand (Aufzeichnung {recording}, Aufschlag {impact}) schwang die Platine unterwegs weiter, als die Regel für Platinen erlaubt. Aufzeichnungen sind nicht versiegelt.",
	"origin.recorded-none":
		"Ein Stoßschreiber am Gegenstand (Aufzeichnung {recording}) lief den ganzen Weg mit und zeichnete keinen Stoß über dem auf, wofür Verpackung und Platine bewertet wurden. Aufzeichnungen sind nicht versiegelt.",
	"origin.recorder-silent-unread":
		"Ob ein Stoß über der Auslegung aufgezeichnet wurde, ist nicht bekannt: Aufzeichnung {recording} wurde noch nicht gelesen.",
	"origin.recorder-silent-no-pack":
		"Ob ein Stoß über der Auslegung aufgezeichnet wurde, ist nicht bekannt: Es wurde keine Verpackung versiegelt, an der Aufzeichnung {recording} zu messen wäre.",
	"origin.recorder-silent-clock":
		"Ob unterwegs ein Stoß über der Auslegung aufgezeichnet wurde, ist nicht bekannt: Niemand hat die Uhr von Aufzeichnung {recording} notiert, oder wie weit sie abweichen kann.",
	"origin.recorder-silent-no-line":
		"Ob unterwegs ein Stoß über der Auslegung aufgezeichnet wurde, ist nicht bekannt: Die Protokolle sagen nicht, wann der Weg von Aufzeichnung {recording} begann und endete.",
	"origin.recorder-silent-elsewhere":
		"Aufzeichnung {recording} enthält einen Stoß über der Auslegung, der nach ihrer Uhr aber ebenso vor oder nach dem Weg liegen kann.",
	"origin.recorder-silent-open":
		"Ob ein Stoß über der Auslegung aufgezeichnet wurde, ist offen: Aufzeichnung {recording} enthält einen, dessen Zahlen nach beiden Seiten reichen oder sich vom Platz des Schreibers aus nicht an der Verpackung messen lassen.",
	"origin.recorder-silent-phone":
		"Aufzeichnung {recording} enthält keinen Stoß über der Auslegung, aber ein Telefon zeigt nicht, dass es keinen gab.",
	"origin.recorder-silent-place":
		"Aufzeichnung {recording} enthält keinen Stoß über der Auslegung, zeigt vom Platz des Schreibers aus aber nicht, dass es am Gegenstand keinen gab.",
	"origin.recorder-silent-axes":
		"Aufzeichnung {recording} enthält keinen Stoß über der Auslegung, zeigt mit weniger als drei Achsen aber nicht, dass es keinen gab.",
	"origin.recorder-silent-part":
		"Aufzeichnung {recording} enthält keinen Stoß über der Auslegung, deckt aber nicht den ganzen Weg ab.",
	"origin.recorder-silent-gaps":
		"Aufzeichnung {recording} enthält keinen Stoß über der Auslegung, hat aber Zeiten ohne Messwerte.",
	"origin.recorder-silent-slow":
		"Aufzeichnung {recording} enthält keinen Stoß über der Auslegung, tastete aber zu langsam ab, um jeden zu sehen.",
	"origin.recorder-silent-range":
		"Aufzeichnung {recording} enthält keinen Stoß über der Auslegung; dass ihr Messbereich und ihre Schwelle die Grenze erfassen, ist aber nicht gezeigt.",
	"origin.recorder-silent-kept":
		"Die behaltenen Stöße von Aufzeichnung {recording} liegen nicht über der Auslegung, sie enthält aber mehr, als behalten wurden.",

	"origin.absent-new-mechanical-damage": "Nach der Ankunft wurde kein neuer mechanischer Schaden gefunden.",
	"origin.absent-pack-mark-matches":
		"In der Verpackung wurde keine Spur dort gefunden, wo der Schaden am Gegenstand ist.",
	"origin.absent-parts-loosened":
		"Keine Schraube, kein Slotblech, kein Kühler und kein Wärmeleitpad wurde lose oder verschoben gefunden.",
	"origin.absent-wetness-seen": "Es wurden keine Feuchtigkeit, keine Rückstände und kein nasser Indikator gefunden.",
	"origin.absent-reseating-cured": "Neu einzustecken behob es nicht.",
	"origin.absent-control-item-good": "Auch ein anderes, bekannt gutes Stück funktionierte am selben Prüfplatz nicht.",
	"origin.absent-good-on-other-computer": "Auch in einem anderen Computer funktionierte er nicht.",
	"origin.absent-other-driver-cured": "Ein anderer Treiber oder ein sauberes System behob es nicht.",
	"origin.test-other-computer":
		"Probieren Sie ihn in einem zweiten Computer eines anderen Herstellers, wenn kein Stoppzeichen gesehen wurde.",
	"origin.test-control-item": "Probieren Sie ein anderes, bekannt gutes Stück am selben Prüfplatz, vorher und nachher.",
	"origin.test-reseat":
		"Stecken Sie ihn bei ausgeschaltetem Strom neu ein. Ändern Sie nichts sonst und notieren Sie, was geschieht.",
	"origin.test-counted-starts": "Zählen Sie zehn Kaltstarts und schreiben Sie jeden auf.",
	"origin.test-photos-of-same-place":
		"Fotografieren Sie ihn von allen Seiten und legen Sie die Fotos neben die von vor dem Versand: Ist ein Schaden neu?",
	"origin.test-marks-in-pack":
		"Sehen Sie nach einer Delle oder gequetschtem Polster in der Verpackung, und wo am Gegenstand sie lag.",
	"origin.test-other-driver": "Probieren Sie einen anderen Treiber auf einem sauberen System.",
	"origin.test-identity-marks": "Vergleichen Sie Seriennummer, Gerätekennung, Masse und natürliche Merkmale.",
	"origin.test-original-files": "Legen Sie die Originaldateien mit ihren Zeiten neben das Protokoll.",
	"origin.test-screws-and-pads":
		"Suchen Sie nach losen Schrauben, verschobenen Wärmeleitpads und geriebenen Stellen, ohne etwas zu öffnen.",
	"origin.test-which-part":
		"Finden Sie heraus, zu welchem Teil die Fehler gehören und ob die Reparatur es berührt hat.",
	"origin.test-departure-bench":
		"Wiederholen Sie die Prüfungen vor dem Versand an dem Prüfplatz, an dem sie gemacht wurden.",
	"origin.test-x-ray-of-joints": "Lassen Sie die Lötstellen röntgen.",
	"origin.test-cut-and-dye": "Lassen Sie die Lötstellen in einem Labor einfärben und auseinanderziehen.",
};
