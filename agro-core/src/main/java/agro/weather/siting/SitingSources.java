package agro.weather.siting;

import agro.source.Reference;

/** Where the formulas and figures of siting come from. */
final class SitingSources {

  static final Reference CARSLAW_JAEGER_1959 =
      Reference.fromMemory(
          "Carslaw, H. S. & Jaeger, J. C.",
          1959,
          "Conduction of heat in solids, the half-space with a periodic and with a given surface"
              + " temperature",
          "Oxford, 2nd edition, sections 2.5 and 2.6");

  static final Reference OKE_1987 =
      Reference.fromMemory(
          "Oke, T. R.",
          1987,
          "Boundary layer climates, thermal properties of natural materials",
          "Routledge, 2nd edition, table 2.1");

  static final Reference PIELKE_1984 =
      Reference.read(
          "Pielke, R. A.",
          1984,
          "Mesoscale meteorological modeling, table 11-3: dry clay soil 0.18e-6 m²/s, as quoted in"
              + " open source code",
          "Academic Press");

  static final Reference LUKIASHCHENKO_2018 =
      Reference.read(
          "Lukiashchenko, K. I. & Arkhangelskaya, T. A.",
          2018,
          "Modelling thermal diffusivity of differently textured soils: 0.78e-7 m²/s in a silty clay"
              + " to 10.09e-7 m²/s in a sand",
          "Eurasian Soil Science 51:183-189, abstract");

  static final Reference LOAM =
      Reference.commonPractice("Loam taken half way between sand and clay of the same moisture");

  static final Reference ISO_2533 =
      Reference.fromMemory(
          "International Organization for Standardization",
          1975,
          "Standard atmosphere: 6.5 K less for each km up to 11 km, the same as that of the"
              + " International Civil Aviation Organization",
          "ISO 2533");

  static final Reference LIN_2001 =
      Reference.read(
          "Lin, X., Hubbard, K. G. & Walter-Shea, E. A.",
          2001,
          "Radiation loading model for evaluating air temperature errors with a nonaspirated"
              + " radiation shield: 2 to 4 °C too warm at midday under clear skies without wind",
          "Transactions of the ASAE 44, abstract");

  static final Reference TEICHMANN_2024 =
      Reference.read(
          "Teichmann, F., Pichlhöfer, A., Sulejmanovski, A. & Korjenic, A.",
          2024,
          "Measurement errors when measuring temperature in the sun: without ventilation up to"
              + " 2.8 °C too warm",
          "Sensors 24(5):1564, abstract");

  static final Reference SCHAAL_DALE_1977 =
      Reference.fromMemory(
          "Schaal, L. A. & Dale, R. F.",
          1977,
          "Time of observation temperature bias and climatic change",
          "Journal of Applied Meteorology 16:215-222");

  static final Reference BAKER_1975 =
      Reference.fromMemory(
          "Baker, D. G.",
          1975,
          "Effect of observation time on mean temperature estimation",
          "Journal of Applied Meteorology 14:471-476");

  static final Reference KARL_1986 =
      Reference.fromMemory(
          "Karl, T. R., Williams, C. N., Young, P. J. & Wendland, W. M.",
          1986,
          "A model to estimate the time of observation bias associated with monthly mean maximum,"
              + " minimum and mean temperatures for the United States",
          "Journal of Climate and Applied Meteorology 25:145-160");

  static final Reference MITCHELL_1958 =
      Reference.read(
          "Mitchell, J. M.",
          1958,
          "Effect of changing observation time on mean temperature: from less than 1/2 °F to more"
              + " than 3 °F by place and season",
          "Bulletin of the American Meteorological Society 39:83-89, abstract");

  static final Reference DEGAETANO_1999 =
      Reference.read(
          "DeGaetano, A. T.",
          1999,
          "A method to infer observation time based on day-to-day temperature variations",
          "Journal of Climate 12:3443-3456, abstract");

  static final Reference SAMPLED_SINE =
      new Reference(
          "",
          0,
          "Extremes of n equally spaced readings of a sine day at a random phase, derived here",
          "",
          agro.source.Standing.COMPUTED);

  private SitingSources() {}
}
