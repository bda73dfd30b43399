/** When to open and when to switch on, with the reason. */
import type { RecordContentInput } from "../../contract/records.ts";
import { powerStop } from "../../operations/records/power-stop.ts";
import { say } from "../../texts/say.ts";
import { showTime } from "../../texts/shown-time.ts";
import { Caution } from "../components/form.tsx";
import { offsetIn } from "../record-form/fill-form.ts";
import type { Wait } from "./wait.ts";

export function WaitNote({
	wait,
	content,
	now,
}: {
	readonly wait: Wait;
	readonly content: RecordContentInput;
	readonly now: Date;
}) {
	if (wait.kind === "not-entered") return <p class="hint">{say("arrival.wait-not-yet")}</p>;
	const stop = powerStop(content);
	if (wait.kind === "not-assessed") {
		return <Caution>{say(stop === null ? "arrival.wait-careful" : "arrival.wait-careful-stopped")}</Caution>;
	}
	if (wait.kind === "never") return <Caution>{say("arrival.wait-never")}</Caution>;
	const offset = offsetIn(content) ?? undefined;
	const when = (time: Date | null) => {
		if (time === null) return say("arrival.wait-now");
		const shown = showTime(time, offset);
		return now < time ? shown : say("arrival.wait-over", { time: shown });
	};
	return (
		<section class="note">
			<h2>{say("arrival.wait-title")}</h2>
			<dl class="facts">
				<dt>{say("arrival.wait-open")}</dt>
				<dd>
					<strong>{when(wait.openAt)}</strong>
				</dd>
				<dt>{say("arrival.wait-power")}</dt>
				<dd>
					<strong>
						{stop === null
							? when(wait.powerAt)
							: say(stop === "wet" ? "arrival.wait-power-wet" : "arrival.wait-power-stopped")}
					</strong>
				</dd>
			</dl>
			{wait.openAt === null ? (
				<p>{say("arrival.wait-none-why", { dewPointDegC: wait.dewPointDegC.toFixed(1) })}</p>
			) : (
				<>
					<p>
						{say(wait.modelWaitH > 0 ? "arrival.wait-why" : "arrival.wait-why-unsure", {
							dewPointDegC: wait.dewPointDegC.toFixed(1),
							modelWaitH: wait.modelWaitH.toFixed(1),
						})}
					</p>
					<p>
						{say(wait.countedFromEntry ? "arrival.wait-counted-from-entry" : "arrival.wait-counted-from", {
							time: showTime(wait.countedFrom, offset),
						})}
					</p>
				</>
			)}
			{wait.assumedHumidityPercent !== null && (
				<p>{say("arrival.wait-humidity-assumed", { percent: wait.assumedHumidityPercent })}</p>
			)}
			{wait.frozen && wait.powerAt !== null && stop === null && <p>{say("arrival.wait-frozen")}</p>}
		</section>
	);
}
