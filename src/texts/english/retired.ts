/**
 * Sentences that no code says any more. Sealed assessments hold their keys, so they stay readable for good.
 */
export const retired = {
	"packaging.several-layers": "Several layers of foam on one face are not assessed yet.",
	"packaging.face-drops-only": "Flat drops only: most impacts recorded were on edges and corners, which come later.",
	"packaging.later": "Not assessed, because this release does not make this check yet.",
} as const;
