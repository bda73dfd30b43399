/** Words by which a sentence would decide between the parties, or turn a probability round. */
export const PRONOUNCES =
	/\b(liable|liability|guilty|blame[ds]?|culprit|negligen\w+|responsible for|is at fault|was at fault|your fault|caused (it|this|the damage)|was caused by|is to blame|must pay|has to pay)\b/i;

/**
 * P(origin | findings) said where only P(findings | origin) is known: a cause called probable, likely or proven. To say
 * how probable findings are under an origin is right.
 */
export const TRANSPOSES =
	/\b((probably|likely|presumably|certainly|clearly|evidently) ((was )?(caused|dropped|damaged|broken|shaken|happened)|came from|was there before)|(most )?(likely|probable) (cause|origin|reason)|(cause|origin) is (probably|likely|most likely|proven|certain)|(probability|chance|likelihood) (that|of) (the carrier|the sender|the repairer|the owner|a (party|side))|proves? (that|who) (the )?(carrier|sender|repairer|owner|consignee|trip|transit)|must have been (dropped|damaged|caused))\b/i;
