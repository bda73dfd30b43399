/** How little a tripped or untripped impact indicator says. */
import { indicatorTable } from "../../operations/transit-recordings/indicator-table.ts";
import { say, writeNumber } from "../../texts/say.ts";

export function IndicatorNote() {
	const { rows, pulseMs } = indicatorTable();
	return (
		<details id="indicators">
			<summary>{say("recording.indicators")}</summary>
			<p>{say("recording.indicator-tripped")}</p>
			<p>{say("recording.indicator-untripped")}</p>
			<table>
				<caption>{say("recording.indicator-table", { pulseMs })}</caption>
				<thead>
					<tr>
						<th scope="col" class="number">
							{say("recording.indicator-threshold")}
						</th>
						<th scope="col" class="number">
							{say("recording.velocity-change")}
						</th>
						<th scope="col" class="number">
							{say("recording.indicator-drop")}
						</th>
					</tr>
				</thead>
				<tbody>
					{rows.map(({ thresholdGn, velocityChangeMPerS, dropBandM: [low, high] }) => (
						<tr key={thresholdGn}>
							<th scope="row" class="number">
								{thresholdGn} gₙ
							</th>
							<td class="number">{writeNumber(Number(velocityChangeMPerS.toFixed(2)))} m/s</td>
							<td class="number">
								{Math.round(1000 * low)} – {Math.round(1000 * high)} mm
							</td>
						</tr>
					))}
				</tbody>
			</table>
			<p class="hint">{say("recording.indicator-standing")}</p>
		</details>
	);
}
