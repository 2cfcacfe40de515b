package agro.units;

/**
 * The powers of the UCUM base units in a code. Arbitrary units stand beside them, since they
 * convert to nothing else.
 */
record UcumDimension(int metre, int gram, int second, int kelvin, int cfu, int iu) {

  static final UcumDimension NONE = new UcumDimension(0, 0, 0, 0, 0, 0);

  UcumDimension plus(UcumDimension other, int times) {
    return new UcumDimension(
        metre + times * other.metre,
        gram + times * other.gram,
        second + times * other.second,
        kelvin + times * other.kelvin,
        cfu + times * other.cfu,
        iu + times * other.iu);
  }

  boolean sameAs(UcumDimension other) {
    return metre == other.metre
        && gram == other.gram
        && second == other.second
        && kelvin == other.kelvin
        && cfu == other.cfu
        && iu == other.iu;
  }
}
