/** A reading in words; reports use the same. */
export { quantityWords, readingWords, type ToldReading } from "../../texts/reading-words.ts";
