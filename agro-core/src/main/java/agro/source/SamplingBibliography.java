package agro.source;

/** The works on scouting, sampling plans and injury levels that this library cites, each once. */
public final class SamplingBibliography {

  /** Variance over mean and its chi-squared test. */
  public static final Reference DISPERSION_INDEX =
      Reference.fromMemory(
          "Southwood, T. R. E. & Henderson, P. A.",
          2000,
          "Ecological Methods, third edition",
          "Blackwell Science, Oxford; index of R. A. Fisher");

  /** Clumping as variance over mean less one. */
  public static final Reference DAVID_MOORE_1954 =
      Reference.fromMemory(
          "David, F. N. & Moore, P. G.",
          1954,
          "Notes on contagious distributions in plant populations",
          "Annals of Botany 18:47-53");

  /** Clumping that does not depend on the number of animals. */
  public static final Reference GREEN_1966 =
      Reference.fromMemory(
          "Green, R. H.",
          1966,
          "Measurement of non-randomness in spatial distributions",
          "Researches on Population Ecology 8:1-7");

  /** Index of dispersion by pairs. */
  public static final Reference MORISITA_1962 =
      Reference.fromMemory(
          "Morisita, M.",
          1962,
          "Iδ-index, a measure of dispersion of individuals",
          "Researches on Population Ecology 4:1-7");

  /** Morisita index on a scale from −1 to 1. */
  public static final Reference SMITH_GILL_1975 =
      Reference.fromMemory(
          "Smith-Gill, S. J.",
          1975,
          "Cytophysiological basis of disruptive pigmentary patterns in the leopard frog Rana pipiens. II",
          "Journal of Morphology 146:35-54; form in Krebs, C. J., Ecological Methodology");

  /** Mean crowding and patchiness. */
  public static final Reference LLOYD_1967 =
      Reference.fromMemory("Lloyd, M.", 1967, "Mean crowding", "Journal of Animal Ecology 36:1-30");

  /** Fitting the negative binomial; counts of European red mites. */
  public static final Reference BLISS_FISHER_1953 =
      Reference.fromMemory(
          "Bliss, C. I. & Fisher, R. A.",
          1953,
          "Fitting the negative binomial distribution to biological data",
          "Biometrics 9:176-200");

  /** One exponent for several negative binomials. */
  public static final Reference BLISS_OWEN_1958 =
      Reference.fromMemory(
          "Bliss, C. I. & Owen, A. R. G.",
          1958,
          "Negative binomial distributions with a common k",
          "Biometrika 45:37-58");

  /** Variance as a power of the mean. */
  public static final Reference TAYLOR_1961 =
      Reference.fromMemory(
          "Taylor, L. R.", 1961, "Aggregation, variance and the mean", "Nature 189:732-735");

  /** Mean crowding as a line of the mean. */
  public static final Reference IWAO_1968 =
      Reference.fromMemory(
          "Iwao, S.",
          1968,
          "A new regression method for analyzing the aggregation pattern of animal populations",
          "Researches on Population Ecology 10:1-20");

  /** Sample size for a stated precision. */
  public static final Reference KARANDINOS_1976 =
      Reference.fromMemory(
          "Karandinos, M. G.",
          1976,
          "Optimum sample size and comments on some published formulae",
          "Bulletin of the Entomological Society of America 22:417-421");

  /** Samples from small populations. */
  public static final Reference COCHRAN_1977 =
      Reference.fromMemory(
          "Cochran, W. G.", 1977, "Sampling Techniques, third edition", "Wiley, New York");

  /** Sampling at two levels. */
  public static final Reference SOUTHWOOD_1978 =
      Reference.fromMemory(
          "Southwood, T. R. E.",
          1978,
          "Ecological Methods, second edition",
          "Chapman and Hall, London");

  /** Stop line from the power law. */
  public static final Reference GREEN_1970 =
      Reference.fromMemory(
          "Green, R. H.",
          1970,
          "On fixed precision level sequential sampling",
          "Researches on Population Ecology 12:249-251");

  /** Stop line from mean crowding. */
  public static final Reference KUNO_1969 =
      Reference.fromMemory(
          "Kuno, E.",
          1969,
          "A new method of sequential sampling to obtain the population estimates with a fixed level of precision",
          "Researches on Population Ecology 11:127-136");

  /** Presence and absence by the zero term. */
  public static final Reference KUNO_1986 =
      Reference.fromMemory(
          "Kuno, E.",
          1986,
          "Evaluation of statistical precision and design of efficient sampling for the population estimation based on frequency of occurrence",
          "Researches on Population Ecology 28:305-319");

