/** Words of positions and settlements that pages and reports share. */
import type { PositionView } from "../../contract/positions.ts";
import type { SettlementStepView } from "../../contract/settlement.ts";
import { isReportKey, type ReportKey } from "../../texts/say.ts";
import { ENGLISH, type Speaker } from "../../texts/speaker.ts";

export function testName(id: string, { say }: Speaker = ENGLISH): string {
	const key = `origin.test-${id}`;
	return isReportKey(key) ? say(key) : say(`settling.test.${id}` as ReportKey);
}

/** Which test, who does it, and on which days; null where a position names none. */
export function testWords({ test }: PositionView, speaker: Speaker = ENGLISH): string | null {
	const { say } = speaker;
	if (test === null) return null;
	const named = say("settling.test", { test: testName(test.id, speaker), by: say(`settling.by.${test.doneBy}`) });
	if (test.dates.length === 0) return named;
	return `${named} ${say("settling.test-dates", { dates: test.dates.join(", ") })}`;
}

/** The checks that a position is about; null where it names none. */
export function checksWords({ checkIds }: PositionView, { say }: Speaker = ENGLISH): string | null {
	if (checkIds.length === 0) return null;
	const nameOf = (id: string) => {
		const key = `checks.${id}`;
		return isReportKey(key) ? say(key) : id;
	};
	return say("settling.about-checks", { checks: checkIds.map(nameOf).join(", ") });
}

export function amountsWords(
	amounts: SettlementStepView["amounts"],
	{ say, writeDigits, between }: Speaker = ENGLISH,
): string {
	if (amounts.length === 0) return say("settling.amount-none");
	return amounts
		.map(({ amount, currency, from, to }) =>
			say("settling.amount", {
				amount: writeDigits(amount.toFixed(2)),
				currency,
				from: say(`settling.payer.${from}`),
				to: say(`settling.payer.${to}`),
			}),
		)
		.join(between);
}

/** What a step does, with its number and that of the proposal that it is about. */
export function stepTitle(
	steps: readonly SettlementStepView[],
	place: number,
	nameOf: (partyId: string) => string,
	{ say }: Speaker = ENGLISH,
) {
	const step = steps[place] as SettlementStepView;
	const about = steps.findIndex(({ id }) => id === step.proposalId) + 1;
	const what = say(`settling.act.${step.act}`, { name: nameOf(step.partyId), number: about });
	return say("settling.step", { number: place + 1, what });
}
