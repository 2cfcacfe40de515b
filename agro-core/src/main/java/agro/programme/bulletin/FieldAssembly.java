package agro.programme.bulletin;

import agro.programme.CropPlanting;
import agro.programme.Programme;
import agro.programme.interval.SeasonAnswer;
import agro.programme.interval.SeasonQuestions;
import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.sampling.ScoutingTable;
import agro.sampling.ScoutingTable.Looked;
import agro.source.Reference;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Joins what is known of one field. */
final class FieldAssembly {

  private final SeasonBulletins.FieldAtPlace where;
  private final LocalDate asOf;
  private final FolderTables tables;
  private final Optional<Programme> programme;
  private final SeasonOfPests season;
  private final List<String> notes = new ArrayList<>();

  FieldAssembly(
      SeasonBulletins.FieldAtPlace where,
      LocalDate asOf,
      FolderTables tables,
      Optional<Programme> programme,
      SeasonOfPests season) {
    this.where = where;
    this.asOf = asOf;
    this.tables = tables;
    this.programme = programme.filter(each -> knows(each, where.field()));
    this.season = season;
  }

  private static boolean knows(Programme programme, String field) {
    return programme.fields().stream().anyMatch(each -> each.name().equals(field));
  }

  FieldBulletin bulletin() {
    var planting = programme.flatMap(each -> each.plantingFor(where.field(), asOf));
    var pests = pests(planting);
    var sprayer = FieldSprayer.of(tables.sprayers(), where.field());
    var products =
        new FieldProducts(where.field(), asOf, tables, programme, planting, pests, sprayer);
    var advice = products.advice();
    var hours =
        programme.flatMap(
            each ->
                tables
                    .hours()
                    .map(
                        table ->
                            table.of(
                                each.field(where.field()),
                                asOf,
                                asOf.plusDays(HoursPanel.DAYS - 1))));
    var rotation = products.rotation();
    return new FieldBulletin(
        where.field(),
        where.place(),
        asOf,
        planting,
        pests,
        advice,
        planting.map(any -> mayPick(products)),
        rotation,
        sprayer,
        hours,
        missing(planting, pests, advice, sprayer, hours.isPresent()),
        assumed(pests),
        sources(pests));
  }

  private SeasonAnswer mayPick(FieldProducts products) {
    return SeasonQuestions.of(products.rules()).mayPick(where.field(), asOf);
  }

  private List<PestBulletin> pests(Optional<CropPlanting> planting) {
    var counts = counts(planting.map(CropPlanting::crop));
    var names = new LinkedHashSet<>(season.pests(where.place()));
    names.addAll(counts.keySet());
    return names.stream()
        .map(pest -> season.pest(pest, where.place(), counts.getOrDefault(pest, List.of())))
        .toList();
  }

  /** The newest counts of each part of the field, by pest. */
  private Map<String, List<CountVerdict>> counts(Optional<String> crop) {
    var groups = new LinkedHashMap<String, Map<String, List<Looked>>>();
    var fields = new LinkedHashSet<String>();
    programme.ifPresent(each -> each.fields().forEach(field -> fields.add(field.name())));
    fields.add(where.field());
    for (var line : tables.scouting().map(ScoutingTable::lines).orElse(List.of())) {
      boolean own =
          NamePrefix.longest(line.field(), fields).map(where.field()::equals).orElse(false);
      if (own && !line.date().isAfter(asOf)) {
        groups
            .computeIfAbsent(line.pest(), any -> new LinkedHashMap<>())
            .computeIfAbsent(line.field(), any -> new ArrayList<>())
            .add(line);
      }
    }
    var counts = new LinkedHashMap<String, List<CountVerdict>>();
    groups.forEach(
        (pest, parts) -> {
          var found = new ArrayList<CountVerdict>();
          parts.forEach((part, lines) -> newest(pest, part, lines, crop).ifPresent(found::add));
          counts.put(pest, found);
        });
    return counts;
  }

  private Optional<CountVerdict> newest(
      String pest, String part, List<Looked> lines, Optional<String> crop) {
    var day = lines.stream().map(Looked::date).max(LocalDate::compareTo).orElseThrow();
    try {
      var sample =
          new ScoutingTable(lines.stream().filter(line -> line.date().equals(day)).toList())
              .samples()
              .get(0);
      return Optional.of(CountVerdict.of(part, day, sample, tables.thresholds().find(pest, crop)));
    } catch (InputProblem problem) {
      notes.add(part + ", " + day + ", " + pest + ": " + problem.getMessage());
      return Optional.empty();
    }
  }

  private List<MissingPart> missing(
      Optional<CropPlanting> planting,
      List<PestBulletin> pests,
      List<ProductAdvice> advice,
      Optional<FieldSprayer> sprayer,
      boolean withHours) {
    var missing = new ArrayList<MissingPart>();
    add(missing, MissingPart.TRAPS, season.pests(where.place()).isEmpty());
    add(
        missing,
        MissingPart.STAGES,
        pests.stream().anyMatch(each -> each.forecast().isPresent() && !hasStage(each)));
    boolean counted = pests.stream().anyMatch(each -> !each.counts().isEmpty());
    add(missing, MissingPart.SCOUTING, !counted);
    add(
        missing,
        MissingPart.THRESHOLDS,
        pests.stream()
            .flatMap(each -> each.counts().stream())
            .anyMatch(each -> each.threshold().isEmpty()));
    add(missing, MissingPart.LABELS, !tables.withLabels());
    add(missing, MissingPart.FIELDS, tables.withLabels() && programme.isEmpty());
    add(missing, MissingPart.CROP, programme.isPresent() && planting.isEmpty());
    add(missing, MissingPart.LABELS_OF_CROP, planting.isPresent() && advice.isEmpty());
    add(missing, MissingPart.SPRAYER, !advice.isEmpty() && sprayer.isEmpty());
    boolean area = programme.isPresent() && programme.get().field(where.field()).area().isPresent();
    add(missing, MissingPart.AREA, !advice.isEmpty() && !area);
    add(missing, MissingPart.DIARY, programme.isPresent() && tables.diary().isEmpty());
    add(missing, MissingPart.SPRAY_HOURS, !withHours);
    return missing;
  }

  private static boolean hasStage(PestBulletin pest) {
    return pest.forecast().stream()
        .flatMap(each -> each.rows().stream())
        .anyMatch(row -> !row.isFlight());
  }

  private static void add(List<MissingPart> missing, MissingPart part, boolean isMissing) {
    if (isMissing) {
      missing.add(part);
    }
  }

  private List<String> assumed(List<PestBulletin> pests) {
    var assumed = new LinkedHashSet<>(notes);
    for (var pest : pests) {
      pest.forecast().stream()
          .flatMap(each -> each.report().entries().stream())
          .filter(each -> each.deed() != Deed.REPAIRED)
          .forEach(each -> assumed.add(pest.pest() + ": " + each.text()));
    }
    return List.copyOf(assumed);
  }

  private static List<Reference> sources(List<PestBulletin> pests) {
    var sources = new LinkedHashSet<Reference>();
    for (var pest : pests) {
      pest.forecast()
          .ifPresent(
              each -> {
                sources.addAll(each.fit().timing().range().sources());
                sources.add(each.season().model().method().source());
              });
    }
    return List.copyOf(sources);
  }
}
