/** What sealing still asks for: each line names the question in words, and leads to the step where it is answered. */
import type { GuidedRecord } from "../../operations/records/guided-record.ts";
import type { Shortcoming } from "../../records/shortcoming.ts";
import { badMemberWords } from "../../texts/fault-words.ts";
import { say } from "../../texts/say.ts";
import { checkName } from "../record-form/check-control.tsx";
import { type Step, stepsOf } from "./steps.ts";

export function StillNeeded({
	guided,
	shortcomings,
}: {
	readonly guided: GuidedRecord;
	readonly shortcomings: readonly Shortcoming[];
}) {
	return (
		<section class="error-summary" id="still-needed">
			<h2>{say("arrival.review.missing")}</h2>
			<ul>
				{shortcomings.map((one) => {
					const { step, name, label } = placeToMend(guided, one.path);
					const { message, mend } = badMemberWords(one.code);
					return (
						<li key={one.path}>
							<a href={`/guided/${guided.record.id}/${step.id}#${name}`}>{label}</a>: {message} {mend}
						</li>
					);
				})}
			</ul>
		</section>
	);
}

interface PlaceToMend {
	readonly step: Step;
	/** Of the control. */
	readonly name: string;
	readonly label: string;
}

/** The question that a member of the content answers. What no question asks for is mended where its step is likeliest. */
function placeToMend({ record, allChecks, ownChecks }: GuidedRecord, path: string): PlaceToMend {
	const steps = stepsOf(record.stage);
	const name = path.slice(1).replaceAll("/", ".");
	for (const step of steps) {
		const field = step.fields.find((candidate) => candidate.name === name);
		if (field !== undefined) return { step, name, label: say(field.label) };
	}
	const [group = "", index = ""] = path.split("/").slice(1);
	if (group === "readings") {
		const reading = record.content?.readings?.[Number(index)];
		const check = allChecks.find(({ id }) => id === reading?.check);
		const own = ownChecks.find(({ id }) => id === reading?.check)?.definition.name;
		const step = steps.find((candidate) => check !== undefined && candidate.checks?.(check) === true);
		const label = check === undefined ? (own ?? reading?.check ?? group) : checkName(check);
		return { step: step ?? stepCalled(steps, "checks"), name: `check.${reading?.check}`, label };
	}
	if (group === "exhibits") {
		const exhibit = record.content?.exhibits?.[Number(index)];
		const step = steps.find(({ views }) => exhibit !== undefined && views.includes(exhibit.view));
		return { step: step ?? stepCalled(steps, "file"), name: "photos.files", label: say("arrival.photos-add") };
	}
	const step = stepCalled(steps, group === "identity" ? "identity" : "result");
	return { step, name, label: say(step.title) };
}

function stepCalled(steps: readonly Step[], id: string): Step {
	const step = steps.find((candidate) => candidate.id === id);
	if (step === undefined) throw new Error(`a guided record lacks its step ${id}`);
	return step;
}
