package agro.stats.rank;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.stats.BlockedValues;
import agro.stats.GroupedValues;
import agro.stats.multiple.PValueAdjustment;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Rank tests and Welch's test against published programs on open data. */
class RankTestsTest {

  private static final List<NamedCsvRecord> ROWS =
      ReferenceTable.read(RankTestsTest.class, "rank-values.csv");

  private static final Map<String, RankPairs> PAIRS = new ConcurrentHashMap<>();

  private static List<NamedCsvRecord> rows(String set) {
    return ROWS.stream().filter(line -> line.getField("set").equals(set)).toList();
  }

  /** Each family of comparisons is computed once. */
  private static RankPairs pairs(String set, String method) {
    return PAIRS.computeIfAbsent(
        set + method,
        key ->
            switch (method) {
              case "GAMES_HOWELL" -> WelchTest.test(groups(set)).gamesHowell();
              case "CONOVER", "NEMENYI" ->
                  Friedman.test(blocks(set))
                      .pairs(FriedmanPairs.valueOf(method), PValueAdjustment.NONE);
              default ->
                  KruskalWallis.test(groups(set))
                      .pairs(KruskalWallisPairs.valueOf(method), PValueAdjustment.NONE);
            });
  }

  static GroupedValues groups(String set) {
    return GroupedValues.of(
        rows(set).stream().map(line -> line.getField("group")).toList(),
        rows(set).stream().mapToDouble(line -> number(line, "value")).toArray());
  }

  static BlockedValues blocks(String set) {
    return BlockedValues.of(
        rows(set).stream().map(line -> line.getField("block")).toList(),
        rows(set).stream().map(line -> line.getField("group")).toList(),
        rows(set).stream().mapToDouble(line -> number(line, "value")).toArray());
  }

  /** Statistic, degrees of freedom and chance by the named test; chi-squared chances. */
  private static double[] result(NamedCsvRecord line) {
    var set = line.getField("set");
    switch (line.getField("test")) {
      case "KRUSKAL_WALLIS" -> {
        var result = KruskalWallis.test(groups(set));
        return new double[] {result.h(), result.df(), Double.NaN, result.chiSquaredPValue()};
      }
      case "WELCH" -> {
        var result = WelchTest.test(groups(set));
        return new double[] {result.f(), result.df1(), result.df2(), result.pValue()};
      }
      case "FRIEDMAN" -> {
        var result = Friedman.test(blocks(set));
        return new double[] {
          result.chiSquared(), result.df(), Double.NaN, result.chiSquaredPValue()
        };
      }
      default -> {
        var result = QuadeTest.test(blocks(set));
        return new double[] {result.f(), result.df1(), result.df2(), result.pValue()};
      }
    }
  }

  @Test
  void agreesWithPublishedProgram() {
    var lines = ReferenceTable.read(RankTestsTest.class, "rank-tests.csv");
    assertThat(lines).hasSize(16);
    for (var line : lines) {
      double[] found = result(line);
      var message = line.toString();
      assertThat(found[0]).as(message).isCloseTo(number(line, "statistic"), relative(1e-9));
      assertThat(found[1]).as(message).isEqualTo(number(line, "df1"));
      if (!line.getField("df2").isEmpty()) {
        assertThat(found[2]).as(message).isCloseTo(number(line, "df2"), relative(1e-9));
      }
      assertThat(found[3]).as(message).isCloseTo(number(line, "p"), relative(1e-8));
    }
  }

  @Test
  void agreesWithPrintedValues() {
    for (var line : ReferenceTable.read(RankTestsTest.class, "published-tests.csv")) {
      double[] found = result(line);
      assertThat(found[0]).isCloseTo(number(line, "statistic"), halfDigit(line, "statistic"));
      assertThat(found[1]).isEqualTo(number(line, "df1"));
      if (!line.getField("p").isEmpty()) {
        assertThat(found[3]).isCloseTo(number(line, "p"), relative(1e-8));
      }
    }
  }

