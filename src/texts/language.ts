/** Languages in which a report can be had; RFC 5646. */
export const LANGUAGES = ["en", "de", "fr"] as const;
export type Language = (typeof LANGUAGES)[number];
