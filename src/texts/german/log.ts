/** Aus den Worten des Logbuchs. */
import type { ReportTexts } from "../report-texts.ts";

export const log: ReportTexts["log"] = {
	"log.party-signature": "Unterschrift durch ein Gerät",
	"log.party-signed": "Ein Gerät, auf dem der Link benutzt wurde, hat diesen Eintrag am {time} unterschrieben",
	"log.party-unsigned": "nicht von der Partei unterschrieben",
};
