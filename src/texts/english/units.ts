/** What readings count, in words: other units stand by their symbols. */
export const units = {
	"unit.errors": "errors",
	"unit.points": "points",
	"unit.lanes": "lanes",
	"unit.runs": "runs",
	"unit.starts": "starts",
	"unit.rpm": "rpm",
} as const;
