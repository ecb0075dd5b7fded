package facetwright.workbench.file;

import facetwright.workbench.desk.Desk;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What other programs do to the file that is open; each change is spoken of once. */
final class Outside {
  /** What its notices are about. */
  static final String ABOUT = "outside";

  /** Stands for the text of a file that is not there; no text holds this character. */
  private static final String GONE = "\0";

  private final Desk desk;
  private final Notices notices;
  private final Filing filing;
  private String seen;

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

  /** Whether the file holds something else than when it was opened or saved. */
  boolean isChanged(Path file) {
    return text(file).filter(t -> !t.equals(desk.saved())).isPresent();
  }

  /** Looks, and offers what can be done. */
  void look() {
    Path file = desk.file().get();
    if (file == null) {
      return;
    }
    if (Files.notExists(file)) {
      if (!GONE.equals(seen)) {
        seen = GONE;
        gone(file);
      }
      return;
    }
    Optional<String> now = text(file);
    if (now.isPresent() && !now.get().equals(desk.saved()) && !Objects.equals(now.get(), seen)) {
      seen = now.get();
      changed(file);
    }
  }

  private void gone(Path file) {
    notices.show(
        new Notice(
            ABOUT,
            OnDisk.name(file) + " is gone",
            "It was moved, renamed or deleted. Your script is still here; saving writes it anew.",
            List.of(
                new Notice.Choice("Save it again", filing::save),
                new Notice.Choice("Close", () -> {}))));
  }

  private void changed(Path file) {
    String unsaved = desk.changed().get() ? " Your unsaved changes would be lost by it." : "";
    notices.show(
        new Notice(
            ABOUT,
            OnDisk.name(file) + " was changed by another program",
            "It can be opened anew as it is now." + unsaved,
            List.of(
                new Notice.Choice("Reload", () -> reload(file)),
                new Notice.Choice("Keep mine", () -> {}))));
  }

  private void reload(Path file) {
    try {
      filing.lay(file, OnDisk.read(file));
    } catch (OnDisk.Refused e) {
      filing.refuse(e);
    }
  }

  /** Empty where the file can't be read or is gone. */
  private static Optional<String> text(Path file) {
    try {
      return Optional.of(OnDisk.read(file).text());
    } catch (OnDisk.Refused e) {
      return Optional.empty();
    }
  }
}
