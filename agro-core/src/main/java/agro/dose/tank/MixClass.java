package agro.dose.tank;

import agro.dose.Formulation;
import agro.dose.FormulationUse;
import agro.report.InputProblem;
import java.util.Map;

/** What decides when a product is mixed in. */
public enum MixClass {
  /** Product in bags that dissolve. */
  WATER_SOLUBLE_BAG("water-soluble bags"),
  /** Ammonium sulphate, pH adjusters and other conditioners of the water. */
  WATER_CONDITIONER("water conditioners"),
  /** Liquid fertiliser. */
  LIQUID_FERTILISER("liquid fertiliser"),
  /** Compatibility agent. */
  COMPATIBILITY_AGENT("compatibility agents"),
  /** Wettable powders, water-dispersible granules and tablets: WP, WG, WT. */
  DISPERSIBLE_DRY("wettable powders and dispersible granules"),
  /** Powders, granules and tablets that dissolve: SP, SG, ST. */
  SOLUBLE_DRY("soluble powders and granules"),
  /** Emulsifiable granules and powders: EG, EP. */
  EMULSIFIABLE_DRY("emulsifiable powders and granules"),
  /** Suspension concentrates, also called flowables: SC. */
  SUSPENSION("suspension concentrates"),
  /** Capsule suspensions: CS. */
  CAPSULES("capsule suspensions"),
  /** Soluble liquids: SL. */
  SOLUTION("soluble liquids"),
  /** Emulsifiable concentrates, EC; EW and ME are counted with them here. */
  EMULSION("emulsifiable concentrates"),
  /** Salts at high strength. */
  HIGH_LOAD_SALT("high-load salts"),
  /** Surfactants and other adjuvants. */
  SURFACTANT("surfactants"),
  /** Forms that no order of mixing held here names, such as SE, OD and mixed capsules. */
  NAMED_BY_NO_ORDER("forms that no published order names");

  private static final Map<String, MixClass> BY_CODE =
      Map.ofEntries(
          Map.entry("WP", DISPERSIBLE_DRY),
          Map.entry("WG", DISPERSIBLE_DRY),
          Map.entry("WT", DISPERSIBLE_DRY),
          Map.entry("SP", SOLUBLE_DRY),
          Map.entry("SG", SOLUBLE_DRY),
          Map.entry("ST", SOLUBLE_DRY),
          Map.entry("EG", EMULSIFIABLE_DRY),
          Map.entry("EP", EMULSIFIABLE_DRY),
          Map.entry("SC", SUSPENSION),
          Map.entry("CS", CAPSULES),
          Map.entry("SL", SOLUTION),
          Map.entry("EC", EMULSION),
          Map.entry("EW", EMULSION),
          Map.entry("ME", EMULSION));

  private final String words;

  MixClass(String words) {
    this.words = words;
  }

  /**
   * The class of a formulation.
   *
   * @param formulation a formulation that is diluted in water
   * @return the class; {@link #NAMED_BY_NO_ORDER} where the orders held here are silent
   * @throws InputProblem if the formulation is not diluted in water
   */
  public static MixClass of(Formulation formulation) {
    if (formulation.use() != FormulationUse.DILUTED_IN_WATER) {
      throw InputProblem.of("the formulation " + formulation + " is to go into a tank")
          .expected("a formulation that is diluted in water, such as EC, SC, SL, WP or WG")
          .because("this one is " + formulation.use().words() + "; it clogs or spoils a spray")
          .mend("look at the code on the label, or plan this product by itself");
    }
    return BY_CODE.getOrDefault(formulation.code(), NAMED_BY_NO_ORDER);
  }

  /**
   * The class in words.
   *
   * @return a phrase in the plural
   */
  public String words() {
    return words;
  }
}
