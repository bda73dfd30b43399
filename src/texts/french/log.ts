/** Des mots du journal. */
import type { ReportTexts } from "../report-texts.ts";

export const log: ReportTexts["log"] = {
	"log.party-signature": "Signature de la partie elle-même",
	"log.party-signed": "signé sur l’appareil de la partie : le même appareil, qui détient la clé, l’a signé",
	"log.party-unsigned": "non signé par la partie",
};
