/**
 * The diary of a season: what was advised, bought, applied, seen and released, as plain CSV in the
 * user's folder. An entry that was confirmed survives the end of the process at any moment, and a
 * correction never removes what it corrects.
 */
package agro.programme.diary;
