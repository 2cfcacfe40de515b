package agro.course.handwork;

import java.util.OptionalDouble;

/**
 * One dose as it is written down first.
 *
 * @param dose the dose
 * @param logDose x, its logarithm to base 10
 * @param exposed n, animals
 * @param responded r, animals that died
 * @param percent per cent that died
 * @param corrected per cent after correction for the control; the same where no control died
 * @param empirical probit of the corrected per cent; nothing for none and for all
 */
public record ProbitGroup(
    double dose,
    double logDose,
    int exposed,
    int responded,
    double percent,
    double corrected,
    OptionalDouble empirical) {}
