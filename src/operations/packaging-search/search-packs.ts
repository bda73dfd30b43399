/** Searches packs and says what was found in words; runs on a thread of its own. */
import { packagingSearch } from "../../calculations/packaging/search/packaging-search.ts";
import type { PackagingSearchAnswer, PackagingSearchRequest } from "../../contract/packaging-search.ts";
import { speak } from "../../texts/say.ts";
import { currencyOf, searchInput } from "./search-input.ts";

export function searchPacks(request: PackagingSearchRequest): PackagingSearchAnswer {
	const answer = packagingSearch(searchInput(request));
	if (answer.status !== "assessed") return speak(answer) as PackagingSearchAnswer;
	const currency = currencyOf(request);
	const designs = answer.result.designs.map(({ cost, ...design }) => ({
		...design,
		// Half-up in minor units.
		cost: cost === null || currency === null ? null : { amount: Math.round(cost * 100) / 100, currency },
	}));
	return speak({ ...answer, result: { ...answer.result, designs } }) as unknown as PackagingSearchAnswer;
}
