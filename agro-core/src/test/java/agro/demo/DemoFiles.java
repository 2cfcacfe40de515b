package agro.demo;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The season folder of Osmere Vale as texts by file name. */
final class DemoFiles {
  private static final String PLACES =
      """
      place,latitude,altitude_m,medium,sensor_m,neighbour,note
      Upper Croft,46.4,640,shelter air,2,Osmere station,leeks on the upper terraces
      Mill Field,46.4,470,shelter air,2,Osmere station,cabbages and cauliflower
      Sand Lane,46.4,430,shelter air,2,Osmere station,cabbages on light soil
      Osmere station,46.4,505,shelter air,2,,district station
      """;

  private static final String LOGS_HEAD =
      "file,place,kind,separator,decimal,time_column,time_pattern,zone,day_offset,"
          + "value_column,min_column,max_column,unit,missing,made_on\n";

  private static final String LOGS =
      """
      logs/mill-field.csv,Mill Field,daily extremes,semicolon,comma,\
      day,dd.MM.yyyy,,,,lowest,highest,°F,--,
      logs/sand-lane-2026.csv,Sand Lane,readings,comma,point,\
      utc,yyyy-MM-dd'T'HH:mm'Z',UTC,+01:00,celsius,,,°C,,
      logs/osmere-station.csv,Osmere station,daily extremes,comma,point,\
      date,yyyy-MM-dd,,,,min_c,max_c,°C,,
      """;

  private static final String PESTS =
      """
      pest,scientific_name,medium,lower_c,upper_c,cutoff,threshold_source,\
      generation_low_c_d,generation_high_c_d,generation_source,\
      egg_to_adult_c_d,egg_to_adult_source,first_egg_c_d,first_egg_source,\
      season_start,season_end
      leek moth,Acrolepiopsis assectella,air,7,,none,\
      "Mason et al. (2010) Can. Entomol. 142:393-404, abstract",,,,\
      444.6,"Mason et al. (2010) Can. Entomol. 142:393-404, abstract",\
      25,invented for demonstration,03-01,10-31
      diamondback moth,Plutella xylostella,air,7.06,,none,\
      "Golizadeh et al. (2007) Insect Sci., doi 10.1111/j.1744-7917.2007.00157.x, cauliflower",,,,\
      263.74,"Golizadeh et al. (2007) Insect Sci., doi 10.1111/j.1744-7917.2007.00157.x, cauliflower",\
      15,invented for demonstration,03-01,10-31
      cabbage root fly,Delia radicum,soil,6,,none,\
      "book chapter doi 10.1201/9781003079347-5, soil at 6 cm",406,812,\
      "0.7 to 1.4 times 580 °C·d in soil, book chapter doi 10.1201/9781003079347-5",,,,,03-01,10-31
      """;

  private static final String TRAPS =
      """
      trap,place,pest
      UC1,Upper Croft,leek moth
      UC2,Upper Croft,leek moth
      MF1,Mill Field,diamondback moth
      MF2,Mill Field,diamondback moth
      SL1,Sand Lane,cabbage root fly
      """;

  private final OsmereVale vale;

  private DemoFiles(OsmereVale vale) {
    this.vale = vale;
  }

  /** All files of the folder, names relative to it. */
  static Map<String, String> of(OsmereVale vale) {
    var writer = new DemoFiles(vale);
    var files = new LinkedHashMap<String, String>();
    files.put("README.md", writer.readme());
    files.put("places.csv", writer.headed(PLACES));
    files.put("logs.csv", writer.headed(LOGS_HEAD + writer.hourlyLogs() + LOGS));
    files.put("pests.csv", writer.headed(PESTS));
    files.put("traps.csv", writer.headed(TRAPS));
    files.put("visits.csv", writer.headed(writer.visits()));
    files.put("scouting.csv", writer.headed(new ScoutingBook(vale.seed()).table()));
    files.put("rearing.csv", RearingBook.of(vale.seed()));
    new LogFiles(vale).addTo(files);
    writer.addTrials(files);
    ProgrammeBook.tables(vale.seed())
        .forEach((name, table) -> files.put(name, writer.headed(table)));
    CourseBook.tables(vale.seed()).forEach((name, table) -> files.put(name, writer.headed(table)));
    return files;
  }

