/** Matériaux des mousses. */
import type { ReportTexts } from "../report-texts.ts";

export const foams: ReportTexts["foams"] = {
	"foam.polyethylene-plank": "plaque de polyéthylène, cellules fermées",
	"foam.expanded-polyethylene": "polyéthylène expansé, feuille/plaque",
	"foam.cross-linked-polyethylene": "polyéthylène réticulé",
	"foam.polyurethane-ether": "polyuréthane éther, cellules ouvertes",
	"foam.polyurethane-ester": "polyuréthane ester, cellules ouvertes",
	"foam.expanded-polystyrene": "polystyrène expansé",
	"foam.expanded-polypropylene": "polypropylène expansé",
	"foam.polyethylene-plank-unknown": "plaque de polyéthylène de densité inconnue",
};
