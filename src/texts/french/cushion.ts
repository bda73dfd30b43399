/** Notes sur les calages. */
import type { ReportTexts } from "../report-texts.ts";

export const cushion: ReportTexts["cushion"] = {
	"cushion.unknown-foam":
		"La mousse n’est pas connue. Son épaisseur seule fixe un plancher qu’aucun calage ne peut franchir ; si celui-ci s’en approche n’est pas connu.",
	"cushion.temperature-range": "Les données de la mousse vont de {low} à {high} °C.",
	"cushion.outside-energy": "La densité d’énergie de {energy} kJ/m³ sort du domaine contrôlé de {low} à {high} kJ/m³.",
	"cushion.outside-thickness": "L’épaisseur sort du domaine des données de la mousse, de {low} à {high} mm.",
	"cushion.outside-thin": "Les données de la mousse commencent à une épaisseur de {low} mm.",
	"cushion.crushed":
		"À cette énergie, la mousse est complètement écrasée : le pic dépasse ce que son modèle peut donner.",
	"cushion.unlikely-set":
		"Un facteur de calage minimal de {factor} est meilleur que toute mousse mesurée : vérifiez les unités et les chiffres du jeu.",
	"cushion.outside-temperature": "Les données de la mousse valent de {low} à {high} °C.",
	"cushion.locked": "À cette énergie, le jeu écraserait la mousse de plus que sa propre épaisseur.",
	"cushion.note-plank": "L’unité du jeu publié est déduite.",
	"cushion.note-memory":
		"La courbe est donnée de mémoire, non lue : confirmez-la par la courbe du fournisseur ou des essais de chute.",
	"cushion.note-derived": "Le jeu est dérivé d’autres données, avec un facteur donné de mémoire.",
	"cushion.note-own": "Votre propre jeu, sans intervalle de prédiction.",
	"cushion.fit-impossible-point":
		"Le point {number} a un facteur de calage inférieur à 1, qu’aucune mousse ne peut atteindre : vérifiez ses unités et ses chiffres.",
	"cushion.fit-mixed-drops": "Premières chutes et chutes suivantes sont mêlées. Ajustez-les séparément.",
	"cushion.fit-one-energy":
		"Tous les points ont la même densité d’énergie. Ajoutez-en un à une autre contrainte, hauteur ou épaisseur.",
	"cushion.fit-not-rising": "La contrainte ne croît pas avec l’énergie : vérifiez les points.",
	"cushion.fit-impossible-set":
		"L’ajustement donnerait un facteur de calage inférieur à 1, qu’aucune mousse ne peut atteindre.",
	"cushion.fit-two-points": "Deux points s’ajustent exactement à tout jeu ; on ne sait donc rien de sa validité.",
	"cushion.fit-unlikely":
		"Un facteur de calage minimal de {factor} est meilleur que toute mousse mesurée : vérifiez les points.",
	"cushion.filler-bubble":
		"Le film à bulles n’est pas un calage principal : aucune courbe n’a pu en être lue, il charge les cartes, et il éclate sous de petits appuis.",
	"cushion.filler-air-pillow":
		"Les coussins d’air ne sont pas un calage principal : aucune courbe n’a pu en être lue, et un coussin qui fuit ne tient rien.",
	"cushion.filler-paper":
		"Le papier froissé n’est pas un calage principal : aucune courbe n’a pu en être lue, et il reste écrasé après la première chute.",
	"cushion.filler-loose":
		"Les particules en vrac sont un remplissage, non un calage principal : l’objet s’y enfonce en route.",
	"cushion.filler-insert":
		"Une pièce moulée de l’emballage de magasin n’est pas un calage principal pour un autre objet ou un second voyage : aucune courbe n’en est connue.",
	"cushion.note-points": "Ajusté à vos propres points ; la bande est l’intervalle de prédiction d’une chute de plus.",
	"cushion.note-two-points": "Ajusté à deux points, que tout jeu rencontre : on ne sait rien de sa validité.",
};
