package agro.notebook.page;

import agro.notebook.display.MimeBundle;
import agro.notebook.display.RichRenderer;

/** Shows a {@link TrialPage} in a notebook as it is printed, its table as plain text. */
public final class TrialPageRenderer implements RichRenderer<TrialPage> {

  /** A renderer; found as a service. */
  public TrialPageRenderer() {}

  @Override
  public Class<TrialPage> type() {
    return TrialPage.class;
  }

  @Override
  public MimeBundle render(TrialPage page) {
    return MimeBundle.of(MimeBundle.HTML, page.fragment())
        .with(MimeBundle.TEXT, page + "\n" + page.summary().toText());
  }
}
