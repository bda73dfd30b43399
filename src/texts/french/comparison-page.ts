/** Les deux bouts d’un voyage côte à côte. Ce qui est certain et ce qui ne l’est pas, et jamais pourquoi. */
import type { ReportTexts } from "../report-texts.ts";

export const comparisonPage: ReportTexts["comparisonPage"] = {
	"comparison-page.lead.compared":
		"Les deux bouts de ce voyage sont consignés. Voici ce qu’ils montrent, d’abord ce qui est certain, puis ce qui ne l’est pas.",
	"comparison-page.lead.reported":
		"Voici ce qui est conservé des deux bouts de ce voyage, d’abord ce qui est certain, puis ce qui ne l’est pas.",
	"comparison-page.reported-by.departure": "État au départ : rapporté par {party}, non consigné par son détenteur.",
	"comparison-page.reported-by.arrival": "État à l’arrivée : rapporté par {party}, non consigné par son détenteur.",
	"comparison-page.reported-by.bench": "État au banc : rapporté par {party}, non consigné par son détenteur.",
	"comparison-page.lead.identity-mismatch":
		"Les deux constats ne nomment pas la même carte. Tant que cela est ouvert, rien d’autre ne peut être comparé.",
	"comparison-page.lead.no-first-state":
		"Un bout de ce voyage ne dit pas d’état premier ; la plus grande part n’est donc pas comparable. Ce qui a été consigné reste consigné.",
	"comparison-page.lead.state-conflict":
		"À l’arrivée, quelque chose est meilleur qu’au départ. Cela n’arrive pas de soi-même ; l’un des deux constats est donc à revoir.",
	"comparison-page.lead.moisture-hold":
		"De l’humidité a été vue. La carte reste hors tension jusqu’à ce que cela soit éclairci, et les contrôles attendent.",
	"comparison-page.next.keep": "Gardez la carte, l’emballage et toutes les photos tels quels.",
	"comparison-page.next.own-record":
		"Un bout n’est que rapporté. Qui avait alors la carte peut encore consigner ce qu’il a vu lui-même, tant qu’il s’en souvient.",
	"comparison-page.next.settled": "Les deux côtés se sont mis d’accord. Gardez vos reçus.",
	"comparison-page.next.conflict":
		"Les deux côtés refont le contrôle qui est sorti meilleur, avec un autre câble, et comptent dix démarrages. Un constat se corrige par un nouveau qui le nomme, jamais par écrasement.",
	"comparison-page.next.stop":
		"Un signe d’arrêt est consigné : ne remettez pas la carte sous tension avant que les deux côtés en soient d’accord.",
	"comparison-page.next.moisture":
		"Gardez la carte hors tension. Photographiez ce qui est mouillé avant que cela sèche, puis parlez-vous.",
	"comparison-page.next.identity":
		"Les deux côtés regardent encore une fois le numéro de série et les marques, avec photos.",
	"comparison-page.next.second-platform":
		"Elle a été essayée dans un seul ordinateur. Un essai dans un second, d’un autre fabricant, dirait maintenant le plus, sauf s’il y a eu un signe d’arrêt.",
	"comparison-page.next.control":
		"Essayez au même endroit une autre pièce connue pour être bonne, avec les mêmes câbles : elle montre si l’ordinateur est en ordre.",
	"comparison-page.next.untested":
		"Certains contrôles ont été faits au départ et non à l’arrivée. Ceux qui ne demandent pas d’instrument sont les plus simples à ajouter maintenant.",
	"comparison-page.next.same-instrument":
		"Certaines valeurs ne sont comparables qu’avec le même instrument ou le même banc. Il y faut la carte de retour sur le banc où elle a été contrôlée.",
	"comparison-page.next.carrier":
		"Si le colis ou la carte est endommagé, dites-le au transporteur bientôt et par écrit. Le délai pour cela peut être court.",
	"comparison-page.next.all-well": "Les deux bouts concordent pour autant qu’ils ont été contrôlés. Gardez vos reçus.",
	"comparison-page.next.talk": "Les deux côtés lisent cette page ensemble ; elle est la même pour les deux.",
	"comparison-page.checks-apart":
		"Les relevés des deux constats sont côte à côte, pour que rien de consigné ne soit caché. Ce qui a changé ne peut en être tiré, pour la raison donnée plus haut.",
	"comparison-page.column.check": "Contrôle",
	"comparison-page.column.departure": "Au départ",
	"comparison-page.column.arrival": "À l’arrivée",
	"comparison-page.column.verdict": "Comparé",
	"comparison-page.verdict.differs": "changé",
	"comparison-page.verdict.equivalent": "pareil",
	"comparison-page.verdict.inconclusive": "ouvert",
	"comparison-page.verdict.not-comparable": "non comparable",
	"comparison-page.verdict.not-tested": "non contrôlé",
	"comparison-page.verdict.not-assessed": "non évalué",
	"comparison-page.direction.worse": "en moins bien",
	"comparison-page.direction.better": "en mieux",
	"comparison-page.direction.sideways": "ni mieux ni moins bien",
	"comparison-page.not-recorded": "non consigné",
	"comparison-page.untested.both": "Contrôlé à aucun des deux bouts",
	"comparison-page.untested.departure": "Non contrôlé au départ, seulement à l’arrivée",
	"comparison-page.untested.arrival": "Non contrôlé à l’arrivée, seulement au départ",
	"comparison-page.untested-kind.looked": "Regardé",
	"comparison-page.untested-kind.starts": "Démarrages et essais",
	"comparison-page.untested-kind.resistance": "Résistances",
	"comparison-page.untested-kind.voltage": "Tensions",
	"comparison-page.untested-kind.values": "Autres valeurs",
	"comparison-page.untested-kind.counted": "Compté",
	"comparison-page.untested-none": "Rien ne manque.",
	"comparison-page.certain.differs": "{check} : changé, {direction}.",
	"comparison-page.certain.bad-arrival": "{check} : hors limites à l’arrivée ; au départ, {before}.",
	"comparison-page.certain.point-arrival": "« {check} » : pas comme il se doit à l’arrivée ; au départ, {before}.",
	"comparison-page.certain.point-both": "« {check} » : pas comme il se doit aux deux bouts.",
	"comparison-page.certain.point-departure": "« {check} » : pas comme il se doit au départ.",
	"comparison-page.certain.bad-both": "{check} : hors limites aux deux bouts.",
	"comparison-page.certain.apart":
		"Chaque bout est comparé seul aux limites ; seule la taille d’une différence demande les mêmes moyens aux deux.",
	"comparison-page.certain.bad-departure": "{check} : hors limites au départ.",
	"comparison-page.certain.same": "Pareil aux deux bouts : {checks}.",
	"comparison-page.certain.good-both": "Dans les limites aux deux bouts, pour autant que contrôlé : {checks}.",
	"comparison-page.certain.same-board": "Le numéro de série est le même aux deux bouts.",
	"comparison-page.certain.states":
		"Ce que disent les constats de l’ensemble : « {left} » au départ, « {arrived} » à l’arrivée.",
	"comparison-page.certain.as-reported": "Le constat de ce qui a été rapporté dit : {words}",
	"comparison-page.certain.state-left": "Le constat fait au départ dit « {state} ».",
	"comparison-page.certain.state-left-reported": "Le constat de ce qui a été rapporté dit « {state} » au départ.",
	"comparison-page.certain.state-arrived": "Le constat fait à l’arrivée dit « {state} ».",
	"comparison-page.certain.state-arrived-reported": "Le constat de ce qui a été rapporté dit « {state} » à l’arrivée.",
	"comparison-page.certain.stop": "À l’arrivée, un signe d’arrêt a été noté : {signs}.",
	"comparison-page.certain.stop-point":
		"Pour {checks}, ce qui a été constaté à l’arrivée n’est pas comme il se doit. Cela vaut signe d’arrêt.",
	"comparison-page.certain.wet": "À l’arrivée, de l’humidité a été notée.",
	"comparison-page.certain.parcel-damage": "Un dommage à l’extérieur du colis a été noté à l’arrivée.",
	"comparison-page.before-point.proven-good": "comme il se doit",
	"comparison-page.before-point.held-as-tested": "comme il se doit, pour autant que contrôlé",
	"comparison-page.before-point.inconclusive": "pas clair",
	"comparison-page.before-point.none": "non contrôlé",
	"comparison-page.before.proven-good": "dans les limites",
	"comparison-page.before.held-as-tested": "dans les limites, pour autant que contrôlé",
	"comparison-page.before.inconclusive": "pas clair",
	"comparison-page.before.none": "non comparé à une limite",
	"comparison-page.uncertain.times":
		"Les heures indiquées se contredisent : quelque chose a été vu avant d’avoir pu être là. L’une d’elles est fausse, et rien ne montre laquelle.",
	"comparison-page.uncertain.better": "Meilleur à l’arrivée qu’au départ : {checks}.",
	"comparison-page.uncertain.tested-once": "Contrôlé à un seul bout : {checks}.",
	"comparison-page.uncertain.untested":
		"Contrôlés à aucun des deux bouts : {count} contrôles. Ils sont énumérés plus bas.",
	"comparison-page.uncertain.row": "{check} : {why}",
	"comparison-page.adjusted-for":
		"{count} différences de valeurs mesurées et de scores ont été testées ensemble. Chacune doit ressortir parmi toutes pour être dite un changement.",
	"comparison-page.first-state.excluded": "Ce qu’il exclut",
	"comparison-page.first-state.not-excluded": "Ce qu’il n’exclut pas",
	"comparison-page.first-state.grade": "Comme état premier : {grade}. {why}",
	"comparison-page.origin-text":
		"Chaque ligne nomme quelque chose qui peut être derrière un changement, et les constatations qu’elle explique mieux ou moins bien que les autres. Les constatations qui disent un même fait comptent une fois.",
	"comparison-page.origin.origin": "Peut être derrière",
	"comparison-page.origin.for": "S’accorde mieux",
	"comparison-page.origin.against": "S’accorde moins",
	"comparison-page.origin.support": "Ensemble",
	"comparison-page.origin.open": "Rien de ce qui a été trouvé jusqu’ici ne touche à : {origins}.",
	"comparison-page.origin.turns": "Sans cette constatation, une autre ligne serait en tête : {finding}",
	"comparison-page.missing.departure": "Au départ",
	"comparison-page.missing.transit": "En route",
	"comparison-page.missing.arrival": "À l’arrivée",
	"comparison-page.tests": "Essais qui diraient maintenant le plus",
	"comparison-page.disclaimer":
		"Cette page compare ce que deux personnes ont consigné. Elle apprécie des relevés, non des personnes. Si quelqu’un doit quelque chose n’est pas tranché ici. Information générale, pas un conseil juridique.",
	"comparison-page.record.departure": "constat de départ du {time}",
	"comparison-page.record.arrival": "constat d’arrivée du {time}",
	"comparison-page.record.bench": "constat de banc du {time}",
	"comparison-page.change.lost": "{check} : bon selon le {after}, pas bon selon le {before}. Entre les deux : {spans}.",
	"comparison-page.change.mended":
		"{check} : pas bon selon le {after}, bon selon le {before}. Entre les deux : {spans}.",
	"comparison-page.change.conflict":
		"{check} : pas bon selon le {after}, bon selon le {before}. Entre les deux, c’était en route ; l’un des deux est donc à revoir.",
	"comparison-page.change.first-seen":
		"{check} : pas bon selon le {before}, le premier à l’avoir contrôlé. Personne n’a consigné comment c’était avant.",
	"comparison-page.change.widened": "Un constat entre les deux ne l’a pas tranché ; l’endroit est donc large.",
	"comparison-page.span.stay": "chez {holder}",
	"comparison-page.span.transit": "en route",
	"comparison-page.span.nobody": "livré, mais pas encore en mains",
	"comparison-page.span.unrecorded": "un changement de mains dont personne n’a consigné l’heure",
	"comparison-page.imported": "lu dans un fichier",
	"comparison-page.reported-reading": "tel que rapporté",
};
