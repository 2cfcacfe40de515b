package agro.dose;

import agro.source.Edition;
import agro.source.Reference;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A type of formulation by its two-letter code. The code tells the physical form and how the
 * product is used, and nothing of its strength.
 *
 * @param code two capital letters
 * @param name name in words, in lower case
 * @param use how the product is brought out
 * @param state liquid or solid before it is mixed; nothing for gases, aerosols and packs of two
 * @param edition edition of the list that holds the code
 * @param source the list
 */
public record Formulation(
    String code,
    String name,
    FormulationUse use,
    Optional<ProductState> state,
    Edition edition,
    Reference source) {

  /** Refuses nulls. */
  public Formulation {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(state, "state");
    Objects.requireNonNull(edition, "edition");
    Objects.requireNonNull(source, "source");
  }

  /**
   * The formulation with a code of the international list.
   *
   * @param code two letters, for example {@code "EC"}
   * @return the formulation
   * @throws agro.report.InputProblem if the code is in no edition that this library holds; the
   *     message names near codes and what a suffix of another list stands for
   */
  public static Formulation of(String code) {
    return FormulationCodes.find(code);
  }

  /**
   * All formulations of the list, those that later editions dropped at the end.
   *
   * @return the list
   */
  public static List<Formulation> all() {
    return FormulationCodes.all();
  }

  /**
   * Whether a strength fits the state of the product without a density: by volume for a liquid, by
   * mass for a solid.
   *
   * @param strength the strength
   * @return true if product and active ingredient can be converted as the product is measured
   */
  public boolean suits(Strength strength) {
    boolean byVolume = strength instanceof ContentByVolume || strength instanceof LivingByVolume;
    return strength.density().isPresent()
        || state.isEmpty()
        || byVolume == (state.get() == ProductState.LIQUID);
  }

  @Override
  public String toString() {
    return code + ", " + name;
  }
}
