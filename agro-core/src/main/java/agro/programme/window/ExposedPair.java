package agro.programme.window;

import java.time.LocalDate;

/**
 * What two treatments reach together: animals that are exposed to at least one.
 *
 * @param first day of the first treatment
 * @param second day of the second one
 * @param mean mean exposed share, weighted by the effect that is left
 * @param low exposed share that is exceeded in 9 of 10 courses
 * @param high exposed share that is exceeded in 1 of 10 courses
 * @param chanceBest chance that no other pair exposes more; neighbouring pairs differ little, so
 *     that it is small even where the choice is good
 * @param chanceWanted chance that the exposed share is at least the wanted one
 */
public record ExposedPair(
    LocalDate first,
    LocalDate second,
    double mean,
    double low,
    double high,
    double chanceBest,
    double chanceWanted) {}
