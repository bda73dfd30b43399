/** Shares and times as the page writes them. */
import type { KnownShare } from "../../calculations/learning/known-share.ts";
import type { TimeToShow } from "../../calculations/learning/time-to-show.ts";
import { say } from "../../texts/say.ts";

/** One decimal below 10 %, none above: the numbers bear no more. */
export function percent(share: number): number {
	return share < 0.1 ? Math.round(1000 * share) / 10 : Math.round(100 * share);
}

export function shareWords({ seen, known, share, interval }: KnownShare): string {
	if (share === null || interval === null) return say("learning.share-none");
	const [low, high] = interval.map(percent);
	return say("learning.share-of", { seen, known, percent: percent(share), low: low ?? 0, high: high ?? 0 });
}

export function percentWords(share: number | null): string {
	return share === null ? say("learning.share-none") : say("learning.percent", { percent: percent(share) });
}

/** Of more than one, as rounded. */
function yearsWords(years: number): string {
	return years === 1 ? say("learning.years-about-one") : say("learning.years", { years });
}

export function showWords(time: TimeToShow | null): string {
	if (time === null) return say("learning.show-none");
	const { cases, years, isRough } = time;
	const after =
		years === null
			? say("learning.years-unknown")
			: years <= 1
				? say("learning.years-one")
				: yearsWords(Number(years.toPrecision(2)));
	const words = say("learning.show-of", { cases, years: after });
	return isRough ? `${words}; ${say("learning.rough")}` : words;
}
