/** Arten von Einträgen des Logbuchs. */
import type { ReportTexts } from "../report-texts.ts";

export const verify: ReportTexts["verify"] = {
	"verify.kind.record-opened": "Entwurf begonnen",
	"verify.kind.record-discarded": "Entwurf verworfen",
	"verify.kind.record-sealed": "Protokoll versiegelt",
	"verify.kind.assessment-sealed": "Verpackung versiegelt",
	"verify.kind.position-sealed": "Stellungnahme abgegeben",
	"verify.kind.settlement-sealed": "Schritt zu einer Einigung",
	"verify.kind.link-used": "Link zum ersten Mal benutzt",
	"verify.kind.party-signed": "Unterschrieben von einem Gerät, auf dem der Link benutzt wurde",
	"verify.kind.party-erased": "Persönliche Texte gelöscht",
	"verify.kind.log-key-added": "Neuer Schlüssel des Logbuchs",
};
