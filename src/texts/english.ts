/** All English sentences, by key. One file per subject in `english/`; a key begins with its subject. */
import { arrival } from "./english/arrival.ts";
import { catalogue } from "./english/catalogue.ts";
import { checks } from "./english/checks.ts";
import { checksByClass } from "./english/checks-by-class.ts";
import { claims } from "./english/claims.ts";
import { collectors } from "./english/collectors.ts";
import { comparison } from "./english/comparison.ts";
import { comparisonPage } from "./english/comparison-page.ts";
import { cover } from "./english/cover.ts";
import { cushion } from "./english/cushion.ts";
import { dossier } from "./english/dossier.ts";
import { drops } from "./english/drops.ts";
import { erasure } from "./english/erasure.ts";
import { faults } from "./english/faults.ts";
import { firstState } from "./english/first-state.ts";
import { foams } from "./english/foams.ts";
import { formErrors } from "./english/form-errors.ts";
import { general } from "./english/general.ts";
import { imports } from "./english/imports.ts";
import { layout } from "./english/layout.ts";
import { learning } from "./english/learning.ts";
import { link } from "./english/link.ts";
import { log } from "./english/log.ts";
import { mail } from "./english/mail.ts";
import { mailText } from "./english/mail-text.ts";
import { notice } from "./english/notice.ts";
import { origin } from "./english/origin.ts";
import { pack } from "./english/pack.ts";
import { packaging } from "./english/packaging.ts";
import { papers } from "./english/papers.ts";
import { periods } from "./english/periods.ts";
import { pictures } from "./english/pictures.ts";
import { planner } from "./english/planner.ts";
import { readIn } from "./english/read-in.ts";
import { recording } from "./english/recording.ts";
import { report } from "./english/report.ts";
import { retired } from "./english/retired.ts";
import { risk } from "./english/risk.ts";
import { rules } from "./english/rules.ts";
import { search } from "./english/search.ts";
import { settling } from "./english/settling.ts";
import { shock } from "./english/shock.ts";
import { shop } from "./english/shop.ts";
import { slip } from "./english/slip.ts";
import { soak } from "./english/soak.ts";
import { soakPage } from "./english/soak-page.ts";
import { strength } from "./english/strength.ts";
import { units } from "./english/units.ts";
import { upload } from "./english/upload.ts";
import { verify } from "./english/verify.ts";
import { warranty } from "./english/warranty.ts";

export const english = {
	...arrival,
	...catalogue,
	...checks,
	...claims,
	...checksByClass,
	...collectors,
	...comparison,
	...comparisonPage,
	...drops,
	...formErrors,
	...dossier,
	...erasure,
	...faults,
	...firstState,
	...foams,
	...imports,
	...general,
	...layout,
	...log,
	...mail,
	...mailText,
	...link,
	...slip,
	...shop,
	...cover,
	...cushion,
	...learning,
	...notice,
	...origin,
	...packaging,
	...pack,
	...periods,
	...papers,
	...pictures,
	...planner,
	...soak,
	...soakPage,
	...strength,
	...readIn,
	...recording,
	...report,
	...retired,
	...search,
	...settling,
	...shock,
	...risk,
	...rules,
	...units,
	...upload,
	...verify,
	...warranty,
};
