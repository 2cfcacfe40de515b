package agro.stats.linear;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One term of a linear model: a main effect, an interaction of any order, a factor nested in
 * others, a covariate, or a product of covariates and factors.
 */
public final class ModelTerm {

  private final List<Factor> factors;
  private final List<Covariate> covariates;
  private final List<Factor> within;
  private final Set<String> variables;

  private ModelTerm(List<Factor> factors, List<Covariate> covariates, List<Factor> within) {
    this.factors = List.copyOf(factors);
    this.covariates = List.copyOf(covariates);
    this.within = List.copyOf(within);
    var names = new HashSet<String>();
    allFactors().forEach(factor -> names.add(factor.name()));
    covariates.forEach(covariate -> names.add(covariate.name()));
    if (names.size() < factors.size() + within.size() + covariates.size()) {
      throw InputProblem.of("term " + name() + " names one variable twice")
          .expected("different variables")
          .because("a factor does not interact with itself")
          .mend("name each variable once; a square of a covariate is a covariate of its own");
    }
    this.variables = Set.copyOf(names);
  }

  /**
   * The main effect of a factor or, with more than one, their interaction.
   *
   * @param first a factor
   * @param others further factors
   * @return the term; the interaction alone, without its main effects
   */
  public static ModelTerm of(Factor first, Factor... others) {
    var all = new ArrayList<Factor>();
    all.add(first);
    all.addAll(Arrays.asList(others));
    return new ModelTerm(all, List.of(), List.of());
  }

  /**
   * The slope of a covariate.
   *
   * @param covariate a covariate
   * @return the term
   */
  public static ModelTerm slope(Covariate covariate) {
    return new ModelTerm(List.of(), List.of(covariate), List.of());
  }

  /**
   * A factor nested in others, such as plots in blocks: labels of the inner factor may be used
   * again in each cell of the outer ones, where they mean something else.
   *
   * @param inner the nested factor
   * @param outer the factor that it is nested in
   * @param others further outer factors, crossed with the first
   * @return the term
   */
  public static ModelTerm nested(Factor inner, Factor outer, Factor... others) {
    var outside = new ArrayList<Factor>();
    outside.add(outer);
    outside.addAll(Arrays.asList(others));
    return new ModelTerm(List.of(inner), List.of(), outside);
  }

  /**
   * All main effects and interactions of factors: main effects first, then pairs, and so on.
   *
   * @param factors factors, each once
   * @return the terms in their usual order
   */
  public static List<ModelTerm> crossing(Factor... factors) {
    var terms = new ArrayList<ModelTerm>();
    for (int order = 1; order <= factors.length; order++) {
      addCombinations(terms, factors, order, 0, new ArrayList<>());
    }
    return List.copyOf(terms);
  }

  private static void addCombinations(
      List<ModelTerm> terms, Factor[] factors, int order, int from, List<Factor> chosen) {
    if (chosen.size() == order) {
      terms.add(new ModelTerm(chosen, List.of(), List.of()));
      return;
    }
    for (int i = from; i < factors.length; i++) {
      chosen.add(factors[i]);
      addCombinations(terms, factors, order, i + 1, chosen);
      chosen.remove(chosen.size() - 1);
    }
  }

  /**
   * The interaction of this term with a factor.
   *
   * @param factor a factor that is not yet in the term
   * @return the product alone
   * @throws InputProblem if the term is nested or has the factor already
   */
  public ModelTerm times(Factor factor) {
    refuseIfNested();
    var more = new ArrayList<>(factors);
    more.add(factor);
    return new ModelTerm(more, covariates, within);
  }

  /**
   * The product of this term with a covariate: slopes that differ between levels.
   *
   * @param covariate a covariate that is not yet in the term
   * @return the product alone
   * @throws InputProblem if the term is nested or has the covariate already
   */
  public ModelTerm timesSlope(Covariate covariate) {
    refuseIfNested();
    var more = new ArrayList<>(covariates);
    more.add(covariate);
    return new ModelTerm(factors, more, within);
  }

  private void refuseIfNested() {
    if (isNested()) {
      throw InputProblem.of("a product with the nested term " + name())
          .expected("a term that is not nested")
          .because(
              "nothing is crossed with the levels of a factor that mean something else in each cell")
          .mend("nest a factor combined of both in the outer factors");
    }
  }

  /**
   * Factors of the term; for a nested term the inner one alone.
   *
   * @return none for a slope
   */
  public List<Factor> factors() {
    return factors;
  }

  /**
   * Covariates of the term.
   *
   * @return often none
   */
  public List<Covariate> covariates() {
    return covariates;
  }

  /**
   * Outer factors of a nested term.
   *
   * @return none unless the term is nested
   */
  public List<Factor> within() {
    return within;
  }

  /**
   * Whether the term is nested.
   *
   * @return true for a factor within others
   */
  public boolean isNested() {
    return !within.isEmpty();
  }

  /**
   * Outer factors and then factors.
   *
   * @return all factors that classify the term
   */
  public List<Factor> allFactors() {
    if (within.isEmpty()) {
      return factors;
    }
    var all = new ArrayList<>(within);
    all.addAll(factors);
    return List.copyOf(all);
  }

  /**
   * Number of observations.
   *
   * @return at least 1
   */
  public int size() {
    return factors.isEmpty() ? covariates.get(0).size() : factors.get(0).size();
  }

  /**
   * Whether this term contains another one in the sense of the marginality of Nelder 1977: it has
   * all its variables and at least one more.
   *
   * @param other a term
   * @return true if the other term is marginal to this one
   */
  public boolean contains(ModelTerm other) {
    return variables.size() > other.variables.size() && variables.containsAll(other.variables);
  }

  /**
   * Names of the variables.
   *
   * @return names of factors and covariates
   */
  public Set<String> variables() {
    return variables;
  }

  /**
   * Name of the term, such as "N:P" or "plot in block".
   *
   * @return names joined by colons
   */
  public String name() {
    String product =
        java.util.stream.Stream.concat(
                factors.stream().map(Factor::name), covariates.stream().map(Covariate::name))
            .collect(Collectors.joining(":"));
    return within.isEmpty()
        ? product
        : product + " in " + within.stream().map(Factor::name).collect(Collectors.joining(":"));
  }

  @Override
  public boolean equals(Object object) {
    return this == object
        || (object instanceof ModelTerm other
            && variables.equals(other.variables)
            && new HashSet<>(within).equals(new HashSet<>(other.within))
            && new HashSet<>(factors).equals(new HashSet<>(other.factors))
            && new HashSet<>(covariates).equals(new HashSet<>(other.covariates)));
  }

  @Override
  public int hashCode() {
    return variables.hashCode();
  }

  @Override
  public String toString() {
    return name();
  }
}
