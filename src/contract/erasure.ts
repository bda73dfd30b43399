/** Erasing a party. */
import { z } from "zod";
import { id } from "./common.ts";

export const erasureInput = z.strictObject({
	/** The party's id once more, typed by whoever erases: it cannot be taken back. */
	confirm: id("pty"),
});
