package agro.notebook.figure;

import agro.generation.skill.Hindcast;
import agro.generation.skill.HindcastScheme;
import agro.generation.skill.LeadTime;
import agro.generation.skill.SkillEstimate;
import agro.generation.skill.SkillReference;
import agro.notebook.figure.ChartPanel.Side;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/** Skill of forecasts of past seasons over plain references, by lead, a panel for each scheme. */
public final class SkillFigure {

  private static final int PANEL_HEIGHT = 250;
  private static final int AXIS_HEIGHT = 52;
  private static final int LEFT_ROOM = 60;
  private static final double LEAST_SKILL = -1;
  private static final double LABEL_SHARE = 0.5;
  private static final double KEY_SHARE = 0.06;
  private static final double SIDE_STEP = 0.09;
  private static final double LABEL_STEP = 0.15;

  private SkillFigure() {}

  /**
   * Draws the skill in ranked probability of all events together.
   *
   * @param hindcast the forecasts
   * @return the figure
   */
  public static DrawnFigure of(Hindcast hindcast) {
    var panels = new ArrayList<ChartPanel>();
    for (var scheme : hindcast.plan().schemes()) {
      panels.add(panel(hindcast, scheme));
    }
    var sheet =
        new FigureSheet(
            FigureWords.sentence(hindcast.pest())
                + ", "
                + hindcast.place()
                + ": what the forecasts gain on plain ones",
            "1: perfect. 0: no better. Bars: one standard error, seasons left out one by one.",
            panels);
    return new DrawnFigure(sheet, alternative(hindcast), caption(hindcast), data(hindcast));
  }

  private static ChartPanel panel(Hindcast hindcast, HindcastScheme scheme) {
    var leads = hindcast.plan().leads();
    var right = leads.size() - 0.5 + LABEL_SHARE * leads.size();
    var panel = new ChartPanel(PANEL_HEIGHT, AXIS_HEIGHT, "Skill in CRPS");
    panel.leftRoom(LEFT_ROOM);
    panel.ranges(-0.5, right, LEAST_SKILL - 0.05, 1.05);
    panel.level(0, FigureLook.INK, FigureLook.solid(1.4));
    panel.words(
        FigureWords.sentence(scheme.words()),
        -0.5,
        -0.9,
        Side.RIGHT,
        FigureLook.BOLD,
        FigureLook.INK);
    for (var i = 0; i < leads.size(); i++) {
      panel.words(
          leads.get(i).words(), i, panel.yLow(), Side.BELOW, FigureLook.SMALL, FigureLook.INK);
    }
    panel.words(
        "Issued",
        (leads.size() - 1) / 2.0,
        panel.yLow(),
        Side.FAR_BELOW,
        FigureLook.TEXT,
        FigureLook.INK);
    for (var reference : SkillReference.values()) {
      line(panel, hindcast, scheme, reference);
      label(panel, reference, leads.size() - 0.5, KEY_SHARE * leads.size());
    }
    return panel;
  }

  private static SkillEstimate skill(
      Hindcast hindcast, HindcastScheme scheme, LeadTime lead, SkillReference reference) {
    return hindcast.scores(scheme, lead).skill(reference);
  }

  private static void line(
      ChartPanel panel, Hindcast hindcast, HindcastScheme scheme, SkillReference reference) {
    var leads = hindcast.plan().leads();
    var x = new double[leads.size()];
    var y = new double[leads.size()];
    var colour = colour(reference);
    for (var i = 0; i < x.length; i++) {
      var skill = skill(hindcast, scheme, leads.get(i), reference);
      x[i] = i + SIDE_STEP * (place(reference) - 1);
      y[i] = FastMath.max(LEAST_SKILL, skill.skill());
      if (Double.isFinite(y[i])) {
        var error = Double.isFinite(skill.standardError()) ? skill.standardError() : 0;
        panel.stroke(
            x[i],
            FastMath.max(LEAST_SKILL, y[i] - error),
            x[i],
            FastMath.min(1, FastMath.max(LEAST_SKILL, skill.skill() + error)),
            colour,
            FigureLook.solid(1.5));
        panel.mark(x[i], y[i], colour, mark(reference));
      }
    }
    panel.curve(x, y, colour, stroke(reference));
  }

