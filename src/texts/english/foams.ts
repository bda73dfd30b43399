/** Materials of foams. */
export const foams = {
	"foam.polyethylene-plank": "polyethylene plank, closed cell",
	"foam.expanded-polyethylene": "expanded polyethylene sheet/plank",
	"foam.cross-linked-polyethylene": "cross-linked polyethylene",
	"foam.polyurethane-ether": "polyurethane ether, open cell",
	"foam.polyurethane-ester": "polyurethane ester, open cell",
	"foam.expanded-polystyrene": "expanded polystyrene",
	"foam.expanded-polypropylene": "expanded polypropylene",
	"foam.polyethylene-plank-unknown": "polyethylene plank of unknown density",
} as const;
