/** The checks of a step. After a stop, those that need power are folded away: they count as not tested. */
import type { GuidedCheck, GuidedRecord } from "../../operations/records/guided-record.ts";
import { powerStop } from "../../operations/records/power-stop.ts";
import { say } from "../../texts/say.ts";
import type { FieldErrors, FormValues } from "../components/form.tsx";
import { CheckCautions, CheckControl } from "../record-form/check-control.tsx";
import { OwnReading } from "../record-form/own-reading.tsx";
import { ownChecksAsked } from "./own-checks-asked.ts";
import type { Step } from "./steps.ts";

interface StepChecksProps {
	readonly guided: GuidedRecord;
	readonly step: Step;
	readonly values: FormValues;
	readonly errors: FieldErrors;
}

export function StepChecks(props: StepChecksProps) {
	const { guided, step } = props;
	if (step.needsPower === true && powerStop(guided.record.content ?? {}) !== null) return <StoppedChecks {...props} />;
	const { checks, own } = checksOf(guided, step);
	const cautioned = own.length === 0 ? checks : guided.classChecks.filter((check) => step.checks?.(check) === true);
	return (
		<>
			<CheckCautions checks={cautioned} />
			<Controls {...props} checks={checks} own={own} />
			{step.checks !== undefined && checks.length === 0 && own.length === 0 && step.id === "checks" && (
				<p>{say("arrival.checks.none")}</p>
			)}
		</>
	);
}

/** What was tested before the stop stands open, without cautions for what is done no more; the rest is folded away. */
function StoppedChecks(props: StepChecksProps) {
	const { guided, step, errors } = props;
	const { checks, own } = checksOf(guided, step);
	const readings = guided.record.content?.readings ?? [];
	const wasTested = ({ id }: { readonly id: string }) =>
		readings.some(({ check, notTested }) => check === id && notTested === undefined);
	const left = checks.filter((check) => !wasTested(check));
	const ownLeft = own.filter((check) => !wasTested(check));
	const count = left.length + ownLeft.length;
	const starts = [...left.map(({ id }) => `check.${id}.`), ...ownLeft.map(({ id }) => `${id}.`)];
	const isWrong = Object.keys(errors).some((name) => starts.some((start) => name.startsWith(start)));
	return (
		<>
			<Controls {...props} checks={checks.filter(wasTested)} own={own.filter(wasTested)} />
			{count > 0 && (
				<>
					<p>{say("arrival.checks.left")}</p>
					<details open={isWrong}>
						<summary>{say("arrival.checks.left-list", { count })}</summary>
						<Controls {...props} checks={left} own={ownLeft} />
					</details>
				</>
			)}
		</>
	);
}

type StepCheckLists = ReturnType<typeof checksOf>;

function checksOf(guided: GuidedRecord, step: Step) {
	const belongs = (check: GuidedCheck) => step.checks?.(check) === true;
	return {
		checks: guided.checks.filter(belongs),
		own: step.parts.includes("own-checks") ? ownChecksAsked(guided) : [],
	};
}

function Controls({ guided, values, errors, checks, own }: StepChecksProps & StepCheckLists) {
	const content = guided.record.content ?? {};
	return (
		<>
			{checks.map((check) => (
				<CheckControl key={check.id} check={check} content={content} values={values} errors={errors} />
			))}
			{own.map((check) => (
				<OwnReading key={check.id} check={check} instruments={[]} values={values} errors={errors} />
			))}
		</>
	);
}