  /** Place among the lines, from the left and from the top. */
  private static int place(SkillReference reference) {
    return switch (reference) {
      case CALENDAR -> 0;
      case FIRST_CATCH -> 1;
      case PUBLISHED_INTERVAL -> 2;
    };
  }

  private static Color colour(SkillReference reference) {
    return switch (reference) {
      case CALENDAR -> FigureLook.BLUE;
      case FIRST_CATCH -> FigureLook.VERMILION;
      case PUBLISHED_INTERVAL -> FigureLook.DARK_GREY;
    };
  }

  private static FigureMark mark(SkillReference reference) {
    return switch (reference) {
      case CALENDAR -> FigureMark.OBSERVATION;
      case FIRST_CATCH -> FigureMark.MEDIAN;
      case PUBLISHED_INTERVAL -> FigureMark.BOUND;
    };
  }

  private static BasicStroke stroke(SkillReference reference) {
    return switch (reference) {
      case CALENDAR -> FigureLook.solid(2);
      case FIRST_CATCH -> FigureLook.dashed(2);
      case PUBLISHED_INTERVAL -> FigureLook.dotted(2);
    };
  }

  private static void label(
      ChartPanel panel, SkillReference reference, double left, double length) {
    var y = 0.9 - LABEL_STEP * place(reference);
    var colour = colour(reference);
    panel.stroke(left, y, left + length, y, colour, stroke(reference));
    panel.mark(left + length / 2, y, colour, mark(reference));
    panel.words(
        "over " + reference.words(), left + length, y, Side.RIGHT, FigureLook.SMALL, colour);
  }

  private static String alternative(Hindcast hindcast) {
    var text =
        new StringBuilder("Skill of forecasts of ")
            .append(hindcast.pest())
            .append(" at ")
            .append(hindcast.place())
            .append(" over plain references.");
    for (var scheme : hindcast.plan().schemes()) {
      for (var lead : hindcast.plan().leads()) {
        text.append(' ')
            .append(FigureWords.sentence(scheme.words()))
            .append(", ")
            .append(lead.issuedWords())
            .append(':');
        for (var reference : SkillReference.values()) {
          text.append(reference == SkillReference.CALENDAR ? " " : ", ")
              .append(Numbers.fixed(skill(hindcast, scheme, lead, reference).skill(), 2))
              .append(" over ")
              .append(reference.words());
        }
        text.append('.');
      }
    }
    return text.toString().replace("NaN", "not known");
  }

  private static String caption(Hindcast hindcast) {
    return "Skill in ranked probability (CRPS) of all events together, from forecasts of "
        + hindcast.observed().size()
        + " past seasons. A line below -1 is drawn at -1. The references learn from the same seasons"
        + " as the forecasts. Skill on invented data is a demonstration, never proof.";
  }

  private static ResultTable data(Hindcast hindcast) {
    var rows = new ArrayList<List<Cell>>();
    for (var scheme : hindcast.plan().schemes()) {
      for (var lead : hindcast.plan().leads()) {
        for (var reference : SkillReference.values()) {
          var skill = skill(hindcast, scheme, lead, reference);
          rows.add(
              List.of(
                  Cell.text(scheme.words()),
                  Cell.text(lead.words()),
                  Cell.text(reference.words()),
                  Cell.number(skill.skill(), 2),
                  Cell.number(skill.standardError(), 2),
                  Cell.number(skill.forecasts(), 0)));
        }
      }
    }
    return ResultTable.of(
        "Skill in CRPS",
        List.of(
            Column.of("Learnt from"),
            Column.of("Issued"),
            Column.of("Reference"),
            Column.of("Skill"),
            Column.of("Standard error"),
            Column.of("Forecasts compared")),
        rows);
  }
}
