package agro.season;

import agro.generation.GenerationForecast;
import java.util.Objects;
import java.util.Optional;

/**
 * What a batch gave for one pest at one place: a forecast, or the reason why there is none.
 *
 * @param folder the season folder, as it was given
 * @param pest the pest; empty when the folder itself could not be read
 * @param place the place; empty when the folder itself could not be read
 * @param forecast the forecast; empty when there is a problem
 * @param problem why there is none; empty when there is one
 */
public record PlaceForecast(
    String folder,
    String pest,
    String place,
    Optional<GenerationForecast> forecast,
    String problem) {

  /** Refuses a forecast with a problem, and neither. */
  public PlaceForecast {
    Objects.requireNonNull(folder, "folder");
    Objects.requireNonNull(pest, "pest");
    Objects.requireNonNull(place, "place");
    if (forecast.isPresent() != problem.isEmpty()) {
      throw new IllegalArgumentException("either a forecast or a problem, not both or neither");
    }
  }
}
