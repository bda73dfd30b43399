/** Verifies one receipt or dossier on a thread of its own, so that the service goes on serving. */
import { parentPort, workerData } from "node:worker_threads";
import { sourceOf } from "../../records/verify/dossier/byte-source.ts";
import { verifyFile } from "../../records/verify/dossier/verify-file.ts";
import type { GivenTexts } from "./receipt-verifier.ts";

const { bytes, given } = workerData as { readonly bytes: Uint8Array; readonly given: GivenTexts };
parentPort?.postMessage(await verifyFile(sourceOf(bytes), given, async () => bytes));
