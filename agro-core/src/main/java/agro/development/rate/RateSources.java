package agro.development.rate;

import agro.source.Reference;

/** The works behind the rate models and their fits. */
final class RateSources {

  static final Reference CAMPBELL_1974 =
      Reference.fromMemory(
          "Campbell, A., Frazer, B. D., Gilbert, N., Gutierrez, A. P. & Mackauer, M.",
          1974,
          "Temperature requirements of some aphids and their parasites",
          "Journal of Applied Ecology 11:431-438");
  static final Reference IKEMOTO_TAKAI_2000 =
      Reference.fromMemory(
          "Ikemoto, T. & Takai, K.",
          2000,
          "A new linearized formula for the law of total effective temperature and the evaluation of"
              + " line-fitting methods with both variables subject to error",
          "Environmental Entomology 29:671-682");
  static final Reference BRIERE_1999 =
      Reference.fromMemory(
          "Briere, J.-F., Pracros, P., Le Roux, A.-Y. & Pierre, J.-S.",
          1999,
          "A novel rate model of temperature-dependent development for arthropods",
          "Environmental Entomology 28:22-29");
  static final Reference LOGAN_1976 =
      Reference.fromMemory(
          "Logan, J. A., Wollkind, D. J., Hoyt, S. C. & Tanigoshi, L. K.",
          1976,
          "An analytic model for description of temperature dependent rate phenomena in arthropods",
          "Environmental Entomology 5:1133-1140");
  static final Reference LACTIN_1995 =
      Reference.fromMemory(
          "Lactin, D. J., Holliday, N. J., Johnson, D. L. & Craigen, R.",
          1995,
          "Improved rate model of temperature-dependent development by arthropods",
          "Environmental Entomology 24:68-75");
  static final Reference SHARPE_DEMICHELE_1977 =
      Reference.fromMemory(
          "Sharpe, P. J. H. & DeMichele, D. W.",
          1977,
          "Reaction kinetics of poikilotherm development",
          "Journal of Theoretical Biology 64:649-670");
  static final Reference SCHOOLFIELD_1981 =
      Reference.fromMemory(
          "Schoolfield, R. M., Sharpe, P. J. H. & Magnuson, C. E.",
          1981,
          "Non-linear regression of biological temperature-dependent rate models based on absolute"
              + " reaction-rate theory",
          "Journal of Theoretical Biology 88:719-731");
  static final Reference IKEMOTO_2005 =
      Reference.fromMemory(
          "Ikemoto, T.",
          2005,
          "Intrinsic optimum temperature for development of insects and mites",
          "Environmental Entomology 34:1377-1387");
  static final Reference TAYLOR_1981 =
      Reference.fromMemory(
          "Taylor, F.",
          1981,
          "Ecology and evolution of physiological time in insects",
          "American Naturalist 117:1-23");
  static final Reference STINNER_1974 =
      Reference.fromMemory(
          "Stinner, R. E., Gutierrez, A. P. & Butler, G. D.",
          1974,
          "An algorithm for temperature-dependent growth rate simulation",
          "The Canadian Entomologist 106:519-524");
  static final Reference HILBERT_LOGAN_1983 =
      Reference.fromMemory(
          "Hilbert, D. W. & Logan, J. A.",
          1983,
          "Empirical model of nymphal development for the migratory grasshopper, Melanoplus"
              + " sanguinipes (Orthoptera: Acrididae)",
          "Environmental Entomology 12:1-5");
  static final Reference YIN_1995 =
      Reference.fromMemory(
          "Yin, X., Kropff, M. J., McLaren, G. & Visperas, R. M.",
          1995,
          "A nonlinear model for crop development as a function of temperature",
          "Agricultural and Forest Meteorology 77:1-16");
  static final Reference YAN_HUNT_1999 =
      Reference.fromMemory(
          "Yan, W. & Hunt, L. A.",
          1999,
          "An equation for modelling the temperature response of plants using only the cardinal"
              + " temperatures",
          "Annals of Botany 84:607-614");
  static final Reference WANG_ENGEL_1998 =
      Reference.fromMemory(
          "Wang, E. & Engel, T.",
          1998,
          "Simulation of phenological development of wheat crops",
          "Agricultural Systems 58:1-24");
  static final Reference BATES_WATTS_1988 =
      Reference.fromMemory(
          "Bates, D. M. & Watts, D. G.",
          1988,
          "Nonlinear Regression Analysis and Its Applications",
          "Wiley, New York");
  static final Reference EFRON_TIBSHIRANI_1993 =
      Reference.fromMemory(
          "Efron, B. & Tibshirani, R. J.",
          1993,
          "An Introduction to the Bootstrap",
          "Chapman & Hall, New York");
  static final Reference HESTERBERG_2015 =
      Reference.fromMemory(
          "Hesterberg, T. C.",
          2015,
          "What teachers should know about the bootstrap: resampling in the undergraduate statistics"
              + " curriculum",
          "The American Statistician 69:371-386");
  static final Reference BURNHAM_ANDERSON_2002 =
      Reference.fromMemory(
          "Burnham, K. P. & Anderson, D. R.",
          2002,
          "Model Selection and Multimodel Inference",
          "Springer, New York, second edition");

  private RateSources() {}
}
