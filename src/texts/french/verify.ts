/** Genres d’entrées du journal. */
import type { ReportTexts } from "../report-texts.ts";

export const verify: ReportTexts["verify"] = {
	"verify.kind.record-opened": "Brouillon ouvert",
	"verify.kind.record-discarded": "Brouillon abandonné",
	"verify.kind.record-sealed": "Constat scellé",
	"verify.kind.assessment-sealed": "Emballage scellé",
	"verify.kind.position-sealed": "Position déclarée",
	"verify.kind.settlement-sealed": "Pas vers un accord",
	"verify.kind.link-used": "Lien employé pour la première fois",
	"verify.kind.party-signed": "Signé par un appareil sur lequel le lien a été employé",
	"verify.kind.party-erased": "Textes personnels effacés",
	"verify.kind.log-key-added": "Nouvelle clé du journal",
};
