package agro.weather.gap;

/** Moments of a filled stretch, its two known ends included, and how it was filled. */
final class FilledStretch {

  private final long[] moments;
  private final ReadingGapMethod method;

  FilledStretch(long[] moments, ReadingGapMethod method) {
    this.moments = moments.clone();
    this.method = method;
  }

  /** Whether a filled moment lies in a span of time. */
  boolean touches(long from, long before) {
    return moments[1] < before && moments[moments.length - 2] >= from;
  }

  /** Errors of the extremes of a day that the stretch touches. */
  ReadingTrial.Errors extremes(ReadingTrial trial, long[] day) {
    return trial.extremes(day, moments, method);
  }
}
