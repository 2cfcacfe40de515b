package agro.programme.bulletin;

import agro.dose.ProductPerArea;
import agro.dose.tank.SprayedField;
import agro.dose.tank.TankMix;
import agro.dose.tank.TankMixPlan;
import agro.dose.tank.TankPartner;
import agro.generation.FlightShare;
import agro.programme.CropPlanting;
import agro.programme.GenerationDays;
import agro.programme.LabelRecord;
import agro.programme.Programme;
import agro.programme.interval.SeasonQuestions;
import agro.programme.interval.SeasonRules;
import agro.programme.interval.UseCalendar;
import agro.programme.rotation.RotationCheck;
import agro.programme.rotation.RotationFinding;
import agro.programme.rotation.RotationReport;
import agro.programme.rotation.RotationWindows;
import agro.programme.rotation.WindowBasis;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.AreaUnit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What may be done with the products of the label records in one field. */
final class FieldProducts {

  private static final int DAYS_AHEAD = 28;
  private static final int SEASON_DAYS = 300;

  private final String field;
  private final LocalDate asOf;
  private final FolderTables tables;
  private final Optional<Programme> programme;
  private final Optional<CropPlanting> planting;
  private final List<PestBulletin> pests;
  private final Optional<FieldSprayer> sprayer;

  FieldProducts(
      String field,
      LocalDate asOf,
      FolderTables tables,
      Optional<Programme> programme,
      Optional<CropPlanting> planting,
      List<PestBulletin> pests,
      Optional<FieldSprayer> sprayer) {
    this.field = field;
    this.asOf = asOf;
    this.tables = tables;
    this.programme = programme;
    this.planting = planting;
    this.pests = pests;
    this.sprayer = sprayer;
  }

  SeasonRules rules() {
    var rules = SeasonRules.of(programme.orElseThrow());
    return tables.sideEffects().map(rules::with).orElse(rules);
  }

  List<ProductAdvice> advice() {
    if (planting.isEmpty()) {
      return List.of();
    }
    var rules = rules();
    var labels =
        rules.programme().labels().forCrop(planting.get().crop()).stream()
            .filter(this::isForAPest)
            .toList();
    if (labels.isEmpty()) {
      return List.of();
    }
    var names = labels.stream().map(LabelRecord::product).toList();
    var calendar = UseCalendar.of(rules, field, names, asOf, asOf.plusDays(DAYS_AHEAD - 1));
    var advice = new ArrayList<ProductAdvice>();
    for (var label : labels) {
      advice.add(advice(rules, label, calendar.row(label.product())));
    }
    return List.copyOf(advice);
  }

  /** A record that names no pest is shown, since nothing is known against it. */
  private boolean isForAPest(LabelRecord label) {
    return label.pests().isEmpty()
        || label.pests().stream()
            .anyMatch(
                named -> pests.stream().anyMatch(each -> each.pest().equalsIgnoreCase(named)));
  }

  private ProductAdvice advice(SeasonRules rules, LabelRecord label, UseCalendar.Row days) {
    var questions = SeasonQuestions.of(rules);
    var next = questions.nextAllowed(field, label.product(), asOf);
    var day = next.day().orElse(asOf);
    Optional<TankMix> mix = Optional.empty();
    var problem = "";
    try {
      mix = tank(label);
    } catch (InputProblem refused) {
      problem = refused.getMessage();
    }
    return new ProductAdvice(
        label,
        rules.check(rules.planned(field, label.product(), asOf)),
        next,
        days,
        questions.howMuchIsLeft(field, label.product(), day),
        findings(rules, label, day),
        mix,
        problem);
  }

  private Optional<TankMix> tank(LabelRecord label) {
    var area = programme.flatMap(each -> each.field(field).area());
    if (sprayer.isEmpty()
        || area.isEmpty()
        || !(label.dose().orElse(null) instanceof ProductPerArea dose)) {
      return Optional.empty();
    }
    return Optional.of(mix(label, dose, area.get(), sprayer.get()));
  }

  private TankMix mix(LabelRecord label, ProductPerArea dose, Area area, FieldSprayer sprayer) {
    return TankMixPlan.of(
            new SprayedField(field, area, AreaUnit.HECTARE), sprayer.spray(), sprayer.tank())
        .with(TankPartner.of(label.product(), dose).withLimits(label.limits()))
        .evaluate();
  }

  private List<RotationFinding> findings(SeasonRules rules, LabelRecord label, LocalDate day) {
    var planned = rules.planned(field, label.product(), day);
    return RotationCheck.of(rules.programme().with(planned), field, windows())
        .check()
        .findings()
        .stream()
        .filter(each -> each.sprayings().contains(planned.name()))
        .toList();
  }

  Optional<RotationReport> rotation() {
    return planting.isEmpty()
        ? Optional.empty()
        : programme.map(each -> RotationCheck.of(each, field, windows()).check());
  }

  /**
   * Windows that the district gives for the first pest that has some, else one generation each by
   * the forecast, else thirty days.
   */
  private RotationWindows windows() {
    var known = programme.orElseThrow();
    var district = known.field(field).district();
    for (var pest : pests) {
      var given =
          known.generations().stream()
              .filter(each -> each.pest().equals(pest.pest()))
              .filter(each -> each.district().isEmpty() || each.district().equals(district))
              .toList();
      if (!given.isEmpty()) {
        return RotationWindows.of(given, WindowBasis.DISTRICT);
      }
    }
    for (var pest : pests) {
      var foreseen = foreseen(pest);
      if (!foreseen.isEmpty()) {
        return RotationWindows.of(foreseen, WindowBasis.FORECAST);
      }
    }
    var first = planting.orElseThrow().planted();
    var start = first.isAfter(asOf) ? asOf : first;
    return RotationWindows.everyThirtyDays(start, start.plusDays(SEASON_DAYS));
  }

  /** From the beginning of one flight to the day before the next one begins. */
  private static List<GenerationDays> foreseen(PestBulletin pest) {
    var days = new ArrayList<GenerationDays>();
    var forecast = pest.forecast();
    if (forecast.isEmpty()) {
      return days;
    }
    var starts = new ArrayList<GenerationDays>();
    var end = forecast.get().season().lastDay();
    for (var row : forecast.get().rows()) {
      if (row.isFlight() && row.share() == FlightShare.FIRST && row.dates().median().isPresent()) {
        var day = row.dates().median().get();
        starts.add(
            new GenerationDays(
                "", pest.pest(), row.generation(), day, day.isAfter(end) ? day : end));
      }
    }
    for (int i = 0; i < starts.size(); i++) {
      var each = starts.get(i);
      var last = i + 1 < starts.size() ? starts.get(i + 1).first().minusDays(1) : each.last();
      if (!last.isBefore(each.first())) {
        days.add(new GenerationDays("", each.pest(), each.generation(), each.first(), last));
      }
    }
    return days;
  }
}
