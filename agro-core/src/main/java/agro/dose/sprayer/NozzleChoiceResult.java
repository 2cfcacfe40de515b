package agro.dose.sprayer;

import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.Working;
import java.util.List;

/**
 * Nozzle sizes for a wanted volume. Which droplets they give is another question, to be read in the
 * table of the nozzle.
 *
 * @param waterFlow flow of water through one nozzle that is needed
 * @param candidates every size, the smallest first
 * @param units units of print
 * @param working the steps, with cautions
 */
public record NozzleChoiceResult(
    NozzleFlow waterFlow, List<NozzleCandidate> candidates, SprayUnits units, Working working)
    implements Presentable {

  /** Copies the candidates. */
  public NozzleChoiceResult {
    candidates = List.copyOf(candidates);
  }

  /**
   * The sizes whose pressure is allowed.
   *
   * @return the smallest first; the larger of two runs at the lower pressure
   */
  public List<NozzleCandidate> suitable() {
    return candidates.stream().filter(NozzleCandidate::suitable).toList();
  }

  /**
   * The sizes as a table.
   *
   * @return one row for each size
   */
  public ResultTable table() {
    var columns =
        List.of(
            Column.of("size"),
            Column.of("colour"),
            Column.of("pressure needed", units.pressure().symbol()),
            Column.of("speed from", units.speed().symbol()),
            Column.of("speed to", units.speed().symbol()),
            Column.of("suits"),
            Column.of("standing"));
    return ResultTable.of("Nozzle sizes", columns, candidates.stream().map(this::row).toList())
        .withNote(
            "The colour is that of the size, not of a droplet class; catch the new nozzles before"
                + " use.");
  }

  private List<Cell> row(NozzleCandidate one) {
    return List.of(
        Cell.text(one.size().code()),
        Cell.text(one.size().colour().words()),
        Cell.number(one.pressure().in(units.pressure()), 2),
        Cell.number(one.speeds().low().in(units.speed()), 1),
        Cell.number(one.speeds().high().in(units.speed()), 1),
        Cell.text(one.suitable() ? "yes" : "no"),
        Cell.text(one.size().source().standing().words()));
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Choice of nozzles")
        .fact("flow of water through one nozzle", units.stated(waterFlow.flow()))
        .table(table())
        .working(working.withCautions(List.of()))
        .cautions(Caution.all())
        .build();
  }
}
