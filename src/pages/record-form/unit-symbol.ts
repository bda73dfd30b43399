/** Symbols of units; reports use the same. */
export { unitSymbol } from "../../texts/unit-symbol.ts";
