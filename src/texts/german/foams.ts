/** Werkstoffe von Schaumstoffen. */
import type { ReportTexts } from "../report-texts.ts";

export const foams: ReportTexts["foams"] = {
	"foam.polyethylene-plank": "Polyethylen-Platte, geschlossenzellig",
	"foam.expanded-polyethylene": "expandiertes Polyethylen, Bahn/Platte",
	"foam.cross-linked-polyethylene": "vernetztes Polyethylen",
	"foam.polyurethane-ether": "Polyurethan-Ether, offenzellig",
	"foam.polyurethane-ester": "Polyurethan-Ester, offenzellig",
	"foam.expanded-polystyrene": "expandiertes Polystyrol",
	"foam.expanded-polypropylene": "expandiertes Polypropylen",
	"foam.polyethylene-plank-unknown": "Polyethylen-Platte von unbekannter Dichte",
};
