/** Lengths as people read them; reports write them alike. */
export { inMillimetres } from "../../texts/millimetres.ts";
