/** What a report or a mail can say, in German. One file per room of the English texts. */
import { arrival } from "./german/arrival.ts";
import { checks } from "./german/checks.ts";
import { checksByClass } from "./german/checks-by-class.ts";
import { claims } from "./german/claims.ts";
import { comparison } from "./german/comparison.ts";
import { comparisonPage } from "./german/comparison-page.ts";
import { cushion } from "./german/cushion.ts";
import { dossier } from "./german/dossier.ts";
import { firstState } from "./german/first-state.ts";
import { foams } from "./german/foams.ts";
import { general } from "./german/general.ts";
import { link } from "./german/link.ts";
import { log } from "./german/log.ts";
import { mailText } from "./german/mail-text.ts";
import { notice } from "./german/notice.ts";
import { origin } from "./german/origin.ts";
import { pack } from "./german/pack.ts";
import { packaging } from "./german/packaging.ts";
import { periods } from "./german/periods.ts";
import { planner } from "./german/planner.ts";
import { recording } from "./german/recording.ts";
import { report } from "./german/report.ts";
import { retired } from "./german/retired.ts";
import { settling } from "./german/settling.ts";
import { shop } from "./german/shop.ts";
import { strength } from "./german/strength.ts";
import { units } from "./german/units.ts";
import { verify } from "./german/verify.ts";
import type { ReportKey } from "./report-texts.ts";

export const german: Readonly<Record<ReportKey, string>> = {
	...arrival,
	...checks,
	...checksByClass,
	...comparison,
	...comparisonPage,
	...cushion,
	...dossier,
	...firstState,
	...foams,
	...general,
	...link,
	...notice,
	...origin,
	...pack,
	...packaging,
	...planner,
	...report,
	...retired,
	...shop,
	...strength,
	...claims,
	...log,
	...mailText,
	...periods,
	...recording,
	...settling,
	...verify,
	...units,
};
