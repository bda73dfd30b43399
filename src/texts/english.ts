/** All English sentences, by key. One file per subject in `english/`; a key begins with its subject. */
import { arrival } from "./english/arrival.ts";
import { comparison } from "./english/comparison.ts";
import { faults } from "./english/faults.ts";
import { general } from "./english/general.ts";
import { layout } from "./english/layout.ts";

export const english = { ...arrival, ...comparison, ...faults, ...general, ...layout };
