/** Relevés en route : ce qu’un enregistreur qui a voyagé avec l’objet a noté, et combien peu ou beaucoup cela dit. */
import type { ReportTexts } from "../report-texts.ts";

export const recording: ReportTexts["recording"] = {
	"recording.peak-on-inner-box":
		"L’enregistreur était sur le carton intérieur. Entre lui et l’objet se trouve un calage : son pic n’est pas celui de l’objet.",
	"recording.peak-on-outer-box":
		"L’enregistreur était sur le carton extérieur. Le calage se trouve entre le carton et l’objet : le pic sur le carton ne dit rien de celui de l’objet.",
	"recording.peak-in-cushion":
		"L’enregistreur était dans le calage, où il ne bouge ni avec le carton ni avec l’objet : son pic n’est pas celui de l’objet.",
	"recording.peak-not-known":
		"On ne sait pas où était l’enregistreur ; son pic n’est donc pas comparé à la limite de l’objet.",
	"recording.peak-phone":
		"Un téléphone l’a relevé. Son capteur filtre et s’arrête à une étendue que personne n’indique ; ses pics ne sont donc pas retenus.",
	"recording.no-pack":
		"Aucun emballage n’a été scellé pour ce trajet ; il n’y a donc pas de limite à laquelle le comparer.",
	"recording.no-height": "L’emballage scellé n’a pas donné de hauteur jusqu’à laquelle il protège.",
	"recording.peak-above":
		"{peakGn} gₙ ont été relevés sur l’objet ; l’emballage a été évalué avec une limite de {limitGn} gₙ. Si l’objet fonctionne encore, ses contrôles le disent.",
	"recording.peak-open":
		"Au moins {peakGn} gₙ sur l’objet, sous la limite de {limitGn} gₙ ; le vrai pic peut être plus haut, ce n’est donc pas tranché.",
	"recording.peak-below":
		"{peakGn} gₙ sur l’objet, dans la limite de {limitGn} gₙ avec laquelle l’emballage a été évalué.",
	"recording.drop-in-cushion": "Dans le calage, le changement de vitesse n’est ni celui du carton ni celui de l’objet.",
	"recording.drop-not-known": "On ne sait pas où était l’enregistreur, et aucune chute libre n’a été vue.",
	"recording.drop-phone":
		"Un téléphone l’a relevé, et aucune chute libre n’a été vue : son changement de vitesse n’est pas retenu.",
	"recording.drop-slow":
		"L’échantillonnage était trop lent pour cet impact, et aucune chute libre n’a été vue : son changement de vitesse n’est pas retenu.",
	"recording.fall-above":
		"Il est tombé librement aussi longtemps que dure une chute de {lowM} à {highM} m ; l’emballage protège jusqu’à {protectedM} m.",
	"recording.fall-below":
		"Il est tombé librement aussi longtemps que dure une chute de {lowM} à {highM} m, en deçà des {protectedM} m jusqu’auxquels l’emballage protège.",
	"recording.fall-open":
		"Il est tombé librement aussi longtemps que dure une chute de {lowM} à {highM} m ; les {protectedM} m jusqu’auxquels l’emballage protège sont entre les deux.",
	"recording.equivalent-above":
		"Le changement de vitesse équivaut à une chute de {lowM} m avec rebond complet à {highM} m sans rebond, plus que les {protectedM} m jusqu’auxquels l’emballage protège. Aucune chute libre n’a été vue : un coup de pied ou un lancer fait de même.",
	"recording.equivalent-below":
		"Le changement de vitesse équivaut à une chute de {lowM} m avec rebond complet à {highM} m sans rebond, en deçà des {protectedM} m jusqu’auxquels l’emballage protège.",
	"recording.equivalent-open":
		"Le changement de vitesse équivaut à une chute de {lowM} m avec rebond complet à {highM} m sans rebond, et ce qui a été relevé peut être une borne inférieure ; ce n’est pas tranché au regard des {protectedM} m jusqu’auxquels l’emballage protège.",
	"recording.place-no-clock":
		"Le fichier ne compte que son temps, et personne n’a dit quand sa première ligne a été relevée.",
	"recording.place-clock-not-known": "Personne n’a dit de combien l’horloge de l’enregistreur peut se tromper.",
	"recording.place-no-line": "La commande n’a pas encore deux constats entre lesquels cela pourrait se situer.",
	"recording.place-in-span": "Cela se situe dans cet intervalle, quelle que soit l’erreur de l’horloge.",
	"recording.place-in-one-of": "Selon l’erreur de l’horloge, cela se situe dans l’un de ces intervalles.",
	"recording.place-in-or-outside":
		"Selon l’erreur de l’horloge, cela se situe dans cet intervalle, ou avant ou après tout ce qui est consigné.",
	"recording.place-outside": "Cela se situe avant ou après tous les intervalles entre les constats.",
	"recording.says-on-item": "Sur l’objet : les pics sont ceux de l’objet même, et peuvent être comparés à sa limite.",
	"recording.says-on-inner-box":
		"Sur le carton intérieur : les chutes peuvent être comparées à l’emballage ; les pics ne sont pas ceux de l’objet.",
	"recording.says-on-outer-box":
		"Sur le carton extérieur : les chutes peuvent être comparées à l’emballage ; du pic de l’objet il ne dit rien, puisque le calage est entre les deux.",
	"recording.says-in-cushion":
		"Dans le calage : seule la durée d’une chute libre dit quelque chose ; les pics n’appartiennent ni au carton ni à l’objet.",
	"recording.says-not-known": "Personne ne sait où il était : seule la durée d’une chute libre dit quelque chose.",
	"recording.note-phone":
		"Un téléphone peut chronométrer une chute. Ses pics ne sont pas retenus : son capteur filtre et écrête d’une façon que personne n’indique.",
	"recording.note-axes":
		"{axes} axes sur trois : un choc d’un autre côté ne montre que sa part ; les pics sont donc des bornes inférieures.",
	"recording.note-rates":
		"L’enregistreur note lentement et échantillonne vite autour des impacts. Un impact qui n’a été noté que lentement n’a ni pic valable ni changement de vitesse valable, et un coup entre deux échantillons lents n’est dans aucune ligne.",
	"recording.note-no-full-scale":
		"L’étendue maximale de l’enregistreur n’est pas connue ; on ne sait donc pas si un pic a été écrêté.",
	"recording.note-gaps":
		"{gaps} intervalles de temps n’ont pas d’échantillons. Ce qui s’y est passé n’est pas dans ce fichier.",
	"recording.note-kept": "{found} impacts ont atteint le seuil ; les {kept} plus grands sont conservés.",
	"recording.note-cut": "La ligne {line} n’a pas de fin et a été laissée de côté ; ce qui suit manque.",
	"recording.supports":
		"Un impact relevé dit que l’enregistreur a rencontré un choc de cette grandeur, selon son horloge, là où il était. Il ne dit pas que l’objet y a changé : cela, les constats d’avant et d’après le disent. Un fichier sans impact dit la même chose de son lieu et de son temps, et pas plus.",
	"recording.place": "Où était l’enregistreur",
	"recording.where-on-item": "sur l’objet",
	"recording.where-on-inner-box": "sur le carton intérieur",
	"recording.where-on-outer-box": "sur le carton extérieur",
	"recording.where-in-cushion": "dans le calage",
	"recording.where-not-known": "non connu",
	"recording.device": "Ce qui l’a relevé",
	"recording.device-recorder": "un enregistreur de chocs",
	"recording.device-phone": "un téléphone : il peut chronométrer une chute, ses pics ne sont pas retenus",
	"recording.temperature": "Température",
	"recording.humidity": "Humidité, %",
	"recording.clock": "L’horloge peut se tromper de",
	"recording.full-scale": "Étendue maximale",
	"recording.rates": "{slowest} à {fastest}",
	"recording.trip": "Le voyage dans le temps",
	"recording.trip-caption":
		"Accélération la plus petite et la plus grande de chaque tranche, derrière elles les intervalles de la chaîne de garde, les impacts par numéro.",
	"recording.trip-caption-no-clock":
		"Accélération la plus petite et la plus grande de chaque tranche, les impacts par numéro. Sans horloge ou sans constats, aucun intervalle n’est derrière.",
	"recording.trip-description":
		"{events} impacts, le plus grand de {greatestGn} gₙ ; chacun est dans le tableau ci-dessous.",
	"recording.axis-hours": "heures après le début du relevé",
	"recording.axis-minutes": "minutes après le début du relevé",
	"recording.axis-seconds": "secondes après le début du relevé",
	"recording.axis-gn": "gₙ",
	"recording.axis-ms": "ms depuis le pic",
	"recording.axis-hz": "fréquence, Hz",
	"recording.axis-response": "plus grande réponse, gₙ",
	"recording.band-stay": "chez {holder}",
	"recording.band-transit": "en route",
	"recording.band-nobody": "livré, pas en mains",
	"recording.band-unrecorded": "non consigné",
	"recording.temperature-over-time": "Température",
	"recording.humidity-over-time": "Humidité",
	"recording.temperature-ends": "Température entre {least} et {greatest} °C.",
	"recording.humidity-ends": "Humidité entre {least} et {greatest} %.",
	"recording.events": "Impacts en chiffres",
	"recording.no-events":
		"Aucun impact n’a atteint le seuil. Cela ne dit rien de ce que le seuil ou l’échantillonnage n’a pas saisi.",
	"recording.number": "N°",
	"recording.when": "Quand",
	"recording.where": "Intervalle",
	"recording.peak": "Pic",
	"recording.duration": "Durée",
	"recording.velocity-change": "Δv",
	"recording.drop": "Chute égale",
	"recording.not-taken": "non retenu",
	"recording.after": "après {time}",
	"recording.at": "{day}, {clock} (UTC)",
	"recording.lasting-hours": "{value} h",
	"recording.lasting-minutes": "{value} min",
	"recording.lasting-seconds": "{value} s",
	"recording.cannot-be-placed": "non situable",
	"recording.outside": "hors de ce qui est consigné",
	"recording.or": "ou",
	"recording.span-stay": "un séjour",
	"recording.span-transit": "en route",
	"recording.span-nobody": "livré, pas en mains",
	"recording.span-unrecorded": "un intervalle sans constats",
	"recording.peak-holds": "L’échantillonnage était assez rapide pour lui : {samples} échantillons dans l’impulsion.",
	"recording.doubt-few-samples":
		"Une borne inférieure : {samples} échantillons dans l’impulsion sont trop peu, cinq sont le moins.",
	"recording.doubt-slow-sampling":
		"Une borne inférieure : {rate} échantillons par seconde ne peuvent voir le pic d’un impact dur, si nombreux soient-ils dans l’impulsion.",
	"recording.event-rate": "Échantillonné {rate} fois par seconde.",
	"recording.doubt-clipped": "Une borne inférieure : l’enregistreur était à son étendue maximale.",
	"recording.doubt-phone": "Non retenu : un téléphone l’a relevé.",
	"recording.doubt-one-axis": "Une borne inférieure : les trois axes n’ont pas tous été relevés.",
	"recording.doubt-cut-trace": "Une borne inférieure : des échantillons en manquent.",
	"recording.by-rebound":
		"selon le changement de vitesse, de rebond complet à aucun ; un coup de pied ou un lancer fait de même",
	"recording.by-fall": "selon la durée en chute libre, à deux échantillons près",
	"recording.trace-title": "Tracé de l’impact {number}",
	"recording.trace-description": "Accélération résultante autour d’un pic de {peakGn} gₙ qui dure {durationMs} ms.",
	"recording.spectrum-title": "Spectre de réponse de l’impact {number}",
	"recording.spectrum-text":
		"La plus grande réponse d’un oscillateur de chaque fréquence, amplification 10 à la résonance.",
	"recording.spectrum-description": "La plus grande réponse est de {greatestGn} gₙ à {frequencyHz} Hz.",
	"recording.board-limit": "admis par la règle des cartes",
	"recording.board-frequency": "la carte",
	"recording.board-no-frequency":
		"La fréquence propre de la carte n’est pas connue : où sa règle rencontre le spectre ne l’est pas non plus.",
	"recording.board-beyond":
		"La fréquence propre de la carte, {frequencyHz} Hz, est hors de ce que porte cet échantillonnage.",
	"recording.board-not-taken":
		"La réponse à la fréquence propre de la carte, {frequencyHz} Hz, n’est pas retenue : le choc n’a pas été échantillonné assez finement pour cela.",
	"recording.board-above":
		"À la fréquence propre de la carte, {frequencyHz} Hz, la réponse est de {responseGn} gₙ ; la règle des cartes admet {limitGn} gₙ. La règle est un examen grossier, non une limite de rupture.",
	"recording.board-open":
		"À la fréquence propre de la carte, {frequencyHz} Hz, la réponse est d’au moins {responseGn} gₙ ; la règle des cartes admet {limitGn} gₙ. Ce n’est pas tranché.",
	"recording.board-below":
		"À la fréquence propre de la carte, {frequencyHz} Hz, la réponse est de {responseGn} gₙ, dans les {limitGn} gₙ que la règle des cartes admet. La règle est un examen grossier.",
};
