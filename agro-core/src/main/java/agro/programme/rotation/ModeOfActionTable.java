package agro.programme.rotation;

import agro.programme.rotation.ModeOfAction.SubGroups;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.source.Edition;
import agro.source.Standing;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * An edition of the list of mode-of-action groups.
 *
 * @param edition which edition
 * @param groups its groups
 */
public record ModeOfActionTable(Edition edition, List<ModeOfAction> groups) implements Presentable {

  private static final String FILE = "mode-of-action-groups.csv";
  private static final Edition BUILT_IN =
      new Edition("mode-of-action classification of the IRAC", "11.4", LocalDate.of(2025, 5, 1));

  private static final class Holder {
    static final ModeOfActionTable TABLE = read();

    private Holder() {}
  }

  /** Copies the list. */
  public ModeOfActionTable {
    groups = List.copyOf(groups);
  }

  /**
   * The list that comes with this library, largely from memory of edition 11.4.
   *
   * @return the table
   */
  public static ModeOfActionTable builtIn() {
    return Holder.TABLE;
  }

  /**
   * Finds a group.
   *
   * @param code code as a label prints it, such as {@code "28"} or {@code "4a"}
   * @return the group; nothing if the table does not hold it
   */
  public Optional<ModeOfAction> find(String code) {
    var wanted = code.strip().toUpperCase(Locale.ROOT);
    return groups.stream().filter(each -> each.group().equals(wanted)).findFirst();
  }

  /**
   * A group, also one that the table does not hold: then it is known by the number before its
   * letters only.
   *
   * @param code code as a label prints it
   * @return the group
   */
  public ModeOfAction of(String code) {
    return find(code).orElseGet(() -> unlisted(code.strip().toUpperCase(Locale.ROOT)));
  }

  /**
   * The group of one active ingredient. Of an ingredient whose mode is not known, nothing but the
   * ingredient itself is known to share it, so that its name stands for the number.
   *
   * @param code code as a label prints it
   * @param active name of the active ingredient
   * @return the group
   */
  public ModeOfAction of(String code, String active) {
    var mode = of(code);
    boolean nameless = mode.group().equals("UN") || mode.group().equals("N-UN");
    return nameless
        ? new ModeOfAction(
            mode.group(),
            mode.group() + " of " + active,
            mode.chemicalClass(),
            mode.target(),
            mode.between(),
            mode.standing())
        : mode;
  }

  private ModeOfAction unlisted(String code) {
    var number = code.replaceAll("(?<=\\d)[A-Z]+$", "");
    var sameNumber = groups.stream().filter(each -> each.number().equals(number)).findFirst();
    boolean unknown = code.startsWith("UN") || code.startsWith("N-UN");
    return new ModeOfAction(
        code,
        number,
        "not in the table",
        sameNumber.map(ModeOfAction::target).orElse("not in the table"),
        unknown
            ? SubGroups.UNKNOWN
            : sameNumber.map(ModeOfAction::between).orElse(SubGroups.WARNED),
        Standing.FROM_MEMORY);
  }

  private static ModeOfActionTable read() {
    try (var stream = ModeOfActionTable.class.getResourceAsStream(FILE)) {
      var text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      var lines = new StringBuilder();
      text.lines().filter(line -> !line.startsWith("#")).forEach(l -> lines.append(l).append('\n'));
      var table =
          DelimitedText.parse(
              FILE,
              lines.toString(),
              DelimitedFormat.COMMA,
              List.of("group", "number", "class", "target", "sub_groups", "standing"));
      return new ModeOfActionTable(
          BUILT_IN, table.lines().stream().map(ModeOfActionTable::group).toList());
    } catch (IOException e) {
      throw new UncheckedIOException("a table of the library could not be read: " + FILE, e);
    }
  }

  private static ModeOfAction group(DelimitedLine line) {
    return new ModeOfAction(
        line.text("group"),
        line.text("number"),
        line.text("class"),
        line.text("target"),
        line.choice("sub_groups", SubGroups.class),
        line.text("standing").equals("target read") ? Standing.READ : Standing.FROM_MEMORY);
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var each : groups) {
      rows.add(
          List.of(
              Cell.text(each.group()),
              Cell.text(each.chemicalClass()),
              Cell.text(each.target()),
              Cell.text(
                  each.standing() == Standing.READ ? "target read" : each.standing().words())));
    }
    var columns =
        List.of(
            ResultTable.Column.of("Group"),
            ResultTable.Column.of("Chemical class"),
            ResultTable.Column.of("Target"),
            ResultTable.Column.of("Standing"));
    return Presentation.titled("Mode-of-action groups")
        .fact("Edition", edition.toString())
        .table(
            ResultTable.of("Groups", columns, rows)
                .withNote("The number on the label of the product goes before this table."))
        .sources(List.of(RotationSources.SCHEME))
        .build();
  }
}
