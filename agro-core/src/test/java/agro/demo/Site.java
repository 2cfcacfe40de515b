package agro.demo;

import java.util.Locale;

/** The places of the vale and how their air differs from the shared weather. */
enum Site {
  UPPER_CROFT("Upper Croft", 640, -0.85, 0.92),
  MILL_FIELD("Mill Field", 470, 0.25, 1.06),
  SAND_LANE("Sand Lane", 430, 0.55, 1.10),
  STATION("Osmere station", 505, 0.0, 1.0);

  final String title;
  final int altitudeMetres;
  final double shiftCelsius;
  final double courseFactor;

  Site(String title, int altitudeMetres, double shiftCelsius, double courseFactor) {
    this.title = title;
    this.altitudeMetres = altitudeMetres;
    this.shiftCelsius = shiftCelsius;
    this.courseFactor = courseFactor;
  }

  /** The name as the beginning of a file name. */
  String fileWord() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
