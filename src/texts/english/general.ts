/** Sentences that several subjects use. */
export const general = {
	"general.not-assessed": "Not assessed, because {why}",
	"general.not-legal-advice": "General information, not legal advice.",
	"general.quoted": "“{text}”",
} as const;
