/** Ce que le premier contrôle après la livraison exclut ou non ; comment obtenir encore ce qui manque. */
import type { ReportTexts } from "../report-texts.ts";

export const firstState: ReportTexts["firstState"] = {
	"first-state.same-item-yes":
		"Au moins trois marques concordent, dont plus d’une que les objets d’un même modèle ne partagent pas : c’est l’objet qui est parti.",
	"first-state.same-item-no":
		"Trop peu de marques concordent pour exclure un autre objet : il faut le numéro de série ou l’identifiant de l’appareil, une autre marque que les objets d’un même modèle ne partagent pas, et une troisième.",
	"first-state.same-item-how": "Photographiez le numéro de série et les marques nommées dans le constat de départ.",
	"first-state.untouched-yes": "Rien n’a été réparé, reprogrammé, nettoyé ni démonté avant le contrôle.",
	"first-state.untouched-no": "Il n’est pas consigné que rien n’y a été fait avant le contrôle.",
	"first-state.first-attempt-yes": "La première mise sous tension depuis la livraison est consignée.",
	"first-state.first-attempt-no": "Des tentatives antérieures de mise sous tension ne sont pas exclues.",
	"first-state.soon-yes": "Il a été contrôlé dans les 48 heures après avoir été en mains.",
	"first-state.soon-no":
		"Il a été contrôlé plus de 48 heures après avoir été en mains, ou les heures ne sont pas consignées.",
	"first-state.dry-yes": "Il a eu le temps de se réchauffer, et aucune humidité n’a été vue.",
	"first-state.dry-no":
		"L’humidité à la première mise sous tension n’est pas exclue : elle a été vue, elle n’a pas été cherchée, ou l’attente n’est pas consignée.",
	"first-state.bench-good-yes":
		"Une autre pièce, connue pour être bonne, y a fonctionné avant et après : alimentation, câbles et écran sont en ordre.",
	"first-state.bench-good-no":
		"Un défaut de l’alimentation, des câbles, de l’emplacement ou de l’écran sur place n’est pas exclu.",
	"first-state.bench-good-how":
		"Hors tension, mettez au même endroit une autre pièce connue pour être bonne, essayez-la, et notez-le.",
	"first-state.other-computer-yes": "Il a été essayé dans deux ordinateurs.",
	"first-state.other-computer-no":
		"Il a été essayé dans un seul ordinateur : que les deux ne s’accordent pas n’est pas exclu.",
	"first-state.other-computer-how":
		"Si aucun signe d’arrêt n’a été vu, essayez-le dans un second ordinateur d’un autre fabricant. Celui d’un ami suffit.",
	"first-state.set-up-recorded-yes": "Ordinateur, emplacement, alimentation et pilote sont consignés.",
	"first-state.set-up-recorded-no": "Ce dans quoi il a été essayé n’est pas entièrement consigné.",
	"first-state.set-up-recorded-how": "Notez l’ordinateur, l’emplacement, l’alimentation et le pilote.",
	"first-state.filmed-yes": "Le déballage a été filmé.",
	"first-state.filmed-no":
		"Le déballage n’a pas été filmé. Ce qui s’est passé avant la première photo repose sur ce que disent des personnes.",
	"first-state.tested-no": "Il n’a pas été mis sous tension. Comment il fonctionne n’est pas connu.",
	"first-state.tested-how":
		"Contrôlez-le quand il est sec et paraît sain, ou convenez d’un banc neutre : envoyez-le-y dans le sachet fermé.",
	"first-state.none":
		"Il n’y a pas encore d’état premier : ce qui a été vu demeure, comment il fonctionne n’est pas connu.",
	"first-state.void-item":
		"Les deux constats nomment des objets différents ; ceci n’est donc pas un état premier de l’objet qui est parti.",
	"first-state.void-work":
		"Un travail a été fait avant le contrôle ; ceci ne montre donc pas l’état dans lequel il est venu.",
	"first-state.weak-bench": "Il n’y a pas fonctionné, et il n’est pas montré que le banc sur place était bon.",
	"first-state.weak-computer": "Il n’a pas fonctionné sur ce seul ordinateur.",
	"first-state.weak-marks": "Trop peu de marques ont été comparées pour être sûr que c’est le même objet.",
	"first-state.fair":
		"Un état premier passable : l’heure, le film, la première tentative ou le montage n’est pas consigné.",
	"first-state.full": "Un état premier complet.",
	"first-state.grade-full": "complet",
	"first-state.grade-fair": "passable",
	"first-state.grade-weak": "faible",
	"first-state.grade-void": "sans valeur",
	"first-state.grade-none": "pas encore",
};
