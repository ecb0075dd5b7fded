package facetwright.workbench.papers;

import facetwright.export.Job;
import facetwright.export.file.ExportException;
import facetwright.export.file.PaperFolder;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/** Saves papers into a folder the user chooses. What is not this design's own is asked about. */
final class IntoFolder {
  private static final String ABOUT = "papers";

  private final Desk desk;
  private final Notices notices;
  private final Saving saving;
  private final Executor aside;
  private final Executor ui;
  private final Consumer<String> told;

  /**
   * @param aside runs work beside the window
   * @param ui runs work on the window's thread
   * @param told told, on the window's thread, how it goes and what came of it
   */
  IntoFolder(
      Desk desk,
      Notices notices,
      Saving saving,
      Executor aside,
      Executor ui,
      Consumer<String> told) {
    this.desk = desk;
    this.notices = notices;
    this.saving = saving;
    this.aside = aside;
    this.ui = ui;
    this.told = told;
    // What is asked of one design's papers is not asked of another's.
    desk.laid().addListener((_, _, _) -> notices.withdraw(ABOUT));
  }

  /** Lets the user choose a folder and saves there. */
  void save(Job job, List<Paper> papers) {
    String what = papers.size() == 1 ? papers.getFirst().name() : "all papers";
    saving.folder("Save " + what + " into a folder").ifPresent(folder -> save(job, papers, folder));
  }

  private void save(Job job, List<Paper> papers, Path folder) {
    told.accept("Making " + (papers.size() == 1 ? papers.getFirst().name() : "the papers") + " …");
    PaperFolder into = new PaperFolder(folder, job.title(), desk.fileName());
    aside.execute(
        () -> {
          try {
            SequencedMap<String, byte[]> files = new LinkedHashMap<>();
            papers.forEach(p -> files.putAll(p.exporter().files(job)));
            List<String> others = into.others(files);
            if (others.isEmpty()) {
              write(files, into, folder);
            } else {
              ui.execute(
                  () ->
                      ask(
                          folder,
                          others,
                          () -> save(job, papers),
                          () -> aside.execute(() -> write(files, into, folder))));
            }
          } catch (ExportException e) {
            ui.execute(() -> told.accept("✕ " + e.getMessage()));
          }
        });
  }

  /** Other files stand where these papers would. */
  private void ask(Path folder, List<String> others, Runnable elsewhere, Runnable replace) {
    told.accept("Nothing was saved.");
    boolean one = others.size() == 1;
    String many = one ? "" : " and " + (others.size() - 1) + " more";
    notices.show(
        Notice.question(
            ABOUT,
            "There is a " + others.getFirst() + many + " in " + folder + " already",
            "Not as this design wrote "
                + (one ? "it" : "them")
                + ": another's, or changed since. Replaced, "
                + (one ? "it is" : "they are")
                + " kept in "
                + PaperFolder.KEPT
                + " there.",
            new Notice.Choice("Another folder …", elsewhere),
            new Notice.Choice(one ? "Replace it" : "Replace them", replace),
            new Notice.Choice("Cancel", () -> {})));
  }

  private void write(SequencedMap<String, byte[]> files, PaperFolder into, Path folder) {
    String outcome;
    try {
      Optional<Path> kept = into.write(files);
      String earlier = into.ofEarlier(files);
      outcome =
          "Saved to "
              + folder
              + ": "
              + String.join(", ", files.sequencedKeySet())
              + kept.map(place -> ". What stood there is kept in " + place).orElse("")
              + (earlier.isEmpty() ? "" : ". " + earlier);
    } catch (ExportException e) {
      outcome = "✕ " + e.getMessage();
    }
    String words = outcome;
    ui.execute(() -> told.accept(words));
  }
}
