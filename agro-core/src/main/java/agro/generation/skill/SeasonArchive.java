package agro.generation.skill;

import agro.generation.FlightTiming;
import agro.generation.ObservedSeason;
import agro.generation.SeasonUnderWay;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * The seasons of one pest at one place, and what was known of them on any day. Asked from several
 * threads at once.
 */
public interface SeasonArchive {

  /**
   * The pest.
   *
   * @return its name as it is printed
   */
  String pest();

  /**
   * The place.
   *
   * @return its name as it is printed
   */
  String place();

  /**
   * How the timing of flights is fitted. It may not rest on the counts that are forecast.
   *
   * @return the choices of the fit
   */
  FlightTiming timing();

  /**
   * The seasons that are over and have temperatures to their end, with all that is known today.
   *
   * @return the seasons in order of years
   */
  List<ObservedSeason> seasons();

  /**
   * First day of a season.
   *
   * @param year the year that names it
   * @return the day from whose start its degree-days run
   */
  LocalDate firstDay(int year);

  /**
   * Last day of a season.
   *
   * @param year the year that names it
   * @return what comes after it is "not this season"
   */
  LocalDate lastDay(int year);

  /**
   * What was known at the end of a day of issue. Everything, from the quality of single readings to
   * the offset of a neighbour, is worked out without what came later; past years for the weather
   * ahead leave the season itself out.
   *
   * @param year the season that is forecast
   * @param issueDate day of issue, inside that season
   * @param scheme whether later seasons may be learnt from
   * @return other seasons to learn from, and the season under way
   * @throws agro.report.InputProblem when too little was known for a forecast
   */
  Known known(int year, LocalDate issueDate, HindcastScheme scheme);

  /**
   * What was known.
   *
   * @param past seasons to learn from, possibly none
   * @param underWay the season that is forecast
   */
  record Known(List<ObservedSeason> past, SeasonUnderWay underWay) {
    /** Copies the list. */
    public Known {
      past = List.copyOf(past);
      Objects.requireNonNull(underWay, "underWay");
    }
  }
}
