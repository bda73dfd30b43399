/** Der Entwurf einer Anzeige an den Frachtführer. */
import type { ReportTexts } from "../report-texts.ts";

export const notice: ReportTexts["notice"] = {
	"notice.blank": "__________",
	"notice.by-registered-letter": "Per Einschreiben",
	"notice.from": "Von: {name}, {address}",
	"notice.to": "An: {carrier}",
	"notice.date": "Datum: {blank}",
	"notice.subject": "Schadensanzeige",
	"notice.subject-loss": "Verlustanzeige",
	"notice.subject-delay": "Anzeige der Überschreitung der Lieferfrist",
	"notice.consignment":
		"Sendung: {tracking}, Absender {sender}, Empfänger {consignee}, übergeben {dispatched}, abgeliefert {delivered}, Rohgewicht {mass} kg.",
	"notice.goods": "Gut: {item}, Seriennummer {serial}.",
	"notice.says-apparent":
		"Wir zeigen an, dass dieses Gut beschädigt angekommen ist. Der Schaden war bei der Ablieferung äußerlich erkennbar.",
	"notice.says-both":
		"Wir zeigen an, dass dieses Gut beschädigt angekommen ist. Am Äußeren des Pakets war ein Schaden bei der Ablieferung erkennbar. Der Fehler des Gutes selbst zeigt sich erst im Betrieb.",
	"notice.says-not-apparent":
		"Wir zeigen an, dass dieses Gut beschädigt angekommen ist. Der Schaden war bei der Ablieferung äußerlich nicht erkennbar.",
	"notice.says-loss": "Wir zeigen an, dass dieses Gut nicht abgeliefert wurde.",
	"notice.says-delay": "Wir zeigen an, dass dieses Gut verspätet abgeliefert wurde.",
	"notice.found": "Gefunden wurde: {found}",
	"notice.said": "„{words}“",
	"notice.outer-seen": "Am Äußeren des Pakets wurde ein Schaden gesehen.",
	"notice.discovered": "Es wurde am {date} gefunden.",
	"notice.form-carrier-report":
		"Wir bitten Sie, vor der Annahme des Gutes eine Tatbestandsaufnahme über seinen Zustand zu errichten und uns eine Abschrift zu geben.",
	"notice.form-request-for-report":
		"Wir bitten Sie, eine Tatbestandsaufnahme über den Zustand des Gutes zu errichten und uns eine Abschrift zu geben.",
	"notice.form-confirmed-in-writing":
		"Hiermit bestätigen wir, was wir am {blank} telefonisch oder persönlich gemeldet haben. Wir bitten Sie, das Gut zu besichtigen.",
	"notice.form-written-claim-with-amount":
		"Dies ist eine schriftliche Reklamation. [49 CFR 370.3(b) verlangt bestimmte Worte: Lesen Sie sie nach und fügen Sie sie hier ein: {blank}]",
	"notice.amount": "Der geforderte Betrag ist {amount}.",
	"notice.amount-later": "Der Betrag wird genannt, sobald er bekannt ist.",
	"notice.kept": "Das Gut und die gesamte Verpackung werden aufbewahrt, wie sie vorgefunden wurden.",
	"notice.inspection": "Sie können sie besichtigen, auf Wunsch durch eine neutrale Person, am: {blank}.",
	"notice.signed": "{name}",
	"notice.sent-file": "Datei, die das Absenden zeigt",
	"notice.received-file": "Datei, die den Empfang zeigt",
	"notice.sent-proof": "Was die Absendung zeigt",
	"notice.received": "Eingegangen",
	"notice.received-not": "noch nicht bekannt",
	"notice.received-proof": "Was den Eingang zeigt",
	"notice.way.registered-letter": "per Einschreiben",
	"notice.way.letter": "per Brief",
	"notice.way.bailiff": "durch Gerichtsvollzieher",
	"notice.way.e-mail": "per E-Mail",
	"notice.way.carrier-form": "über ein Formular des Frachtführers",
	"notice.way.handed-over": "persönlich übergeben",
	"notice.way.telephone": "telefonisch, wie hier vermerkt",
};
