package agro.programme.window;

import java.time.LocalDate;

/**
 * What a treatment on one day reaches. All shares are of the whole generation, over all courses;
 * where the generation does not come this season nothing is exposed.
 *
 * @param day the day
 * @param mean mean exposed share, weighted by the effect that is left
 * @param low exposed share that is exceeded in 9 of 10 courses
 * @param high exposed share that is exceeded in 1 of 10 courses
 * @param chanceBest chance that no other day that was weighed exposes more
 * @param chanceWanted chance that the exposed share is at least the wanted one
 * @param gone mean share that has left the stage before
 * @param toCome mean share that enters the stage after the residue has ended, or not this season
 */
public record ExposedDay(
    LocalDate day,
    double mean,
    double low,
    double high,
    double chanceBest,
    double chanceWanted,
    double gone,
    double toCome) {}
