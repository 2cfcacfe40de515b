package agro.stats.glm;

/** Columns of a response, shared within the package and never changed. */
final class ResponseNumbers {

  private final double[] y;
  private final double[] total;
  private final double[] weight;
  private final double[] offset;

  ResponseNumbers(double[] y, double[] total, double[] weight, double[] offset) {
    this.y = y;
    this.total = total;
    this.weight = weight;
    this.offset = offset;
  }

  double[] y() {
    return y;
  }

  double[] total() {
    return total;
  }

  double[] weight() {
    return weight;
  }

  double[] offset() {
    return offset;
  }

  ResponseNumbers rows(int[] kept) {
    return new ResponseNumbers(
        part(y, kept), part(total, kept), part(weight, kept), part(offset, kept));
  }

  ResponseNumbers withOffset(double[] other) {
    return new ResponseNumbers(y, total, weight, other);
  }

  private static double[] part(double[] values, int[] kept) {
    double[] part = new double[kept.length];
    for (int i = 0; i < kept.length; i++) {
      part[i] = values[kept[i]];
    }
    return part;
  }
}
