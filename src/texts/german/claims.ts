/** Fristen von Ansprüchen. Allgemeine Auskunft: Kein Satz sagt, was jemand schuldet. */
import type { ReportTexts } from "../report-texts.ts";

export const claims: ReportTexts["claims"] = {
	"claims.general":
		"Allgemeine Auskunft, berechnet aus den eingegebenen Tagen und Beträgen; keine Rechtsberatung, und keine Anwältin und kein Anwalt steht dahinter.",
	"claims.prevails":
		"Der Beförderungsvertrag, zwingendes örtliches Recht und das Gericht, das entscheidet, gehen vor; welches Recht gilt, haben hier Sie gewählt.",
	"claims.outer-limits":
		"Die Tage sind äußerste Grenzen: Handeln Sie sofort, und bewahren Sie den Nachweis der Absendung auf. Feiertage sind die des gewählten Bestands; die Tage gelten am Ort der Ablieferung.",
	"claims.consequences-differ":
		"Was einer versäumten Frist folgt, ist verschieden: Es kann nur verschieben, wer etwas zu beweisen hat, oder den Anspruch beenden. Bei jedem Tag steht, was.",
	"claims.seller-apart":
		"Die Rechte von Verbrauchern gegen den Verkäufer laufen getrennt von diesen Tagen und werden durch sie nicht geschmälert.",
	"claims.no-rule": "Von dieser Regelung wurde keine Regel für diese Art von Schaden gelesen.",
	"claims.no-holidays":
		"Es waren keine Feiertage angegeben, daher wurden nur Sonntage oder Wochenenden ausgelassen: Die Tage können zu früh liegen.",
	"claims.regions-differ":
		"Feiertage unterscheiden sich zwischen den Regionen dieses Landes: Ohne Region wurden nur die des ganzen Landes ausgelassen.",
	"claims.other-damage": "Diese Regeln betreffen nicht die genannte Art von Schaden: {rules}.",
	"claims.from-memory":
		"Eine dieser Regeln wurde erinnert und nicht gelesen: Schlagen Sie sie nach, bevor Sie sich darauf verlassen.",
	"claims.reading-start-day-counts":
		"Wenn das Recht des Gerichts den ersten Tag mitzählt: Der Text sagt es nicht und legt keine Zählweise fest.",
	"claims.reading-sundays-count": "Wenn Sonntage zählen: Der Text lässt nur Feiertage aus, die Praxis auch Sonntage.",
	"claims.reading-day-after-posting-counts":
		"Wenn die Frist mit dem Tag nach der Einlieferung beginnt und ihn einschließt.",
	"claims.reading-saturday-rolls":
		"Wenn auch ein Ende an einem Samstag weiterrückt (ein Gesetz von 1963, erinnert, nicht gelesen).",
	"claims.reading-at-once-on-discovery": "Sofort bei der Entdeckung: Die Zahl der Tage ist nur die äußerste Grenze.",
	"claims.reading-across-borders": "Wenn Absender und Empfänger in zwei Staaten sind.",
	"claims.reading-status-every-60-days": "Ohne Entscheidung bis dahin: alle 60 Tage ein Wort zum Stand der Dinge.",
	"claims.reading-doubtful-holiday":
		"Wenn diese Tage als gesetzliche Feiertage zählen, was nicht geklärt ist: {dates}.",
	"claims.reading-suspended": "Wenn die Frist von der Reklamation bis zu ihrer Zurückweisung stillstand.",
	"claims.reading-suspended-documents":
		"Wenn die Frist von der schriftlichen Reklamation bis zu ihrer schriftlichen Zurückweisung und der Rückgabe ihrer Belege stillstand.",
	"claims.what-cmr-dmg-apparent": "Vorbehalt bei der Ablieferung: Geben Sie allgemein an, was beschädigt ist.",
	"claims.what-cmr-dmg-concealed":
		"Schriftlicher Vorbehalt zu äußerlich nicht erkennbarem Schaden; Sonntage und gesetzliche Feiertage zählen nicht.",
	"claims.what-cmr-dmg-jointcheck":
		"Schriftlicher Vorbehalt, nachdem beide Seiten das Gut gemeinsam überprüft haben, zu dem, was nicht erkennbar war.",
	"claims.what-cmr-delay": "Schriftlicher Vorbehalt wegen Überschreitung der Lieferfrist.",
	"claims.what-cmr-loss-presumed": "Von da an darf Gut, das nicht ankam, als verloren betrachtet werden.",
	"claims.what-cmr-suit": "Klage.",
	"claims.what-mc99-dmg": "Schriftliche Schadensanzeige zu Gütern, sobald der Schaden entdeckt ist.",
	"claims.what-mc99-delay": "Schriftliche Anzeige der Verspätung.",
	"claims.what-mc99-suit": "Klage; ein Forderungsschreiben hält die Frist nicht an.",
	"claims.what-cim-apparent":
		"Lassen Sie vor der Annahme des Gutes durch den Beförderer eine Tatbestandsaufnahme errichten.",
	"claims.what-cim-concealed":
		"Verlangen Sie die Tatbestandsaufnahme des Beförderers, sobald der Schaden entdeckt ist; es ist zu zeigen, wann er entstand.",
	"claims.what-cim-delay":
		"Anspruch wegen Überschreitung der Lieferfrist. Der gelesene Text sagt nicht, ab wann: ab der Annahme genommen.",
	"claims.what-cim-suit": "Klage.",
	"claims.what-upu-inquiry": "Nachforschungsantrag des Absenders bei der Post.",
	"claims.what-upu-reserve":
		"Teilen Sie der zustellenden Post unverzüglich mit, was nach einer Ablieferung ohne Bemerkungen gefunden wurde.",
	"claims.what-de-hgb438-1": "Anzeige bei der Ablieferung, hinreichend deutlich, an den, der abliefert.",
	"claims.what-de-hgb438-2":
		"Anzeige äußerlich nicht erkennbaren Schadens. Dass ein Ende an einem freien Tag weiterrückt, ist eine Analogie: Halten Sie sich an den sicheren Tag.",
	"claims.what-de-hgb438-3": "Anzeige der Überschreitung der Lieferfrist.",
	"claims.what-de-hgb424":
		"Von da an darf Gut, das nicht ankam, als verloren betrachtet werden: die Lieferfrist noch einmal, mindestens 20 Tage.",
	"claims.what-de-hgb439": "Klage (Verjährung).",
	"claims.what-de-hgb451f-apparent": "Anzeige äußerlich erkennbaren Schadens an Umzugsgut.",
	"claims.what-de-hgb451f-concealed": "Anzeige äußerlich nicht erkennbaren Schadens an Umzugsgut.",
	"claims.what-de-hgb377":
		"Zwischen Unternehmen: untersuchen und dem Verkäufer unverzüglich anzeigen; verdeckte Mängel, sobald sie sich zeigen.",
	"claims.what-de-bgb477":
		"Verbrauchsgüterkauf: Bis dahin wird vermutet, dass ein Mangel, der sich zeigt, schon bei der Übergabe vorlag.",
	"claims.what-nl-bw8-road": "Die gelesenen Artikel setzen keine Frist für eine Anzeige; der Vertrag tut es oft.",
	"claims.what-nl-bw8-road-suit": "Klage, innerhalb eines Jahres, das mit dem Tag nach der Ablieferung beginnt.",
	"claims.what-fr-l133-3": "Begründete Beanstandung (protestation motivée) an den Frachtführer.",
	"claims.what-fr-l224-65":
		"Anstelle der drei Tage, wo Verbraucher das Gut persönlich annahmen und der Frachtführer nicht zeigen kann, dass sie es prüfen konnten.",
	"claims.what-fr-l133-6": "Klage (erinnert, nicht gelesen).",
	"claims.what-fr-post-parcel":
		"Reklamation bei der Post. Der gelesene Text sagt nicht, ab wann: ab der Einlieferung genommen.",
	"claims.what-fr-post-parcel-lost": "Von da an gilt ein Paket, das nicht ankam, als verloren.",
	"claims.what-ch-or452": "Anzeige äußerlich nicht erkennbaren Schadens, sofort bei der Entdeckung: acht volle Tage.",
	"claims.what-ch-or454": "Klage (Verjährung).",
	"claims.what-uk-domestic":
		"Die Vertragsbedingungen bestimmen die Frist einer Anzeige; sie müssen gegenüber Verbrauchern angemessen sein (erinnert).",
	"claims.what-uk-cra-22":
		"Kurzes Recht von Verbrauchern, gekaufte Ware zurückzuweisen: 30 Tage, beginnend mit dem Tag danach.",
	"claims.what-us-nmfc-300135":
		"Meldung verdeckten Schadens mit der Bitte um Besichtigung, schriftlich bestätigt; lassen Sie Karton und Inhalt wie vorgefunden.",
	"claims.what-us-carmack-claim":
		"Schriftliche Reklamation mit einem Betrag; ein Vertrag darf nicht weniger als neun Monate geben.",
	"claims.what-us-carmack-suit":
		"Klage nach der schriftlichen Zurückweisung des Frachtführers; ein Vertrag darf nicht weniger als zwei Jahre geben.",
	"claims.what-us-370-5": "Der Frachtführer bestätigt die Reklamation schriftlich.",
	"claims.what-us-370-9": "Der Frachtführer zahlt, lehnt ab oder macht ein festes Angebot, schriftlich.",
};
