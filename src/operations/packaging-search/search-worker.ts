/** One search on a thread of its own, so that the service goes on serving. */
import { parentPort, workerData } from "node:worker_threads";
import type { PackagingSearchRequest } from "../../contract/packaging-search.ts";
import { searchPacks } from "./search-packs.ts";

parentPort?.postMessage(searchPacks(workerData as PackagingSearchRequest));
