/** Requests whose text alone takes long to check: each answered on a thread, few at once, and what it refuses thrown here. */
import { type BadMember, Fault, type FaultCode, fault } from "../../faults.ts";
import { onThread, type ThreadLimits } from "./on-thread.ts";
import type { Places } from "./places.ts";

/** What the worker posts: a fault that is thrown there would lose its class. */
export type Outcome<Answer> =
	| { readonly answer: Answer }
	| {
			readonly fault: {
				readonly code: FaultCode;
				readonly members: readonly BadMember[];
				readonly facts: Readonly<Record<string, string | number>>;
			};
	  };

/** In the worker. */
export function outcomeOf<Answer>(act: () => Answer): Outcome<Answer> {
	try {
		return { answer: act() };
	} catch (error) {
		if (!(error instanceof Fault)) throw error;
		return { fault: { code: error.code, members: error.members, facts: error.facts } };
	}
}

/** @throws too-many; too-large where the time or the memory is used up; whatever the worker refused */
export function answererOnThread<Answer>(
	workerPath: string,
	limits: ThreadLimits,
	inPlace: Places,
): (text: string) => Promise<Answer> {
	return async (text) => {
		const outcome = await inPlace(() => onThread<Outcome<Answer>>(workerPath, text, limits, () => fault("too-large")));
		if ("answer" in outcome) return outcome.answer;
		const { code, ...details } = outcome.fault;
		throw fault(code, details);
	};
}
