/** Des mots du journal. */
import type { ReportTexts } from "../report-texts.ts";

export const log: ReportTexts["log"] = {
	"log.party-signature": "Signature par un appareil",
	"log.party-signed": "un appareil sur lequel le lien a été employé a signé cette entrée le {time}",
	"log.party-unsigned": "non signé par la partie",
};
