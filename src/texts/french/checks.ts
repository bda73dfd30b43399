/** Noms des contrôles. */
import type { ReportTexts } from "../report-texts.ts";

export const checks: ReportTexts["checks"] = {
	"checks.mass": "Masse de la carte",
	"checks.visual-parts": "Toutes les pièces présentes, aucune desserrée",
	"checks.visual-cracks": "Pas de fissure",
	"checks.visual-burn-marks": "Pas de trace ni d’odeur de brûlé",
	"checks.visual-liquid-marks": "Pas de trace de liquide",
	"checks.visual-connectors": "Connecteurs droits et propres",
	"checks.visual-edge-contacts": "Contacts de bord propres et entiers",
	"checks.visual-bracket": "Équerre et capot droits et serrés",
	"checks.visual-rattle": "Rien ne cliquette",
	"checks.visual-fan": "Chaque ventilateur démarre et tourne",
	"checks.resistance-core-rail": "Résistance à froid, alimentation du cœur à la masse",
	"checks.resistance-memory-rail": "Résistance à froid, alimentation de la mémoire à la masse",
	"checks.resistance-12v-slot-rail": "Résistance à froid, 12 V de l’emplacement à la masse",
	"checks.resistance-12v-auxiliary-rail": "Résistance à froid, 12 V du connecteur auxiliaire à la masse",
	"checks.starts-cold": "Démarrages à froid",
	"checks.starts-warm": "Démarrages à chaud",
	"checks.link-width": "Largeur de la liaison en charge",
	"checks.link-speed": "Vitesse de la liaison en charge",
	"checks.memory-errors": "Erreurs de mémoire",
	"checks.temperature-core": "Température du cœur en charge",
	"checks.fan-speed": "Vitesse du ventilateur en charge",
	"checks.score": "Score d’une tâche fixe",
};
