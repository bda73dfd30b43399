/** Was E-Mails sagen. Die Begriffe des Frachtrechts stammen aus dem Gedächtnis und wurden an keiner amtlichen Übersetzung geprüft. */
import type { ReportTexts } from "../report-texts.ts";

export const mailText: ReportTexts["mailText"] = {
	"mail.hello": "Guten Tag {name},",
	"mail.hello-nobody": "Guten Tag,",
	"mail.subject.link-departure": "{shop}: Bitte halten Sie den Zustand vor dem Versand fest: {item}",
	"mail.subject.link-arrival": "{shop}: Bitte halten Sie den Zustand bei der Ankunft fest: {item}",
	"mail.subject.link-bench": "{shop}: Bitte halten Sie den Zustand fest: {item}",
	"mail.subject.link-settle": "{shop}: Ihr Auftrag zum Lesen und Antworten: {item}",
	"mail.subject.link-reader": "{shop}: ein Auftrag zum Lesen: {item}",
	"mail.subject.code": "{shop}: ein Code",
	"mail.subject.reminder": "{shop}: eine Erinnerung: {item}",
	"mail.subject.receipt": "{shop}: der Beleg eines versiegelten Protokolls: {item}",
	"mail.subject.sealed": "{item}: Die andere Seite hat etwas versiegelt",
	"mail.subject.period": "{item}: Ein Termin für eine Reklamation rückt näher, {date}",
	"mail.link-departure":
		"{shop} bittet Sie, den Zustand von {item} festzuhalten, bevor Sie das Gerät absenden. Die Adresse unten führt Sie hindurch. Ein Telefon genügt, ein Konto ist nicht nötig. Beginnen Sie, bevor Sie es verpacken.",
	"mail.link-arrival":
		"{shop} bittet Sie, den Zustand von {item} festzuhalten, wenn das Gerät bei Ihnen ankommt. Die Adresse unten führt Sie hindurch. Ein Telefon genügt, ein Konto ist nicht nötig. Öffnen Sie die Adresse, bevor Sie das Paket öffnen.",
	"mail.link-bench": "{shop} bittet Sie, den Zustand von {item} festzuhalten. Die Adresse unten führt Sie hindurch.",
	"mail.link-settle":
		"Hinter der Adresse unten steht alles, was zu {item} versiegelt wurde. Dort können Sie antworten.",
	"mail.link-reader": "Hinter der Adresse unten steht, was zu {item} versiegelt wurde. Sie dient nur zum Lesen.",
	"mail.link-code":
		"Sie brauchen außerdem einen Code aus sechs Ziffern. {shop} gibt ihn Ihnen auf einem anderen Weg, etwa am Telefon oder als Textnachricht, damit niemand hineinkommt, der nur eines von beiden findet.",
	"mail.link-until":
		"Die Adresse gilt bis {time}. Wenn frühere E-Mails Ihnen eine andere Adresse für dasselbe brachten, gilt nur die neueste.",
	"mail.code": "Dies ist der Code, der Ihnen angekündigt wurde:",
	"mail.code-text":
		"Er gehört zu einer Adresse, die {shop} auf einem anderen Weg schickt. Geben Sie ihn niemandem. Wenn Sie von keiner solchen Adresse wissen, tun Sie nichts.",
	"mail.reminder-departure":
		"Vor einigen Tagen bat {shop} Sie, den Zustand von {item} festzuhalten, bevor Sie das Gerät absenden. Bisher ist nichts gekommen.",
	"mail.reminder-arrival":
		"Vor einigen Tagen bat {shop} Sie, den Zustand von {item} festzuhalten, wenn das Gerät bei Ihnen ankommt. Bisher ist nichts gekommen. Ein frühes Protokoll sagt mehr über den Transport als ein spätes.",
	"mail.reminder-bench":
		"Vor einigen Tagen bat {shop} Sie, den Zustand von {item} festzuhalten. Bisher ist nichts gekommen.",
	"mail.reminder-settle":
		"Vor einigen Tagen gab {shop} Ihnen eine Adresse, unter der Sie Ihren Auftrag zu {item} lesen und beantworten können.",
	"mail.reminder-reader":
		"Vor einigen Tagen gab {shop} Ihnen eine Adresse, unter der Sie einen Auftrag zu {item} lesen können.",
	"mail.reminder-new":
		"Dies ist die neue Adresse; die frühere gilt nicht mehr. Der Code ist der, den Sie bekommen haben.",
	"mail.reminder-open":
		"Sie haben sie schon einmal geöffnet: Machen Sie auf dem Gerät weiter, auf dem Sie das taten, oder öffnen Sie die Adresse aus unserer früheren E-Mail.",
	"mail.reminder-done":
		"Wenn Sie {shop} inzwischen Bescheid gegeben haben oder {item} noch nicht bei Ihnen ist, tun Sie nichts.",
	"mail.receipt":
		"Angehängt ist der Beleg des Protokolls zu {item}, das am {time} versiegelt wurde. Bewahren Sie ihn auf: Mit ihm kann jeder ohne die Werkstatt prüfen, was versiegelt wurde und dass es im signierten Logbuch der Werkstatt steht.",
	"mail.receipt-by-hand":
		"Hiermit kommt der Beleg des Protokolls zu {item}, das am {time} versiegelt wurde. Bewahren Sie ihn auf: Mit ihm kann jeder ohne die Werkstatt prüfen, was versiegelt wurde und dass es im signierten Logbuch der Werkstatt steht.",
	"mail.receipt-how": "Wie man ihn prüft, steht unter {address}; dafür ist kein Konto nötig.",
	"mail.fingerprint": "Der Fingerabdruck:",
	"mail.sealed-record-departure": "Die andere Seite hat am {time} den Zustand von {item} vor dem Versand versiegelt.",
	"mail.sealed-record-arrival": "Die andere Seite hat am {time} den Zustand von {item} bei der Ankunft versiegelt.",
	"mail.sealed-record-bench": "Die andere Seite hat am {time} den Zustand von {item} auf der Werkbank versiegelt.",
	"mail.sealed-position": "Die andere Seite hat am {time} eine Stellungnahme zu {item} versiegelt.",
	"mail.sealed-settlement": "Die andere Seite hat am {time} einen Schritt zu einer Einigung über {item} versiegelt.",
	"mail.sealed-where": "Es steht unter",
	"mail.sealed-how":
		"Ein Gerät, auf dem Sie unseren Link geöffnet haben, zeigt es. Wenn Sie keines haben, bitten Sie {shop} um einen Link.",
	"mail.period":
		"Ein Termin zu {item}, Teilstrecke {leg}: {what} Spätestens {date} ({left}). {article}. Dies ist eine allgemeine Angabe nach einem Text, der sich geändert haben kann, keine Rechtsberatung. Fragen Sie jemanden, der Sie beraten darf, wenn es darauf ankommt.",
	"mail.period-from-memory":
		"Die Regel wurde aus dem Gedächtnis notiert und nicht im Text gelesen: Prüfen Sie sie, bevor Sie sich darauf verlassen.",
	"mail.period-suggested": "Das Frachtrecht ist das, was das Programm vorschlägt; gewählt hat es noch niemand.",
	"mail.period-where": "Wie gezählt wurde, und ein Entwurf einer Anzeige stehen unter",
	"mail.order": "Auftrag {order}",
	"mail.answer-shop": "In dieser E-Mail geht es um einen Auftrag bei {shop}. Fragen gehen dorthin.",
	"mail.checkpoint":
		"Zum Aufbewahren: Als diese E-Mail geschrieben wurde ({time}), hatte das signierte Logbuch {origin} {size} Einträge, und seine Wurzel war",
	"mail.checkpoint-why":
		"Mit diesen Zeilen kann jeder später prüfen, dass das Logbuch noch mit denselben Einträgen beginnt.",
	"mail.period-form": "Form: {form}",
	"mail.period-who-sender-or-consignee":
		"Nach dem Text, der gelesen wurde, können es Absender und Empfänger jeweils tun ({document}).",
	"mail.period-who-sender-unless-waived":
		"Nach dem Text, der gelesen wurde, kann es der Absender tun, außer er hat das Recht schriftlich dem Empfänger überlassen ({document}).",
	"mail.period-who-not-read":
		"Für dieses Frachtrecht wurde kein Text darüber gelesen, wer es tun kann. Absender und Empfänger können beide eine Anzeige schicken, damit keine fehlt.",
	"mail.period-you-sender": "Auf dieser Teilstrecke sind Sie der Absender.",
	"mail.period-you-consignee": "Auf dieser Teilstrecke sind Sie der Empfänger, an den es geschickt wurde.",
	"mail.period-agree": "Stimmen Sie mit {shop} ab, wer von Ihnen es tut, damit es getan wird.",
};
