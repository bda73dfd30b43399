/** What a report or a mail can say, in French. One file per room of the English texts. */
import { arrival } from "./french/arrival.ts";
import { checks } from "./french/checks.ts";
import { checksByClass } from "./french/checks-by-class.ts";
import { claims } from "./french/claims.ts";
import { comparison } from "./french/comparison.ts";
import { comparisonPage } from "./french/comparison-page.ts";
import { cushion } from "./french/cushion.ts";
import { dossier } from "./french/dossier.ts";
import { firstState } from "./french/first-state.ts";
import { foams } from "./french/foams.ts";
import { general } from "./french/general.ts";
import { link } from "./french/link.ts";
import { log } from "./french/log.ts";
import { mailText } from "./french/mail-text.ts";
import { notice } from "./french/notice.ts";
import { origin } from "./french/origin.ts";
import { pack } from "./french/pack.ts";
import { packaging } from "./french/packaging.ts";
import { periods } from "./french/periods.ts";
import { planner } from "./french/planner.ts";
import { recording } from "./french/recording.ts";
import { report } from "./french/report.ts";
import { retired } from "./french/retired.ts";
import { settling } from "./french/settling.ts";
import { shop } from "./french/shop.ts";
import { strength } from "./french/strength.ts";
import { units } from "./french/units.ts";
import { verify } from "./french/verify.ts";
import type { ReportKey } from "./report-texts.ts";

export const french: Readonly<Record<ReportKey, string>> = {
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
