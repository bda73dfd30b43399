/** Where the migrations lie, from `src/start` and from `dist/start` alike. */
import { fileURLToPath } from "node:url";

export const MIGRATIONS = fileURLToPath(new URL("../../migrations", import.meta.url));
