package agro.source;

/**
 * The works that this library cites, each once; those on sampling stand in {@link
 * SamplingBibliography}. Formulas and data point here, so that a wrong page number is mended in one
 * place.
 */
public final class Bibliography {

  /** Daily degree-days from a single sine through the daily extremes. */
  public static final Reference BASKERVILLE_EMIN_1969 =
      Reference.fromMemory(
          "Baskerville, G. L. & Emin, P.",
          1969,
          "Rapid estimation of heat accumulation from maximum and minimum temperatures",
          "Ecology 50:514-517");

  /** The sine day as a model of temperature for heat units. */
  public static final Reference ARNOLD_1960 =
      Reference.fromMemory(
          "Arnold, C. Y.",
          1960,
          "Maximum-minimum temperatures as a basis for computing heat units",
          "Proceedings of the American Society for Horticultural Science 76:682-692");

  /** Two half sines, the second one to tomorrow's minimum, and cutoffs at an upper threshold. */
  public static final Reference ALLEN_1976 =
      Reference.fromMemory(
          "Allen, J. C.",
          1976,
          "A modified sine wave method for calculating degree days",
          "Environmental Entomology 5:388-396");

  /** Straight lines between the daily extremes. */
  public static final Reference LINDSEY_NEWMAN_1956 =
      Reference.fromMemory(
          "Lindsey, A. A. & Newman, J. E.",
          1956,
          "Use of official weather data in spring time-temperature analysis of an Indiana"
              + " phenological record",
          "Ecology 37:812-823");

  /** Straight lines through a day, the second one to tomorrow's minimum. */
  public static final Reference SEVACHERIAN_1977 =
      Reference.fromMemory(
          "Sevacherian, V., Stern, V. M. & Mueller, A. J.",
          1977,
          "Heat accumulation for timing Lygus control measures in a safflower-cotton complex",
          "Journal of Economic Entomology 70:399-402");

  /** The two readings of the average of the daily extremes. */
  public static final Reference MCMASTER_WILHELM_1997 =
      Reference.fromMemory(
          "McMaster, G. S. & Wilhelm, W. W.",
          1997,
          "Growing degree-days: one equation, two interpretations",
          "Agricultural and Forest Meteorology 87:291-300");

  /** Hourly temperatures from extremes and day length. */
  public static final Reference LINVILL_1990 =
      Reference.fromMemory(
          "Linvill, D. E.",
          1990,
          "Calculating chilling hours and chill units from daily maximum and minimum temperature"
              + " observations",
          "HortScience 25:14-16");

  /** Declination of the sun and equation of time as Fourier series. */
  public static final Reference SPENCER_1971 =
      Reference.fromMemory(
          "Spencer, J. W.",
          1971,
          "Fourier series representation of the position of the sun",
          "Search 2:172");

  /** Day length by latitude and day of the year: the CBM model. */
  public static final Reference FORSYTHE_1995 =
      Reference.fromMemory(
          "Forsythe, W. C., Rykiel, E. J., Stahl, R. S., Wu, H. & Schoolfield, R. M.",
          1995,
          "A model comparison for daylength as a function of latitude and day of year",
          "Ecological Modelling 80:87-95");

  /** Degree-days added up over readings. */
  public static final Reference SUM_OVER_READINGS =
      Reference.commonPractice(
          "Degree-days as the mean development rate over readings, weighted by elapsed time");

  /** Leek moth: lower threshold 7 °C and 444.6 °C·d from egg to adult, eastern Ontario. */
  public static final Reference MASON_2010 =
      Reference.read(
          "Mason, P. G., Appleby, M., Juneja, S., Allen, J. & Landry, J.-F.",
          2010,
          "Biology and development of Acrolepiopsis assectella (Lepidoptera: Acrolepiidae) in"
              + " eastern Ontario",
          "The Canadian Entomologist 142:393-404, abstract; doi 10.4039/n10-026");

