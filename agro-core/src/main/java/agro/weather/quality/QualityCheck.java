package agro.weather.quality;

/** One rule of quality control with its limits. */
public sealed interface QualityCheck
    permits RangeCheck,
        FahrenheitCheck,
        SpikeCheck,
        StepCheck,
        StuckCheck,
        RepeatedCheck,
        ClockCheck,
        ExtremesCheck,
        EnclosingCheck,
        StreakCheck,
        DailySpikeCheck,
        LaggedRangeCheck,
        MonthGapCheck,
        ClimateCheck,
        NeighbourCheck,
        OffsetCheck {

  /**
   * The rule.
   *
   * @return the rule under which this check raises its flags
   */
  QualityRule rule();

  /**
   * The limits in words, with their units.
   *
   * @return a phrase without a full stop
   */
  String limits();
}
