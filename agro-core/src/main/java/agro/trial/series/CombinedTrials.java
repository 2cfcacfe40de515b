package agro.trial.series;

import agro.stats.linear.VarianceRatio;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Trials of several sites and years analysed together: first whether they scatter alike, then each
 * by itself, then all together in two ways that answer two questions.
 *
 * @param settings how they were analysed
 * @param figures the plots
 * @param trials the trials side by side
 * @param variances whether their error variances are alike
 * @param fixed the sites as the sites of interest; nothing where no site has an error of its own
 * @param random the sites as a sample of others
 * @param notes plots left out, and treatments that are missing somewhere
 */
public record CombinedTrials(
    SeveralTrials settings,
    PlotFigures figures,
    List<SingleTrial> trials,
    SiteVariances variances,
    Optional<SitesAsFixed> fixed,
    SitesAsRandom random,
    List<String> notes)
    implements Presentable {

  /** Copies the lists. */
  public CombinedTrials {
    Objects.requireNonNull(settings, "settings");
    Objects.requireNonNull(figures, "figures");
    trials = List.copyOf(trials);
    Objects.requireNonNull(variances, "variances");
    Objects.requireNonNull(fixed, "fixed");
    Objects.requireNonNull(random, "random");
    notes = List.copyOf(notes);
  }

  /**
   * Means of treatments at each site, for a figure of lines that cross or do not.
   *
   * @return by site, then by treatment
   */
  public List<SiteMean> meansBySite() {
    return trials.stream().flatMap(trial -> trial.means().stream()).toList();
  }

  /**
   * Test of treatment by site, where it can be tested.
   *
   * @return the test against the pooled error of the plots
   */
  public Optional<VarianceRatio> interaction() {
    return fixed.flatMap(SitesAsFixed::interaction);
  }

  /**
   * Which analysis answers which question, and what the test of treatment by site means for both.
   *
   * @return sentences in order
   */
  public List<String> advice() {
    var advice = new ArrayList<String>();
    double level = settings.comparison().level();
    advice.add(variances.meaning(level));
    if (variances.ratio().isPresent() && !variances.mayBePooled(level)) {
      advice.add(
          "The analysis with random sites supposes one error of plots too. Its means are sound where"
              + " sites have as many plots; its limits are those of an average site.");
    }
    if (interaction().isPresent()) {
      var test = interaction().get();
      advice.add(
          test.pValue() <= level
              ? "Treatments differ from site to site ("
                  + test.sentence()
                  + "): read the means by site before any mean over sites."
              : "No difference of treatments from site to site was found ("
                  + test.sentence()
                  + "); that is no proof that there is none.");
    } else {
      advice.add("Treatment by site cannot be tested: no site has an error of its own beside it.");
    }
    advice.add(
        "What did the treatments do at these sites? Take the analysis with fixed sites: its error is"
            + " the scatter of plots, and its statement ends at the fence.");
    advice.add(
        "What will they do at other sites and in other years? Take the analysis with random sites:"
            + " its error contains how treatments vary between sites, and its limits are wider for"
            + " that reason. It supposes that the sites are a fair sample of those others.");
    return List.copyOf(advice);
  }

  /**
   * The means over sites for inference beyond these sites.
   *
   * @return a table for print
   */
  public ResultTable table() {
    return CombinedPrint.meansTable(this);
  }

  /**
   * The means by site side by side.
   *
   * @return a table for print
   */
  public ResultTable siteTable() {
    return CombinedPrint.siteTable(this);
  }

  @Override
  public Presentation presentation() {
    return CombinedPrint.of(this);
  }

  @Override
  public String toString() {
    return figures.heading()
        + " at "
        + trials.size()
        + " sites or years: random sites, "
        + random
        + fixed.map(each -> "; fixed sites, " + each).orElse("");
  }
}
