/** Standing of a figure, as answers give it. */
export { STANDINGS } from "../calculations/sources.ts";
