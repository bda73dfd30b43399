/** Le projet d’un avis au transporteur. */
import type { ReportTexts } from "../report-texts.ts";

export const notice: ReportTexts["notice"] = {
	"notice.blank": "__________",
	"notice.by-registered-letter": "Par lettre recommandée",
	"notice.from": "De : {name}, {address}",
	"notice.to": "À : {carrier}",
	"notice.date": "Date : {blank}",
	"notice.subject": "Protestation pour avarie",
	"notice.subject-loss": "Avis de perte",
	"notice.subject-delay": "Protestation pour retard",
	"notice.consignment":
		"Envoi : {tracking}, expéditeur {sender}, destinataire {consignee}, remis le {dispatched}, livré le {delivered}, poids brut {mass} kg.",
	"notice.goods": "Marchandise : {item}, numéro de série {serial}.",
	"notice.says-apparent":
		"Nous vous avisons que cette marchandise est arrivée avariée. L’avarie était apparente à la livraison.",
	"notice.says-both":
		"Nous vous avisons que cette marchandise est arrivée avariée. L’extérieur du colis portait un dommage apparent à la livraison. Le défaut de la marchandise elle-même n’apparaît qu’à l’usage.",
	"notice.says-not-apparent":
		"Nous vous avisons que cette marchandise est arrivée avariée. L’avarie n’était pas apparente à la livraison.",
	"notice.says-loss": "Nous vous avisons que cette marchandise n’a pas été livrée.",
	"notice.says-delay": "Nous vous avisons que cette marchandise a été livrée en retard.",
	"notice.found": "Ce qui a été trouvé : {found}",
	"notice.said": "« {words} »",
	"notice.outer-seen": "Un dommage à l’extérieur du colis a été vu.",
	"notice.discovered": "Cela a été trouvé le {date}.",
	"notice.form-carrier-report":
		"Nous vous prions de dresser, avant l’acceptation de la marchandise, un procès-verbal de constatation de son état, et de nous en remettre une copie.",
	"notice.form-request-for-report":
		"Nous vous prions de dresser un procès-verbal de constatation de l’état de la marchandise, et de nous en remettre une copie.",
	"notice.form-confirmed-in-writing":
		"Ceci confirme ce que nous avons signalé le {blank} par téléphone ou en personne. Nous vous prions d’examiner la marchandise.",
	"notice.form-written-claim-with-amount":
		"Ceci est une réclamation écrite. [49 CFR 370.3(b) demande certains mots : lisez-le et ajoutez-les ici : {blank}]",
	"notice.amount": "Le montant réclamé est de {amount}.",
	"notice.amount-later": "Le montant sera indiqué dès qu’il sera connu.",
	"notice.kept": "La marchandise et tout l’emballage sont gardés tels qu’ils ont été trouvés.",
	"notice.inspection": "Vous pouvez les examiner, si vous le souhaitez par une personne neutre, le : {blank}.",
	"notice.signed": "{name}",
	"notice.sent-file": "Fichier qui montre l’envoi",
	"notice.received-file": "Fichier qui montre la réception",
	"notice.sent-proof": "Ce qui montre l’envoi",
	"notice.received": "Reçu",
	"notice.received-not": "pas encore connu",
	"notice.received-proof": "Ce qui montre la réception",
	"notice.way.registered-letter": "par lettre recommandée",
	"notice.way.letter": "par lettre",
	"notice.way.bailiff": "par huissier",
	"notice.way.e-mail": "par courriel",
	"notice.way.carrier-form": "par un formulaire du transporteur",
	"notice.way.handed-over": "remis en main propre",
	"notice.way.telephone": "par téléphone, comme noté ici",
};
