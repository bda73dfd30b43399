/** Délais des réclamations. Information générale : aucune phrase ne dit ce que quelqu’un doit. */
import type { ReportTexts } from "../report-texts.ts";

export const claims: ReportTexts["claims"] = {
	"claims.general":
		"Information générale, calculée à partir des dates et montants saisis ; pas un conseil juridique, et aucun avocat n’en répond.",
	"claims.prevails":
		"Le contrat de transport, le droit local impératif et le tribunal qui décide passent avant ; le droit applicable est ici votre choix.",
	"claims.outer-limits":
		"Les dates sont des limites extrêmes : agissez aussitôt, et gardez la preuve de l’envoi. Les jours fériés sont ceux de l’ensemble choisi ; les dates sont celles du lieu de livraison.",
	"claims.consequences-differ":
		"Ce qui suit une date manquée diffère : cela peut seulement déplacer qui doit prouver quelque chose, ou mettre fin à la réclamation. Chaque date dit lequel.",
	"claims.seller-apart":
		"Les droits d’un consommateur contre le vendeur courent à part de ces dates, et n’en sont pas diminués.",
	"claims.no-rule": "De ce régime, aucune règle pour cette sorte de dommage n’a été lue.",
	"claims.no-holidays":
		"Aucun jour férié n’était donné ; seuls les dimanches ou les fins de semaine ont donc été laissés de côté : les dates peuvent être trop tôt.",
	"claims.regions-differ":
		"Les jours fériés diffèrent entre les régions de ce pays : sans région, seuls ceux de tout le pays ont été laissés de côté.",
	"claims.other-damage": "Ces règles ne portent pas sur la sorte de dommage nommée : {rules}.",
	"claims.from-memory":
		"Une de ces règles est donnée de mémoire et n’a pas été lue : consultez-la avant de vous y fier.",
	"claims.reading-start-day-counts":
		"Si le droit du tribunal compte aussi le premier jour : le texte ne le dit pas, et ne fixe aucune façon de compter.",
	"claims.reading-sundays-count":
		"Si les dimanches comptent : le texte ne laisse de côté que les jours fériés, la pratique aussi les dimanches.",
	"claims.reading-day-after-posting-counts": "Si le délai commence le lendemain du dépôt et le comprend.",
	"claims.reading-saturday-rolls": "Si une fin un samedi est reportée aussi (une loi de 1963, de mémoire, non lue).",
	"claims.reading-at-once-on-discovery": "Aussitôt à la découverte : le nombre de jours n’est que la limite extrême.",
	"claims.reading-across-borders": "Si expéditeur et destinataire sont dans deux États.",
	"claims.reading-status-every-60-days": "Sans décision d’ici là : un mot sur l’état des choses, tous les 60 jours.",
	"claims.reading-doubtful-holiday": "Si ces jours comptent comme jours fériés, ce qui n’est pas établi : {dates}.",
	"claims.reading-suspended": "Si le délai a été suspendu de la réclamation à son rejet.",
	"claims.reading-suspended-documents":
		"Si le délai a été suspendu de la réclamation écrite à son rejet par écrit et à la restitution des pièces.",
	"claims.what-cmr-dmg-apparent": "Réserves à la livraison : indiquez de façon générale ce qui est avarié.",
	"claims.what-cmr-dmg-concealed":
		"Réserves par écrit pour une avarie non apparente ; dimanches et jours fériés ne comptent pas.",
	"claims.what-cmr-dmg-jointcheck":
		"Réserves par écrit après que les deux côtés ont constaté ensemble l’état de la marchandise, sur ce qui n’était pas apparent.",
	"claims.what-cmr-delay": "Réserve par écrit pour retard.",
	"claims.what-cmr-loss-presumed": "Dès lors, une marchandise qui n’est pas arrivée peut être considérée comme perdue.",
	"claims.what-cmr-suit": "Action en justice.",
	"claims.what-mc99-dmg": "Protestation par écrit pour avarie de marchandises, dès la découverte.",
	"claims.what-mc99-delay": "Protestation par écrit pour retard.",
	"claims.what-mc99-suit": "Action en justice ; une lettre de réclamation n’arrête pas le délai.",
	"claims.what-cim-apparent":
		"Faites dresser par le transporteur un procès-verbal de constatation avant l’acceptation de la marchandise.",
	"claims.what-cim-concealed":
		"Demandez le procès-verbal du transporteur dès que le dommage est découvert ; il faut montrer quand il est survenu.",
	"claims.what-cim-delay":
		"Réclamation pour retard. Le texte lu ne dit pas à partir de quand : pris à partir de l’acceptation.",
	"claims.what-cim-suit": "Action en justice.",
	"claims.what-upu-inquiry": "Réclamation de l’expéditeur auprès de la poste.",
	"claims.what-upu-reserve":
		"Dites sans délai à la poste qui distribue ce qui a été trouvé après une remise sans observation.",
	"claims.what-de-hgb438-1": "Avis à la livraison, assez précis, à la personne qui livre.",
	"claims.what-de-hgb438-2":
		"Avis d’un dommage non apparent. Qu’une fin un jour chômé soit reportée est une analogie : tenez-vous à la date sûre.",
	"claims.what-de-hgb438-3": "Avis de retard.",
	"claims.what-de-hgb424":
		"Dès lors, une marchandise qui n’est pas arrivée peut être considérée comme perdue : le délai de livraison encore une fois, au moins 20 jours.",
	"claims.what-de-hgb439": "Action en justice (prescription).",
	"claims.what-de-hgb451f-apparent": "Avis d’un dommage apparent à un déménagement.",
	"claims.what-de-hgb451f-concealed": "Avis d’un dommage non apparent à un déménagement.",
	"claims.what-de-hgb377":
		"Entre entreprises : examiner, et aviser le vendeur, sans retard ; pour les vices cachés, dès qu’ils se montrent.",
	"claims.what-de-bgb477":
		"Achat d’un consommateur : jusque-là, un défaut qui se montre est présumé avoir existé à la remise.",
	"claims.what-nl-bw8-road": "Les articles lus ne fixent pas de délai pour un avis ; le contrat le fait souvent.",
	"claims.what-nl-bw8-road-suit": "Action en justice, dans l’année qui commence le lendemain de la livraison.",
	"claims.what-fr-l133-3": "Protestation motivée au transporteur.",
	"claims.what-fr-l224-65":
		"Au lieu des trois jours, quand un consommateur a pris la marchandise en personne et que le transporteur ne peut montrer qu’elle a pu être vérifiée.",
	"claims.what-fr-l133-6": "Action en justice (de mémoire, non lu).",
	"claims.what-fr-post-parcel":
		"Réclamation à la poste. Le texte lu ne dit pas à partir de quand : pris à partir du dépôt.",
	"claims.what-fr-post-parcel-lost": "Dès lors, un colis qui n’est pas arrivé est tenu pour perdu.",
	"claims.what-ch-or452": "Avis d’un dommage non apparent, aussitôt à la découverte : huit jours pleins.",
	"claims.what-ch-or454": "Action en justice (prescription).",
	"claims.what-uk-domestic":
		"Les clauses du contrat décident du délai d’un avis ; elles doivent être équitables envers les consommateurs (de mémoire).",
	"claims.what-uk-cra-22":
		"Droit à court terme d’un consommateur de refuser la marchandise d’un achat : 30 jours à compter du lendemain.",
	"claims.what-us-nmfc-300135":
		"Signalement d’un dommage caché avec demande d’examen, confirmé par écrit ; gardez carton et contenu tels que trouvés.",
	"claims.what-us-carmack-claim": "Réclamation écrite avec un montant ; un contrat ne peut donner moins de neuf mois.",
	"claims.what-us-carmack-suit":
		"Action en justice après le rejet écrit du transporteur ; un contrat ne peut donner moins de deux ans.",
	"claims.what-us-370-5": "Le transporteur accuse réception de la réclamation par écrit.",
	"claims.what-us-370-9": "Le transporteur paie, refuse, ou fait une offre ferme, par écrit.",
};
