import { isolated } from "./isolated.ts";

/** What an item is called wherever it is named in one breath. */
export function itemName({ maker, model }: { readonly maker: string; readonly model: string }): string {
	return isolated(`${maker} ${model}`);
}
