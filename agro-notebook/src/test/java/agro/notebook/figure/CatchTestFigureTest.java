package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.dose.sprayer.CatchTest;
import agro.units.VolumeUnit;
import agro.units.WorkTime;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Catches are invented. */
class CatchTestFigureTest {

  private static DrawnFigure figure(double... millilitres) {
    var caught = CatchTest.ofRow(new WorkTime(60), VolumeUnit.MILLILITRE, millilitres);
    return CatchTestFigure.of(caught.evaluate());
  }

  /** Mean of 1000, 1000, 1000 and 1200 mL is 1050 mL; 1200 is 14.3 % above it. */
  @Test
  void namesTheNozzleThatIsOut() {
    var figure = figure(1000, 1000, 1000, 1200);
    assertThat(figure.alternative())
        .isEqualTo(
            "Flow of 4 nozzles, from 1 to 1.2 L/min; mean 1.05, tolerance 10 %. Nozzle 4:"
                + " +14.3 %.");
    assertThat(figure.caption()).contains("each nozzle within 10 % of the average");
    assertThat(FigureSamples.cell(figure, 3, "flow")).isEqualTo("1.200");
    assertThat(FigureSamples.holds(FigureSamples.picture(figure), FigureLook.VERMILION)).isTrue();
  }

  @Test
  void saysThatAllPass() {
    var figure = figure(1000, 1020, 980);
    assertThat(figure.alternative()).endsWith("All pass.");
    assertThat(FigureSamples.holds(FigureSamples.picture(figure), FigureLook.VERMILION)).isFalse();
  }

  /** The blocked one is drawn at zero and does not pull the mean. */
  @Test
  void drawsABlockedNozzle() {
    var figure = figure(0, 1000, 1000);
    assertThat(figure.alternative()).contains("from 0 to 1 L/min; mean 1,", "Nozzle 1: blocked.");
    FigureSamples.picture(figure);
  }

  @Test
  void drawsOneNozzleAndVeryMany() {
    FigureSamples.picture(figure(1000));
    FigureSamples.picture(figure(DoubleStream.iterate(900, x -> x + 1).limit(96).toArray()));
  }
}
