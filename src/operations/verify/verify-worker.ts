/** Verifies one receipt on a thread of its own, so that the service goes on serving. */
import { parentPort, workerData } from "node:worker_threads";
import { verifyReceipt } from "../../records/verify/verify-receipt.ts";

const { bytes, keys } = workerData as { readonly bytes: Uint8Array; readonly keys: readonly string[] };
parentPort?.postMessage(verifyReceipt(bytes, { keys }));
