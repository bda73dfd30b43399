/** Parts of a pack in words; reports use the same. */
export { bagWords, kindWords } from "../../operations/packaging/pack-words.ts";
