/** The pack as it would be cut open, to scale: along the box and across it. */
import { packSection } from "../../charts/pack-section.ts";
import type { PackSection } from "../../operations/packaging/pack-sections.ts";
import { inMillimetres } from "../../texts/millimetres.ts";
import { say, writeNumber } from "../../texts/say.ts";
import { Chart } from "../components/chart.tsx";

/** Play below this, m, is none to speak of in a drawing. */
const TELLS_M = 5e-4;

export function SectionFigures({
	sections,
	item,
	id,
}: {
	readonly sections: readonly PackSection[];
	readonly item: { readonly lengthM: number; readonly widthM: number; readonly heightM: number };
	/** Of the pack, so that two on one page are told apart. */
	readonly id: string;
}) {
	const reach = {
		alongM: Math.max(...sections.map(({ frame }) => frame.alongM)),
		uprightM: Math.max(...sections.map(({ frame }) => frame.uprightM)),
	};
	return (
		<div class="sections">
			{sections.map((section) => {
				const along = section.of === "front" ? item.lengthM : item.widthM;
				const { frame, playM } = section;
				const millimetres = (metres: number) => Number(inMillimetres(metres));
				const drawing = packSection({
					frame,
					reach,
					words: {
						title: say(`pack.section.${section.of}`),
						description: [
							say("pack.section-text", {
								alongMm: millimetres(frame.alongM),
								uprightMm: millimetres(frame.uprightM),
								itemMm: millimetres(along),
								itemUprightMm: millimetres(item.heightM),
							}),
							playWords("pack.along", playM[0]),
							playWords("pack.upright", playM[1]),
						].join(" "),
						item: `${writeNumber(millimetres(along))} × ${writeNumber(millimetres(item.heightM))}`,
					},
				});
				return (
					<figure key={section.of}>
						<Chart drawing={drawing} id={`section-${id}-${section.of}`} />
						<figcaption>
							<strong>{drawing.title}.</strong> {drawing.description}
						</figcaption>
					</figure>
				);
			})}
		</div>
	);
}

function playWords(direction: "pack.along" | "pack.upright", playM: number): string {
	const values = { direction: say(direction), playMm: Math.abs(Number((1000 * playM).toPrecision(3))) };
	if (Math.abs(playM) < TELLS_M) return say("pack.play-none", values);
	return say(playM > 0 ? "pack.play" : "pack.pressed", values);
}
