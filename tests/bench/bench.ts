/** `npm run bench -- seal`: runs the benchmarks that are named. Each compares with a floor that is measured in the same run. */
import { benchCsv } from "./csv.ts";
import { benchDossier } from "./dossier.ts";
import { benchDossierBeyond4Gib } from "./dossier-beyond-4gib.ts";
import { benchRecording } from "./recording.ts";
import { benchSeal } from "./seal.ts";
import { benchSearch } from "./search.ts";
import { benchSpectrum } from "./spectrum.ts";

const BENCHMARKS: Readonly<Record<string, () => Promise<void>>> = {
	dossier: benchDossier,
	"dossier-beyond-4gib": benchDossierBeyond4Gib,
	recording: benchRecording,
	seal: benchSeal,
	search: benchSearch,
	spectrum: benchSpectrum,
	csv: benchCsv,
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => BENCHMARKS[name] === undefined);
if (asked.length === 0 || unknown.length > 0) {
	console.error(`name one or more of: ${Object.keys(BENCHMARKS).join(", ")}`);
	process.exitCode = 1;
} else {
	for (const name of asked) await BENCHMARKS[name]?.();
}
