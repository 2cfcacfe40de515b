package agro.season;

import agro.generation.GenerationForecast;
import agro.report.ReadReport;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.List;
import java.util.Optional;

/**
 * The forecasts of many pests and places.
 *
 * @param places one entry a pest and place, in the order of the folders and of their traps
 */
public record BatchForecast(List<PlaceForecast> places) implements Presentable {

  /** Copies the list. */
  public BatchForecast {
    places = List.copyOf(places);
  }

  /**
   * The forecasts that were made.
   *
   * @return in the order of the places
   */
  public List<GenerationForecast> forecasts() {
    return places.stream().flatMap(place -> place.forecast().stream()).toList();
  }

  /**
   * Pests and places without a forecast.
   *
   * @return in the order of the places
   */
  public List<PlaceForecast> failed() {
    return places.stream().filter(place -> place.forecast().isEmpty()).toList();
  }

  /**
   * The forecast of one pest at one place.
   *
   * @param pest name of the pest
   * @param place name of the place
   * @return the first such forecast; empty when there is none
   */
  public Optional<GenerationForecast> at(String pest, String place) {
    return places.stream()
        .filter(each -> each.pest().equals(pest) && each.place().equals(place))
        .flatMap(each -> each.forecast().stream())
        .findFirst();
  }

  /**
   * All dates as one table: pest, place, flight and share by median date, 8 in 10 and the chance
   * that the date does not come this season.
   *
   * @return the table
   */
  public ResultTable table() {
    return BatchPages.table(this);
  }

  /**
   * Why some places have no forecast.
   *
   * @return the table, without rows when all have one
   */
  public ResultTable problems() {
    return BatchPages.problems(this);
  }

  /**
   * What was assumed in making the forecasts.
   *
   * @return the reports of the forecasts, each line with its pest and place
   */
  public ReadReport report() {
    return BatchPages.report(this);
  }

  @Override
  public Presentation presentation() {
    return BatchPages.page(this);
  }

  @Override
  public String toString() {
    return table().toText();
  }
}