  private static org.assertj.core.data.Offset<Double> halfDigit(NamedCsvRecord line, String name) {
    var text = line.getField(name);
    return within(0.5001 * Math.pow(10, text.indexOf('.') + 1 - text.length()));
  }

  private static Percentage relative(double share) {
    return Percentage.withPercentage(100 * share);
  }

  @Test
  void pairsAgreeWithPublishedProgram() {
    var lines = ReferenceTable.read(RankTestsTest.class, "rank-pairs.csv");
    assertThat(lines).hasSizeGreaterThan(100);
    for (var line : lines) {
      var pairs = pairs(line.getField("set"), line.getField("method"));
      assertThat(pairs.pair(line.getField("first"), line.getField("second")).pValue())
          .as(line.toString())
          .isCloseTo(number(line, "p"), relative(1e-8));
    }
  }

  @Test
  void rangesAgreeWithPublishedProgram() {
    var lines = ReferenceTable.read(RankTestsTest.class, "games-howell.csv");
    assertThat(lines).hasSizeGreaterThan(60);
    for (var line : lines) {
      var pairs = pairs(line.getField("set"), line.getField("method"));
      assertThat(pairs.pair(line.getField("second"), line.getField("first")).adjustedPValue())
          .as(line.toString())
          .isCloseTo(number(line, "p"), within(1e-9));
    }
  }

  @Test
  void exactChancesAgreeWithListsOfAllArrangements() {
    var lines = ReferenceTable.read(RankTestsTest.class, "exact-chances.csv");
    assertThat(lines).hasSize(13);
    for (var line : lines) {
      double[][] table =
          Arrays.stream(line.getField("data").split("\\|"))
              .map(
                  part -> Arrays.stream(part.split(" ")).mapToDouble(Double::parseDouble).toArray())
              .toArray(double[][]::new);
      double p;
      PValueMethod method;
      if (line.getField("test").equals("FRIEDMAN")) {
        var result = Friedman.test(table(table));
        p = result.pValue();
        method = result.method();
      } else {
        var result = KruskalWallis.test(GroupedValues.numbered(table));
        p = result.pValue();
        method = result.method();
      }
      assertThat(method).isEqualTo(PValueMethod.EXACT);
      assertThat(p).as(line.toString()).isCloseTo(number(line, "p"), within(1e-12));
    }
  }

  static BlockedValues table(double[][] rows) {
    var blocks = new java.util.ArrayList<String>();
    var treatments = new java.util.ArrayList<String>();
    var values = new java.util.ArrayList<Double>();
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < rows[i].length; j++) {
        if (!Double.isNaN(rows[i][j])) {
          blocks.add("block " + i);
          treatments.add("" + (char) ('A' + j));
          values.add(rows[i][j]);
        }
      }
    }
    return BlockedValues.of(blocks, treatments, values.stream().mapToDouble(x -> x).toArray());
  }

  /** Critical values of the tables of Kruskal & Wallis 1952 and Friedman 1937 (from memory). */
  @Test
  void exactChancesAgreeWithTables() {
    // 5, 5, 5: H = 8.00 has 0.009 and 5.78 has 0.049
    double[] first = {1, 2, 3, 4, 9};
    double[] second = {5, 6, 7, 8, 10};
    double[] third = {11, 12, 13, 14, 15};
    var result = KruskalWallis.test(GroupedValues.numbered(first, second, third));
    assertThat(result.method()).isEqualTo(PValueMethod.EXACT);
    assertThat(result.h()).isGreaterThan(8);
    assertThat(result.pValue()).isLessThan(0.009);
    assertThat(result.epsilonSquared()).isEqualTo(result.h() / 14);
    // three treatments, four blocks in agreement: 8.0 has 0.0046
    double[] row = {1, 2, 3};
    var friedman = Friedman.test(table(new double[][] {row, row, row, row}));
    assertThat(friedman.chiSquared()).isEqualTo(8);
    assertThat(friedman.pValue()).isCloseTo(0.0046, within(5e-5));
    assertThat(friedman.concordance()).isEqualTo(1);
    assertThat(friedman.f()).isInfinite();
    assertThat(friedman.fPValue()).isEqualTo(0);
  }
}
