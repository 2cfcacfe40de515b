package agro.programme.window;

/**
 * How the animals of one course meet a treatment that begins at one moment. An animal that is in
 * the stage then meets the fresh residue; one that enters while the residue lasts meets what is
 * left of it. Either counts when it is still in the stage after the days of contact that the
 * treatment needs.
 */
final class DayContact {

  private final double share;
  private final double gone;
  private final double toCome;
  private final double[] effect;
  private final double[] weighted;

  private DayContact(double share, double gone, double toCome, double[] effect, double[] weighted) {
    this.share = share;
    this.gone = gone;
    this.toCome = toCome;
    this.effect = effect;
    this.weighted = weighted;
  }

  static DayContact of(StageEntry entry, DelayTable during, ResidueDays residue, double begins) {
    double acts = residue.actsAfterDays();
    double sumNow = entry.sumAfter(begins);
    double sumActed = entry.sumAfter(begins + acts);
    var effect = new double[entry.size()];
    var weighted = new double[entry.size()];
    double share = 0;
    double gone = 0;
    double reached = 0;
    for (int k = 0; k < effect.length; k++) {
      double from = entry.begins(k);
      double before = Math.max(0, Math.min(1, (begins - from) / StageEntry.spanDays()));
      double after = effectAfter(residue, begins, from, before);
      effect[k] = before + after;
      double stays = 0;
      if (before > 0) {
        double end = before < 1 ? sumNow : entry.sumAtEnd(k);
        stays = before * (1 - during.mean(sumActed - end, sumActed - entry.sumAtStart(k)));
        gone += entry.mass(k) * before * during.mean(sumNow - end, sumNow - entry.sumAtStart(k));
      }
      if (after > 0) {
        double middle = Math.max(begins, from) + 0.5 * (1 - before) * StageEntry.spanDays();
        double needed = entry.sumAfter(middle + acts) - entry.sumAfter(middle);
        double enough = acts == 0 ? 1 : 1 - during.completedBy(needed);
        stays += after * enough;
      }
      weighted[k] = entry.mass(k) * stays;
      share += weighted[k];
      reached += entry.mass(k) * (before + inTime(residue, begins, from, before));
    }
    return new DayContact(share, gone, Math.max(0, 1 - reached), effect, weighted);
  }

  /** Part of a span in which animals enter while the residue lasts, weighted by what is left. */
  private static double effectAfter(
      ResidueDays residue, double begins, double from, double before) {
    double part = inTime(residue, begins, from, before);
    if (part <= 0) {
      return 0;
    }
    double start = Math.max(begins, from) - begins;
    double middle = start + 0.5 * part * StageEntry.spanDays();
    return part * residue.decay().left(middle, residue.days());
  }

  /** Part of a span that lies after the treatment and before the end of the residue. */
  private static double inTime(ResidueDays residue, double begins, double from, double before) {
    double start = Math.max(begins, from);
    double end = Math.min(from + StageEntry.spanDays(), begins + residue.days());
    return before >= 1 ? 0 : Math.max(0, end - start) / StageEntry.spanDays();
  }

  /** Share of the generation that is exposed, weighted by the effect that is left. */
  double share() {
    return share;
  }

  /** Share of the generation that has left the stage before the treatment. */
  double gone() {
    return gone;
  }

  /** Share of the generation that enters the stage when the residue has ended, or never. */
  double toCome() {
    return toCome;
  }

  /**
   * Share that is exposed to this treatment or to a later one, effects being independent. Who stays
   * long enough for the later one has stayed long enough for this one.
   */
  double shareWith(DayContact later) {
    double both = 0;
    for (int k = 0; k < effect.length && effect[k] > 0; k++) {
      both += effect[k] * later.weighted[k];
    }
    return share + later.share - both;
  }
}
