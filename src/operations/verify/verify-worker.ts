/** Verifies one receipt on a thread of its own, so that the service goes on serving. */
import { parentPort, workerData } from "node:worker_threads";
import { verifyReceipt } from "../../records/verify/verify-receipt.ts";
import type { GivenTexts } from "./receipt-verifier.ts";

const { bytes, given } = workerData as { readonly bytes: Uint8Array; readonly given: GivenTexts };
parentPort?.postMessage(verifyReceipt(bytes, given));
