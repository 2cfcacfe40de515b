package agro.programme.bulletin;

import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.List;

/** A written bulletin as a notebook or a terminal shows it. */
final class BulletinPresentation {

  private BulletinPresentation() {}

  static Presentation of(WrittenBulletin bulletin) {
    var page = Presentation.titled(bulletin.title()).paragraph(bulletin.subtitle());
    for (var section : bulletin.sections()) {
      var part = Presentation.titled(section.heading());
      section.parts().forEach(each -> add(part, each));
      page.part(part.build());
    }
    return page.paragraph(bulletin.footer()).build();
  }

  private static void add(Presentation.Builder page, BulletinPart part) {
    if (part instanceof BulletinPart.Sentences sentences) {
      page.paragraph(sentences.text());
    } else if (part instanceof BulletinPart.Points points) {
      points.points().forEach(page::paragraph);
    } else if (part instanceof BulletinPart.Grid grid) {
      page.table(table(grid));
    } else if (part instanceof BulletinPart.Picture picture) {
      page.paragraph(picture.caption());
    }
  }

  private static ResultTable table(BulletinPart.Grid grid) {
    return ResultTable.of(
        grid.caption(),
        grid.headings().stream().map(ResultTable.Column::of).toList(),
        grid.rows().stream()
            .<List<Cell>>map(row -> row.stream().map(Cell::text).toList())
            .toList());
  }
}
