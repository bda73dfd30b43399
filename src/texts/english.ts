/** All English sentences, by key. One file per subject in `english/`; a key begins with its subject. */
import { faults } from "./english/faults.ts";
import { general } from "./english/general.ts";

export const english = { ...faults, ...general };
