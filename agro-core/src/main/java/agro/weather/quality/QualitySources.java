package agro.weather.quality;

import agro.source.Reference;

/** Where the rules and their usual limits come from. */
final class QualitySources {

  static final Reference DURRE_2010 =
      Reference.fromMemory(
          "Durre, I., Menne, M. J., Gleason, B. E., Houston, T. G. & Vose, R. S.",
          2010,
          "Comprehensive automated quality assurance of daily surface observations",
          "Journal of Applied Meteorology and Climatology 49:1615-1633");

  static final Reference GHCN_DAILY_PAGE =
      Reference.read(
          "National Climatic Data Center",
          2010,
          "Global Historical Climatology Network-Daily, methods: quality control, list of"
              + " temperature checks",
          "ncdc.noaa.gov/oa/climate/ghcn-daily, page on quality");

  static final Reference WMO_305 =
      Reference.read(
          "World Meteorological Organization",
          1993,
          "Guide on the Global Data-Processing System, VI.21: tolerances of temperature by the time"
              + " between reports, as quoted in the documentation of the R package dataresqc",
          "WMO-No. 305");

  static final Reference ZAHUMENSKY_RANGE =
      Reference.read(
          "Zahumenský, I.",
          2004,
          "Guidelines on quality control procedures for data from automatic weather stations:"
              + " plausible values of air temperature -80 to 60 °C, as quoted in open source code",
          "World Meteorological Organization, CBS/OPAG-IOS/ET AWS-3/Doc. 4(1)");

  static final Reference ZAHUMENSKY_TIME =
      Reference.fromMemory(
          "Zahumenský, I.",
          2004,
          "Guidelines on quality control procedures for data from automatic weather stations: at"
              + " most 3 °C from one minute to the next; soil -50 to 50 °C; a sensor that does not"
              + " vary",
          "World Meteorological Organization, CBS/OPAG-IOS/ET AWS-3/Doc. 4(1)");

  static final Reference WORLD_RECORDS =
      Reference.read(
          "World Meteorological Organization",
          2012,
          "Highest and lowest air temperatures on record, 56.7 °C in 1913 and -89.2 °C in 1983, as"
              + " quoted by record keepers",
          "World Weather and Climate Extremes Archive");

  static final Reference SPIKE_FORMULA =
      Reference.read(
          "Intergovernmental Oceanographic Commission",
          1990,
          "Spike test |v - (a + b) / 2| - |(a - b) / 2| of a value v against its neighbours a and b,"
              + " as quoted in the documentation of the Python package CoTeDe",
          "GTSPP real-time quality control manual, Manuals and Guides 22");

  static final Reference HUBBARD_2005 =
      Reference.fromMemory(
          "Hubbard, K. G., Goddard, S., Sorensen, W. D., Wells, N. & Osugi, T. T.",
          2005,
          "Performance of quality assurance procedures for an applied climate information system",
          "Journal of Atmospheric and Oceanic Technology 22:105-112");

  static final Reference LANZANTE_1996 =
      Reference.fromMemory(
          "Lanzante, J. R.",
          1996,
          "Resistant, robust and non-parametric techniques for the analysis of climate data: theory"
              + " and examples, including applications to historical radiosonde station data",
          "International Journal of Climatology 16:1197-1226");

  static final Reference ALEXANDERSSON_1986 =
      Reference.fromMemory(
          "Alexandersson, H.",
          1986,
          "A homogeneity test applied to precipitation data",
          "Journal of Climatology 6:661-675");

  static final Reference DUNN_2012 =
      Reference.fromMemory(
          "Dunn, R. J. H., Willett, K. M., Thorne, P. W., Woolley, E. V., Durre, I., Dai, A.,"
              + " Parker, D. E. & Vose, R. S.",
          2012,
          "HadISD: a quality-controlled global synoptic report database for selected variables at"
              + " long-term stations from 1973-2011",
          "Climate of the Past 8:1649-1679");

  static final Reference ESTEVEZ_2011 =
      Reference.fromMemory(
          "Estévez, J., Gavilán, P. & Giráldez, J. V.",
          2011,
          "Guidelines on validation procedures for meteorological data from automatic weather"
              + " stations",
          "Journal of Hydrology 402:144-154");

  static final Reference STUCK_SPAN =
      Reference.commonPractice(
          "A thermometer in air whose reading has not moved for a day and a night is taken as stuck");

  static final Reference FAHRENHEIT =
      Reference.commonPractice(
          "A stretch that joins on to the rest of a log only when its values are read as °F was"
              + " written in °F");

  static final Reference ENCLOSED =
      Reference.commonPractice(
          "The lowest and the highest temperature of a day enclose every reading of that day, apart"
              + " from the error of the sensors");

  private QualitySources() {}
}
