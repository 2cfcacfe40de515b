package agro.demo;

import agro.development.DegreeDayModel;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.generation.IntervalRange;
import agro.generation.TrapSeason;
import agro.report.ReadReport;
import agro.season.FieldSeason;
import agro.season.MonitoredPest;
import agro.season.MonitoredPlace;
import agro.season.PestSeasons;
import agro.season.SeasonTemperatures;
import agro.season.SeasonWindow;
import agro.source.Reference;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyTemperatures;
import agro.weather.Medium;
import agro.weather.MediumKind;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;

/** What the season folder of a vale would give, in memory: one call for a seed. */
final class DemoSeasons {
  private final OsmereVale vale;
  private final LocalDate issueDate;
  private final DailyTemperatures station;

  DemoSeasons(OsmereVale vale, LocalDate issueDate) {
    this.vale = vale;
    this.issueDate = issueDate;
    station = vale.station().upTo(issueDate);
  }

  PestSeasons leekMoth() {
    var field = vale.upperCroft(OsmereVale.FIRST_SEASON);
    for (int year : OsmereVale.seasons()) {
      field = field.followedBy(vale.upperCroft(year));
    }
    return join(Pest.LEEK_MOTH, 444.6, field.upTo(issueDate), vale::leekMothTraps);
  }

  PestSeasons diamondbackMoth() {
    var field = vale.millField().upTo(issueDate);
    return join(Pest.DIAMONDBACK_MOTH, 263.74, field, vale::diamondbackMothTraps);
  }

  private PestSeasons join(
      Pest pest, double eggToAdult, DailyTemperatures field, IntFunction<TrapSeason> traps) {
    var temperatures = SeasonTemperatures.of(field, Optional.of(station));
    var seasons = new ArrayList<FieldSeason>();
    for (int year : OsmereVale.seasons()) {
      var start = OsmereVale.seasonStart(year);
      var end = OsmereVale.seasonEnd(year);
      if (start.isAfter(issueDate)) {
        break;
      }
      var days = temperatures.between(start, end.isBefore(issueDate) ? end : issueDate).days();
      seasons.add(new FieldSeason(traps.apply(year).upTo(issueDate), days.orElseThrow(), end));
    }
    return new PestSeasons(
        monitored(pest, eggToAdult),
        place(field),
        issueDate,
        seasons,
        temperatures.offset(),
        Optional.of(station),
        field,
        Optional.empty(),
        new ReadReport("seed " + vale.seed(), 0, List.of()));
  }

  private static MonitoredPest monitored(Pest pest, double eggToAdult) {
    var model =
        DegreeDayModel.singleSine(
            Thresholds.above(Temperature.ofCelsius(pest.lowerCelsius)), UpperCutoff.NONE);
    var source = Reference.invented("as in the season folder of Osmere Vale");
    return new MonitoredPest(
        pest.title,
        "",
        MediumKind.AIR,
        model,
        source,
        IntervalRange.about(new ThermalTime(eggToAdult + pest.life.firstEgg()), List.of(source)),
        new SeasonWindow(MonthDay.of(3, 1), MonthDay.of(10, 31)));
  }

  private static MonitoredPlace place(DailyTemperatures field) {
    return new MonitoredPlace(
        field.place(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Medium.shelterAir(),
        Optional.of(Site.STATION.title),
        "");
  }
}
