/** Sentences on soaks and starts: what they exclude and what they do not. */
export const soak = {
	"soak.no-hours": "No hours under load were counted. Faults that show under load are not tested.",
	"soak.no-starts": "No cold start was counted. Faults that show at a cold start are not tested.",
	"soak.hours-exclude":
		"{hours} h under load without a fault: with {share} % confidence it would show less often than once in {meanTimeH} h. A rarer fault is not excluded.",
	"soak.starts-exclude":
		"{coldStarts} cold starts without a miss: with {share} % confidence fewer than {most} % of starts would fail. A rarer miss is not excluded.",
	"soak.showed-in-hours": "The fault showed {failures} times in {hours} h under load. That is no clean test.",
	"soak.showed-at-starts": "{coldStartFailures} of {coldStarts} cold starts failed. That is no clean test.",
	"soak.escape": "A fault as described would pass this test unseen with a probability of {percent} %.",
	"soak.only-exercised":
		"Only what was exercised counts: hours at one temperature do not test starts, heating up or cooling down. Any work on the item starts the count again.",
	"soak.caution-attended":
		"A board under load gets hot and may fail. Stay near it, keep it clear of anything that burns, and stop at smell, smoke or unusual heat.",
} as const;
