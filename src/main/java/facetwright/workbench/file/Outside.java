package facetwright.workbench.file;

import facetwright.workbench.desk.Desk;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notice.Choice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Path;
import java.util.List;

/**
 * What other programs do to the file that is open; each change is spoken of once. What is on the
 * desk stays there until the user says otherwise.
 */
final class Outside {
  /** What its notices are about. */
  static final String ABOUT = "outside";

  private final Desk desk;
  private final Notices notices;
  private final Filing filing;
  private Found seen;

  Outside(Desk desk, Notices notices, Filing filing) {
    this.desk = desk;
    this.notices = notices;
    this.filing = filing;
  }

  /** The file was read or written by this program just now. */
  void forget() {
    seen = null;
    notices.withdraw(ABOUT);
  }

  /** Looks, and offers what can be done. */
  void look() {
    Path file = desk.file().get();
    if (file == null) {
      return;
    }
    Found now = Found.at(file);
    desk.adrift(now instanceof Found.Nothing);
    if (now.isText(desk.saved().text())) {
      if (seen != null) {
        forget();
      }
    } else if (!now.isLike(seen)) {
      seen = now;
      tell(file, now);
    }
  }

  private void tell(Path file, Found now) {
    String name = OnDisk.name(file);
    switch (now) {
      case Found.Nothing _ ->
          notices.show(
              new Notice(
                  ABOUT,
                  name + " is gone",
                  "It was moved, renamed or deleted. Your script is still here and kept; saving"
                      + " writes it anew.",
                  List.of(
                      new Choice("Save it again", filing::save),
                      new Choice("Save as …", filing::saveAs),
                      new Choice("Close", () -> {}))));
      case Found.Unreadable(OnDisk.Refused why) ->
          notices.show(
              new Notice(
                  ABOUT,
                  name + " was changed by another program",
                  why.getMessage() + ". Your script is still here and kept.",
                  List.of(new Choice("Save as …", filing::saveAs), new Choice("Close", () -> {}))));
      case Found.Text(String theirs) -> notices.show(changed(file, theirs));
    }
  }

  private Notice changed(Path file, String theirs) {
    String name = OnDisk.name(file);
    String mine = desk.changed().get() ? " Yours, with what is not saved, is still here." : "";
    return new Notice(
        ABOUT,
        name + " was changed by another program",
        "Which one goes on?" + mine + " Undo comes back from either.",
        List.of(
            new Choice("See both", () -> both(file, theirs)),
            new Choice("Take theirs", () -> filing.takeTheirs(file)),
            new Choice("Keep mine", () -> {})));
  }

  /** The question stays while one looks. */
  private void both(Path file, String theirs) {
    notices.show(changed(file, theirs));
    filing.showBoth(file, theirs);
  }
}
