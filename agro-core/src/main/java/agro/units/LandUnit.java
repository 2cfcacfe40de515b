package agro.units;

import agro.source.Reference;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Units of land that belong to a place. One name has many sizes, up to 10.7 times apart, so none is
 * known by its name alone: a constant is a name with its place and its exact size. For a size that
 * is missing here, measure one field in m² and use that.
 */
public enum LandUnit implements Unit<Area> {
  /** Guntha of 121 yd², 1/40 of an acre. */
  GUNTHA(
      "guntha",
      158080329L,
      1562500L,
      "1089.[sft_i]",
      LandSources.PRINTED_PAGES,
      "western and southern India"),
  /** Cent, 1/100 of an acre. */
  CENT("cent", 158080329L, 3906250L, "2178.[sft_i]/5", LandSources.PRINTED_PAGES, "southern India"),
  /** Decimal or shotak, 1/100 of an acre. */
  DECIMAL(
      "decimal",
      158080329L,
      3906250L,
      "2178.[sft_i]/5",
      LandSources.PRINTED_PAGES,
      "Bengal",
      "Bangladesh"),
  /** Marla of the revenue office, 9 square karams of 5.5 ft. */
  MARLA_REVENUE(
      "marla",
      158080329L,
      6250000L,
      "1089.[sft_i]/4",
      LandSources.PRINTED_PAGES,
      "Punjab revenue",
      "Haryana",
      "Pakistan revenue"),
  /** Marla of 225 ft², Lahore and several town schemes. */
  MARLA_LAHORE("marla", 1306449L, 62500L, "225.[sft_i]", LandSources.PRINTED_PAGES, "Lahore"),
  /** Marla of 250 ft² of some housing schemes. */
  MARLA_HOUSING_SCHEME(
      "marla", 145161L, 6250L, "250.[sft_i]", LandSources.FROM_MEMORY, "housing scheme, 250 sq ft"),
  /** Kanal of 20 revenue marlas, 1/8 of an acre. */
  KANAL_REVENUE(
      "kanal",
      158080329L,
      312500L,
      "5445.[sft_i]",
      LandSources.PRINTED_PAGES,
      "Punjab revenue",
      "Haryana",
      "Pakistan revenue"),
  /** Kanal of 20 marlas of 225 ft², town plots. */
  KANAL_LAHORE("kanal", 1306449L, 3125L, "4500.[sft_i]", LandSources.PRINTED_PAGES, "Lahore"),
  /** Killa of 8 revenue kanals, 198 by 220 ft, one acre. */
  KILLA("killa", 316160658L, 78125L, "43560.[sft_i]", LandSources.PRINTED_PAGES, "Punjab"),
  /** Murabba of 25 killas. */
  MURABBA("murabba", 316160658L, 3125L, "1089000.[sft_i]", LandSources.PRINTED_PAGES, "Punjab"),
  /** Pucca bigha, 165 by 165 ft. */
  BIGHA_PUCCA(
      "bigha",
      158080329L,
      62500L,
      "27225.[sft_i]",
      LandSources.PRINTED_PAGES,
      "pucca",
      "Bihar",
      "central India",
      "Rajasthan pucca"),
  /** Kachcha bigha, a third of the pucca one. */
  BIGHA_HARYANA_KACHCHA(
      "bigha",
      52693443L,
      62500L,
      "9075.[sft_i]",
      LandSources.PRINTED_PAGES,
      "Haryana kachcha",
      "Haryana",
      "Punjab kachcha",
      "Pakistan"),
  /** Bigha of four kanals, half an acre; sources contradict one another. */
  BIGHA_PUNJAB_4_KANAL(
      "bigha", 158080329L, 78125L, "21780.[sft_i]", LandSources.PRINTED_PAGES, "Punjab, 4 kanal"),
  /** Bigha of 968 yd², five to the acre. */
  BIGHA_HIMACHAL(
      "bigha", 316160658L, 390625L, "8712.[sft_i]", LandSources.PRINTED_PAGES, "Himachal"),
  /** Bigha of 900 yd². */
  BIGHA_UTTARAKHAND(
      "bigha", 11758041L, 15625L, "8100.[sft_i]", LandSources.PRINTED_PAGES, "Uttarakhand"),
  /** Bigha of 1600 yd². */
  BIGHA_WEST_BENGAL(
      "bigha",
      20903184L,
      15625L,
      "14400.[sft_i]",
      LandSources.PRINTED_PAGES,
      "West Bengal",
      "Assam",
      "Bangladesh",
      "Bengal"),
  /** Kachcha bigha of Rajasthan, 17 424 ft². */
  BIGHA_RAJASTHAN_KACHCHA(
      "bigha",
      632321316L,
      390625L,
      "17424.[sft_i]",
      LandSources.PRINTED_PAGES,
      "Rajasthan kachcha"),
  /** About 6800 ft², the smallest bigha found. */
  BIGHA_WESTERN_UTTAR_PRADESH(
      "bigha",
      9870948L,
      15625L,
      "6800.[sft_i]",
      LandSources.PRINTED_PAGES,
      "western Uttar Pradesh"),
  /** Bigha of the Terai, 20 katthas. */
  BIGHA_NEPAL(
      "bigha", 677263L, 100L, "677263.m2/100", LandSources.PRINTED_PAGES, "Nepal", "Nepal Terai"),
  /** Katha of 720 ft². */
  KATHA_BANGLADESH(
      "katha", 5225796L, 78125L, "720.[sft_i]", LandSources.PRINTED_PAGES, "Bangladesh"),
  /** Katha of 2880 ft², a fifth of a bigha. */
  KATHA_ASSAM("katha", 20903184L, 78125L, "2880.[sft_i]", LandSources.PRINTED_PAGES, "Assam"),
  /** Katha of 1361.25 ft², 1/20 of a pucca bigha. */
  KATHA_PATNA("katha", 158080329L, 1250000L, "5445.[sft_i]/4", LandSources.PRINTED_PAGES, "Patna"),
  /** Kattha of the Terai, 1/20 of a bigha. */
  KATHA_NEPAL(
      "katha", 677263L, 2000L, "677263.m2/2000", LandSources.PRINTED_PAGES, "Nepal", "Nepal Terai"),
  /** Biswa of 121 yd². */
  BISWA_121_SQUARE_YARDS(
      "biswa", 158080329L, 1562500L, "1089.[sft_i]", LandSources.PRINTED_PAGES, "121 sq yd"),
  /** Biswa, 1/20 of a pucca bigha. */
  BISWA_PUCCA("biswa", 158080329L, 1250000L, "5445.[sft_i]/4", LandSources.PRINTED_PAGES, "pucca"),
  /** Biswa of 50 yd². */
  BISWA_50_SQUARE_YARDS(
      "biswa", 1306449L, 31250L, "450.[sft_i]", LandSources.PRINTED_PAGES, "50 sq yd"),
  /** Rai of 4 ngan. */
  RAI("rai", 1600L, 1L, "1600.m2", LandSources.FROM_MEMORY, "Thailand"),
  /** Ngan of 100 square wah. */
  NGAN("ngan", 400L, 1L, "400.m2", LandSources.FROM_MEMORY, "Thailand"),
  /** Square wah. */
  SQUARE_WAH("square wah", 4L, 1L, "4.m2", LandSources.FROM_MEMORY, "Thailand"),
  /** Mu of today, 1/15 of a hectare. */
  MU_CHINA("mu", 2000L, 3L, "2000.m2/3", LandSources.PRINTED_PAGES, "China"),
  /** Mu of the former customs, 8273.75 ft². */
  MU_CUSTOMS(
      "mu",
      960820659L,
      1250000L,
      "33095.[sft_i]/4",
      LandSources.PRINTED_PAGES,
      "Chinese customs, before 1930"),
  /** Feddan of 24 kirat of 175 m². */
  FEDDAN_EGYPT("feddan", 4200L, 1L, "4200.m2", LandSources.PRINTED_PAGES, "Egypt", "Sudan"),
  /** Feddan as some tables print it. */
  FEDDAN_OLDER_TABLES(
      "feddan",
      4200833L,
      1000L,
      "4200833.m2/1000",
      LandSources.PRINTED_PAGES,
      "Egypt, older tables"),
  /** Kirat, 1/24 of a feddan. */
  KIRAT("kirat", 175L, 1L, "175.m2", LandSources.PRINTED_PAGES, "Egypt", "Sudan"),
  /** Metric dunam. */
  DUNAM_METRIC(
      "dunam",
      1000L,
      1L,
      "1000.m2",
      LandSources.FROM_MEMORY,
      "metric",
      "Israel",
      "Jordan",
      "Lebanon",
      "Turkey"),
  /** Dunam or donum of 14 400 ft². */
  DUNAM_CYPRUS("dunam", 20903184L, 15625L, "14400.[sft_i]", LandSources.FROM_MEMORY, "Cyprus"),
  /** Dunam or meshara of 2500 m². */
  DUNAM_IRAQ("dunam", 2500L, 1L, "2500.m2", LandSources.FROM_MEMORY, "Iraq"),
  /** Old Ottoman dunam, about 919 m². */
  DUNAM_OTTOMAN("dunam", 919L, 1L, "919.m2", LandSources.FROM_MEMORY, "Ottoman"),
  /** Manzana of Costa Rica. */
  MANZANA_COSTA_RICA(
      "manzana", 174724L, 25L, "174724.m2/25", LandSources.CENTRAL_AMERICA, "Costa Rica"),
  /** Manzana of Honduras. */
  MANZANA_HONDURAS("manzana", 27889L, 4L, "27889.m2/4", LandSources.CENTRAL_AMERICA, "Honduras"),
  /** Manzana of Nicaragua, decree of 1902. */
  MANZANA_NICARAGUA(
      "manzana", 1762531L, 250L, "1762531.m2/250", LandSources.CENTRAL_AMERICA, "Nicaragua"),
  /** Manzana of El Salvador. */
  MANZANA_EL_SALVADOR(
      "manzana", 702579L, 100L, "702579.m2/100", LandSources.CENTRAL_AMERICA, "El Salvador"),
  /** Manzana of Guatemala. */
  MANZANA_GUATEMALA(
      "manzana", 698737L, 100L, "698737.m2/100", LandSources.CENTRAL_AMERICA, "Guatemala"),
  /** The other manzana of Guatemala. */
  MANZANA_GUATEMALA_7056(
      "manzana", 7056L, 1L, "7056.m2", LandSources.CENTRAL_AMERICA, "Guatemala, 7056 sq m"),
  /** Manzana of Belize. */
  MANZANA_BELIZE("manzana", 8353L, 1L, "8353.m2", LandSources.CENTRAL_AMERICA, "Belize"),
  /** Manzana of Argentina, one hectare. */
  MANZANA_ARGENTINA("manzana", 10000L, 1L, "10000.m2", LandSources.CENTRAL_AMERICA, "Argentina"),
  /** Manzana as a round 7000 m². */
  MANZANA_ROUNDED("manzana", 7000L, 1L, "7000.m2", LandSources.CENTRAL_AMERICA, "rounded");

