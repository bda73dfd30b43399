/** What the wait step says, for a wait to come, one that is over, none, and one that never ends. Own regression cases. */
import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import type { Wait } from "../../src/pages/customer/wait.ts";
import { WaitNote } from "../../src/pages/customer/wait-note.tsx";

const CONTENT = { parcel: { inHandAt: "2026-03-05T10:00:00+01:00" } };
const WAIT: Wait = {
	kind: "wait",
	dewPointDegC: 5.8,
	modelWaitH: 2,
	countedFrom: new Date("2026-03-05T09:00:00Z"),
	countedFromEntry: false,
	openAt: new Date("2026-03-05T13:06:00Z"),
	powerAt: new Date("2026-03-05T21:00:00Z"),
	assumedHumidityPercent: 70,
	frozen: true,
};
const shown = (wait: Wait, now = "2026-03-05T12:00:00Z", content: object = CONTENT) =>
	renderToString(<WaitNote wait={wait} content={content} now={new Date(now)} />);

describe("the wait in words", () => {
	it("gives times on the person's clock, and why", () => {
		const words = shown(WAIT);
		expect(words).toContain("5 Mar 2026, 14:06 (UTC+01:00)");
		expect(words).toContain("5 Mar 2026, 22:00 (UTC+01:00)");
		expect(words).toContain("The dew point of your room is 5.8 °C");
		expect(words).toContain("counted with 70 % (our choice)");
		expect(words).toContain("Ice melts late");
	});

	it("says that a wait is over, and when it ended", () => {
		expect(shown(WAIT, "2026-03-05T14:00:00Z")).toContain("Now; the wait ended 5 Mar 2026, 14:06");
	});

	it("says now, and why, where no wait is needed", () => {
		const words = shown({ ...WAIT, openAt: null, powerAt: null, modelWaitH: 0 });
		expect(words).toContain("Nothing will condense on it");
		expect(words).not.toContain("the wait ended");
	});

	it("gives no time to switch on where wetness was seen", () => {
		const words = shown(WAIT, undefined, { ...CONTENT, firstPowerOn: { wetnessSeen: true } });
		expect(words).toContain("Not at all: wetness was seen");
		expect(words).not.toContain("22:00");
	});

	it("never reads as no wait where there is no answer", () => {
		expect(shown({ kind: "not-assessed" })).toContain("leave the parcel closed for 12 hours");
		expect(shown({ kind: "never", dewPointDegC: 22 })).toContain("the wait would never end");
		expect(shown({ kind: "not-entered" })).not.toContain("Now");
	});
});
