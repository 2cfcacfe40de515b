package agro.trial.series;

import agro.report.InputProblem;
import agro.trial.NaturalOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Whether plots of several sites can be analysed together. */
final class SiteChecks {

  private SiteChecks() {}

  /** Refuses what no analysis over sites can mend; returns what a reader has to know. */
  static List<String> check(PlotFigures figures) {
    requireSites(figures);
    requireWholePlots(figures);
    var sites = sitesOfTreatments(figures);
    if (sites.size() < 2) {
      throw InputProblem.of("one treatment, " + sites.keySet())
          .expected("at least two treatments")
          .because("a treatment is compared with another one")
          .mend("check whether the treatments were read from the right column");
    }
    requireConnected(sites);
    requireScatter(figures);
    return lacking(figures.environments(), sites);
  }

  private static void requireSites(PlotFigures figures) {
    var environments = figures.environments();
    if (environments.contains("")) {
      throw InputProblem.of("plots without a site and a year")
          .expected("a site or a year for every plot")
          .because("they tell which plots belong to one trial")
          .mend("name the columns of site and year, or give each trial a name of its own");
    }
    if (environments.size() < 2) {
      throw InputProblem.of("one site and year, " + environments.get(0))
          .expected("at least two sites or years")
          .because("how treatments vary between sites shows only where there are several")
          .mend("analyse the trial by itself, or add the trials of other sites or years");
    }
  }

  private static void requireWholePlots(PlotFigures figures) {
    var blocked = new TreeMap<String, Set<Boolean>>();
    for (var figure : figures.figures()) {
      var plot = figure.plot();
      if (!plot.mainPlot().isEmpty()) {
        throw InputProblem.of(plot.label() + " in main plot " + plot.mainPlot())
            .expected("trials whose treatments were laid out plot by plot")
            .because("main plots have an error of their own, which one error for all plots hides")
            .mend(
                "analyse split-plot trials one by one, or compare the main treatments by the means"
                    + " of their main plots, each as one plot");
      }
      blocked
          .computeIfAbsent(plot.environment(), each -> new HashSet<>())
          .add(!plot.block().isEmpty());
    }
    blocked.forEach(
        (site, kinds) -> {
          if (kinds.size() > 1) {
            throw InputProblem.of(site + " has plots with a block and plots without one")
                .expected("a block for every plot of a site, or for none")
                .because("a plot without a block cannot be compared within blocks")
                .mend("fill in the missing blocks");
          }
        });
  }

  private static Map<String, Set<String>> sitesOfTreatments(PlotFigures figures) {
    var sites = new TreeMap<String, Set<String>>(NaturalOrder.ofNames());
    figures
        .figures()
        .forEach(
            each ->
                sites
                    .computeIfAbsent(
                        each.plot().treatment(), name -> new TreeSet<>(NaturalOrder.ofNames()))
                    .add(each.plot().environment()));
    return sites;
  }

  /** Treatments have to be tied together by sites, else a difference of them is one of sites. */
  private static void requireConnected(Map<String, Set<String>> sites) {
    var reached = new HashSet<String>();
    var places = new HashSet<String>();
    var first = sites.keySet().iterator().next();
    reached.add(first);
    places.addAll(sites.get(first));
    boolean more = true;
    while (more) {
      more = false;
      for (var each : sites.entrySet()) {
        boolean tied = each.getValue().stream().anyMatch(places::contains);
        if (tied && reached.add(each.getKey())) {
          places.addAll(each.getValue());
          more = true;
        }
      }
    }
    if (reached.size() < sites.size()) {
      var others = sites.keySet().stream().filter(each -> !reached.contains(each)).toList();
      throw InputProblem.of("treatments " + others + " that share no site with " + sorted(reached))
          .expected("sites that tie all treatments together")
          .because("differences between these treatments cannot be told from those of the sites")
          .mend("leave one group out; check whether a treatment is spelt in two ways");
    }
  }

  private static List<String> sorted(Set<String> names) {
    return names.stream().sorted(NaturalOrder.ofNames()).toList();
  }

  private static void requireScatter(PlotFigures figures) {
    double[] values = figures.values();
    if (Arrays.stream(values).allMatch(each -> each == values[0])) {
      throw InputProblem.of("all " + values.length + " plots with the value " + values[0])
          .expected("values that differ")
          .because("equal values have no scatter, and no difference can be judged")
          .mend("say in words that no difference was seen");
    }
  }

  private static List<String> lacking(List<String> environments, Map<String, Set<String>> sites) {
    var notes = new ArrayList<String>();
    sites.forEach(
        (treatment, present) -> {
          var absent = environments.stream().filter(each -> !present.contains(each)).toList();
          if (absent.isEmpty()) {
            return;
          }
          var note = treatment + " is missing at " + String.join(", ", absent);
          notes.add(
              present.size() == 1
                  ? note + "; if it is another spelling of a treatment there, rename it"
                  : note);
        });
    return notes;
  }
}
