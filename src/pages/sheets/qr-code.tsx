/** A QR code as SVG: our own drawing of the library's matrix, sharp at any size, without style attributes. */
import QRCode from "qrcode";

/** Light margin around the code, in modules: the quiet zone. Source: from-memory, ISO/IEC 18004. */
const QUIET_ZONE_MODULES = 4;

/** The code of a text, with a label for those who cannot see it. */
export function QrCode({ text, label }: { readonly text: string; readonly label: string }) {
	const { modules } = QRCode.create(text, { errorCorrectionLevel: "M" });
	const size = modules.size + 2 * QUIET_ZONE_MODULES;
	return (
		<svg class="qr" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label} shape-rendering="crispEdges">
			<title>{label}</title>
			<rect fill="#fff" width={size} height={size} />
			<path fill="#000" d={pathOf(modules)} />
		</svg>
	);
}

/** One rectangle per run of dark modules in a row. */
function pathOf(modules: { readonly size: number; get(row: number, column: number): number | boolean }): string {
	const runs: string[] = [];
	for (let row = 0; row < modules.size; row += 1) {
		for (let column = 0; column < modules.size; column += 1) {
			if (!modules.get(row, column)) continue;
			let length = 1;
			while (column + length < modules.size && modules.get(row, column + length)) length += 1;
			runs.push(`M${column + QUIET_ZONE_MODULES} ${row + QUIET_ZONE_MODULES}h${length}v1h-${length}z`);
			column += length;
		}
	}
	return runs.join("");
}
