/** All English sentences, by key. One file per subject in `english/`; a key begins with its subject. */
import { general } from "./english/general.ts";

export const english = { ...general };
