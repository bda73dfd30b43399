/** The fields in which a pack is described: item, cushions, bag, box, trip. */
import type { StockView } from "../../../contract/stock.ts";
import { say } from "../../../texts/say.ts";
import { Caution, TextField } from "../../components/form.tsx";
import { CushionFields } from "./cushion-fields.tsx";
import { AROUND, IN_GAP } from "./cushion-names.ts";
import { type Fields, touched } from "./field-parts.ts";
import { ItemFields } from "./item-fields.tsx";
import { BagFields, BoxFields, CornerDropFields } from "./pack-parts-fields.tsx";
import { TripFields } from "./trip-fields.tsx";

export function PlannerFields({ stock, ...field }: Fields & { readonly stock: StockView }) {
	return (
		<>
			<h2>{say("pack.item")}</h2>
			<ItemFields {...field} />

			<h2>{say("pack.box")}</h2>
			<BoxFields prefix="box" stock={stock} {...field} />
			<div class="row">
				<TextField {...field} name="pack.grossMassKg" label={say("shop.parcel-mass")} unit="kg" inputMode="decimal" />
				<TextField {...field} name="pack.closedHow" label={say("pack.closed-how")} />
			</div>

			<h2>{say("pack.cushion")}</h2>
			<Caution>{say("pack.cutting-caution")}</Caution>
			<CushionFields place={AROUND} stock={stock} {...field} />
			<details open={touched(field, "inner.", "gapFace.")}>
				<summary>{say("pack.inner-box")}</summary>
				<p class="hint">{say("pack.inner-box-text")}</p>
				<BoxFields prefix="inner" stock={stock} {...field} />
				<h3>{say("pack.gap")}</h3>
				<CushionFields place={IN_GAP} stock={stock} {...field} />
			</details>

			<h2>{say("pack.bag")}</h2>
			<BagFields stock={stock} {...field} />

			<h2>{say("pack.route")}</h2>
			<TripFields {...field} />

			<h2>{say("pack.tried")}</h2>
			<CornerDropFields {...field} />
		</>
	);
}
