/** Drawing primitives: what a chart is made of. Painters for pages and reports turn them into marks; colours are theirs. */

/** What a mark stands for; painters choose ink and weight by it, never by colour alone. */
export type Role =
	| "axis"
	| "grid"
	| "band"
	| "curve"
	| "curve-outside"
	| "limit"
	| "limit-curve"
	| "envelope"
	| "point"
	| "point-guide"
	| "optimum"
	| "floor"
	| "box"
	| "item"
	| "cushion"
	| "second-cushion"
	| "bar-holds"
	| "bar-short"
	| "bar-before"
	| "label";

export type Primitive =
	| { readonly kind: "path"; readonly role: Role; readonly d: string }
	| {
			readonly kind: "line";
			readonly role: Role;
			readonly x1: number;
			readonly y1: number;
			readonly x2: number;
			readonly y2: number;
	  }
	| { readonly kind: "circle"; readonly role: Role; readonly cx: number; readonly cy: number; readonly r: number }
	| {
			readonly kind: "text";
			readonly role: Role;
			readonly x: number;
			readonly y: number;
			readonly anchor: "start" | "middle" | "end";
			readonly text: string;
	  };

export interface Drawing {
	readonly width: number;
	readonly height: number;
	readonly title: string;
	/** The chart in words, for whoever does not see it. */
	readonly description: string;
	readonly primitives: readonly Primitive[];
}
