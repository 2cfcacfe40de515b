package agro.generation;

import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Objects;

/** The rule by which the biofix of a season is read from the trap visits, or given by the user. */
public sealed interface BiofixRule {

  /**
   * The rule in words.
   *
   * @return a phrase for print, such as {@code "first of 2 running visits with a catch"}
   */
  String words();

  /** The first visit with a catch. */
  record FirstCatch() implements BiofixRule {
    @Override
    public String words() {
      return "first visit with a catch";
    }
  }

  /**
   * The first of several running visits, each with a catch.
   *
   * @param visits number of running visits, 2 or more
   */
  record FirstOfRun(int visits) implements BiofixRule {
    /** Checks the number. */
    public FirstOfRun {
      if (visits < 2) {
        throw new IllegalArgumentException(
            "a run of catches has 2 visits or more, but got " + visits);
      }
    }

    @Override
    public String words() {
      return "first of " + visits + " running visits with a catch";
    }
  }

  /**
   * The visit at which the season's catch, added up over all traps, reaches a number.
   *
   * @param adults number of adults, 1 or more
   */
  record CumulativeCatch(int adults) implements BiofixRule {
    /** Checks the number. */
    public CumulativeCatch {
      if (adults < 1) {
        throw new IllegalArgumentException(
            "a catch that counts has 1 adult or more, but got " + adults);
      }
    }

    @Override
    public String words() {
      return "season's catch reaches " + adults;
    }
  }

  /**
   * The day on which a share of the first flight is over by the fitted curve.
   *
   * @param share share of the flight, above 0 and below 1
   */
  record ShareOfFirstFlight(double share) implements BiofixRule {
    /** Checks the share. */
    public ShareOfFirstFlight {
      if (!(share > 0 && share < 1)) {
        throw new IllegalArgumentException("a share lies between 0 and 1, but got " + share);
      }
    }

    @Override
    public String words() {
      return "fitted day on which " + Math.round(share * 100) + " % of the first flight is over";
    }
  }

  /**
   * A day of the calendar, the same in every season: its first occurrence from the season's start
   * day on (28 February for 29 February where there is none).
   *
   * @param day the day of the year
   */
  record CalendarDay(MonthDay day) implements BiofixRule {
    /** Refuses null. */
    public CalendarDay {
      Objects.requireNonNull(day, "day");
    }

    @Override
    public String words() {
      return "calendar day "
          + DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH).format(day.atYear(2000));
    }
  }
}
