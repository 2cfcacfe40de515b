package agro.notebook.run;

import java.util.Map;
import java.util.Set;

/** The names that TeX gives to signs and letters, as far as formulas of ours use them. */
final class MathSymbols {

  static final Map<String, String> LETTERS =
      Map.ofEntries(
          Map.entry("alpha", "α"),
          Map.entry("beta", "β"),
          Map.entry("gamma", "γ"),
          Map.entry("Gamma", "Γ"),
          Map.entry("delta", "δ"),
          Map.entry("Delta", "Δ"),
          Map.entry("epsilon", "ϵ"),
          Map.entry("varepsilon", "ε"),
          Map.entry("eta", "η"),
          Map.entry("theta", "θ"),
          Map.entry("Theta", "Θ"),
          Map.entry("kappa", "κ"),
          Map.entry("lambda", "λ"),
          Map.entry("mu", "μ"),
          Map.entry("nu", "ν"),
          Map.entry("xi", "ξ"),
          Map.entry("pi", "π"),
          Map.entry("rho", "ρ"),
          Map.entry("sigma", "σ"),
          Map.entry("Sigma", "Σ"),
          Map.entry("tau", "τ"),
          Map.entry("phi", "ϕ"),
          Map.entry("varphi", "φ"),
          Map.entry("Phi", "Φ"),
          Map.entry("chi", "χ"),
          Map.entry("psi", "ψ"),
          Map.entry("omega", "ω"),
          Map.entry("Omega", "Ω"),
          Map.entry("infty", "∞"),
          Map.entry("ell", "ℓ"),
          Map.entry("partial", "∂"));

  static final Map<String, String> OPERATORS =
      Map.ofEntries(
          Map.entry("cdot", "·"),
          Map.entry("times", "×"),
          Map.entry("pm", "±"),
          Map.entry("mp", "∓"),
          Map.entry("le", "≤"),
          Map.entry("leq", "≤"),
          Map.entry("ge", "≥"),
          Map.entry("geq", "≥"),
          Map.entry("ne", "≠"),
          Map.entry("neq", "≠"),
          Map.entry("approx", "≈"),
          Map.entry("sim", "∼"),
          Map.entry("equiv", "≡"),
          Map.entry("propto", "∝"),
          Map.entry("in", "∈"),
          Map.entry("to", "→"),
          Map.entry("rightarrow", "→"),
          Map.entry("Rightarrow", "⇒"),
          Map.entry("circ", "∘"),
          Map.entry("ldots", "…"),
          Map.entry("dots", "…"),
          Map.entry("cdots", "⋯"),
          Map.entry("sum", "∑"),
          Map.entry("prod", "∏"),
          Map.entry("int", "∫"),
          Map.entry("mid", "|"),
          Map.entry("{", "{"),
          Map.entry("}", "}"),
          Map.entry("%", "%"),
          Map.entry("$", "$"),
          Map.entry("|", "‖"));

  static final Set<String> FUNCTIONS =
      Set.of(
          "sin", "cos", "tan", "arcsin", "arccos", "arctan", "exp", "ln", "log", "max", "min",
          "lim", "Pr", "var");

  /** Signs whose bounds stand below and above them in a formula on its own line. */
  static final Set<String> WITH_BOUNDS = Set.of("sum", "prod", "max", "min", "lim");

  static final Map<String, String> SPACES =
      Map.of(
          ",", "0.17em", ":", "0.22em", ";", "0.28em", " ", "0.33em", "quad", "1em", "qquad", "2em",
          "!", "-0.17em");

  static final Map<String, String> ACCENTS =
      Map.of("bar", "¯", "overline", "¯", "hat", "^", "tilde", "~", "dot", "˙");

  private MathSymbols() {}
}