  /** The four rules for temperatures above an upper threshold. */
  public static final Reference UPPER_CUTOFFS =
      Reference.commonPractice(
          "Horizontal, intermediate and vertical cutoff of degree-days at an upper threshold, with"
              + " closed forms derived here from the area of the day above a threshold");

  /** Proper scores: ranked probability, interval score. */
  public static final Reference GNEITING_RAFTERY_2007 =
      Reference.fromMemory(
          "Gneiting, T. & Raftery, A. E.",
          2007,
          "Strictly proper scoring rules, prediction, and estimation",
          "Journal of the American Statistical Association 102:359-378");

  /** Ranked probability score of a normal forecast in closed form. */
  public static final Reference GNEITING_2005 =
      Reference.fromMemory(
          "Gneiting, T., Raftery, A. E., Westveld, A. H. & Goldman, T.",
          2005,
          "Calibrated probabilistic forecasting using ensemble model output statistics and minimum"
              + " CRPS estimation",
          "Monthly Weather Review 133:1098-1118");

  /** Ranked probability score of an ensemble. */
  public static final Reference HERSBACH_2000 =
      Reference.fromMemory(
          "Hersbach, H.",
          2000,
          "Decomposition of the continuous ranked probability score for ensemble prediction"
              + " systems",
          "Weather and Forecasting 15:559-570");

  /** Scores that look at a part of the axis only and stay proper. */
  public static final Reference GNEITING_RANJAN_2011 =
      Reference.fromMemory(
          "Gneiting, T. & Ranjan, R.",
          2011,
          "Comparing density forecasts using threshold- and quantile-weighted scoring rules",
          "Journal of Business & Economic Statistics 29:411-422");

  /** Score of a chance. */
  public static final Reference BRIER_1950 =
      Reference.fromMemory(
          "Brier, G. W.",
          1950,
          "Verification of forecasts expressed in terms of probability",
          "Monthly Weather Review 78:1-3");

  /** Exact interval of a binomial share. */
  public static final Reference CLOPPER_PEARSON_1934 =
      Reference.fromMemory(
          "Clopper, C. J. & Pearson, E. S.",
          1934,
          "The use of confidence or fiducial limits illustrated in the case of the binomial",
          "Biometrika 26:404-413");

  /** Layouts, units and quality flags of the daily files of the climatology network. */
  public static final Reference GHCN_DAILY_README =
      Reference.read(
          "National Centers for Environmental Information",
          2012,
          "Readme files of the Global Historical Climatology Network, daily, sections on .dly and"
              + " by-station files",
          "Asheville; described in Menne, M. J. et al. (2012) J. Atmos. Ocean. Technol. 29:897-910");

  /** Columns, scaling and missing code of the hourly files. */
  public static final Reference ISD_LITE_FORMAT =
      Reference.read(
          "National Climatic Data Center",
          2006,
          "Integrated Surface Data, lite: format documentation",
          "Asheville, 20 June 2006");

  /** Base temperatures by least scatter and by the intercept of the rate. */
  public static final Reference ARNOLD_1959 =
      Reference.fromMemory(
          "Arnold, C. Y.",
          1959,
          "The determination and significance of the base temperature in a linear heat unit system",
          "Proceedings of the American Society for Horticultural Science 74:430-445");

  /** Closed forms of four criteria for the base temperature. */
  public static final Reference YANG_LOGAN_COFFEY_1995 =
      Reference.fromMemory(
          "Yang, S., Logan, J. & Coffey, D. L.",
          1995,
          "Mathematical formulae for calculating the base temperature for growing degree days",
          "Agricultural and Forest Meteorology 74:61-74; formulas derived again here");

  /** The reduced major axis of duration times temperature on duration. */
  public static final Reference IKEMOTO_TAKAI_2000 =
      Reference.fromMemory(
          "Ikemoto, T. & Takai, K.",
          2000,
          "A new linearized formula for the law of total effective temperature and the evaluation"
              + " of line-fitting methods with both variables subject to error",
          "Environmental Entomology 29:671-682");