  private void addTrials(Map<String, String> files) {
    var trial = new SprayTrial(vale.seed());
    files.put("trial-plots.csv", headed(trial.plan()));
    files.put("trial-counts.csv", headed(trial.counts()));
    files.put("trial-corrections.csv", headed(trial.corrections()));
    files.put("trial-yield.csv", headed(trial.harvest()));
    files.put("trial-prices.csv", headed(SprayTrial.prices()));
    files.put("trial-costs.csv", headed(SprayTrial.costs()));
    files.put("trial-truth.csv", headed(SprayTrial.truth()));
    files.put("vials.csv", headed(VialBook.table(vale.seed())));
    files.put("vials-truth.csv", headed(VialBook.truth()));
    files.put("class-calibrations.csv", headed(CalibrationBook.table(vale.seed())));
    files.put("class-calibrations-truth.csv", headed(CalibrationBook.truth()));
  }

  private String headed(String table) {
    return "# invented for demonstration, seed " + vale.seed() + "\n" + table;
  }

  private String readme() {
    return String.format(
        Locale.ROOT,
        """
        # Osmere Vale

        Everything in this folder is invented for demonstration, from seed %d: the valley, its
        weather, its insects and its traps. It shows how a season folder looks and proves nothing
        about any insect. Only the thresholds and requirements in `pests.csv` are published figures,
        unless their source says otherwise.

        Three fields with loggers of different habits, one district station with fifteen past years,
        four whole seasons of trapping and a fifth under way. The newest count is of %s; the logger
        of Upper Croft was last read a week before.

        | file | what is in it |
        |---|---|
        | `places.csv` | the three fields and the station |
        | `logs.csv` | how each temperature log is written |
        | `pests.csv` | thresholds, requirements and season of each pest |
        | `traps.csv`, `visits.csv` | the traps and the visit book |
        | `rearing.csv` | leek moths reared at seven constant temperatures |
        | `trial-plots.csv`, `trial-counts.csv`, `trial-corrections.csv` | a spray trial of six \
        treatments in five blocks: plan, larvae on ten plants of each plot, and a corrected slip |
        | `trial-yield.csv`, `trial-prices.csv`, `trial-costs.csv` | graded heads, prices, costs |
        | `vials.csv` | larvae of two strains in coated vials |
        | `trial-truth.csv`, `vials-truth.csv` | what lies behind trial and vials |
        | `class-calibrations.csv`, `class-calibrations-truth.csv` | a hand boom calibrated by a \
        class of 24 groups, and which of them are off for what reason |
        | `fields.csv`, `plantings.csv` | the farm's fields and the crops in them |
        | `labels.csv` | a small store of invented products and what is noted of their labels |
        | `thresholds.csv`, `sprayers.csv` | thresholds for the counts, and two sprayers |
        | `spray-limits.csv`, `spray-weather.csv` | one farm's own limits for spraying, and hours \
        as foreseen on the day of issue |
        | `class-list.csv`, `course-blueprint.csv`, `course-setting.csv` | a class without names, \
        what its paper asks, and a place with a local unit of land |
        | `course-answers.csv` | what the class typed, slips and all |
        | `logs/` | the temperature logs |

        The layout is explained column by column in the README page of an empty season folder, which
        the template command writes.
        """,
        vale.seed(),
        OsmereVale.ISSUE_DATE);
  }

  private String hourlyLogs() {
    var lines = new StringBuilder();
    for (int year : OsmereVale.seasons()) {
      lines
          .append("logs/upper-croft-")
          .append(year)
          .append(".csv,Upper Croft,readings,comma,point,time,yyyy-MM-dd HH:mm,")
          .append(LogFiles.CLOCK.getId())
          .append(",,air_c,,,°C,-999,\n");
    }
    return lines.toString();
  }

  private String visits() {
    var lines = new StringBuilder("trap,date,state,count,nights_open,lure_renewed,note\n");
    for (int year : OsmereVale.seasons()) {
      vale.leekMothVisits(year).forEach(note -> append(lines, note));
    }
    for (int year : OsmereVale.seasons()) {
      vale.diamondbackMothVisits(year).forEach(note -> append(lines, note));
    }
    return lines.toString();
  }

  private static void append(StringBuilder lines, VisitNote note) {
    lines.append(note.trap()).append(',').append(note.date()).append(',').append(note.state());
    lines.append(',');
    note.count().ifPresent(lines::append);
    lines.append(",,").append(note.lureRenewed() ? "yes" : "").append(',');
    lines.append(note.note().contains(",") ? '"' + note.note() + '"' : note.note()).append('\n');
  }
}
