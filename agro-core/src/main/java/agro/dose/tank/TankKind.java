package agro.dose.tank;

/** What carries the spray. */
public enum TankKind {
  /** A sprayer carried on the back; each filling is called a pump. */
  KNAPSACK("knapsack", "pump", "pumps"),
  /** A tank on wheels or on a tractor. */
  MOUNTED("sprayer tank", "load", "loads");

  private final String words;
  private final String load;
  private final String loads;

  TankKind(String words, String load, String loads) {
    this.words = words;
    this.load = load;
    this.loads = loads;
  }

  /**
   * The kind in words.
   *
   * @return {@code "knapsack"} or {@code "sprayer tank"}
   */
  public String words() {
    return words;
  }

  /**
   * What one filling is called.
   *
   * @return {@code "pump"} or {@code "load"}
   */
  public String load() {
    return load;
  }

  /**
   * What fillings are called.
   *
   * @return {@code "pumps"} or {@code "loads"}
   */
  public String loads() {
    return loads;
  }
}
