/** Notes on searches of packs. */
export const search = {
	"search.no-box": "The stock has no box.",
	"search.screened":
		"Every combination was screened; the designs given were then judged in full. Pads have fixed shares of a face, so a design between two of them may be better still.",
	"search.none": "No pack of this stock holds. The reasons are counted; the most frequent one says what to buy.",
} as const;
