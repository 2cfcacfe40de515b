package agro.notebook.figure;

import agro.sampling.SamplingUnit;
import agro.trial.FieldTrial;
import agro.trial.PlotColumns;
import agro.trial.TrialResponse;
import agro.trial.analysis.AnalysedTrial;
import agro.trial.analysis.Transformation;
import agro.trial.analysis.TrialAnalysis;
import agro.trial.efficacy.EfficacyCourse;
import agro.trial.efficacy.EfficacyEvaluation;
import agro.trial.efficacy.EfficacyFormula;
import agro.trial.load.PestLoad;
import agro.trial.load.TrialLoad;
import java.nio.file.Path;
import java.time.LocalDate;

/** Small invented trials for figures and pages. */
public final class TrialSamples {

  /** Day of the treatment. */
  public static final LocalDate TREATED = LocalDate.of(2026, 5, 19);

  /** Third day after it. */
  public static final LocalDate DAY_3 = LocalDate.of(2026, 5, 22);

  private TrialSamples() {}

  /** The spray trial of the invented vale, mended. */
  public static FieldTrial vale() {
    return FieldTrial.read(
            Path.of("..", "demo-data", "osmere-vale", "trial-counts.csv"),
            PlotColumns.ofCounts("larvae"))
        .withRenamed("C single ful", "C single full")
        .withControls("A untreated");
  }

  /** Its analysis on the third day, on the scale of logarithms. */
  public static AnalysedTrial analysed() {
    return TrialAnalysis.of(vale(), "larvae")
        .on(DAY_3)
        .with(Transformation.logarithm(1))
        .evaluate();
  }

  /** Two treatments of which one makes it worse, the other leaves nothing, in three blocks. */
  static EfficacyCourse harmful() {
    var text =
        """
        plot,block,treatment,row,column,date,pests
        1,1,none,1,1,2026-05-18,20
        2,1,worse,1,2,2026-05-18,20
        3,1,gone,1,3,2026-05-18,20
        4,2,none,2,1,2026-05-18,30
        5,2,worse,2,2,2026-05-18,20
        6,2,gone,2,3,2026-05-18,10
        7,3,none,3,1,2026-05-18,25
        8,3,worse,3,2,2026-05-18,25
        9,3,gone,3,3,2026-05-18,25
        1,1,none,1,1,2026-05-22,20
        2,1,worse,1,2,2026-05-22,50
        3,1,gone,1,3,2026-05-22,0
        4,2,none,2,1,2026-05-22,18
        5,2,worse,2,2,2026-05-22,40
        6,2,gone,2,3,2026-05-22,0
        7,3,none,3,1,2026-05-22,30
        8,3,worse,3,2,2026-05-22,31
        9,3,gone,3,3,2026-05-22,0
        """;
    var trial =
        FieldTrial.parse("harmful", text, PlotColumns.ofCounts("pests")).withControls("none");
    return EfficacyCourse.of(
        trial, "pests", TREATED, EfficacyEvaluation.withDefaults().with(EfficacyFormula.ABBOTT));
  }

  static TrialLoad load() {
    return PestLoad.withDefaults(SamplingUnit.of(SamplingUnit.Kind.PLANT))
        .evaluate(vale(), "larvae");
  }

  /** A factorial in blocks with markup in its names. */
  public static FieldTrial factorial() {
    var text = new StringBuilder("plot,block,soil,<b>salt</b>,yield\n");
    int plot = 0;
    for (int block = 1; block <= 3; block++) {
      for (var soil : new String[] {"loam & clay", "sand"}) {
        for (var salt : new String[] {"no", "yes"}) {
          plot++;
          text.append(plot).append(",").append(block).append(',').append(soil).append(',');
          text.append(salt).append(',').append(10 + plot % 5 + 2 * block).append('\n');
        }
      }
    }
    return FieldTrial.parse(
        "<i>factorial</i>",
        text.toString(),
        PlotColumns.withDefaults()
            .withFactor("soil")
            .withFactor("<b>salt</b>")
            .withResponse(TrialResponse.measure("yield", "t/ha")));
  }
}