  /** Presence and absence with the power law. */
  public static final Reference WILSON_ROOM_1983 =
      Reference.fromMemory(
          "Wilson, L. T. & Room, P. M.",
          1983,
          "Clumping patterns of fruit and arthropods in cotton, with implications for binomial sampling",
          "Environmental Entomology 12:50-54");

  /** Means from shares by a line. */
  public static final Reference GERRARD_CHIANG_1970 =
      Reference.fromMemory(
          "Gerrard, D. J. & Chiang, H. C.",
          1970,
          "Density estimation of corn rootworm egg populations based upon frequency of occurrence",
          "Ecology 51:237-245; also Kono & Sugino 1958");

  /** Error of a mean read off a line. */
  public static final Reference BINNS_BOSTANIAN_1990 =
      Reference.fromMemory(
          "Binns, M. R. & Bostanian, N. J.",
          1990,
          "Robustness in empirically based binomial decision rules for integrated pest management",
          "Journal of Economic Entomology 83:420-427");

  /** Error of a mean read off a line, with its four parts. */
  public static final Reference SCHAALJE_1991 =
      Reference.fromMemory(
          "Schaalje, G. B., Butts, R. A. & Lysyk, T. J.",
          1991,
          "Simulation studies of binomial sampling: a new variance estimator and density predictor",
          "Journal of Economic Entomology 84:140-147");

  /** Share of units without animals when they lie at random. */
  public static final Reference PRESENCE_AT_RANDOM =
      Reference.commonPractice("The zero term of the Poisson distribution, P = 1 − e^(−m)");

  /** Sequential test of two means. */
  public static final Reference WALD_1947 =
      Reference.fromMemory("Wald, A.", 1947, "Sequential Analysis", "Wiley, New York");

  /** Stop lines by a confidence band. */
  public static final Reference IWAO_1975 =
      Reference.fromMemory(
          "Iwao, S.",
          1975,
          "A new method of sequential sampling to classify populations relative to a critical density",
          "Researches on Population Ecology 16:281-288");

  /** The injury level as a formula of cost, value, injury, damage and control. */
  public static final Reference PEDIGO_1986 =
      Reference.fromMemory(
          "Pedigo, L. P., Hutchins, S. H. & Higley, L. G.",
          1986,
          "Economic injury levels in theory and practice",
          "Annual Review of Entomology 31:341-368; the idea from Stern et al. 1959, Hilgardia"
              + " 29:81-101");

  /** The produce that pays a treatment. */
  public static final Reference STONE_PEDIGO_1972 =
      Reference.fromMemory(
          "Stone, J. D. & Pedigo, L. P.",
          1972,
          "Development and economic-injury level of the green cloverworm on soybean in Iowa",
          "Journal of Economic Entomology 65:197-201");

  /** The injury level with a cost to the environment. */
  public static final Reference HIGLEY_WINTERSTEEN_1992 =
      Reference.read(
          "Higley, L. G. & Wintersteen, W. K.",
          1992,
          "A novel approach to environmental risk assessment of pesticides as a basis for"
              + " incorporating environmental costs into economic injury levels",
          "American Entomologist 38:34-39, formula as quoted");

  /** The threshold from the growth of the pest until a treatment works. */
  public static final Reference PEDIGO_1996 =
      Reference.fromMemory(
          "Pedigo, L. P.",
          1996,
          "Entomology and Pest Management, second edition",
          "Prentice Hall, Upper Saddle River");

  /** The threshold as a fixed share of the injury level. */
  public static final Reference FIXED_RATIO_THRESHOLD =
      Reference.commonPractice("The threshold is set at a fixed share, often 75 %, of the level");

  /** Pest-days by the trapezoid rule. */
  public static final Reference RUPPEL_1983 =
      Reference.fromMemory(
          "Ruppel, R. F.",
          1983,
          "Cumulative insect-days as an index of crop protection",
          "Journal of Economic Entomology 76:375-377");

  /** Wald's test carried over several days. */
  public static final Reference PEDIGO_VAN_SCHAIK_1984 =
      Reference.fromMemory(
          "Pedigo, L. P. & van Schaik, J. W.",
          1984,
          "Time-sequential sampling: a new use of the sequential probability ratio test for pest"
              + " management decisions",
          "Bulletin of the Entomological Society of America 30:32-36");

  /** Plans on the share of units above a tally, and their robustness. */
  public static final Reference BINNS_2000 =
      Reference.read(
          "Binns, M. R., Nyrop, J. P. & van der Werf, W.",
          2000,
          "Sampling and Monitoring in Crop Protection: the Theoretical Basis for Developing"
              + " Practical Decision Guides",
          "CABI, Wallingford, chapter 7");

  private SamplingBibliography() {}
}
