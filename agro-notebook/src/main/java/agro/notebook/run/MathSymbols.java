package agro.notebook.run;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** The names that TeX gives to signs and letters. */
final class MathSymbols {

  static final Map<String, String> LETTERS =
      pairs(
          """
          alpha α beta β gamma γ delta δ epsilon ϵ varepsilon ε zeta ζ eta η theta θ vartheta ϑ
          iota ι kappa κ varkappa ϰ lambda λ mu μ nu ν xi ξ omicron ο pi π varpi ϖ rho ρ varrho ϱ
          sigma σ varsigma ς tau τ upsilon υ phi ϕ varphi φ chi χ psi ψ omega ω Gamma Γ Delta Δ
          Theta Θ Lambda Λ Xi Ξ Pi Π Sigma Σ Upsilon Υ Phi Φ Psi Ψ Omega Ω infty ∞ ell ℓ hbar ℏ
          partial ∂ nabla ∇ emptyset ∅ varnothing ∅ Re ℜ Im ℑ wp ℘ aleph ℵ beth ℶ imath ı jmath ȷ
          degree ° angle ∠ triangle △ square □ top ⊤ bot ⊥ prime ′ dagger † ddagger ‡ S § P ¶
          copyright © pounds £ euro € AA Å aa å O Ø o ø ae æ AE Æ ss ß
          """);

  static final Map<String, String> OPERATORS =
      pairs(
          """
          cdot · times × div ÷ pm ± mp ∓ ast ∗ star ⋆ circ ∘ bullet • oplus ⊕ ominus ⊖ otimes ⊗
          odot ⊙ setminus ∖ wedge ∧ land ∧ vee ∨ lor ∨ cap ∩ cup ∪ sqcap ⊓ sqcup ⊔ le ≤ leq ≤
          leqslant ⩽ ge ≥ geq ≥ geqslant ⩾ ne ≠ neq ≠ ll ≪ gg ≫ approx ≈ sim ∼ simeq ≃ cong ≅
          equiv ≡ doteq ≐ propto ∝ prec ≺ succ ≻ preceq ⪯ succeq ⪰ lesssim ≲ gtrsim ≳ triangleq ≜
          in ∈ notin ∉ ni ∋ subset ⊂ supset ⊃ subseteq ⊆ supseteq ⊇ forall ∀ exists ∃ nexists ∄
          neg ¬ lnot ¬ to → rightarrow → leftarrow ← gets ← leftrightarrow ↔ Rightarrow ⇒
          Leftarrow ⇐ Leftrightarrow ⇔ iff ⟺ implies ⟹ impliedby ⟸ longrightarrow ⟶
          longleftarrow ⟵ longleftrightarrow ⟷ Longrightarrow ⟹ mapsto ↦ longmapsto ⟼ uparrow ↑
          downarrow ↓ updownarrow ↕ Uparrow ⇑ Downarrow ⇓ nearrow ↗ searrow ↘ swarrow ↙ nwarrow ↖
          hookrightarrow ↪ rightharpoonup ⇀ leadsto ⇝ rightleftharpoons ⇌ ldots … dots … dotsc …
          cdots ⋯ dotsb ⋯ vdots ⋮ ddots ⋱ sum ∑ prod ∏ coprod ∐ int ∫ iint ∬ iiint ∭ oint ∮
          bigcap ⋂ bigcup ⋃ bigoplus ⨁ bigotimes ⨂ bigwedge ⋀ bigvee ⋁ mid | vert | Vert ‖
          parallel ∥ nparallel ∦ perp ⟂ models ⊨ vdash ⊢ therefore ∴ because ∵ colon : coloneqq ≔
          lbrace { rbrace } { { } } lbrack [ rbrack ] langle ⟨ rangle ⟩ lfloor ⌊ rfloor ⌋ lceil ⌈
          rceil ⌉ lvert | rvert | lVert ‖ rVert ‖ | ‖ backslash \\ surd √ % % $ $ # # & & _ _
          lt < gt >
          """);

  /** Names of functions, upright as they are. */
  static final Set<String> FUNCTIONS =
      words(
          """
          sin cos tan cot sec csc arcsin arccos arctan sinh cosh tanh coth exp ln log lg max min
          sup inf lim limsup liminf Pr det dim ker hom deg gcd arg var argmax argmin
          """);

  /** Signs and functions whose bounds stand below and above them in a formula on its own line. */
  static final Set<String> WITH_BOUNDS =
      words(
          """
          sum prod coprod bigcap bigcup bigoplus bigotimes bigwedge bigvee max min sup inf lim
          limsup liminf Pr det gcd argmax argmin
          """);

  static final Map<String, String> SPACES =
      Map.ofEntries(
          Map.entry(",", "0.17em"),
          Map.entry("thinspace", "0.17em"),
          Map.entry(":", "0.22em"),
          Map.entry(">", "0.22em"),
          Map.entry("medspace", "0.22em"),
          Map.entry(";", "0.28em"),
          Map.entry("thickspace", "0.28em"),
          Map.entry(" ", "0.33em"),
          Map.entry("space", "0.33em"),
          Map.entry("enspace", "0.5em"),
          Map.entry("quad", "1em"),
          Map.entry("qquad", "2em"),
          Map.entry("!", "-0.17em"));

  static final Map<String, String> ACCENTS =
      pairs(
          """
          bar ¯ hat ^ widehat ^ tilde ~ widetilde ~ dot ˙ ddot ¨ dddot ⃛ vec →
          overrightarrow → overleftarrow ← check ˇ breve ˘ acute ´ grave ` mathring ˚ overbrace ⏞
          """);

  /** Lines as long as what they stand on, which few fonts can stretch. */
  static final Map<String, String> LINES =
      Map.of(
          "overline", "border-top:0.06em solid;padding-top:0.12em",
          "underline", "border-bottom:0.06em solid;padding-bottom:0.12em");

  static final Map<String, String> BELOW = Map.of("underbrace", "⏟");

  /** What says how big, how upright or in which style, and is not needed to read the formula. */
  static final Set<String> WITHOUT_MEANING =
      words(
          """
          displaystyle textstyle scriptstyle scriptscriptstyle limits nolimits nonumber notag
          hline allowbreak nobreak centering strut relax
          """);

  /** Brackets that are made bigger by hand. */
  static final Set<String> BIGGER =
      words(
          """
          big Big bigg Bigg bigl Bigl biggl Biggl bigr Bigr biggr Biggr bigm Bigm biggm Biggm
          """);

  private static Map<String, String> pairs(String text) {
    var words = text.strip().split("\\s+", -1);
    var pairs = new HashMap<String, String>();
    for (var i = 0; i + 1 < words.length; i += 2) {
      pairs.put(words[i], words[i + 1]);
    }
    return Map.copyOf(pairs);
  }

  private static Set<String> words(String text) {
    return Set.of(text.strip().split("\\s+", -1));
  }

  private MathSymbols() {}
}
