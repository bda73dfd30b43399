/** Ce qui se dit des emballages : chutes, calages, électricité statique, condensation. */
import type { ReportTexts } from "../report-texts.ts";

export const packaging: ReportTexts["packaging"] = {
	"shock.points-not-rising": "Les points ne sont pas dans l’ordre croissant du temps.",
	"drop.mass-above": "Le tableau s’arrête au-dessous de {massKg} kg.",
	"drop.too-large": "Le tableau couvre les colis dont le plus grand côté est inférieur à {largestM} m.",
	"drop.per-drop":
		"Les centiles mesurés valent par chute, non par voyage. Un voyage compte plusieurs chutes ; il les dépasse donc plus souvent.",
	"packaging.no-cushion": "La face {face} n’a pas de calage.",
	"packaging.short":
		"Sur cette face, le pic est de {peakGn} gₙ là où {limitGn} gₙ sont admis ; même le meilleur bord de sa bande, {lowGn} gₙ, est de trop.",
	"packaging.short-within-band":
		"Sur cette face, le pic est de {peakGn} gₙ là où {limitGn} gₙ sont admis. La bande de {lowGn} à {highGn} gₙ descend sous la limite ; cela peut donc tenir, mais ce n’est pas montré.",
	"packaging.pad-too-large":
		"Sur cette face, le pic est de {peakGn} gₙ là où {limitGn} gₙ sont admis. Le plot est trop grand pour le poids : à cette contrainte, aucune épaisseur n’aide.",
	"packaging.floor-short":
		"Quelle que soit la mousse : à cette épaisseur, aucun calage ne peut rester sous {peakGn} gₙ, et {limitGn} gₙ sont admis.",
	"packaging.crushed":
		"La mousse est complètement écrasée à cette chute : le pic dépasse ce que son modèle peut donner, et {limitGn} gₙ sont admis.",
	"packaging.foam-unknown": "La mousse n’est pas connue ; on ne peut donc dire que son plancher de {peakGn} gₙ.",
	"packaging.outside-range":
		"Le pic serait de {peakGn} gₙ (bande de {lowGn} à {highGn}), sous {limitGn} gₙ, mais cela sort du domaine des données de la mousse.",
	"packaging.not-assessed": "Non évalué.",
	"packaging.marginal":
		"Le pic de {peakGn} gₙ respecte la limite de {limitGn} gₙ, mais non au bord supérieur de sa bande, {highGn} gₙ.",
	"packaging.holds": "Le pic de {peakGn} gₙ, au pire {highGn} gₙ, respecte la limite de {limitGn} gₙ.",
	"packaging.mend-cushion": "Mettez sur chaque face un calage d’une mousse connue.",
	"packaging.mend-smaller-pads": "Prenez des plots plus petits, ou une mousse plus souple.",
	"packaging.mend-pads-of":
		"Prenez des plots plus petits, ou une mousse plus souple. Avec cette mousse et cette épaisseur, des plots de {leastCm2} à {mostCm2} cm² en tout restent nominalement sous la limite.",
	"packaging.mend-unknown":
		"Prenez une mousse dont la courbe est connue. Avec la meilleure du catalogue, il faut au moins {leastMm} mm.",
	"packaging.mend-range":
		"Choisissez l’épaisseur et la taille des plots de sorte que la mousse travaille dans ses données.",
	"packaging.mend-thicker": "À cette taille de plots, il faut au moins {leastMm} mm.",
	"packaging.mend-margin":
		"Un calage plus épais, ou une contrainte plus proche du point bas de sa courbe, donne la marge.",
	"packaging.mend-worst-face": "Commencez par la face {face} : c’est la plus faible.",
	"packaging.no-protected-drop":
		"Une face n’a pas de calage évaluable ; l’emballage ne protège donc jusqu’à aucune chute connue.",
	"packaging.drop-short":
		"L’emballage protège jusqu’à une chute de {dropHeightM} m ; la chute de calcul est de {designM} m.",
	"packaging.drop-short-within-band":
		"L’emballage protège jusqu’à une chute de {dropHeightM} m ; la chute de calcul est de {designM} m. Sa bande va jusqu’à {highM} m ; cela peut donc tenir, mais ce n’est pas montré.",
	"packaging.bound-short":
		"Une mousse n’est pas connue. Même ainsi, la face {face} ne peut protéger au-delà d’une chute de {dropHeightM} m ; la chute de calcul est de {designM} m.",
	"packaging.drop-outside":
		"L’emballage protégerait jusqu’à {dropHeightM} m, mais une face sort des données de sa mousse, ou sa mousse n’est pas connue.",
	"packaging.drop-marginal":
		"L’emballage protège jusqu’à {dropHeightM} m là où {designM} m sont demandés, mais sa bande commence à {lowM} m.",
	"packaging.drop-holds": "L’emballage protège jusqu’à {dropHeightM} m, au pire {lowM} m ; {designM} m sont demandés.",
	"packaging.pads-exceed-face":
		"Les plots de la face {face} sont plus grands que la face elle-même ; toute la face a donc été prise comme surface d’appui.",
	"packaging.first-drop-set":
		"La courbe de la face {face} vaut pour une première chute. Un voyage compte plusieurs chutes : prenez la courbe de la moyenne des chutes 2 à 5.",
	"packaging.protected-outside":
		"La chute jusqu’à laquelle cet emballage protège sort des données de la mousse de la face {face} : prenez-la comme une indication, non comme une valeur.",
	"packaging.most-on-corners":
		"La plupart des impacts vus par des enregistreurs étaient sur des arêtes et des coins : 93 % dans un réseau de colis, 44 % dans un autre. Ce contrôle vient donc en premier.",
	"packaging.corner-bare": "Une face n’a pas de calage ; ses arêtes et ses coins n’en ont donc pas non plus.",
	"packaging.corner-unknown": "Une mousse n’est pas connue ; on ne peut donc rien dire des arêtes et des coins.",
	"packaging.corner-crushed":
		"Sur « {where} », la mousse est complètement écrasée à cette chute : le pic dépasse ce que son modèle peut donner, et {limitGn} gₙ sont admis.",
	"packaging.corner-short":
		"En tombant sur « {where} », le pic est de {peakGn} gₙ là où {limitGn} gₙ sont admis ; la bande va de {lowGn} à {highGn} gₙ. Selon une règle dérivée que personne n’a validée.",
	"packaging.corner-first-drop":
		"En tombant sur « {where} », la première chute aurait un pic de {peakGn} gₙ, mais cette mousse n’est connue que pour sa première chute.",
	"packaging.corner-marginal":
		"En tombant sur « {where} », le pic de {peakGn} gₙ respecte la limite de {limitGn} gₙ, mais non au bord supérieur de sa bande, {highGn} gₙ. Selon une règle dérivée que personne n’a validée.",
	"packaging.corner-holds":
		"En tombant sur « {where} », la pire arête ou le pire coin, le pic de {peakGn} gₙ, au pire {highGn} gₙ, respecte la limite de {limitGn} gₙ. Selon une règle dérivée que personne n’a validée.",
	"packaging.corner-measured":
		"Lors d’un lâcher sur un coin avec un enregistreur, {count} fois, le pic était de {peakGn} gₙ là où {limitGn} gₙ sont admis.",
	"packaging.corner-measured-short":
		"Lors d’un lâcher sur un coin avec un enregistreur, le pic était de {peakGn} gₙ là où {limitGn} gₙ sont admis.",
	"packaging.mend-corner":
		"Des calages plus épais, ou des plots d’une autre taille, là où trois faces se rejoignent ; puis une chute sur un coin avec un enregistreur.",
	"packaging.mend-corner-drop":
		"Lâchez cet emballage sur un coin, avec un enregistreur sur un lest de cette masse, depuis la chute de calcul ou plus haut, échantillonné à 1000 Hz ou plus, et saisissez le pic.",
	"packaging.first-drop-only":
		"Sur la face {face}, la première chute aurait un pic de {peakGn} gₙ, mais cette mousse n’est connue que pour sa première chute, et un voyage en compte plusieurs.",
	"packaging.mend-later-drops": "Prenez une mousse dont la courbe de la moyenne des chutes 2 à 5 est connue.",
	"packaging.mend-known-foam": "Prenez sur chaque face des mousses dont les courbes sont connues.",
	"packaging.bottoming-unknown": "Une mousse n’est pas connue ; on ne peut donc pas dire de combien elle est écrasée.",
	"packaging.bottoming-locked":
		"Sur la face {face}, la mousse est écrasée de toute son épaisseur à une chute de {designM} m.",
	"packaging.bottoming-unsupported":
		"Sur la face {face}, la mousse travaille au-delà de son optimum, là où elle durcit, à {percent} % de la plus haute énergie que ses données couvrent : non étayé par des données.",
	"packaging.bottoming-holds":
		"Sur la face {face}, la plus pressée, la mousse travaille au-delà de son optimum, à {percent} % de la plus haute énergie que ses données couvrent.",
	"packaging.bottoming-soft":
		"Aucune mousse ne travaille au-delà de son optimum à une chute de {designM} m ; la plus pressée est celle de la face {face}, à {percent} % de la plus haute énergie que ses données couvrent.",
	"packaging.mend-bottoming": "Sur la face {face} : des plots plus grands, une mousse plus épaisse ou plus raide.",
	"packaging.lined":
		"Aucun plot n’est libre. La mousse sur toute une face garnit le carton de paroi à paroi, et les parois la tiennent ; la règle contre le flambage vaut pour les plots.",
	"packaging.no-pads": "Il n’y a pas de plot.",
	"packaging.buckles":
		"Un plot de la face {face}, de {areaCm2} cm², est trop élancé pour son épaisseur : il flambe s’il n’a pas plus de {leastCm2} cm².",
	"packaging.no-buckling":
		"Le plot le plus élancé, sur la face {face}, a {areaCm2} cm² ; il en faut plus de {leastCm2} cm².",
	"packaging.mend-buckling":
		"Des plots de plus de {leastCm2} cm² chacun : moins nombreux et plus grands, ou plus minces.",
	"packaging.creep-unknown": "Pour une mousse de cet emballage, aucune limite contre le fluage n’est connue.",
	"packaging.creep-hot":
		"La contrainte de {stress} kPa sur la face {face} respecte la limite de {limitKPa} kPa, mais cela ne vaut que jusqu’à {warmDegC} °C ; le voyage est plus chaud.",
	"packaging.creeps":
		"Sur la face {face}, {stress} kPa reposent sur la mousse ; au-delà de {limitKPa} kPa, elle perd avec le temps plus d’un dixième de son épaisseur.",
	"packaging.no-creep":
		"Au plus {stress} kPa reposent sur une mousse, sur la face {face} ; {limitKPa} kPa sont admis contre le fluage.",
	"packaging.mend-creep": "Des plots plus grands, une mousse plus raide, ou un voyage plus frais.",
	"packaging.mend-creep-data":
		"Demandez au fournisseur la contrainte statique à laquelle la mousse flue de moins d’un dixième.",
	"packaging.no-temperatures": "Les températures du voyage ne sont pas données.",
	"packaging.mend-temperatures": "Donnez la plus basse et la plus haute température du voyage.",
	"packaging.temperature-unknown": "Une mousse n’est pas connue ; on ne peut donc rien en dire au froid et au chaud.",
	"packaging.temperature-outside":
		"Une mousse de cet emballage n’est connue que de {lowDegC} à {highDegC} °C, et le voyage va au-delà.",
	"packaging.temperature-uncovered":
		"Au froid et au chaud, le pic serait d’au plus {peakGn} gₙ, sous {limitGn} gₙ, mais cela sort du domaine des données de la mousse.",
	"packaging.temperature-short":
		"Sur la face {face}, à {atDegC} °C, le pic va jusqu’à {highGn} gₙ, nominalement {peakGn} gₙ, là où {limitGn} gₙ sont admis.",
	"packaging.temperature-holds":
		"Aux deux bouts des températures du voyage, le pic reste à {peakGn} gₙ, au pire {highGn} gₙ (sur la face {face} à {atDegC} °C) ; {limitGn} gₙ sont admis.",
	"packaging.mend-temperature":
		"Une mousse avec des données pour ces températures, ou plus de marge à température ambiante.",
	"packaging.fits":
		"L’objet et les calages tiennent. La plus petite distance à l’extérieur est de {clearanceMm} mm ; le métier conseille {advisedMm} mm, ce qui ne remplace pas une courbe de calage.",
	"packaging.fit-pressed":
		"Une fois le carton fermé, les calages sont comprimés de {percent} % de leur épaisseur. La plus petite distance à l’extérieur est de {clearanceMm} mm ; le métier conseille {advisedMm} mm.",
	"packaging.fit-short":
		"L’objet et les calages ne tiennent pas : les calages seraient comprimés de {percent} % de leur épaisseur.",
	"packaging.mend-fit":
		"Prenez un carton plus grand, ou des calages qui tiennent sans être comprimés ; de plus minces seulement si chaque contrôle tient encore.",
	"packaging.moves": "Il y a {slackMm} mm de jeu le long d’un axe ; {playMm} mm comptent pour aucun.",
	"packaging.still": "L’objet a au plus {slackMm} mm de jeu ; {playMm} mm comptent pour aucun.",
	"packaging.mend-movement":
		"Comblez le jeu avec la mousse même des calages jusqu’à ce que rien ne bouge quand on secoue le carton.",
	"packaging.no-board-frequency": "La fréquence propre de la carte n’est pas connue.",
	"packaging.mend-board-frequency": "Décrivez la carte par ses dimensions, ou donnez sa fréquence mesurée.",
	"packaging.no-cushion-frequency": "Un calage n’a pas de pic ; aucune fréquence n’en découle donc.",
	"packaging.resonates":
		"Le calage de la face {face} oscille à environ {cushionHz} Hz et la carte à {boardHz} Hz : moins d’une octave d’écart. Le profil du voyage en ferait {responseGnRms} gₙ efficaces.",
	"packaging.apart":
		"Les calages, le plus proche à environ {cushionHz} Hz sur la face {face}, et la carte à {boardHz} Hz sont à une octave l’un de l’autre. Le profil du voyage fait des deux {responseGnRms} gₙ efficaces.",
	"packaging.mend-resonance": "Un calage plus souple, ou la carte tenue en plus d’endroits.",
	"packaging.no-board-data":
		"La résistance à la compression sur chant et l’épaisseur du carton ondulé ne sont pas données.",
	"packaging.mend-board-data":
		"Lisez la résistance à la compression sur chant sur le tampon du cartonnier et mesurez l’épaisseur du carton ondulé.",
	"packaging.box-short":
		"Après les jours et l’humidité du voyage, le carton porte {strengthN} N ; une pile de {stackM} m dans un véhicule le charge de {loadN} N.",
	"packaging.box-outside":
		"Le carton porterait {strengthN} N pour {loadN} N de charge, mais le voyage dure plus longtemps que le temps pour lequel les pertes sont connues.",
	"packaging.box-holds":
		"Après les jours et l’humidité du voyage, le carton porte {strengthN} N ; une pile de {stackM} m dans un véhicule le charge de {loadN} N.",
	"packaging.mend-box": "Un carton neuf, plus résistant, ou à double cannelure.",
	"packaging.no-barrier":
		"Il n’y a pas de barrière contre l’humidité. Une carte finie qu’on met seulement sous tension n’en a pas besoin ; une carte à souder, si.",
	"packaging.barrier-open":
		"La barrière contre l’humidité n’est pas scellée ou pas intacte : aucun sachet de déshydratant n’aide alors.",
	"packaging.mend-barrier":
		"Là où la sécheresse compte : un sachet barrière à l’humidité, thermoscellé, avec déshydratant et carte indicatrice.",
	"packaging.no-desiccant": "La quantité de déshydratant dans la barrière n’est pas donnée.",
	"packaging.mend-desiccant": "Un sachet de {units} unités dans la barrière suffit.",
	"packaging.desiccant-short": "{given} unités de déshydratant sont dans la barrière ; il en faut {units}.",
	"packaging.desiccant-holds": "{given} unités de déshydratant sont dans la barrière ; il en faut {units}.",
	"packaging.mend-paper":
		"Gardez papier et carton hors de la barrière : ils retiennent bien plus d’eau que l’air qu’elle contient ou que ce qui la traverse.",
	"packaging.no-cell": "L’objet ne porte pas de pile.",
	"packaging.cell-no-layer": "Rien n’est dit de la couche qui touche l’objet.",
	"packaging.cell-shorted":
		"Une couche conductrice touche un objet qui porte une pile : elle la décharge et peut la chauffer.",
	"packaging.cell-apart": "La couche qui touche l’objet n’est pas conductrice.",
	"packaging.mend-cell": "Mettez une enveloppe dissipative entre l’objet et toute couche conductrice.",
	"packaging.no-cooler": "Aucun refroidisseur lourd n’est décrit.",
	"packaging.cooler-supported":
		"Au pic de {peakGn} gₙ, le refroidisseur tire avec {forceN} N, un moment d’environ {momentNm} N·m, sur ce qui le soutient. Aucune limite pour cela n’a été trouvée.",
	"packaging.cooler-light":
		"Au pic de {peakGn} gₙ, le refroidisseur tire sur la carte avec {forceN} N, un moment d’environ {momentNm} N·m. Une carte de bureau a tenu {levelN} N ; aucune limite n’est connue pour celle-ci.",
	"packaging.cooler-short":
		"Au pic de {peakGn} gₙ, le refroidisseur tire sur la carte avec {forceN} N, un moment d’environ {momentNm} N·m, plus que les {levelN} N qu’une carte de bureau a tenus.",
	"packaging.mend-cooler":
		"Faites porter le refroidisseur lui-même par le calage ou un support, non la carte seule, et bloquez-le dans toutes les directions.",
	"packaging.no-cover": "La valeur de l’objet ou ce que le transporteur paie au plus n’est pas donné.",
	"packaging.cover-currency": "La valeur est en {value} et le plafond en {cap}.",
	"packaging.mend-cover-data": "Donnez les deux, dans la même monnaie.",
	"packaging.covered": "Le transporteur paie au plus {cap} {currency} ; l’objet vaut {value} {currency}.",
	"packaging.uncovered": "Le transporteur paie au plus {cap} {currency} ; l’objet vaut {value} {currency}.",
	"packaging.mend-cover": "Déclarez une valeur ou assurez le voyage.",
	"packaging.layers-in-a-row":
		"Des couches l’une derrière l’autre ont été prises comme partageant une même force. C’est dérivé ; une telle face n’est donc au mieux que provisoire.",
	"packaging.velocity-harmless":
		"Même avec un rebond complet, une chute de moins de {harmlessM} m n’atteint pas le changement de vitesse qui peut nuire à l’objet ; la chute de calcul est de {designM} m.",
	"packaging.velocity-reached":
		"Une chute de moins de {harmlessM} m ne peut atteindre le changement de vitesse qui nuit à l’objet ; la chute de calcul de {designM} m le peut.",
	"packaging.caution-lithium":
		"Les piles au lithium sont des marchandises dangereuses à la poste : suivez les règles du transporteur, et n’emballez jamais une pile gonflée ou endommagée.",
	"static.no-shielding":
		"Aucune couche fermée et intacte ne fait écran à une décharge, ce qu’il faut hors d’une zone protégée.",
	"static.kitchen-foil":
		"Le papier d’aluminium met piles et condensateurs en court-circuit et ne prouve aucune protection.",
	"static.shorts-cell": "Une couche conductrice touche un objet qui porte une pile.",
	"static.charging-contact": "Un film simple ou un film à bulles contre la carte la charge quand on l’enlève.",
	"static.insulating-contact": "La couche qui touche l’objet isole : une charge ne peut s’en écouler.",
	"static.declared": "Cela repose sur la parole du fabricant que le module fermé n’est pas sensible.",
	"static.cap-connectors": "Ses connecteurs doivent être capuchonnés.",
	"static.shield-unproven":
		"Rien ne prouve que la couche d’écran fait écran : une fiche technique ou une mesure manque.",
	"static.contact-unproven": "Rien ne prouve que la couche qui touche l’objet ne le charge pas.",
	"static.pad-edges":
		"Les arêtes vives de l’équerre et du refroidisseur doivent être garnies, pour qu’elles ne coupent pas l’écran.",
	"static.reused": "Un sachet qui a déjà servi demande un examen des trous et des plis, consigné.",
	"static.holds": "Faible charge, contact dissipatif et écran contre la décharge sont tous là.",
	"static.mend": "Fermez l’objet dans un sachet écran intact, livré avec une fiche technique, arêtes vives garnies.",
	"static.caution-bench":
		"Ne sortez l’objet que sur un tapis mis à la terre, avec un bracelet mis à la terre ; ne portez jamais de bracelet en travaillant sur un équipement sous tension.",
	"condensation.wet": "De l’eau a été vue : laissez-le éteint, et faites-le examiner par quelqu’un qui sait.",
	"condensation.never":
		"Dans cette pièce, il ne fait jamais assez chaud au-dessus du point de rosée : séchez ou chauffez d’abord la pièce, non le colis.",
	"condensation.no-time-constant": "La vitesse à laquelle le colis se réchauffe n’est pas connue.",
	"condensation.outside-range": "La formule du point de rosée vaut pour des pièces de {low} à {high} °C.",
	"condensation.lower-bound":
		"Le modèle n’a jamais été comparé à un carton mesuré ; par notre choix, les attentes sont plus longues que ce qu’il dit.",
};