  private final String landName;
  private final List<String> places;
  private final UnitDefinition definition;
  private final Reference source;

  LandUnit(
      String landName,
      long numerator,
      long denominator,
      String ucum,
      Reference source,
      String... places) {
    this.landName = landName;
    this.places = List.of(places);
    this.source = source;
    var symbol = landName + " (" + places[0] + ')';
    this.definition =
        new UnitDefinition(symbol, symbol, ucum, ExactFactor.of(numerator, denominator));
  }

  /**
   * All units of one name.
   *
   * @param name name without a place, in any case, for example {@code "bigha"}
   * @return the units in the order of this enum; empty if the name is not known
   */
  public static List<LandUnit> named(String name) {
    var wanted = LandNames.standard(name.strip().toLowerCase(Locale.ROOT));
    var found = new ArrayList<LandUnit>();
    for (var unit : values()) {
      if (unit.landName.equals(wanted)) {
        found.add(unit);
      }
    }
    return List.copyOf(found);
  }

  /**
   * The name without its place.
   *
   * @return for example {@code "bigha"}
   */
  public String landName() {
    return landName;
  }

  /**
   * Where the unit has this size. Each of these, in brackets behind the name, is read as this unit.
   *
   * @return one or more places, the first of which is printed
   */
  public List<String> places() {
    return places;
  }

  /**
   * The size.
   *
   * @return square metres, nearest to the exact {@linkplain #factor() ratio}
   */
  public double squareMetres() {
    return definition.factor().convert(1);
  }

  /**
   * Where the size comes from and how well it is backed.
   *
   * @return the source
   */
  public Reference source() {
    return source;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.AREA;
  }

  @Override
  public UnitDefinition definition() {
    return definition;
  }

  @Override
  public String toString() {
    return definition.symbol();
  }
}
