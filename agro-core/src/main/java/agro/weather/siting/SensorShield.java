package agro.weather.siting;

/** What keeps the sun off a sensor. */
public enum SensorShield {
  /** A shield with a fan. */
  ASPIRATED("shield with a fan", 0),
  /** A louvred screen or plates, ventilated by the wind. */
  NATURALLY_VENTILATED("screen or plates without a fan", 1),
  /** Something made on the farm that was never compared. */
  HOME_MADE("home-made shield, never compared", 2),
  /** Nothing. */
  NONE("no shield", 3),
  /** Soil keeps the sun off. */
  SOIL("buried", 0),
  /** Nobody wrote it down. */
  NOT_STATED("shield not stated", 2);

  private final String words;
  private final int doubt;

  SensorShield(String words, int doubt) {
    this.words = words;
    this.doubt = doubt;
  }

  /**
   * The shield in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }

  /** How much sun may reach the sensor, 0 for none to 3 for all. */
  int doubt() {
    return doubt;
  }
}