  /** Distributed delay through substages. */
  public static final Reference MANETSCH_1976 =
      Reference.fromMemory(
          "Manetsch, T. J.",
          1976,
          "Time-varying distributed delays and their use in aggregative models of large systems",
          "IEEE Transactions on Systems, Man, and Cybernetics 6:547-553");

  /** Weibull distribution of development on normalised age. */
  public static final Reference WAGNER_1984 =
      Reference.fromMemory(
          "Wagner, T. L., Wu, H., Sharpe, P. J. H. & Coulson, R. N.",
          1984,
          "Modeling distributions of insect development time: a literature review and application"
              + " of the Weibull function",
          "Annals of the Entomological Society of America 77:475-487");

  /** Normal distribution of development rates in a cohort. */
  public static final Reference SHARPE_1981 =
      Reference.read(
          "Sharpe, P. J. H., Schoolfield, R. M. & Butler, G. D.",
          1981,
          "Distribution model of Heliothis zea development times",
          "The Canadian Entomologist 113, abstract");

  /** Logistic and normal emergence on the degree-day scale. */
  public static final Reference EMERGENCE_CURVES =
      Reference.commonPractice(
          "Logistic and normal curves of emergence or flight over degree-days");

  /** Shares of a population in stages counted in samples. */
  public static final Reference DENNIS_KEMP_BECKWITH_1986 =
      Reference.fromMemory(
          "Dennis, B., Kemp, W. P. & Beckwith, R. C.",
          1986,
          "Stochastic model of insect phenology: estimation and testing",
          "Environmental Entomology 15:540-546");

  /** Harmonic curves through climate data, with the number of harmonics by a criterion. */
  public static final Reference EPSTEIN_1991 =
      Reference.fromMemory(
          "Epstein, E. S.",
          1991,
          "On obtaining daily climatological values from monthly means",
          "Journal of Climate 4:365-368");

  /** The criterion that chooses the number of harmonics. */
  public static final Reference SCHWARZ_1978 =
      Reference.fromMemory(
          "Schwarz, G.",
          1978,
          "Estimating the dimension of a model",
          "The Annals of Statistics 6:461-464");

  /** Thirty years for climate normals. */
  public static final Reference WMO_NORMALS =
      Reference.fromMemory(
          "World Meteorological Organization",
          2017,
          "WMO guidelines on the calculation of climate normals",
          "WMO-No. 1203, Geneva");

  /** Straight lines, a neighbour and the climate, in this order. */
  public static final Reference FILLING_OF_GAPS =
      Reference.commonPractice(
          "Short gaps on a straight line, longer ones from a neighbour by regression of each month,"
              + " then from the climate; errors from artificial gaps and prediction errors here");

  /** Straight lines up to three hours, then the course of neighbouring days. */
  public static final Reference FILLING_OF_READINGS =
      Reference.commonPractice(
          "Up to three hours between readings on a straight line, longer gaps after the same hours"
              + " of neighbouring days; errors from the same hours of other days here");

  /** Errors carried through a function by its slopes and covariances. */
  public static final Reference ERROR_PROPAGATION =
      Reference.fromMemory(
          "Joint Committee for Guides in Metrology",
          2008,
          "Evaluation of measurement data: guide to the expression of uncertainty in measurement",
          "JCGM 100:2008, clause 5.2 (correlated input quantities)");

  /** Area under a progress curve. */
  public static final Reference MADDEN_2007 =
      Reference.fromMemory(
          "Madden, L. V., Hughes, G. & van den Bosch, F.",
          2007,
          "The Study of Plant Disease Epidemics",
          "APS Press, St. Paul");

  /** Area under the stairs of a progress curve. */
  public static final Reference SIMKO_PIEPHO_2012 =
      Reference.fromMemory(
          "Simko, I. & Piepho, H.-P.",
          2012,
          "The area under the disease progress stairs: calculation, advantage, and application",
          "Phytopathology 102:381-389");

  private Bibliography() {}
}
