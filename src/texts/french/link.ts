/** Appréciations de la liaison d’une carte. */
import type { ReportTexts } from "../report-texts.ts";

export const link: ReportTexts["link"] = {
	"link.ok": "La liaison fonctionne à {speedGTPerS} GT/s sur {width} voies, tout ce dont la carte est capable.",
	"link.ok-idle-saving":
		"En charge, la liaison fonctionne à {speedGTPerS} GT/s sur {width} voies ; ce qu’elle abandonne au repos est une économie.",
	"link.ok-card-limit":
		"La liaison fonctionne à {speedGTPerS} GT/s sur {width} voies, tout ce dont la carte est capable ; l’emplacement pourrait porter plus.",
	"link.slot-limited":
		"La liaison fonctionne à {speedGTPerS} GT/s sur {width} voies : autant que l’emplacement porte, moins que les {cardSpeedGTPerS} GT/s sur {cardWidth} de la carte.",
	"link.width-reduced":
		"En charge, seules {width} voies fonctionnent là où la carte est capable de {cardWidth} et où ce qui a été vu de l’emplacement en porterait plus.",
	"link.speed-reduced":
		"En charge, la liaison fonctionne à {speedGTPerS} GT/s là où la carte est capable de {cardSpeedGTPerS} GT/s et où ce qui a été vu de l’emplacement porterait plus.",
	"link.unjudged-idle":
		"Seules des valeurs au repos ont été vues. Largeur et vitesse peuvent toutes deux être réduites au repos pour économiser l’énergie.",
	"link.unjudged-path-not-seen":
		"L’appareil annonce {speedGTPerS} GT/s sur {width} voies, mais le chemin de la carte au port racine n’a pas été vu ; le point le plus lent n’est donc pas connu.",
	"link.bus-lost": "Les registres ne lisent que des uns : l’appareil ne répond pas sur le bus.",
	"link.no-link-data": "Rien n’a été consigné de la liaison.",
	"link.unknown-speed": "{speedGTPerS} GT/s n’est la vitesse d’aucune génération ; elle n’est donc pas appréciée.",
};
