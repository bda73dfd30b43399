/** Was über Verpackungen gesagt wird: Fälle, Polster, statische Elektrizität, Betauung. */
import type { ReportTexts } from "../report-texts.ts";

export const packaging: ReportTexts["packaging"] = {
	"shock.points-not-rising": "Die Punkte stehen nicht in steigender Zeit.",
	"drop.mass-above": "Die Tabelle endet unter {massKg} kg.",
	"drop.too-large": "Die Tabelle gilt für Packstücke, deren längste Seite unter {largestM} m liegt.",
	"drop.per-drop":
		"Gemessene Perzentile gelten je Fall, nicht je Reise. Eine Reise hat mehrere Fälle, eine Reise überschreitet sie also öfter.",
	"packaging.no-cushion": "Die Seite „{face}“ hat kein Polster.",
	"packaging.short":
		"Auf dieser Seite ist der Spitzenwert {peakGn} gₙ, zulässig sind {limitGn} gₙ; selbst der günstigere Rand seines Bands, {lowGn} gₙ, ist zu viel.",
	"packaging.short-within-band":
		"Auf dieser Seite ist der Spitzenwert {peakGn} gₙ, zulässig sind {limitGn} gₙ. Das Band von {lowGn} bis {highGn} gₙ reicht unter die Grenze, es kann also halten, gezeigt ist das aber nicht.",
	"packaging.pad-too-large":
		"Auf dieser Seite ist der Spitzenwert {peakGn} gₙ, zulässig sind {limitGn} gₙ. Das Polsterstück ist zu groß für das Gewicht: Bei dieser Flächenpressung hilft keine Dicke.",
	"packaging.floor-short":
		"Welcher Schaumstoff es auch sei: Bei dieser Dicke bleibt kein Polster unter {peakGn} gₙ, und zulässig sind {limitGn} gₙ.",
	"packaging.crushed":
		"Bei dieser Fallhöhe wird der Schaumstoff ganz zusammengedrückt: Der Spitzenwert liegt jenseits dessen, was sein Modell angeben kann, und zulässig sind {limitGn} gₙ.",
	"packaging.foam-unknown":
		"Der Schaumstoff ist nicht bekannt, daher lässt sich nur seine Untergrenze von {peakGn} gₙ angeben.",
	"packaging.outside-range":
		"Der Spitzenwert wäre {peakGn} gₙ (Band {lowGn} bis {highGn}), unter {limitGn} gₙ, doch liegt das außerhalb des Bereichs der Daten des Schaumstoffs.",
	"packaging.not-assessed": "Nicht bewertet.",
	"packaging.marginal":
		"Der Spitzenwert von {peakGn} gₙ hält die Grenze von {limitGn} gₙ ein, nicht aber am oberen Rand seines Bands, {highGn} gₙ.",
	"packaging.holds":
		"Der Spitzenwert von {peakGn} gₙ, schlimmstenfalls {highGn} gₙ, hält die Grenze von {limitGn} gₙ ein.",
	"packaging.mend-cushion": "Legen Sie auf jede Seite ein Polster aus einem bekannten Schaumstoff.",
	"packaging.mend-smaller-pads": "Nehmen Sie kleinere Polsterstücke oder einen weicheren Schaumstoff.",
	"packaging.mend-pads-of":
		"Nehmen Sie kleinere Polsterstücke oder einen weicheren Schaumstoff. Mit diesem Schaumstoff und dieser Dicke bleiben Polsterstücke von zusammen {leastCm2} bis {mostCm2} cm² nominell unter der Grenze.",
	"packaging.mend-unknown":
		"Nehmen Sie einen Schaumstoff, dessen Kurve bekannt ist. Mit dem besten des Katalogs sind mindestens {leastMm} mm nötig.",
	"packaging.mend-range":
		"Wählen Sie Dicke und Größe der Polsterstücke so, dass der Schaumstoff innerhalb seiner Daten arbeitet.",
	"packaging.mend-thicker": "Bei dieser Größe der Polsterstücke sind mindestens {leastMm} mm nötig.",
	"packaging.mend-margin":
		"Ein dickeres Polster oder eine Flächenpressung näher am tiefsten Punkt seiner Kurve gibt die Reserve.",
	"packaging.mend-worst-face": "Beginnen Sie mit der Seite „{face}“: Sie ist die schwächste.",
	"packaging.no-protected-drop":
		"Eine Seite hat kein Polster, das sich bewerten lässt, daher schützt die Verpackung bis zu keiner bekannten Fallhöhe.",
	"packaging.drop-short":
		"Die Verpackung schützt bis zu einer Fallhöhe von {dropHeightM} m; die Bemessungsfallhöhe ist {designM} m.",
	"packaging.drop-short-within-band":
		"Die Verpackung schützt bis zu einer Fallhöhe von {dropHeightM} m; die Bemessungsfallhöhe ist {designM} m. Ihr Band reicht bis {highM} m, es kann also halten, gezeigt ist das aber nicht.",
	"packaging.bound-short":
		"Ein Schaumstoff ist nicht bekannt. Auch so kann die Seite „{face}“ nicht über eine Fallhöhe von {dropHeightM} m hinaus schützen; die Bemessungsfallhöhe ist {designM} m.",
	"packaging.drop-outside":
		"Die Verpackung würde bis {dropHeightM} m schützen, doch liegt eine Seite außerhalb der Daten ihres Schaumstoffs, oder ihr Schaumstoff ist nicht bekannt.",
	"packaging.drop-marginal":
		"Die Verpackung schützt bis {dropHeightM} m, verlangt sind {designM} m, doch beginnt ihr Band bei {lowM} m.",
	"packaging.drop-holds":
		"Die Verpackung schützt bis {dropHeightM} m, schlimmstenfalls {lowM} m; verlangt sind {designM} m.",
	"packaging.pads-exceed-face":
		"Die Polsterstücke auf der Seite „{face}“ sind größer als die Seite selbst, daher wurde die ganze Seite als Auflagefläche genommen.",
	"packaging.first-drop-set":
		"Die Kurve auf der Seite „{face}“ gilt für einen ersten Fall. Eine Reise hat mehrere Fälle: Nehmen Sie die Kurve für den Mittelwert der Fälle 2 bis 5.",
	"packaging.protected-outside":
		"Die Fallhöhe, bis zu der diese Verpackung schützt, liegt außerhalb der Daten des Schaumstoffs auf der Seite „{face}“: Nehmen Sie sie als Hinweis, nicht als Wert.",
	"packaging.most-on-corners":
		"Die meisten Aufschläge, die Stoßschreiber aufzeichneten, trafen Kanten und Ecken: 93 % in einem Paketnetz, 44 % in einem anderen. Daher steht diese Prüfung zuerst.",
	"packaging.corner-bare": "Eine Seite hat kein Polster, also haben auch ihre Kanten und Ecken keines.",
	"packaging.corner-unknown": "Ein Schaumstoff ist nicht bekannt, daher lässt sich über Kanten und Ecken nichts sagen.",
	"packaging.corner-crushed":
		"Auf „{where}“ wird der Schaumstoff bei dieser Fallhöhe ganz zusammengedrückt: Der Spitzenwert liegt jenseits dessen, was sein Modell angeben kann, und zulässig sind {limitGn} gₙ.",
	"packaging.corner-short":
		"Beim Fall auf „{where}“ ist der Spitzenwert {peakGn} gₙ, zulässig sind {limitGn} gₙ; das Band geht von {lowGn} bis {highGn} gₙ. Nach einer abgeleiteten Regel, die niemand validiert hat.",
	"packaging.corner-first-drop":
		"Beim Fall auf „{where}“ hätte der erste Fall einen Spitzenwert von {peakGn} gₙ, doch ist dieser Schaumstoff nur für seinen ersten Fall bekannt.",
	"packaging.corner-marginal":
		"Beim Fall auf „{where}“ hält der Spitzenwert von {peakGn} gₙ die Grenze von {limitGn} gₙ ein, nicht aber am oberen Rand seines Bands, {highGn} gₙ. Nach einer abgeleiteten Regel, die niemand validiert hat.",
	"packaging.corner-holds":
		"Beim Fall auf „{where}“, die schlimmste Kante oder Ecke, hält der Spitzenwert von {peakGn} gₙ, schlimmstenfalls {highGn} gₙ, die Grenze von {limitGn} gₙ ein. Nach einer abgeleiteten Regel, die niemand validiert hat.",
	"packaging.corner-measured":
		"Beim Fall auf eine Ecke mit einem Stoßschreiber, {count}-mal, war der Spitzenwert {peakGn} gₙ, zulässig sind {limitGn} gₙ.",
	"packaging.corner-measured-short":
		"Beim Fall auf eine Ecke mit einem Stoßschreiber war der Spitzenwert {peakGn} gₙ, zulässig sind {limitGn} gₙ.",
	"packaging.mend-corner":
		"Dickere Polster oder Polsterstücke anderer Größe, wo drei Seiten zusammenkommen; danach ein Fall auf eine Ecke mit Stoßschreiber.",
	"packaging.mend-corner-drop":
		"Lassen Sie diese Verpackung auf eine Ecke fallen, mit einem Stoßschreiber auf einer Attrappe dieser Masse, aus der Bemessungsfallhöhe oder höher, mit 1000 Hz oder mehr abgetastet, und geben Sie den Spitzenwert ein.",
	"packaging.first-drop-only":
		"Auf der Seite „{face}“ hätte der erste Fall einen Spitzenwert von {peakGn} gₙ, doch ist dieser Schaumstoff nur für seinen ersten Fall bekannt, und eine Reise hat mehrere.",
	"packaging.mend-later-drops":
		"Nehmen Sie einen Schaumstoff, dessen Kurve für den Mittelwert der Fälle 2 bis 5 bekannt ist.",
	"packaging.mend-known-foam": "Nehmen Sie auf jeder Seite Schaumstoffe, deren Kurven bekannt sind.",
	"packaging.bottoming-unknown":
		"Ein Schaumstoff ist nicht bekannt, daher lässt sich nicht sagen, wie weit er zusammengedrückt wird.",
	"packaging.bottoming-locked":
		"Auf der Seite „{face}“ wird der Schaumstoff bei einer Fallhöhe von {designM} m um seine ganze Dicke zusammengedrückt.",
	"packaging.bottoming-unsupported":
		"Auf der Seite „{face}“ arbeitet der Schaumstoff jenseits seines Optimums, wo er hart wird, bei {percent} % der höchsten Energie, die seine Daten abdecken: nicht durch Daten gestützt.",
	"packaging.bottoming-holds":
		"Auf der Seite „{face}“, der am stärksten gedrückten, arbeitet der Schaumstoff jenseits seines Optimums, bei {percent} % der höchsten Energie, die seine Daten abdecken.",
	"packaging.bottoming-soft":
		"Bei einer Fallhöhe von {designM} m arbeitet kein Schaumstoff jenseits seines Optimums; am stärksten gedrückt wird der auf der Seite „{face}“, bei {percent} % der höchsten Energie, die seine Daten abdecken.",
	"packaging.mend-bottoming":
		"Auf der Seite „{face}“: größere Polsterstücke, ein dickerer oder ein steiferer Schaumstoff.",
	"packaging.lined":
		"Kein Polsterstück steht frei. Schaumstoff über eine ganze Seite kleidet den Karton von Wand zu Wand aus, und die Wände halten ihn; die Regel gegen Ausknicken gilt für Polsterstücke.",
	"packaging.no-pads": "Es gibt kein Polsterstück.",
	"packaging.buckles":
		"Ein Polsterstück auf der Seite „{face}“ mit {areaCm2} cm² ist für seine Dicke zu schlank: Es knickt aus, wenn es nicht mehr als {leastCm2} cm² hat.",
	"packaging.no-buckling":
		"Das schlankste Polsterstück, auf der Seite „{face}“, hat {areaCm2} cm²; nötig sind mehr als {leastCm2} cm².",
	"packaging.mend-buckling": "Polsterstücke von je mehr als {leastCm2} cm²: weniger und größer, oder dünner.",
	"packaging.creep-unknown": "Für einen Schaumstoff dieser Verpackung ist keine Grenze gegen Kriechen bekannt.",
	"packaging.creep-hot":
		"Die Flächenpressung von {stress} kPa auf der Seite „{face}“ hält die Grenze von {limitKPa} kPa ein, doch gilt das nur bis {warmDegC} °C; die Reise wird wärmer.",
	"packaging.creeps":
		"Auf der Seite „{face}“ lasten {stress} kPa auf dem Schaumstoff; über {limitKPa} kPa verliert er mit der Zeit mehr als ein Zehntel seiner Dicke.",
	"packaging.no-creep":
		"Auf einem Schaumstoff lasten höchstens {stress} kPa, auf der Seite „{face}“; gegen Kriechen zulässig sind {limitKPa} kPa.",
	"packaging.mend-creep": "Größere Polsterstücke, ein steiferer Schaumstoff oder eine kühlere Reise.",
	"packaging.mend-creep-data":
		"Fragen Sie den Lieferanten nach der statischen Flächenpressung, bei der der Schaumstoff um weniger als ein Zehntel kriecht.",
	"packaging.no-temperatures": "Die Temperaturen der Reise sind nicht angegeben.",
	"packaging.mend-temperatures": "Geben Sie die niedrigste und die höchste Temperatur der Reise an.",
	"packaging.temperature-unknown":
		"Ein Schaumstoff ist nicht bekannt, daher lässt sich über ihn in Kälte und Wärme nichts sagen.",
	"packaging.temperature-outside":
		"Ein Schaumstoff dieser Verpackung ist nur von {lowDegC} bis {highDegC} °C bekannt, und die Reise geht darüber hinaus.",
	"packaging.temperature-uncovered":
		"In Kälte und Wärme wäre der Spitzenwert höchstens {peakGn} gₙ, unter {limitGn} gₙ, doch liegt das außerhalb des Bereichs der Daten des Schaumstoffs.",
	"packaging.temperature-short":
		"Auf der Seite „{face}“ ist bei {atDegC} °C der Spitzenwert bis zu {highGn} gₙ, nominell {peakGn} gₙ, zulässig sind {limitGn} gₙ.",
	"packaging.temperature-holds":
		"An beiden Enden der Temperaturen der Reise bleibt der Spitzenwert bei {peakGn} gₙ, schlimmstenfalls {highGn} gₙ (auf der Seite „{face}“ bei {atDegC} °C); zulässig sind {limitGn} gₙ.",
	"packaging.mend-temperature":
		"Ein Schaumstoff mit Daten für diese Temperaturen oder mehr Reserve bei Raumtemperatur.",
	"packaging.fits":
		"Gegenstand und Polster passen. Der kleinste Abstand nach außen ist {clearanceMm} mm; das Fach rät zu {advisedMm} mm, was eine Polsterkurve nicht ersetzt.",
	"packaging.fit-pressed":
		"Im geschlossenen Karton werden die Polster um {percent} % ihrer Dicke gedrückt. Der kleinste Abstand nach außen ist {clearanceMm} mm; das Fach rät zu {advisedMm} mm.",
	"packaging.fit-short": "Gegenstand und Polster passen nicht: Die Polster würden um {percent} % ihrer Dicke gedrückt.",
	"packaging.mend-fit":
		"Nehmen Sie einen größeren Karton oder Polster, die ungedrückt passen; dünnere nur, wenn jede Prüfung noch hält.",
	"packaging.moves": "Entlang einer Achse gibt es {slackMm} mm Spiel; {playMm} mm zählen als keines.",
	"packaging.still": "Der Gegenstand hat höchstens {slackMm} mm Spiel; {playMm} mm zählen als keines.",
	"packaging.mend-movement":
		"Füllen Sie das Spiel mit dem Schaumstoff der Polster, bis sich beim Schütteln des Kartons nichts bewegt.",
	"packaging.no-board-frequency": "Die Eigenfrequenz der Platine ist nicht bekannt.",
	"packaging.mend-board-frequency":
		"Beschreiben Sie die Platine mit ihren Maßen, oder geben Sie ihre gemessene Frequenz an.",
	"packaging.no-cushion-frequency": "Ein Polster hat keinen Spitzenwert, daher folgt aus ihm keine Frequenz.",
	"packaging.resonates":
		"Das Polster auf der Seite „{face}“ schwingt bei etwa {cushionHz} Hz und die Platine bei {boardHz} Hz: weniger als eine Oktave auseinander. Das Profil der Reise würde daraus {responseGnRms} gₙ (Effektivwert) machen.",
	"packaging.apart":
		"Die Polster, das nächste bei etwa {cushionHz} Hz auf der Seite „{face}“, und die Platine bei {boardHz} Hz liegen eine Oktave auseinander. Das Profil der Reise macht aus beiden {responseGnRms} gₙ (Effektivwert).",
	"packaging.mend-resonance": "Ein weicheres Polster, oder die Platine an mehr Stellen gehalten.",
	"packaging.no-board-data": "Kantenstauchwiderstand und Dicke der Wellpappe des Kartons sind nicht angegeben.",
	"packaging.mend-board-data":
		"Lesen Sie den Kantenstauchwiderstand vom Stempel des Kartonherstellers ab und messen Sie die Dicke der Wellpappe.",
	"packaging.box-short":
		"Nach den Tagen und der Feuchte der Reise trägt der Karton {strengthN} N; ein Stapel von {stackM} m in einem Fahrzeug belastet ihn mit {loadN} N.",
	"packaging.box-outside":
		"Der Karton würde {strengthN} N tragen, belastet wird er mit {loadN} N, doch ist die Reise länger als die Zeit, für die die Verluste bekannt sind.",
	"packaging.box-holds":
		"Nach den Tagen und der Feuchte der Reise trägt der Karton {strengthN} N; ein Stapel von {stackM} m in einem Fahrzeug belastet ihn mit {loadN} N.",
	"packaging.mend-box": "Ein neuer Karton, aus stärkerer oder zweiwelliger Wellpappe.",
	"packaging.no-barrier":
		"Es gibt keine Feuchtesperre. Eine fertige Platine, die nur eingeschaltet wird, braucht keine; eine, die gelötet werden soll, braucht sie.",
	"packaging.barrier-open":
		"Die Feuchtesperre ist nicht verschlossen oder nicht unversehrt: Dann hilft kein Trockenmittelbeutel.",
	"packaging.mend-barrier":
		"Wo Trockenheit zählt: ein Feuchtesperrbeutel, verschweißt, mit Trockenmittel und Indikatorkarte.",
	"packaging.no-desiccant": "Wie viel Trockenmittel in der Sperre ist, ist nicht angegeben.",
	"packaging.mend-desiccant": "Ein Beutel mit {units} Einheiten in der Sperre genügt.",
	"packaging.desiccant-short": "In der Sperre sind {given} Einheiten Trockenmittel; nötig sind {units}.",
	"packaging.desiccant-holds": "In der Sperre sind {given} Einheiten Trockenmittel; nötig sind {units}.",
	"packaging.mend-paper":
		"Lassen Sie Papier und Pappe außerhalb der Sperre: Sie halten weit mehr Wasser als die Luft darin oder was hindurchkommt.",
	"packaging.no-cell": "Der Gegenstand enthält keine Zelle.",
	"packaging.cell-no-layer": "Über die Lage, die den Gegenstand berührt, ist nichts gesagt.",
	"packaging.cell-shorted":
		"Eine leitfähige Lage berührt einen Gegenstand mit einer Zelle: Sie entlädt sie und kann sie erhitzen.",
	"packaging.cell-apart": "Die Lage, die den Gegenstand berührt, ist nicht leitfähig.",
	"packaging.mend-cell": "Legen Sie zwischen den Gegenstand und jede leitfähige Lage eine ableitfähige Hülle.",
	"packaging.no-cooler": "Es ist kein schwerer Kühler beschrieben.",
	"packaging.cooler-supported":
		"Beim Spitzenwert von {peakGn} gₙ zieht der Kühler mit {forceN} N, einem Moment von etwa {momentNm} N·m, an dem, was ihn stützt. Eine Grenze dafür wurde nicht gefunden.",
	"packaging.cooler-light":
		"Beim Spitzenwert von {peakGn} gₙ zieht der Kühler mit {forceN} N an der Platine, einem Moment von etwa {momentNm} N·m. Eine Desktop-Platine bestand {levelN} N; für diese ist keine Grenze bekannt.",
	"packaging.cooler-short":
		"Beim Spitzenwert von {peakGn} gₙ zieht der Kühler mit {forceN} N an der Platine, einem Moment von etwa {momentNm} N·m, mehr als die {levelN} N, die eine Desktop-Platine bestand.",
	"packaging.mend-cooler":
		"Lassen Sie das Polster oder eine Halterung den Kühler selbst tragen, nicht nur die Platine, und blockieren Sie ihn in jeder Richtung.",
	"packaging.no-cover": "Der Wert des Gegenstands oder was der Frachtführer höchstens zahlt, ist nicht angegeben.",
	"packaging.cover-currency": "Der Wert steht in {value} und die Obergrenze in {cap}.",
	"packaging.mend-cover-data": "Geben Sie beides an, in derselben Währung.",
	"packaging.covered": "Der Frachtführer zahlt höchstens {cap} {currency}; der Gegenstand ist {value} {currency} wert.",
	"packaging.uncovered":
		"Der Frachtführer zahlt höchstens {cap} {currency}; der Gegenstand ist {value} {currency} wert.",
	"packaging.mend-cover": "Geben Sie einen Wert an, oder versichern Sie die Reise.",
	"packaging.layers-in-a-row":
		"Lagen hintereinander wurden so genommen, als teilten sie eine Kraft. Das ist abgeleitet, daher ist eine solche Seite bestenfalls vorläufig erfüllt.",
	"packaging.velocity-harmless":
		"Selbst bei vollem Rückprall erreicht ein Fall unter {harmlessM} m nicht die Geschwindigkeitsänderung, die dem Gegenstand schaden kann; die Bemessungsfallhöhe ist {designM} m.",
	"packaging.velocity-reached":
		"Ein Fall unter {harmlessM} m kann die Geschwindigkeitsänderung nicht erreichen, die dem Gegenstand schadet; die Bemessungsfallhöhe von {designM} m kann es.",
	"packaging.caution-lithium":
		"Lithiumzellen sind in der Post Gefahrgut: Folgen Sie den Regeln des Frachtführers, und verpacken Sie nie eine aufgeblähte oder beschädigte.",
	"static.no-shielding":
		"Keine geschlossene, unversehrte Lage schirmt gegen eine Entladung ab; das ist außerhalb eines geschützten Bereichs nötig.",
	"static.kitchen-foil": "Küchenfolie schließt Zellen und Kondensatoren kurz und belegt keinen Schutz.",
	"static.shorts-cell": "Eine leitfähige Lage berührt einen Gegenstand mit einer Zelle.",
	"static.charging-contact":
		"Einfache Folie oder Luftpolsterfolie an der Platine lädt sie auf, wenn sie abgenommen wird.",
	"static.insulating-contact":
		"Die Lage, die den Gegenstand berührt, isoliert: Eine Ladung darauf kann nicht abfließen.",
	"static.declared": "Es beruht auf der Angabe des Herstellers, dass das geschlossene Modul nicht empfindlich ist.",
	"static.cap-connectors": "Seine Stecker müssen abgedeckt sein.",
	"static.shield-unproven":
		"Nichts belegt, dass die abschirmende Lage abschirmt: Ein Datenblatt oder eine Messung fehlt.",
	"static.contact-unproven": "Nichts belegt, dass die Lage, die den Gegenstand berührt, ihn nicht auflädt.",
	"static.pad-edges":
		"Scharfe Kanten von Slotblech und Kühler müssen gepolstert sein, damit sie die Abschirmung nicht durchschneiden.",
	"static.reused": "Ein schon benutzter Beutel braucht einen Blick auf Löcher und Knicke, der festgehalten wird.",
	"static.holds": "Geringe Aufladung, ableitfähige Berührung und Abschirmung gegen Entladung sind alle da.",
	"static.mend":
		"Verschließen Sie den Gegenstand in einem unversehrten Abschirmbeutel mit Datenblatt, scharfe Kanten gepolstert.",
	"static.caution-bench":
		"Nehmen Sie den Gegenstand nur auf einer geerdeten Matte und mit geerdetem Handgelenkband heraus; tragen Sie nie ein Band, wenn Sie an Geräten unter Spannung arbeiten.",
	"condensation.wet":
		"Es wurde Wasser gesehen: Lassen Sie ihn ausgeschaltet, und lassen Sie jemanden nachsehen, der es kann.",
	"condensation.never":
		"In diesem Raum wird es nie warm genug über dem Taupunkt: Trocknen oder wärmen Sie zuerst den Raum, nicht das Paket.",
	"condensation.no-time-constant": "Wie schnell sich das Paket erwärmt, ist nicht bekannt.",
	"condensation.outside-range": "Die Formel des Taupunkts gilt für Räume von {low} bis {high} °C.",
	"condensation.lower-bound":
		"Das Modell wurde nie an einem gemessenen Karton geprüft; die Wartezeiten sind nach unserer Festlegung länger, als es sagt.",
};
