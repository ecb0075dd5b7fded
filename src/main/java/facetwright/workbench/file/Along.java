package facetwright.workbench.file;

import facetwright.script.beside.Beside;
import facetwright.script.text.Gathered;
import facetwright.words.Sentence;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notice.Choice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Files of its own folder that a script uses, when it is saved into another folder: they go along,
 * or into the script, as the user says. None is replaced there.
 */
final class Along {
  private static final String ABOUT = "along";

  private final Desk desk;
  private final Notices notices;
  private final UsedFiles used;

  Along(Desk desk, Notices notices, UsedFiles used) {
    this.desk = desk;
    this.notices = notices;
    this.used = used;
  }

  /**
   * Goes on with saving, once it is said what becomes of files that would be left behind.
   *
   * @param next where the script goes
   */
  void then(Path next, Runnable saving) {
    Path file = desk.file().get();
    Path there = next.toAbsolutePath().normalize().getParent();
    if (file == null || there == null || there.equals(file.toAbsolutePath().getParent())) {
      saving.run();
      return;
    }
    Beside here = used.of(file);
    String whole = here.whole(desk.text().get());
    List<Path> left = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (String name : here.ofFolder(desk.text().get())) {
      Path at = there.resolve(name);
      if (!Files.exists(at, LinkOption.NOFOLLOW_LINKS)) {
        left.add(file.resolveSibling(name));
      } else if (!isAlike(file.resolveSibling(name), at)) {
        others.add(name);
      }
    }
    if (left.isEmpty() && others.isEmpty()) {
      saving.run();
    } else {
      notices.show(question(left, others, there, whole, saving));
    }
  }

  private Notice question(
      List<Path> left, List<String> others, Path there, String whole, Runnable saving) {
    Choice one =
        new Choice(
            "Make it one file",
            () -> {
              desk.text().set(Gathered.of(whole).gathered().text());
              saving.run();
            });
    Choice none = new Choice("Cancel", () -> {});
    if (!others.isEmpty()) {
      return Notice.question(
          ABOUT,
          "There is another " + Sentence.listed(others) + " in that folder",
          "The script would use what lies there. Made one file, it holds all that it uses now.",
          one,
          new Choice("Use what lies there", () -> bring(left, there, saving)),
          none);
    }
    boolean isOne = left.size() == 1;
    return Notice.question(
        ABOUT,
        "The script uses "
            + Sentence.listed(left.stream().map(OnDisk::name).toList())
            + ", which "
            + (isOne ? "is" : "are")
            + " not in that folder",
        "Without "
            + (isOne ? "it" : "them")
            + " there is no net. Made one file, the script holds all that it uses.",
        new Choice(isOne ? "Bring it along" : "Bring them along", () -> bring(left, there, saving)),
        one,
        new Choice("Save the script alone", saving),
        none);
  }

  private void bring(List<Path> files, Path there, Runnable saving) {
    try {
      for (Path file : files) {
        OnDisk.read(file).write(there.resolve(file.getFileName()));
      }
    } catch (OnDisk.Refused e) {
      notices.tell(ToDisk.REFUSED, e.getMessage(), e.remedy());
      return;
    }
    saving.run();
  }

  private static boolean isAlike(Path one, Path other) {
    try {
      return OnDisk.read(one).text().equals(OnDisk.read(other).text());
    } catch (OnDisk.Refused _) {
      return false;
    }
  }
}
