package agro.programme.window;

import java.util.Optional;

/**
 * A day of treatment in its place among the others.
 *
 * @param rank 1 for the best; 0 for a day on which the job does not fit
 * @param exposed what a treatment on it reaches
 * @param use whether the weather lets it be used
 * @param weather its hours; nothing where the weather does not reach
 */
public record RankedDay(int rank, ExposedDay exposed, DayUse use, Optional<SprayDay> weather) {}
