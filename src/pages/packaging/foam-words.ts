/** A foam as people read it; reports use the same words. */
export { foamChoices, foamWords } from "../../operations/packaging/foam-words.ts";
