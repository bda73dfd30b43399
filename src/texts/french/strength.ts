/** Notes sur la résistance des cartes, les vibrations, les cartons empilés et le déshydratant. */
import type { ReportTexts } from "../report-texts.ts";

export const strength: ReportTexts["strength"] = {
	"strength.screen":
		"Un examen grossier seulement : la règle vaut pour des cartes minces et grandes à petits composants. Pour une carte raide à grands composants, comme une carte graphique à refroidisseur lourd, elle a été critiquée par écrit.",
	"strength.no-frequency":
		"Sans la fréquence propre de la carte, aucun choc ne peut être dit : la façon dont la carte est tenue en décide. Voir la liste par fréquence.",
	"strength.plate":
		"La fréquence est celle d’une plaque simple. Le tableau de cartes du livre diffère de cette formule de 3 à 9 % ; composants et refroidisseur n’y sont pas.",
	"vibration.points-not-rising": "Les points ne sont pas dans l’ordre croissant de la fréquence.",
	"vibration.profile-only": "Le seul niveau global du profil : donnez une fréquence propre pour une réponse.",
	"vibration.outside-profile":
		"La fréquence propre sort du profil ; la réponse à la résonance n’est donc pas donnée, seulement celle sur la bande du profil.",
	"vibration.low-q":
		"La réponse à la résonance vaut pour des cartes peu amorties, une amplification supérieure à 10 ; ici elle est de {q}.",
	"vibration.not-damage":
		"Des niveaux globaux égaux ne sont pas des dommages égaux : une comparaison publiée a trouvé des écarts allant jusqu’au centuple.",
	"box.top-to-bottom":
		"Pour des caisses américaines ordinaires, chargées de haut en bas, posées d’aplomb l’une sur l’autre.",
	"box.beyond-days":
		"Les pertes avec le temps sont connues pour {days} jours au plus ; au-delà, la dernière valeur a été prise.",
	"box.flute-assumed": "Aucune cannelure n’était donnée ; C a donc été prise.",
	"desiccant.missing": "Cette règle a besoin de : {members}.",
	"desiccant.humidity": "Cette règle a des chiffres pour une humidité finale de {list} %.",
	"desiccant.sealed":
		"Pour une barrière scellée : aucun sachet n’aide une enveloppe qui n’est pas scellée, ni un simple sachet écran.",
	"desiccant.long-storage":
		"Cette règle est pour un long stockage : elle ne connaît ni la qualité de la barrière ni la durée ; elle demande donc beaucoup.",
	"desiccant.no-dunnage": "Cette règle ne compte pas le papier, le carton et la mousse dans la barrière.",
	"desiccant.paper":
		"Papier et carton dans la barrière retiennent bien plus d’eau que l’air ou la barrière n’en laissent entrer : gardez-les dehors.",
};
