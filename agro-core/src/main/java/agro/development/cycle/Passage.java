package agro.development.cycle;

/** The ages that cohorts have on each day of one stage's clock. */
final class Passage {

  /** A cohort of which less than this is left has passed. */
  private static final double PASSED = 1e-12;

  /** Age at the beginning of each day, and at the end of the last one. */
  private final double[] age;

  private Passage(double[] age) {
    this.age = age;
  }

  static Passage of(double[] dailyAges) {
    var age = new double[dailyAges.length + 1];
    for (int i = 0; i < dailyAges.length; i++) {
      age[i + 1] = age[i] + dailyAges[i];
    }
    return new Passage(age);
  }

  /** How many complete on each day, of those that entered on each day. */
  double[] completed(double[] entered, AgeDistribution distribution) {
    var completed = new double[entered.length];
    for (int from = 0; from < entered.length; from++) {
      if (entered[from] == 0) {
        continue;
      }
      double middle = 0.5 * (age[from] + age[from + 1]);
      double before = 0;
      for (int day = from; day < entered.length && before < 1 - PASSED; day++) {
        double now = distribution.completedBy(age[day + 1] - middle);
        completed[day] += entered[from] * (now - before);
        before = now;
      }
    }
    return completed;
  }

  /** How many are there at the end of each day, of those that entered on each day. */
  double[] present(double[] entered, AgeDistribution distribution) {
    var present = new double[entered.length];
    for (int from = 0; from < entered.length; from++) {
      if (entered[from] == 0) {
        continue;
      }
      double middle = 0.5 * (age[from] + age[from + 1]);
      double left = 1;
      for (int day = from; day < entered.length && left > PASSED; day++) {
        left = 1 - distribution.completedBy(age[day + 1] - middle);
        present[day] += entered[from] * left;
      }
    }
    return present;
  }
}
