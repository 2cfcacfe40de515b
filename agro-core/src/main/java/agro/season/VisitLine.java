package agro.season;

import agro.report.SourceLocation;
import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** One line of the visit book. */
record VisitLine(
    String trap,
    LocalDate date,
    VisitState state,
    OptionalInt count,
    OptionalDouble nightsOpen,
    boolean lureRenewed,
    SourceLocation location) {}
