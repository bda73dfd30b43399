/** Ce que disent les courriels. Les termes du droit du transport viennent de mémoire, sans contrôle sur une traduction officielle. */
import type { ReportTexts } from "../report-texts.ts";

export const mailText: ReportTexts["mailText"] = {
	"mail.hello": "Bonjour {name},",
	"mail.hello-nobody": "Bonjour,",
	"mail.subject.link-departure": "{shop} : veuillez noter l’état avant le départ : {item}",
	"mail.subject.link-arrival": "{shop} : veuillez noter l’état à l’arrivée : {item}",
	"mail.subject.link-bench": "{shop} : veuillez noter l’état : {item}",
	"mail.subject.link-settle": "{shop} : votre commande, à lire et à laquelle répondre : {item}",
	"mail.subject.link-reader": "{shop} : une commande à lire : {item}",
	"mail.subject.code": "{shop} : un code",
	"mail.subject.reminder": "{shop} : un rappel : {item}",
	"mail.subject.receipt": "{shop} : le reçu d’un constat scellé : {item}",
	"mail.subject.sealed": "{item} : l’autre côté a scellé quelque chose",
	"mail.subject.period": "{item} : une échéance pour une réclamation approche, {date}",
	"mail.link-departure":
		"{shop} vous demande de noter l’état de votre appareil ({item}) avant de l’envoyer. L’adresse ci-dessous vous guide. Un téléphone suffit ; aucun compte n’est nécessaire. Commencez avant de l’emballer.",
	"mail.link-arrival":
		"{shop} vous demande de noter l’état de votre appareil ({item}) quand il vous parvient. L’adresse ci-dessous vous guide. Un téléphone suffit ; aucun compte n’est nécessaire. Ouvrez l’adresse avant d’ouvrir le colis.",
	"mail.link-bench": "{shop} vous demande de noter l’état de votre appareil ({item}). L’adresse ci-dessous vous guide.",
	"mail.link-settle":
		"Derrière l’adresse ci-dessous se trouve tout ce qui a été scellé sur votre appareil ({item}). Vous pouvez y répondre.",
	"mail.link-reader":
		"Derrière l’adresse ci-dessous se trouve ce qui a été scellé sur un appareil ({item}). Elle ne sert qu’à lire.",
	"mail.link-code":
		"Il vous faut aussi un code de six chiffres. {shop} vous le donne par une autre voie, comme le téléphone ou un message texte, pour que personne n’entre en ne trouvant qu’un des deux.",
	"mail.link-until":
		"L’adresse vaut jusqu’au {time}. Si des courriels précédents vous ont apporté une autre adresse pour la même chose, seule la plus récente vaut.",
	"mail.code": "Voici le code qui vous a été annoncé :",
	"mail.code-text":
		"Il va avec une adresse que {shop} envoie par une autre voie. Ne le donnez à personne. Si vous ne connaissez pas une telle adresse, ne faites rien.",
	"mail.reminder-departure":
		"Il y a quelques jours, {shop} vous a demandé de noter l’état de votre appareil ({item}) avant de l’envoyer. Rien n’est encore venu.",
	"mail.reminder-arrival":
		"Il y a quelques jours, {shop} vous a demandé de noter l’état de votre appareil ({item}) quand il vous parvient. Rien n’est encore venu. Un constat fait tôt en dit plus sur le transport qu’un constat fait plus tard.",
	"mail.reminder-bench":
		"Il y a quelques jours, {shop} vous a demandé de noter l’état de votre appareil ({item}). Rien n’est encore venu.",
	"mail.reminder-settle":
		"Il y a quelques jours, {shop} vous a donné une adresse pour lire votre commande ({item}) et y répondre.",
	"mail.reminder-reader": "Il y a quelques jours, {shop} vous a donné une adresse pour lire une commande ({item}).",
	"mail.reminder-new":
		"Voici la nouvelle adresse ; la précédente ne vaut plus. Le code est celui qui vous a été donné.",
	"mail.reminder-open":
		"Vous l’avez déjà ouverte : continuez sur l’appareil avec lequel vous l’avez fait, ou ouvrez l’adresse de notre courriel précédent.",
	"mail.reminder-done":
		"Si vous avez prévenu {shop} entre-temps, ou si l’appareil ({item}) ne vous est pas encore parvenu, ne faites rien.",
	"mail.receipt":
		"Ci-joint le reçu du constat sur l’appareil ({item}), scellé le {time}. Gardez-le : avec lui, chacun peut vérifier sans l’atelier ce qui a été scellé, et que cela figure au journal signé de l’atelier.",
	"mail.receipt-by-hand":
		"Avec ceci vient le reçu du constat sur l’appareil ({item}), scellé le {time}. Gardez-le : avec lui, chacun peut vérifier sans l’atelier ce qui a été scellé, et que cela figure au journal signé de l’atelier.",
	"mail.receipt-how": "La manière de le vérifier est dite à {address} ; aucun compte n’est nécessaire.",
	"mail.fingerprint": "Son empreinte :",
	"mail.sealed-record-departure": "L’autre côté a scellé le {time} l’état de l’appareil ({item}) avant le départ.",
	"mail.sealed-record-arrival": "L’autre côté a scellé le {time} l’état de l’appareil ({item}) à l’arrivée.",
	"mail.sealed-record-bench": "L’autre côté a scellé le {time} l’état de l’appareil ({item}) à l’établi.",
	"mail.sealed-position": "L’autre côté a scellé le {time} une position sur l’appareil ({item}).",
	"mail.sealed-settlement": "L’autre côté a scellé le {time} un pas vers un accord sur l’appareil ({item}).",
	"mail.sealed-where": "Cela se trouve à",
	"mail.sealed-how":
		"Un appareil sur lequel vous avez ouvert notre lien le montre. Si vous n’en avez pas, demandez un lien à {shop}.",
	"mail.period":
		"Une échéance pour l’appareil ({item}), trajet {leg} : {what} Au plus tard le {date} ({left}). {article}. Ceci est une information générale tirée d’un texte qui peut avoir changé, et non un conseil juridique. Demandez à quelqu’un qui a le droit de vous conseiller quand cela compte.",
	"mail.period-from-memory":
		"La règle a été notée de mémoire et non lue dans son texte : vérifiez-la avant de vous y fier.",
	"mail.period-suggested": "Le droit du transport est celui que le programme propose ; personne ne l’a encore choisi.",
	"mail.period-where": "La manière de compter et un projet d’avis se trouvent à",
	"mail.order": "Commande {order}",
	"mail.answer-shop": "Ce courriel concerne une commande auprès de {shop}. Les questions vont là.",
	"mail.checkpoint":
		"À garder : quand ce courriel a été écrit ({time}), le journal signé {origin} avait {size} entrées, et sa racine était",
	"mail.checkpoint-why":
		"Avec ces lignes, chacun peut vérifier plus tard que le journal commence encore par les mêmes entrées.",
	"mail.period-form": "Forme : {form}",
	"mail.period-who-sender-or-consignee":
		"D’après le texte qui a été lu, l’expéditeur et le destinataire peuvent chacun le faire ({document}).",
	"mail.period-who-sender-unless-waived":
		"D’après le texte qui a été lu, l’expéditeur peut le faire, à moins qu’il n’ait cédé ce droit par écrit au destinataire ({document}).",
	"mail.period-who-not-read":
		"Pour ce droit du transport, aucun texte sur qui peut le faire n’a été lu. L’expéditeur et le destinataire peuvent tous deux envoyer un avis, pour qu’aucun ne manque.",
	"mail.period-you-sender": "Sur ce trajet, vous êtes l’expéditeur.",
	"mail.period-you-consignee": "Sur ce trajet, vous êtes le destinataire, à qui il a été envoyé.",
	"mail.period-agree": "Convenez avec {shop} de qui de vous deux le fait, pour que ce soit fait.",
};
