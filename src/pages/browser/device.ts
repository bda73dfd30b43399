/** What the reader's own device does on a page: looks whether the log is still the one it saw, and signs its acts. */
import { checkLog } from "./device/check-log.ts";
import { signActs } from "./device/sign-acts.ts";

await Promise.all([
	checkLog(document.querySelector("#log-seen")),
	signActs(document.querySelector("#device-signature")),
]);
