/** Bewertungen der Verbindung einer Karte. */
import type { ReportTexts } from "../report-texts.ts";

export const link: ReportTexts["link"] = {
	"link.ok": "Die Verbindung läuft mit {speedGTPerS} GT/s auf {width} Lanes, allem, was die Karte kann.",
	"link.ok-idle-saving":
		"Unter Last läuft die Verbindung mit {speedGTPerS} GT/s auf {width} Lanes; was sie im Leerlauf abgibt, ist Sparen.",
	"link.ok-card-limit":
		"Die Verbindung läuft mit {speedGTPerS} GT/s auf {width} Lanes, allem, was die Karte kann; der Steckplatz könnte mehr tragen.",
	"link.slot-limited":
		"Die Verbindung läuft mit {speedGTPerS} GT/s auf {width} Lanes: so viel, wie der Steckplatz trägt, weniger als die {cardSpeedGTPerS} GT/s auf {cardWidth} der Karte.",
	"link.width-reduced":
		"Unter Last laufen nur {width} Lanes, wo die Karte {cardWidth} kann und das vom Steckplatz Gesehene mehr tragen würde.",
	"link.speed-reduced":
		"Unter Last läuft die Verbindung mit {speedGTPerS} GT/s, wo die Karte {cardSpeedGTPerS} GT/s kann und das vom Steckplatz Gesehene mehr tragen würde.",
	"link.unjudged-idle":
		"Es wurden nur Werte im Leerlauf gesehen. Breite und Geschwindigkeit können im Leerlauf beide zum Stromsparen verringert sein.",
	"link.unjudged-path-not-seen":
		"Das Gerät meldet {speedGTPerS} GT/s auf {width} Lanes, doch wurde der Weg von der Karte zum Root-Port nicht gesehen; die langsamste Stelle ist also nicht bekannt.",
	"link.bus-lost": "Die Register lesen nur Einsen: Das Gerät antwortet nicht auf dem Bus.",
	"link.no-link-data": "Über die Verbindung wurde nichts festgehalten.",
	"link.unknown-speed":
		"{speedGTPerS} GT/s ist nicht die Geschwindigkeit einer Generation, daher wird sie nicht bewertet.",
};
