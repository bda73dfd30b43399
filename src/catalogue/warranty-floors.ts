/** What the law gives beside an order's own terms, by the owner's country, as far as a text was read. Information alone. */
import { cite, type Source } from "../calculations/sources.ts";

export interface WarrantyFloor {
	/** Words stand under `warranty.floor-…`. */
	readonly id: string;
	readonly country: string;
	readonly contractKinds: readonly ("repair" | "exchange" | "warranty-return")[];
	readonly consumersOnly: boolean;
	readonly source: Source;
	/** State of the copy that was read. */
	readonly readOn: string;
}

export const WARRANTY_FLOORS: readonly WarrantyFloor[] = [
	{
		id: "de-work",
		country: "DE",
		contractKinds: ["repair", "warranty-return"],
		consumersOnly: false,
		source: cite("bgb", "§§ 634a, 640", "published"),
		readOn: "2022-03-26",
	},
	{
		id: "de-sale",
		country: "DE",
		contractKinds: ["exchange"],
		consumersOnly: true,
		source: cite("bgb", "§§ 438, 477", "published"),
		readOn: "2022-03-26",
	},
	{
		id: "fr-sale",
		country: "FR",
		contractKinds: ["exchange"],
		consumersOnly: true,
		source: cite("french-consumer-code", "L217-3, L217-7, L217-13", "published"),
		readOn: "2026-04",
	},
];
