package agro.season;

import agro.generation.TrapVisit;
import agro.report.SourceLocation;

/** A visit with its nights, and the line that it was read from. */
record LocatedVisit(TrapVisit visit, SourceLocation location) {}
