/**
 * Where a word that is wider than its column may break. German compounds break before one of these parts; other languages
 * have no word that long.
 */
import type { Language } from "./language.ts";

const GERMAN_PARTS = [
	"änderung",
	"anzeige",
	"aufnahme",
	"berechtigt",
	"betrieb",
	"beutel",
	"einschätzung",
	"fallhöhe",
	"fehler",
	"festigkeit",
	"folie",
	"gutachten",
	"indikator",
	"intervall",
	"mittel",
	"netzteil",
	"platz",
	"protokoll",
	"regler",
	"richtung",
	"sockel",
	"spannung",
	"spuren",
	"stecker",
	"steckplatz",
	"stift",
	"stunden",
	"temperatur",
	"überschreitung",
	"versorgung",
	"vertrag",
	"versuch",
	"widerstand",
	"zeit",
];

/** Matches the empty place before a part, four letters or more into a word. */
export const WORD_JOINTS: Readonly<Partial<Record<Language, RegExp>>> = {
	de: new RegExp(`(?<=\\p{L}{4})(?=(${GERMAN_PARTS.join("|")}))`, "gu"),
};
