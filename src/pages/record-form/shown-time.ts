/** Times and figures as the pages write them; reports write them alike. */
export { groupsOfFour, minutesOf, offsetOf, showTime } from "../../texts/shown-time.ts";
