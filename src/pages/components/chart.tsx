/** Paints a drawing as SVG; ink and weight are in the stylesheet, by the role of each mark. */
import type { Drawing, Primitive } from "../../charts/drawing.ts";

/** `small`: beside other words, in a table's cell. */
export function Chart({
	drawing,
	id,
	small = false,
}: {
	readonly drawing: Drawing;
	readonly id: string;
	readonly small?: boolean;
}) {
	return (
		<svg
			class={small ? "chart small" : "chart"}
			viewBox={`0 0 ${drawing.width} ${drawing.height}`}
			role="img"
			aria-labelledby={`${id}-title ${id}-description`}
		>
			<title id={`${id}-title`}>{drawing.title}</title>
			<desc id={`${id}-description`}>{drawing.description}</desc>
			{drawing.primitives.map((primitive, index) => (
				<Mark key={index} primitive={primitive} />
			))}
		</svg>
	);
}

function Mark({ primitive }: { readonly primitive: Primitive }) {
	const role = `mark-${primitive.role}`;
	switch (primitive.kind) {
		case "path":
			return <path class={role} d={primitive.d} />;
		case "line":
			return <line class={role} x1={primitive.x1} y1={primitive.y1} x2={primitive.x2} y2={primitive.y2} />;
		case "circle":
			return <circle class={role} cx={primitive.cx} cy={primitive.cy} r={primitive.r} />;
		case "text":
			return (
				<text class={role} x={primitive.x} y={primitive.y} text-anchor={primitive.anchor}>
					{primitive.text}
				</text>
			);
	}
}
