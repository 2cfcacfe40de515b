package agro.development.rate;

import agro.report.InputProblem;
import agro.stats.DampedNewton;
import agro.stats.Refit;
import agro.stats.RefitOutcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/** One refit of a fit by likelihood to animals or cabinets that were drawn anew. */
final class LikelihoodRefit implements Refit {

  private final Workers shared;
  private final DurationLikelihood likelihood;
  private final DampedNewton search;

  private LikelihoodRefit(Workers shared) {
    this.shared = shared;
    var fitting = shared.fit.fitting();
    likelihood = new DurationLikelihood(fitting, shared.animals);
    search = LikelihoodFit.newton(fitting, shared.search);
  }

  /** Makes a worker for each thread out of what they share. */
  static final class Workers implements Supplier<Refit> {
    private final RateFit fit;
    private final Resampling resampling;
    private final RateSearch search;
    private final List<RearedAnimals> animals;
    private final double[] optimum;
    private final List<List<List<Integer>>> cabinets;

    Workers(RateFit fit, Resampling resampling) {
      this.fit = fit;
      this.resampling = resampling;
      search = new RateSearch(fit.fitting(), fit.points());
      animals = LikelihoodFit.used(fit.fitting(), fit.data());
      optimum = LikelihoodFit.with(fit.found().coordinates(), Math.log(fit.found().dispersion()));
      cabinets = cabinetsByTemperature();
      requireDrawable();
    }

    private void requireDrawable() {
      if (resampling == Resampling.RESIDUALS || resampling == Resampling.PARAMETRIC) {
        throw InputProblem.of(
                "a bootstrap of " + resampling.words() + " for a fit by likelihood of durations")
            .expected("animals or cabinets to be drawn")
            .because("the fit was made to single animals and not to means")
            .mend("choose ANIMALS or CABINETS");
      }
      if (resampling == Resampling.CABINETS && !RateBootstrap.replicated(fit.data())) {
        throw InputProblem.of(
                "not each temperature of \"" + fit.data().subject() + "\" has two cabinets")
            .expected("two or more named cabinets at each temperature")
            .because("cabinets are to be drawn within temperatures")
            .mend("draw animals, which leaves the scatter between cabinets out");
      }
    }

    /** Places of records, by set temperature and cabinet. */
    private List<List<List<Integer>>> cabinetsByTemperature() {
      var all = new LinkedHashMap<Double, LinkedHashMap<String, List<Integer>>>();
      for (int i = 0; i < animals.size(); i++) {
        var one = animals.get(i);
        all.computeIfAbsent(one.setCelsius(), key -> new LinkedHashMap<>())
            .computeIfAbsent(one.cabinet(), key -> new ArrayList<>())
            .add(i);
      }
      var lists = new ArrayList<List<List<Integer>>>();
      all.values().forEach(group -> lists.add(List.copyOf(group.values())));
      return lists;
    }

    @Override
    public Refit get() {
      return new LikelihoodRefit(this);
    }
  }

  @Override
  public RefitOutcome refit(SplittableRandom random, double[] values) {
    Arrays.fill(likelihood.count, 0);
    for (var temperature : shared.cabinets) {
      if (shared.resampling == Resampling.CABINETS) {
        drawCabinets(random, temperature);
      } else {
        temperature.forEach(cabinet -> drawAnimals(random, cabinet));
      }
    }
    var found = search.minimise(likelihood, shared.optimum);
    if (!found.isConverged()) {
      return RefitOutcome.FAILED;
    }
    var fitting = shared.fit.fitting();
    int k = shared.optimum.length - 1;
    boolean edge = false;
    for (int j = 0; j < k; j++) {
      edge |= found.isAtBound(j);
    }
    double[] q = Arrays.copyOf(found.parameters(), k);
    double[] p = shared.search.equation.toParameters(q, fitting.constants());
    System.arraycopy(p, 0, values, 0, k);
    new CurvePoints(fitting.model().equation(), p, fitting.constants())
        .into(fitting.model(), values, k);
    return edge ? RefitOutcome.ON_BOUNDARY : RefitOutcome.GOOD;
  }

  /**
   * One cabinet fewer than there are, each counted for more, so that the variance is right for two
   * cabinets too: Rao and Wu 1988, Journal of the American Statistical Association 83:231-241 (from
   * memory).
   */
  private void drawCabinets(SplittableRandom random, List<List<Integer>> cabinets) {
    int m = cabinets.size();
    double weight = m / (m - 1.0);
    for (int i = 1; i < m; i++) {
      for (int record : cabinets.get(random.nextInt(m))) {
        likelihood.count[likelihood.place[record]] += weight * shared.animals.get(record).animals();
      }
    }
  }

  private void drawAnimals(SplittableRandom random, List<Integer> cabinet) {
    int n = 0;
    for (int record : cabinet) {
      n += shared.animals.get(record).animals();
    }
    for (int drawn = 0; drawn < n; drawn++) {
      int which = random.nextInt(n);
      int at = 0;
      while (which >= shared.animals.get(cabinet.get(at)).animals()) {
        which -= shared.animals.get(cabinet.get(at++)).animals();
      }
      likelihood.count[likelihood.place[cabinet.get(at)]]++;
    }
  }
}
