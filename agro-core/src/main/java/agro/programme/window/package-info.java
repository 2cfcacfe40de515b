/**
 * When a treatment reaches most of the stage that it hits, in which hours the user's own limits of
 * weather allow it, and whether the job fits into these hours. No product and no limit is built in.
 */
package agro.programme.window;
