package agro.sampling;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Counts from one field on one day, one for each sampling unit.
 *
 * @param label field and day, as they are printed
 * @param unit what one count belongs to
 * @param counts 0 or more each, at least two
 */
public record CountSample(String label, SamplingUnit unit, List<Integer> counts) {

  /**
   * Checks the counts.
   *
   * @throws InputProblem when there are fewer than two, or one is negative
   */
  public CountSample {
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(unit, "unit");
    counts = List.copyOf(counts);
    if (counts.size() < 2) {
      throw InputProblem.of(label + ": " + counts.size() + " counted " + unit.words())
          .expected("at least two units with a count each")
          .because("one count tells nothing of how counts vary")
          .mend("count more units, and give each its own count, zeros too");
    }
    for (int i = 0; i < counts.size(); i++) {
      if (counts.get(i) < 0) {
        throw InputProblem.of(label + ": a count of " + counts.get(i) + " as number " + (i + 1))
            .expected("whole numbers of 0 or more")
            .because("nobody can count fewer than none")
            .mend("look for a minus sign or a code for a missing count, and leave that unit out");
      }
    }
  }

  /**
   * A sample from its counts.
   *
   * @param label field and day
   * @param unit what one count belongs to
   * @param counts one for each unit
   * @return the sample
   * @throws InputProblem when there are fewer than two, or one is negative
   */
  public static CountSample of(String label, SamplingUnit unit, int... counts) {
    return new CountSample(label, unit, Arrays.stream(counts).boxed().toList());
  }

  /**
   * A sample from how often each count came.
   *
   * @param label field and day
   * @param unit what one count belongs to
   * @param frequencies units with 0, 1, 2 … animals
   * @return the sample
   * @throws InputProblem when a frequency is negative or there are fewer than two units
   */
  public static CountSample ofFrequencies(String label, SamplingUnit unit, int... frequencies) {
    var counts = new ArrayList<Integer>();
    for (int count = 0; count < frequencies.length; count++) {
      if (frequencies[count] < 0) {
        throw InputProblem.of(
                label + ": " + frequencies[count] + " units with " + count + " animals")
            .expected("0 or more units for each count")
            .because("a number of units is never negative")
            .mend("correct the frequency");
      }
      for (int i = 0; i < frequencies[count]; i++) {
        counts.add(count);
      }
    }
    return new CountSample(label, unit, counts);
  }

  /**
   * Number of units, n.
   *
   * @return 2 or more
   */
  public int size() {
    return counts.size();
  }

  /**
   * All animals counted, Σx.
   *
   * @return 0 or more
   */
  public long total() {
    return counts.stream().mapToLong(Integer::longValue).sum();
  }

  /**
   * Sum of the squared counts, Σx².
   *
   * @return 0 or more
   */
  public long squares() {
    return counts.stream().mapToLong(x -> (long) x * x).sum();
  }

  /**
   * Mean count for each unit, m.
   *
   * @return 0 or more
   */
  public double mean() {
    return (double) total() / size();
  }

  /**
   * Variance of the counts with n − 1 in the denominator, s².
   *
   * @return 0 or more
   */
  public double variance() {
    double mean = mean();
    double sum = 0;
    for (int x : counts) {
      sum += (x - mean) * (x - mean);
    }
    return sum / (size() - 1);
  }

  /**
   * Units with exactly so many animals.
   *
   * @param count 0 or more
   * @return 0 or more
   */
  public int unitsWith(int count) {
    return (int) counts.stream().filter(x -> x == count).count();
  }

  /**
   * Largest count.
   *
   * @return 0 or more
   */
  public int largest() {
    return counts.stream().mapToInt(Integer::intValue).max().orElseThrow();
  }

  /**
   * Refuses a sample without any animal.
   *
   * @param what what needs animals, as the subject of a sentence
   * @throws InputProblem when all counts are zero
   */
  public void requireAnimals(String what) {
    if (total() == 0) {
      throw InputProblem.of(label + ": all " + size() + " counts are zero")
          .expected("at least one animal")
          .because(what + " says how animals are spread, and there are none")
          .mend("count more units, or state the field as free of the pest at this sample size");
    }
  }

  /**
   * Refuses samples that were not counted in one unit.
   *
   * @param samples samples of several fields
   * @param what what needs one unit, as the object of "for"
   * @throws InputProblem when units differ
   */
  public static void requireOneUnit(List<CountSample> samples, String what) {
    for (var sample : samples) {
      samples.get(0).unit().requireSame(sample.unit(), what);
    }
  }
}
