/** A control for files whose files are sent as soon as they are chosen; the form then names them instead of holding them. */
import { type Sending, sendFile, type UploadTarget } from "./send-file.ts";

/** Our choice: a phone's line is not faster for more at once. */
const AT_ONCE = 2;

interface Chosen {
	readonly file: File;
	readonly row: Row;
	state: "waits" | "sends" | "done" | "refused" | "given-up";
	uploadId?: string;
	sending?: Sending;
}

/** @param place holds the words, and shows what is sent */
export function watchInput(input: HTMLInputElement, place: HTMLElement): void {
	const { form } = input;
	const target = targetOf(place);
	if (form === null || target === null) return;
	const words = place.dataset;
	const chosen: Chosen[] = [];
	const named = document.createElement("input");
	named.type = "hidden";
	named.name = `${input.name}.uploaded`;
	const list = document.createElement("ul");
	list.className = "uploads";
	const news = document.createElement("p");
	news.role = "status";
	place.append(named, list, news);
	/** The button whose act waits until everything is sent. */
	let held: HTMLElement | null = null;
	const underWay = () => chosen.filter(({ state }) => state === "waits" || state === "sends");

	function go(): void {
		named.value = chosen.flatMap(({ state, uploadId }) => (state === "done" ? [uploadId] : [])).join(" ");
		const sending = chosen.filter(({ state }) => state === "sends").length;
		for (const next of chosen.filter(({ state }) => state === "waits").slice(0, AT_ONCE - sending)) begin(next);
		if (underWay().length > 0 || held === null) return;
		const button = held;
		held = null;
		// What was refused is read first; the act is then asked for again.
		if (!chosen.some(({ state }) => state === "refused")) form?.requestSubmit(button);
	}

	function begin(one: Chosen): void {
		one.state = "sends";
		one.sending = sendFile(one.file, target as UploadTarget, {
			progress(sentBytes) {
				one.row.show(sentBytes, `${Math.floor((100 * sentBytes) / one.file.size)} %`);
			},
			away() {
				one.row.say(words.away ?? "");
				tell(words.away ?? "");
			},
			done(uploadId) {
				Object.assign(one, { state: "done", uploadId });
				one.row.show(one.file.size, words.done ?? "");
				const left = underWay().length;
				tell(left > 0 ? fill(words.left, String(left)) : (words.allDone ?? ""));
				go();
			},
			refused(why) {
				one.state = "refused";
				one.row.refuse(why === "" ? (words.failed ?? "") : why);
				tell(`${one.file.name}: ${why}`);
				go();
			},
		});
	}

	function tell(text: string): void {
		if (news.textContent !== text) news.textContent = text;
	}

	input.addEventListener("change", () => {
		const files = [...(input.files ?? [])];
		// One that was refused is chosen anew, or another in its place.
		for (const old of chosen.filter(({ state }) => state === "refused")) remove(old);
		if (!input.multiple) for (const old of chosen) remove(old);
		for (const file of files) {
			const row = rowOf(file, fill(words.giveUp, file.name));
			const one: Chosen = { file, row, state: "waits" };
			row.button.addEventListener("click", () => {
				remove(one);
				input.focus();
				go();
			});
			chosen.push(one);
			list.append(row.item);
		}
		// The form does not send them a second time.
		input.value = "";
		tell(fill(words.left, String(underWay().length)));
		go();
	});
	form.addEventListener("submit", (event) => {
		if (underWay().length === 0) return;
		event.preventDefault();
		held = event.submitter;
		tell(words.held ?? "");
	});
	addEventListener("offline", () => {
		for (const { row } of chosen.filter(({ state }) => state === "sends")) row.say(words.away ?? "");
		if (underWay().length > 0) tell(words.away ?? "");
	});
	addEventListener("online", () => {
		for (const { sending, state } of chosen) if (state === "sends") sending?.goOn();
	});
	addEventListener("beforeunload", (event) => {
		if (underWay().length > 0) event.preventDefault();
	});

	function remove(one: Chosen): void {
		if (one.state === "sends") one.sending?.giveUp();
		one.state = "given-up";
		one.row.item.remove();
		chosen.splice(chosen.indexOf(one), 1);
	}
}

interface Row {
	readonly item: HTMLLIElement;
	readonly button: HTMLButtonElement;
	show(sentBytes: number, text: string): void;
	say(text: string): void;
	refuse(why: string): void;
}

function rowOf(file: File, giveUp: string): Row {
	const item = document.createElement("li");
	const name = document.createElement("span");
	name.textContent = file.name;
	const bar = document.createElement("progress");
	bar.max = file.size;
	bar.value = 0;
	bar.ariaLabel = file.name;
	const state = document.createElement("span");
	state.className = "upload-state";
	const button = document.createElement("button");
	button.type = "button";
	button.className = "quiet small";
	button.textContent = "×";
	button.ariaLabel = giveUp;
	item.append(name, bar, state, button);
	return {
		item,
		button,
		show(sentBytes, text) {
			bar.value = sentBytes;
			state.textContent = text;
		},
		say(text) {
			state.textContent = text;
		},
		refuse(why) {
			bar.remove();
			state.className = "error";
			state.textContent = why;
		},
	};
}

function targetOf({ dataset: { record, consignment } }: HTMLElement): UploadTarget | null {
	if (record !== undefined) return { kind: "record", id: record };
	return consignment === undefined ? null : { kind: "consignment", id: consignment };
}

/** Words with one gap. */
function fill(words: string | undefined, value: string): string {
	return (words ?? "").replace("{}", value);
}
