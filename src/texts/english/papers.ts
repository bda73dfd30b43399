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
	"papers.caution":
		"Photos and files go into a dossier as they were brought. They may say where and with what device they were taken: look at them before you hand a dossier on.",
	"papers.verify":
		"Any dossier can be verified on the page {page}, with the page inside it, or with sha256sum and openssl, as its VERIFY.txt tells.",
	"papers.link": "Reports and dossiers",
} as const;
