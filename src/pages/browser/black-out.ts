/** Draws rectangles over a picture, with a pointer or with keys, into the form's numbers. Without script they are typed. */
import { type Rectangle, withinPicture } from "./black-out/within-picture.ts";

const area = document.querySelector<HTMLElement>(".black-out");
const form = document.querySelector<HTMLFormElement>("#black-out-form");
const SIDES = ["x", "y", "w", "h"] as const;
/** Percent that a key moves or widens by. */
const STEP = 1;
/** Percent: a rectangle that a key begins. */
const FIRST = { x: 40, y: 40, w: 20, h: 20 };

function field(side: string, row: number): HTMLInputElement | null {
	return form?.querySelector<HTMLInputElement>(`[name="${side}${row}"]`) ?? null;
}

function rectangleOf(row: number): Rectangle | null {
	const [x = Number.NaN, y = Number.NaN, w = Number.NaN, h = Number.NaN] = SIDES.map((side) => {
		const typed = field(side, row)?.value.trim().replace(",", ".") ?? "";
		return typed === "" ? Number.NaN : Number(typed);
	});
	return [x, y, w, h].every(Number.isFinite) ? { x, y, w, h } : null;
}

function rows(): number[] {
	const all: number[] = [];
	while (field("x", all.length) !== null) all.push(all.length);
	return all;
}

/** Inside the picture, with one decimal. */
function put(row: number, { x, y, w, h }: Rectangle): void {
	const within = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));
	const left = within(x, 0, 99);
	const top = within(y, 0, 99);
	const kept = { x: left, y: top, w: within(w, 0.5, 100 - left), h: within(h, 0.5, 100 - top) };
	for (const side of SIDES) {
		const input = field(side, row);
		if (input !== null) input.value = String(Math.round(kept[side] * 10) / 10);
	}
	show();
}

/** The rectangles as the numbers say them, as far as the picture goes: what hangs over it would hide the form. */
function show(): void {
	for (const shown of area?.querySelectorAll(".cover") ?? []) shown.remove();
	for (const row of rows()) {
		const found = rectangleOf(row);
		const covered = found === null ? null : withinPicture(found);
		if (covered === null) continue;
		const cover = document.createElement("div");
		cover.className = "cover";
		cover.style.left = `${covered.x}%`;
		cover.style.top = `${covered.y}%`;
		cover.style.width = `${covered.w}%`;
		cover.style.height = `${covered.h}%`;
		area?.append(cover);
	}
}

const emptyRow = () => rows().find((row) => rectangleOf(row) === null) ?? null;
const newestRow = () => rows().findLast((row) => rectangleOf(row) !== null) ?? null;

function place(event: PointerEvent): { x: number; y: number } {
	const box = area?.getBoundingClientRect() ?? new DOMRect();
	return { x: (100 * (event.clientX - box.left)) / box.width, y: (100 * (event.clientY - box.top)) / box.height };
}

area?.addEventListener("pointerdown", (down) => {
	const row = emptyRow();
	if (row === null) return;
	down.preventDefault();
	area.focus();
	area.setPointerCapture(down.pointerId);
	const from = place(down);
	const draw = (event: PointerEvent) => {
		const to = place(event);
		put(row, {
			x: Math.max(0, Math.min(from.x, to.x)),
			y: Math.max(0, Math.min(from.y, to.y)),
			w: Math.abs(to.x - from.x),
			h: Math.abs(to.y - from.y),
		});
	};
	area.addEventListener("pointermove", draw);
	const end = () => area.removeEventListener("pointermove", draw);
	area.addEventListener("pointerup", end, { once: true });
	area.addEventListener("pointercancel", end, { once: true });
});

area?.addEventListener("keydown", (event) => {
	const moves: Readonly<Record<string, readonly [number, number]>> = {
		ArrowLeft: [-STEP, 0],
		ArrowRight: [STEP, 0],
		ArrowUp: [0, -STEP],
		ArrowDown: [0, STEP],
	};
	const move = moves[event.key];
	if (move === undefined) return;
	event.preventDefault();
	const row = newestRow() ?? 0;
	const now = rectangleOf(row);
	if (now === null) put(row, FIRST);
	else if (event.shiftKey) put(row, { ...now, w: now.w + move[0], h: now.h + move[1] });
	else put(row, { ...now, x: now.x + move[0], y: now.y + move[1] });
});

form?.addEventListener("input", show);
show();
