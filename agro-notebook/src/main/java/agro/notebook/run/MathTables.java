package agro.notebook.run;

import static agro.notebook.run.MathElement.operator;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Parts of formulas that stand in rows and columns: matrices, cases, lines below each other. */
final class MathTables {

  /**
   * How an environment looks.
   *
   * @param open bracket before the rows
   * @param close bracket behind the rows
   * @param columns how columns are aligned, a letter for each; the last ones repeat
   */
  private record Look(String open, String close, String columns) {}

  private static final Look LINES = new Look("", "", "rl");

  private static final Map<String, Look> LOOKS =
      Map.ofEntries(
          Map.entry("cases", new Look("{", "", "ll")),
          Map.entry("dcases", new Look("{", "", "ll")),
          Map.entry("rcases", new Look("", "}", "ll")),
          Map.entry("matrix", new Look("", "", "c")),
          Map.entry("smallmatrix", new Look("", "", "c")),
          Map.entry("pmatrix", new Look("(", ")", "c")),
          Map.entry("bmatrix", new Look("[", "]", "c")),
          Map.entry("Bmatrix", new Look("{", "}", "c")),
          Map.entry("vmatrix", new Look("|", "|", "c")),
          Map.entry("Vmatrix", new Look("‖", "‖", "c")),
          Map.entry("gathered", new Look("", "", "c")),
          Map.entry("gather", new Look("", "", "c")),
          Map.entry("multline", new Look("", "", "c")),
          Map.entry("equation", new Look("", "", "c")),
          Map.entry("array", new Look("", "", "c")),
          Map.entry("eqnarray", new Look("", "", "rcl")));

  private final MathMarkup markup;
  private final TexReader reader;

  private MathTables(MathMarkup markup, TexReader reader) {
    this.markup = markup;
    this.reader = reader;
  }

  /**
   * The environment whose name comes next.
   *
   * @param markup what the cells are made with
   * @param reader the formula behind the command {@code begin}
   * @return MathML
   */
  static String environment(MathMarkup markup, TexReader reader) {
    var name = reader.group().replace("*", "");
    var look = LOOKS.getOrDefault(name, LINES);
    if (name.equals("array") || name.equals("alignedat") || name.equals("alignat")) {
      reader.skipSpaces();
      reader.option();
      var columns = reader.group().replaceAll("[^lcr]", "");
      look = columns.isEmpty() ? look : new Look(look.open(), look.close(), columns);
    }
    var tables = new MathTables(markup, reader);
    var table = tables.table(tables.rows(markup.row()), look.columns());
    if (reader.skipCommand("end")) {
      reader.group();
    }
    var parts = new ArrayList<String>();
    addBracket(look.open(), parts);
    parts.add(table);
    addBracket(look.close(), parts);
    return MathElement.row(parts);
  }

  private static void addBracket(String sign, List<String> parts) {
    if (!sign.isEmpty()) {
      parts.add(operator(sign));
    }
  }

  /**
   * Lines below each other without an environment.
   *
   * @param first the first cell, which has been read
   * @param markup what the cells are made with
   * @param reader the formula behind the first cell
   * @return MathML
   */
  static String plain(String first, MathMarkup markup, TexReader reader) {
    var tables = new MathTables(markup, reader);
    return tables.table(tables.rows(first), LINES.columns());
  }

  private List<List<String>> rows(String first) {
    var rows = new ArrayList<List<String>>();
    var row = new ArrayList<>(List.of(first));
    while (true) {
      if (reader.skip("&")) {
        row.add(markup.row());
      } else if (reader.skip("\\\\") || reader.skipCommand("cr")) {
        reader.skip("*");
        reader.option();
        rows.add(row);
        row = new ArrayList<>(List.of(markup.row()));
      } else {
        break;
      }
    }
    // A line break behind the last row begins no new one.
    if (rows.isEmpty() || row.size() > 1 || !row.get(0).equals("<mrow></mrow>")) {
      rows.add(row);
    }
    return rows;
  }

  private String table(List<List<String>> rows, String columns) {
    var table = new StringBuilder("<mtable>");
    for (var row : rows) {
      table.append("<mtr>");
      for (var i = 0; i < row.size(); i++) {
        table
            .append("<mtd style=\"text-align:")
            .append(alignment(columns.charAt(i % columns.length())))
            .append("\">")
            .append(row.get(i))
            .append("</mtd>");
      }
      table.append("</mtr>");
    }
    return table.append("</mtable>").toString();
  }

  private static String alignment(char letter) {
    return switch (letter) {
      case 'l' -> "left";
      case 'r' -> "right";
      default -> "center";
    };
  }
}
