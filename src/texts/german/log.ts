/** Aus den Worten des Logbuchs. */
import type { ReportTexts } from "../report-texts.ts";

export const log: ReportTexts["log"] = {
	"log.party-signature": "Eigene Unterschrift der Partei",
	"log.party-signed":
		"auf dem Gerät der Partei unterschrieben: Dasselbe Gerät, das den Schlüssel hat, hat es unterschrieben",
	"log.party-unsigned": "nicht von der Partei unterschrieben",
};
