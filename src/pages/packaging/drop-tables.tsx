/** The design drop beside other bases, and beside what was measured: standards differ, and networks drop from higher. */
import type { ComponentChildren } from "preact";
import type { PackPlan } from "../../operations/packaging/plan-pack.ts";
import { say, type TextKey, writeNumber } from "../../texts/say.ts";

export function DropTables({
	drop,
	basis,
	protectedM,
	children,
}: {
	readonly drop: NonNullable<PackPlan["drop"]>;
	/** The basis that was asked for. */
	readonly basis: string;
	/** Null where it is not known. */
	readonly protectedM: number | null;
	/** Notes on the figures. */
	readonly children: ComponentChildren;
}) {
	const against = (heightM: number | null) => {
		if (heightM === null) return "–";
		if (protectedM === null) return `${writeNumber(heightM)} m`;
		return `${writeNumber(heightM)} m, ${say(heightM <= protectedM ? "pack.within" : "pack.beyond")}`;
	};
	const bases = [{ basis, dropHeightM: drop.dropHeightM, standing: drop.standing }, ...drop.alternatives];
	return (
		<>
			<table class="stacked">
				<caption>{say("pack.measured-caption")}</caption>
				<thead>
					<tr>
						<th scope="col">{say("pack.service")}</th>
						<th scope="col">{say("pack.p95")}</th>
						<th scope="col">{say("pack.highest")}</th>
						<th scope="col">{say("pack.drops-per-trip")}</th>
					</tr>
				</thead>
				<tbody>
					{drop.measured.map((row) => (
						<tr key={row.id}>
							<th scope="row">{say(`pack.measured.${row.id}` as TextKey)}</th>
							<td data-label={say("pack.p95")}>{against(row.p95M)}</td>
							<td data-label={say("pack.highest")}>{against(row.maxM)}</td>
							<td data-label={say("pack.drops-per-trip")}>
								{row.dropsPerTrip === null ? say("pack.not-known") : writeNumber(row.dropsPerTrip)}
							</td>
						</tr>
					))}
				</tbody>
			</table>
			{children}
			<details>
				<summary>{say("pack.other-bases")}</summary>
				<table class="stacked">
					<caption>{say("pack.bases-caption")}</caption>
					<thead>
						<tr>
							<th scope="col">{say("pack.drop-basis")}</th>
							<th scope="col">{say("pack.drop-height")}</th>
							<th scope="col">{say("pack.standing")}</th>
						</tr>
					</thead>
					<tbody>
						{bases.map((row, index) => (
							<tr key={row.basis}>
								<th scope="row">
									{say(`pack.drop.${row.basis}` as TextKey)}
									{index === 0 && ` (${say("pack.chosen")})`}
								</th>
								<td data-label={say("pack.drop-height")}>{against(row.dropHeightM)}</td>
								<td data-label={say("pack.standing")}>{say(`pack.standing.${row.standing}` as TextKey)}</td>
							</tr>
						))}
					</tbody>
				</table>
			</details>
		</>
	);
}
