/** Phrases sur l’origine possible d’un défaut. Elles parlent de constatations sous une origine, jamais de la probabilité d’une origine, et jamais de la part d’une personne. */
import type { ReportTexts } from "../report-texts.ts";

export const origin: ReportTexts["origin"] = {
	"origin.missed-before-dispatch": "C’était là avant l’expédition et n’a pas été vu",
	"origin.transit-shock": "Un choc en route",
	"origin.transit-vibration": "Des vibrations en route",
	"origin.unseated": "Quelque chose est sorti de sa place",
	"origin.moisture": "L’humidité",
	"origin.receiver-handling": "Le déballage, la manipulation ou la première mise sous tension",
	"origin.set-up": "L’ordinateur ou le banc où il a été essayé",
	"origin.software-state": "Le logiciel ou les réglages",
	"origin.other-item": "C’est un autre objet",
	"origin.other-part": "Une autre pièce a lâché plus tard",
	"origin.intermittent": "Un défaut qui va et vient, aux deux bouts",
	"origin.record-in-doubt": "Un constat ne porte pas ce qu’il dit",
	"origin.none-of-these": "Rien de tout cela",
	"origin.support-supports": "les constatations s’y accordent mieux qu’aux autres",
	"origin.support-does-not-support": "les constatations s’y accordent moins bien qu’aux autres",
	"origin.support-neutral": "les constatations vont dans les deux sens",
	"origin.support-not-tested": "rien de ce qui a été trouvé jusqu’ici n’y touche",
	"origin.why-supports": "Faits qui s’y accordent mieux qu’aux autres : {countedFor}. Aucun ne s’y accorde moins bien.",
	"origin.why-does-not-support":
		"Faits qui s’y accordent moins bien qu’aux autres : {countedAgainst}. Aucun ne s’y accorde mieux.",
	"origin.why-neutral": "Faits qui s’y accordent mieux qu’aux autres : {countedFor} ; moins bien : {countedAgainst}.",
	"origin.why-not-tested": "Rien de ce qui a été cherché et trouvé, ou cherché et non trouvé, n’y touche.",
	"origin.why-ruled-out": "Une constatation ne lui laisse pas de place.",
	"origin.why-ratio-weighed":
		"D’après les nombres donnés, les constatations sont {ratio} fois aussi probables sous cette origine que sous les autres ensemble, pondérées comme indiqué.",
	"origin.why-ratio-best":
		"D’après les nombres donnés, les constatations sont {ratio} fois aussi probables sous cette origine que sous l’autre qui les explique le mieux.",
	"origin.why-ratio-unbounded":
		"D’après les nombres donnés, les constatations sont impossibles sous toute autre origine.",
	"origin.scale-none": "n’étaye pas l’une plus que l’autre",
	"origin.scale-weak": "étaye faiblement",
	"origin.scale-moderate": "étaye modérément",
	"origin.scale-moderately-strong": "étaye assez fortement",
	"origin.scale-strong": "étaye fortement",
	"origin.scale-very-strong": "étaye très fortement",
	"origin.scale-extremely-strong": "étaye extrêmement fortement",
	"origin.scale-other-weak": "étaye faiblement les autres",
	"origin.scale-other-moderate": "étaye modérément les autres",
	"origin.scale-other-moderately-strong": "étaye assez fortement les autres",
	"origin.scale-other-strong": "étaye fortement les autres",
	"origin.scale-other-very-strong": "étaye très fortement les autres",
	"origin.scale-other-extremely-strong": "étaye extrêmement fortement les autres",
	"origin.note-no-rule": "Pour la constatation {finding}, il n’y a ni règle ni nombre ; elle ne dit donc rien ici.",
	"origin.note-none-of-these":
		"Les probabilités données ne laissent rien à une origine à laquelle personne n’a pensé. Quelques pour cent le feraient.",
	"origin.caution-not-who":
		"Ceci dit quelles constatations s’accordent à quelle origine. Cela ne dit rien de la probabilité d’une origine, et ne tranche rien entre les parties.",
	"origin.caution-both-can-stand":
		"Une soudure qui a cédé sous un choc a pu être faible auparavant. Les deux peuvent être vrais ; l’un ne parle pas contre l’autre.",
	"origin.capped-judgement":
		"Des nombres qui reposent sur la seule appréciation ne portent pas de rapport supérieur à {cap}. Le mot est choisi comme pour {cap}.",
	"origin.capped-cases":
		"Les cas comptés ne portent pas de rapport supérieur à {cap}. Le mot est choisi comme pour {cap}.",
	"origin.test-informs": "On en attend {bits} bits d’information sur l’origine.",
	"origin.test-separates-one": "Cet essai départage deux des origines encore ouvertes.",
	"origin.test-separates": "Cet essai départage des origines encore ouvertes, {pairs} paires d’entre elles.",
	"origin.test-breaks-custody":
		"Cet essai change qui détient l’objet, ou ce qui peut encore se voir. Seulement si les deux côtés sont d’accord, et après tous les autres essais.",
	"origin.test-destructive":
		"Cet essai détruit ce qu’il examine. Seulement si les deux côtés sont d’accord, et en tout dernier.",
	"origin.finding-marks-differ": "Des marques qu’aucune réparation ne change diffèrent entre les deux constats.",
	"origin.finding-marks-agree": "Des marques qui distinguent deux objets concordent dans les deux constats.",
	"origin.finding-number-agrees":
		"Le numéro de série ou l’identifiant de l’appareil est le même aux deux bouts. Une étiquette seule peut être échangée : un autre objet n’est pas exclu par là.",
	"origin.finding-start-missed-before": "Un démarrage a échoué avant l’expédition.",
	"origin.finding-long-clean-test-before":
		"Avant l’expédition, il a passé de nombreux démarrages à froid et des heures en charge sans un raté.",
	"origin.finding-fault-at-repaired-spot": "Le défaut se trouve là où la réparation a eu lieu.",
	"origin.finding-fault-at-other-part": "Le défaut se trouve à une pièce que la réparation n’a pas touchée.",
	"origin.finding-old-damage-seen": "Une corrosion ou un dommage long à se former a été vu.",
	"origin.finding-parcel-damaged": "Le colis était endommagé à l’extérieur à son arrivée.",
	"origin.finding-indicator-tripped":
		"Un indicateur de choc ou d’inclinaison sur le colis s’était déclenché. À lui seul, ce n’est pas un dommage.",
	"origin.finding-shock-beyond-design":
		"Un enregistreur, dont la place dans le colis est connue, a relevé un choc au-delà de ce pour quoi l’emballage et la carte sont conçus.",
	"origin.finding-no-shock-recorded":
		"Un enregistreur a fonctionné pendant tout le parcours et n’a relevé aucun choc au-delà de la conception.",
	"origin.finding-new-mechanical-damage":
		"Un dommage mécanique a été vu à l’arrivée, qui n’était pas là avant l’expédition.",
	"origin.finding-pack-mark-matches": "Une marque dans l’emballage se trouve là où est le dommage de l’objet.",
	"origin.finding-cushion-intact": "L’emballage intérieur a été trouvé entier et en place.",
	"origin.finding-parts-loosened":
		"Des vis, l’équerre, le refroidisseur ou des tampons thermiques ont été trouvés desserrés ou déplacés.",
	"origin.finding-cooler-unsupported": "Un refroidisseur lourd a voyagé sans soutien.",
	"origin.finding-wetness-seen": "De l’humidité, des résidus ou un indicateur mouillé ont été vus.",
	"origin.finding-unpacking-filmed": "Le déballage a été filmé sans coupure.",
	"origin.finding-bag-found-open": "Le sachet intérieur a été trouvé coupé ou ouvert.",
	"origin.finding-lead-of-other-supply": "Un câble d’alimentation appartenant à une autre alimentation a été employé.",
	"origin.finding-reseating-cured": "Le remettre en place, et rien d’autre, y a remédié.",
	"origin.finding-good-at-first-then-bad": "Il a fonctionné à la première mise sous tension et a cessé peu après.",
	"origin.finding-good-on-arrival":
		"Il a été contrôlé à l’arrivée et était bon. Ce qui n’a grandi que plus tard n’est pas exclu par là.",
	"origin.finding-errors-grew-later":
		"Les erreurs étaient d’abord absentes et ont augmenté au fil de semaines d’usage.",
	"origin.finding-control-item-good":
		"Une autre pièce, connue pour être bonne, a fonctionné sur le même banc, avant et après.",
	"origin.finding-slot-limits": "L’emplacement ou l’ordinateur sur place ne peut pas plus que ce qui a été mesuré.",
	"origin.finding-good-on-other-computer": "Il a fonctionné dans un autre ordinateur après l’arrivée.",
	"origin.finding-bad-on-departure-bench": "Il montre le même défaut sur le banc où il était bon avant l’expédition.",
	"origin.finding-picture-before-driver": "Il donne une image avant le chargement du pilote, et cesse ensuite.",
	"origin.finding-other-driver-cured": "Un autre pilote ou un système propre y a remédié.",
	"origin.finding-some-starts-good": "À l’arrivée, certains démarrages ont réussi et d’autres non.",
	"origin.finding-better-on-arrival": "À l’arrivée, quelque chose était bon qui ne l’était pas avant l’expédition.",
	"origin.finding-record-contradicts-itself":
		"Un constat contient des heures ou des valeurs qui ne peuvent être vraies ensemble.",
	"origin.recorded-peak":
		"Un enregistreur de chocs sur l’objet (enregistrement {recording}, impact {impact}) a relevé {peakGn} gₙ en chemin ; l’emballage a été évalué avec une limite de {limitGn} gₙ. Les enregistrements ne sont pas scellés.",
	"origin.recorded-peak-within-design":
		"Un enregistreur de chocs sur l’objet (enregistrement {recording}, impact {impact}) a relevé {peakGn} gₙ en chemin ; l’emballage a été évalué avec une limite de {limitGn} gₙ. Cela équivaut à une chute de {lowM} à {highM} m, dans les {designM} m pour lesquels un emballage est évalué sur ce trajet. Les enregistrements ne sont pas scellés.",
	"origin.recorded-drop":
		"Un enregistreur de chocs dans le colis (enregistrement {recording}, impact {impact}) a relevé en chemin ce que produit une chute de {lowM} à {highM} m ; l’emballage protège jusqu’à {protectedM} m. Les enregistrements ne sont pas scellés.",
	"origin.recorded-board":
		"D’après un enregistreur de chocs sur l’objet (enregistrement {recording}, impact {impact}), la carte a oscillé en chemin plus loin que ne le permet la règle sur les cartes. Les enregistrements ne sont pas scellés.",
	"origin.recorded-none":
		"Un enregistreur de chocs sur l’objet (enregistrement {recording}) a fonctionné tout le trajet et n’a relevé aucun choc au-delà de ce pour quoi l’emballage et la carte ont été évalués. Les enregistrements ne sont pas scellés.",
	"origin.recorder-silent-unread":
		"On ne sait pas si un choc au-delà de la conception a été relevé : l’enregistrement {recording} n’a pas encore été lu.",
	"origin.recorder-silent-no-pack":
		"On ne sait pas si un choc au-delà de la conception a été relevé : aucun emballage n’a été scellé auquel comparer l’enregistrement {recording}.",
	"origin.recorder-silent-clock":
		"On ne sait pas si un choc au-delà de la conception a été relevé en chemin : personne n’a noté l’horloge de l’enregistrement {recording}, ou de combien elle peut s’écarter.",
	"origin.recorder-silent-no-line":
		"On ne sait pas si un choc au-delà de la conception a été relevé en chemin : les constats ne disent pas quand le trajet de l’enregistrement {recording} a commencé et fini.",
	"origin.recorder-silent-elsewhere":
		"L’enregistrement {recording} contient un choc au-delà de la conception, mais d’après son horloge il peut aussi bien se situer avant ou après le trajet.",
	"origin.recorder-silent-open":
		"On ne sait pas si un choc au-delà de la conception a été relevé : l’enregistrement {recording} en contient un dont les chiffres vont des deux côtés, ou qui ne peut être comparé à l’emballage depuis la place de l’enregistreur.",
	"origin.recorder-silent-phone":
		"L’enregistrement {recording} ne contient aucun choc au-delà de la conception, mais un téléphone ne montre pas qu’il n’y en a pas eu.",
	"origin.recorder-silent-place":
		"L’enregistrement {recording} ne contient aucun choc au-delà de la conception, mais depuis la place de l’enregistreur il ne montre pas qu’il n’y en a pas eu sur l’objet.",
	"origin.recorder-silent-axes":
		"L’enregistrement {recording} ne contient aucun choc au-delà de la conception, mais avec moins de trois axes il ne montre pas qu’il n’y en a pas eu.",
	"origin.recorder-silent-part":
		"L’enregistrement {recording} ne contient aucun choc au-delà de la conception, mais il ne couvre pas tout le trajet.",
	"origin.recorder-silent-gaps":
		"L’enregistrement {recording} ne contient aucun choc au-delà de la conception, mais des durées y sont sans mesures.",
	"origin.recorder-silent-slow":
		"L’enregistrement {recording} ne contient aucun choc au-delà de la conception, mais il a mesuré trop lentement pour les voir tous.",
	"origin.recorder-silent-range":
		"L’enregistrement {recording} ne contient aucun choc au-delà de la conception, mais il n’est pas montré que sa plage et son seuil couvrent la limite.",
	"origin.recorder-silent-kept":
		"Les chocs gardés de l’enregistrement {recording} ne dépassent pas la conception, mais il en contient plus qu’on n’en garde.",

	"origin.absent-new-mechanical-damage": "Aucun nouveau dommage mécanique n’a été trouvé à l’arrivée.",
	"origin.absent-pack-mark-matches": "Aucune marque dans l’emballage n’a été trouvée là où est le dommage de l’objet.",
	"origin.absent-parts-loosened":
		"Aucune vis, équerre, aucun refroidisseur ni tampon thermique n’a été trouvé desserré ou déplacé.",
	"origin.absent-wetness-seen": "Ni humidité, ni résidu, ni indicateur mouillé n’a été trouvé.",
	"origin.absent-reseating-cured": "Le remettre en place n’y a pas remédié.",
	"origin.absent-control-item-good":
		"Une autre pièce, connue pour être bonne, n’a pas fonctionné non plus sur le même banc.",
	"origin.absent-good-on-other-computer": "Il n’a pas fonctionné non plus dans un autre ordinateur.",
	"origin.absent-other-driver-cured": "Un autre pilote ou un système propre n’y a pas remédié.",
	"origin.test-other-computer":
		"Essayez-le dans un second ordinateur d’un autre fabricant, si aucun signe d’arrêt n’a été vu.",
	"origin.test-control-item": "Essayez une autre pièce, connue pour être bonne, sur le même banc, avant et après.",
	"origin.test-reseat": "Hors tension, remettez-le en place. Ne changez rien d’autre, et notez ce qui se passe.",
	"origin.test-counted-starts": "Comptez dix démarrages à froid et notez chacun.",
	"origin.test-photos-of-same-place":
		"Photographiez-le de tous les côtés et posez les photos à côté de celles d’avant l’envoi : un dommage est-il nouveau ?",
	"origin.test-marks-in-pack":
		"Cherchez dans l’emballage un creux ou un calage écrasé, et à quel endroit de l’objet il se trouvait.",
	"origin.test-other-driver": "Essayez un autre pilote sur un système propre.",
	"origin.test-identity-marks":
		"Comparez le numéro de série, l’identifiant de l’appareil, la masse et les marques naturelles.",
	"origin.test-original-files": "Mettez les fichiers d’origine et leurs heures à côté du constat.",
	"origin.test-screws-and-pads":
		"Cherchez des vis desserrées, des tampons thermiques déplacés et des endroits frottés, sans rien ouvrir.",
	"origin.test-which-part": "Trouvez à quelle pièce appartiennent les erreurs, et si la réparation l’a touchée.",
	"origin.test-departure-bench": "Refaites les contrôles de départ sur le banc qui les a faits.",
	"origin.test-x-ray-of-joints": "Faites radiographier les soudures.",
	"origin.test-cut-and-dye": "Faites imprégner de colorant et séparer les soudures dans un laboratoire.",
};
