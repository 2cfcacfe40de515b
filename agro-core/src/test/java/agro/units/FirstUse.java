package agro.units;

/** Reads, converts and prints one quantity: what a first use in a fresh JVM does. */
public final class FirstUse {

  private FirstUse() {}

  /** Prints the quantity of the first argument, if there is one. */
  public static void main(String[] arguments) {
    if (arguments.length > 0) {
      var rate = VolumePerArea.parse(arguments[0]);
      double perAcre = rate.in(VolumePerAreaUnit.US_FLUID_OUNCE_PER_ACRE);
      System.out.println(QuantityStyle.US.print(rate));
      System.out.println(perAcre);
    }
  }
}
