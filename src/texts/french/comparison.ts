/** Phrases de la comparaison : ce que disent deux constats côte à côte. Elles décrivent des relevés, jamais la part d’une personne. */
import type { ReportTexts } from "../report-texts.ts";

export const comparison: ReportTexts["comparison"] = {
	"comparison.tested-at-neither-end": "Cela n’a été contrôlé à aucun des deux bouts.",
	"comparison.not-tested-at-departure":
		"Cela n’a pas été contrôlé avant l’expédition ; il n’y a donc rien à quoi comparer.",
	"comparison.not-tested-on-arrival": "Cela n’a pas été contrôlé à l’arrivée. Ce n’est pas une défaillance.",
	"comparison.other-instrument":
		"Deux instruments différents ont été employés. Un relevé de cette sorte dépend de l’instrument ; les deux ne sont donc pas comparables.",
	"comparison.instrument-unknown":
		"À un bout, l’instrument n’est pas consigné. Un relevé de cette sorte n’est comparable qu’avec le même instrument.",
	"comparison.other-bench":
		"Les deux relevés viennent de bancs différents. Un relevé de cette sorte dépend de tout le montage ; les deux ne sont donc pas comparables.",
	"comparison.bench-unknown":
		"À un bout, le banc n’est pas consigné. Un relevé de cette sorte n’est comparable que sur le même banc.",
	"comparison.no-uncertainty-stated":
		"À un bout, l’exactitude de l’instrument n’est pas consignée ; les deux relevés ne sont donc pas comparables.",
	"comparison.no-exposure":
		"À un bout, la durée du comptage n’est pas consignée ; les taux ne sont donc pas comparables.",
	"comparison.other-exposure":
		"Les deux bouts ont compté sur des bases différentes ; les taux ne sont donc pas comparables.",
	"comparison.other-condition":
		"Le relevé a été pris dans une autre condition que celle que ce contrôle demande ; il n’y répond donc pas.",
	"comparison.other-unit":
		"Les deux bouts l’ont consigné dans des unités qui ne se convertissent pas l’une en l’autre.",
	"comparison.other-definition": "Les deux bouts ont consigné sous ce numéro des contrôles différents.",
	"comparison.other-driver": "Le banc est le même, mais pas le pilote ; les deux ne sont donc pas comparables.",
	"comparison.other-firmware":
		"Le banc est le même, mais pas le micrologiciel ; les deux ne sont donc pas comparables.",
	"comparison.other-ambient":
		"Le banc est le même, mais la pièce était plus chaude à un bout ; les deux ne sont donc pas comparables.",
	"comparison.within-margin": "La différence, avec son incertitude, se situe dans la marge de {margin}{unit}.",
	"comparison.equal": "Les deux relevés sont égaux.",
	"comparison.beyond-uncertainty":
		"Les relevés sont distants de {difference}{unit}, plus que l’incertitude de la différence, {uncertainty}{unit}.",
	"comparison.within-uncertainty":
		"Les relevés sont distants de {difference}{unit}, et l’incertitude de la différence est de {uncertainty}{unit}. Cela ne montre ni un changement, ni qu’il n’y en a pas.",
	"comparison.spread-unknown":
		"L’exactitude n’est pas consignée aux deux bouts, et les répétitions ne la montrent pas. On ne peut dire si la différence signifie quelque chose.",
	"comparison.rates-differ":
		"{departure} en {departureExposure} {unit} avant l’expédition, {arrival} en {arrivalExposure} {unit} à l’arrivée. Le hasard seul ne donnerait guère deux comptages aussi distants.",
	"comparison.rates-open":
		"{departure} en {departureExposure} {unit} avant l’expédition, {arrival} en {arrivalExposure} {unit} à l’arrivée. Des comptages aussi petits ne montrent pas si le taux a changé.",
	"comparison.shares-differ":
		"{departure} tentatives sur {departureTrials} ont réussi avant l’expédition, {arrival} sur {arrivalTrials} à l’arrivée. Le hasard seul ne donnerait guère deux résultats aussi distants.",
	"comparison.shares-open":
		"{departure} tentatives sur {departureTrials} ont réussi avant l’expédition, {arrival} sur {arrivalTrials} à l’arrivée. Si peu de tentatives ne montrent pas si la proportion a changé.",
	"comparison.scores-differ":
		"Les scores, {departure} avant l’expédition et {arrival} à l’arrivée, sont plus distants que leur dispersion.",
	"comparison.scores-equivalent": "Les scores, avec leur dispersion, sont à {margin} près les mêmes.",
	"comparison.scores-open":
		"Les scores, {departure} avant l’expédition et {arrival} à l’arrivée, sont dans leur dispersion. Cela ne montre ni un changement, ni qu’il n’y en a pas.",
	"comparison.no-spread":
		"Les passages ne montrent pas de dispersion à laquelle mesurer la différence. Davantage de passages à chaque bout le feraient.",
	"comparison.adjusted":
		"À elle seule, la différence ressortirait, mais {count} différences ont été testées ensemble, et parmi autant, une comme elle est attendue par hasard.",
	"comparison.nothing-found": "Rien n’a été trouvé, à aucun des deux bouts.",
	"comparison.found-on-arrival": "Trouvé à l’arrivée, et non avant l’expédition.",
	"comparison.found-at-departure-only": "Trouvé avant l’expédition, et non à l’arrivée.",
	"comparison.found-at-both": "Trouvé aux deux bouts.",
	"comparison.note-bursts":
		"Le test prend les événements comme indépendants. Si les erreurs viennent par salves, comptez chaque salve une fois.",
	"comparison.note-resolution-only":
		"D’un instrument, seul le plus petit pas est connu, non l’exactitude. L’incertitude est alors trop petite.",
	"comparison.note-bursts-counted": "Les événements venus ensemble ont été comptés comme une salve.",
	"comparison.note-few-runs":
		"Moins de quatre passages à un bout : la dispersion des passages est à peine connue, et seules de grandes différences peuvent se montrer.",
	"comparison.note-control": "Cela suppose que la pièce témoin elle-même est restée inchangée entre les deux bancs.",
	"comparison.ratio-within": "Le rapport, de {low} à {high} avec son incertitude, est à {percent} % près égal à un.",
	"comparison.ratio-differs": "Le rapport est de {ratio} et, avec son incertitude, de {low} à {high}, il exclut un.",
	"comparison.ratio-undecided":
		"Le rapport est de {ratio}, avec son incertitude de {low} à {high}. Cela ne montre ni un changement, ni qu’il n’y en a pas.",
	"comparison.ratio-open": "Une valeur ne se distingue pas de zéro ; leur rapport n’a donc pas de bornes.",
	"comparison.control-not-for-counts":
		"Les deux relevés viennent de bancs différents, et une pièce témoin ne rend comparables ni comptages ni démarrages.",
	"comparison.control-not-measured":
		"Les deux relevés viennent de bancs différents, et la pièce témoin n’a pas été mesurée sur les deux.",
	"comparison.control-other-bench":
		"La pièce témoin a été mesurée sur un autre banc que l’objet ; elle ne relie donc pas les deux.",
	"comparison.control-no-spread":
		"La pièce témoin a été mesurée, mais les passages ne montrent pas de dispersion à laquelle mesurer la différence. Davantage de passages sur chaque banc le feraient.",
	"comparison.control-within":
		"Rapporté à la pièce témoin, le rapport va de {low} à {high} et est à {percent} % près égal à un.",
	"comparison.control-differs":
		"Rapporté à la pièce témoin, qui montre de combien les bancs diffèrent, le rapport est de {ratio}, de {low} à {high} avec sa dispersion.",
	"comparison.control-undecided":
		"Rapporté à la pièce témoin, le rapport est de {ratio}, de {low} à {high} avec sa dispersion. Cela ne montre ni un changement, ni qu’il n’y en a pas.",
	"comparison.counter-rose": "Le compteur était à {departure} avant l’expédition et à {arrival} à l’arrivée.",
	"comparison.counter-same": "Le compteur était à {arrival} aux deux bouts.",
	"comparison.counter-fell":
		"Le compteur était à {departure} avant l’expédition et à {arrival} à l’arrivée. Un compteur de cette sorte ne redescend jamais : il a été remis à zéro, une pièce a été échangée, ou c’est un autre objet.",
	"comparison.counter-full": "Le compteur est là où il cesse de compter ; un pas ne peut donc pas se voir.",
	"comparison.outcome-compared": "Les deux constats ont été comparés contrôle par contrôle.",
	"comparison.outcome-identity-mismatch":
		"Des marques qui distinguent les objets diffèrent ; les deux constats nomment donc des objets différents. Tant que cela demeure, ce qui suit compare deux objets.",
	"comparison.outcome-no-departure": "Il n’y a pas de constat d’avant l’expédition ; rien ne peut donc être comparé.",
	"comparison.outcome-not-tested":
		"Rien n’a été contrôlé à l’arrivée. Ce n’est pas une défaillance ; comment l’objet fonctionne n’est pas encore connu.",
	"comparison.outcome-no-arrival": "Il n’y a pas encore de constat d’arrivée.",
	"comparison.outcome-work-before":
		"Un travail a été fait sur l’objet avant son premier contrôle à l’arrivée ; ce constat ne montre donc pas l’état dans lequel il est arrivé.",
	"comparison.outcome-state-conflict":
		"À l’arrivée, quelque chose était bon qui ne l’était pas avant l’expédition. Les deux constats ne s’accordent pas ; tous deux méritent donc d’être revus.",
	"comparison.outcome-moisture-hold":
		"De l’humidité a été vue. N’alimentez pas l’objet ; il doit d’abord sécher. Les contrôles faits avant disent peu.",
};
