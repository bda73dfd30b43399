/** The page on which an order's report and dossier are handed out: for whom each edition is, and what stands in it. */
export const papers = {
	"papers.title": "Reports and dossiers",
	"papers.text":
		"A report is a PDF to read. A dossier is an archive that proves itself: the sealed records with their proofs, photos and files, the report, and a page that verifies all of it without a network.",
	"papers.as-of":
		"They tell of the log as it stands now, {size} entries. Their addresses hold this number: later entries do not change them.",
	"papers.none-sealed":
		"Nothing of this order is sealed yet. A report tells of sealed records only, and a dossier needs one.",
	"papers.edition": "Edition",
	"papers.who": "Who gets it, and what they see",
	"papers.files": "Files",
	"papers.parties": "For the parties",
	"papers.parties.who":
		"Both sides, by this page or their links. Everything that either side sealed, word for word; comparison, and what the findings fit.",
	"papers.expert": "For an expert or a court",
	"papers.expert.who":
		"Whoever you give a reader's link, or the file. The same, with the rule and the figures behind every comparison.",
	"papers.carrier": "For the carrier",
	"papers.carrier.who":
		"The shop hands it on. Facts only: item, value, hand-over, pack as shipped, outside of the parcel, exhibits by number. No comparison, nothing about origins, no plans, no probabilities; no attachment.",
	"papers.left-out": "What it leaves out",
	"papers.report": "Report (PDF)",
	"papers.dossier": "Dossier (ZIP)",
	"papers.language.en": "English",
	"papers.language.de": "Deutsch",
	"papers.language.fr": "Français",
	"papers.no-dossier": "No dossier: the sealed bytes hold every reading.",
	"papers.carrier-leg": "Leg {leg}, {from} to {to}",
	"papers.carrier-text": "Text for a web form",
	"papers.carrier-text-title": "Text for the carrier's web form",
	"papers.carrier-text-lead":
		"The facts of the carrier's edition as plain text, one number for each. Nothing of a comparison, of origins or of planning is in it. Read it before you send it; what stands there as open you add by hand.",
	"papers.carrier-text-most": "Most characters that the form takes",
	"papers.carrier-text-all": "no limit",
	"papers.carrier-text-up-to": "{most}",
	"papers.carrier-text-split": "Divide",
	"papers.carrier-text-size": "{characters} characters, {lines} lines; a line's end counts as one.",
	"papers.carrier-text-of": "Part {part}",
	"papers.carrier-text-copy": "Copy",
	"papers.carrier-text-copied": "Copied.",
	"papers.carrier-text-photos":
		"Photos go with the form as files of their own; their numbers are those in the report. The text names them.",
	"papers.caution":
		"A dossier holds photos as copies without metadata: nothing in them says where or with what device they were taken. An original goes in only where whoever brought it has agreed; so do films and documents, which may say where they were made. Look at what the pictures show before you hand a dossier on.",
	"papers.verify-page": "Verify a dossier here.",
	"papers.verify": "Or with the page inside it, or with sha256sum and openssl, as its VERIFY.txt tells.",
	"papers.link": "Reports and dossiers",
} as const;
