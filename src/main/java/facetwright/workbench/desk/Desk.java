package facetwright.workbench.desk;

import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.words.Site;
import facetwright.worker.Request;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyLongProperty;
import javafx.beans.property.ReadOnlyLongWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * What is being worked on. Every change of the script or a dial asks for the design anew; the last
 * good design stays until the next good one, or until other work is laid down. All methods are for
 * the window's thread.
 */
public final class Desk {
  /** What a script is called that has no file yet. */
  public static final String UNNAMED = "untitled.js";

  private final Answers answers;
  private final StringProperty text = new SimpleStringProperty("");
  private final ObjectProperty<Path> file = new SimpleObjectProperty<>();
  private final ReadOnlyObjectWrapper<Map<String, String>> settings =
      new ReadOnlyObjectWrapper<>(Map.of());
  private final ReadOnlyBooleanWrapper changed = new ReadOnlyBooleanWrapper();
  private final ObjectProperty<Selection> selection =
      new SimpleObjectProperty<>(Selection.nothing());
  private final Story story = new Story();
  private final ReadOnlyObjectWrapper<Site> pointed = new ReadOnlyObjectWrapper<>(Site.NONE);
  private final ObjectProperty<ScriptFiles> files = new SimpleObjectProperty<>(ScriptFiles.NONE);
  private Work saved = Work.of("");
  private boolean adrift;
  private boolean following;
  private Optional<Change> writing = Optional.empty();
  private final ReadOnlyLongWrapper laid = new ReadOnlyLongWrapper();

  /**
   * @param asking who makes designs of scripts
   * @param ui runs work on the window's thread
   */
  public Desk(Asking asking, Executor ui) {
    answers = new Answers(asking, ui, text::get, () -> selection.set(Selection.nothing()));
    text.addListener((_, old, now) -> changed(old, now));
  }

  /** The script. Setting it asks for its design. */
  public StringProperty text() {
    return text;
  }

  /** Where the script is kept; null while it has no file. */
  public ObjectProperty<Path> file() {
    return file;
  }

  /** Dial values by name, as a person types them; dials not named stand as the script says. */
  public ReadOnlyObjectProperty<Map<String, String>> settings() {
    return settings.getReadOnlyProperty();
  }

  /** The last good design of the work that was laid down; null before the first. */
  public ReadOnlyObjectProperty<Design> design() {
    return answers.design();
  }

  /** The script that the last good design was made of, letter by letter. */
  public String made() {
    return answers.made();
  }

  /** What is wrong now; null when nothing is. */
  public ReadOnlyObjectProperty<Fault> fault() {
    return answers.fault();
  }

  /** Changes whenever something came of what was asked for, once design and fault tell it. */
  public ReadOnlyLongProperty heard() {
    return answers.heard();
  }

  /** Stops what is being worked on; the last good design stays on the table. */
  public void stop() {
    answers.stop();
  }

  /** Whether an answer is awaited. */
  public ReadOnlyBooleanProperty working() {
    return answers.working();
  }

  /** Whether the script or a dial differs from what is saved. */
  public ReadOnlyBooleanProperty changed() {
    return changed.getReadOnlyProperty();
  }

  public ObjectProperty<Selection> selection() {
    return selection;
  }

  /** A place of the script that a view asks to be shown; {@link Site#NONE} for none. */
  public ReadOnlyObjectProperty<Site> pointed() {
    return pointed.getReadOnlyProperty();
  }

  /** Asks that a place of the script be shown. */
  public void pointTo(Site site) {
    pointed.set(Site.NONE);
    pointed.set(site);
  }

  /** Selects what a finding is about, and asks that its place in the script be shown. */
  public void pointOut(Finding finding) {
    selection.set(Selection.of(design().get().net(), finding));
    pointTo(finding.site());
  }

  /** Begins with other work: nothing selected, nothing to undo, the saved state neither. */
  public void lay(Path where, Work kept, Work work) {
    file.set(where);
    saved = kept;
    adrift = false;
    story.clear();
    answers.forget();
    selection.set(Selection.nothing());
    laid.set(laid.get() + 1);
    follow(work.dials(), work.text());
  }

  /** How many scripts were laid down so far; while it stands, changes are edits of one script. */
  public ReadOnlyLongProperty laid() {
    return laid.getReadOnlyProperty();
  }

  /** Says what is saved now, and where. */
  public void kept(Path where, Work what) {
    file.set(where);
    saved = what;
    adrift = false;
    changed.set(isUnsaved());
  }

  /** Says whether the file is gone, so that what was saved lies nowhere any more. */
  public void adrift(boolean gone) {
    adrift = gone;
    changed.set(isUnsaved());
  }

  /** Says whether a hand holds a dial or a number of the script: it is taken back in one step. */
  public void hold(boolean on) {
    story.hold(on);
  }

  /** What follows is a step of its own, however it is written. */
  public void endStep() {
    story.close();
  }

  /**
   * Writes in the script; letters typed one after another are taken back word by word.
   *
   * @param script as it then reads
   * @param where what is written, and where
   */
  public void write(String script, Change where) {
    writing = Optional.of(where);
    text.set(script);
    writing = Optional.empty();
  }

  /** Turns a dial. */
  public void turn(String dial, String value) {
    Map<String, String> next = new LinkedHashMap<>(settings.get());
    next.put(dial, value);
    if (!next.equals(settings.get())) {
      story.turned(dial, settings.get(), Map.copyOf(next));
      settings.set(Map.copyOf(next));
      ask();
    }
  }

  /** Lets a dial stand as the script says. */
  public void release(String dial) {
    Map<String, String> next = new LinkedHashMap<>(settings.get());
    next.remove(dial);
    turnAll(next);
  }

  /** Sets all dials at once; those not named stand as the script says. */
  public void turnAll(Map<String, String> values) {
    take(values, text.get());
  }

  /** Sets all dials at once and changes the script, in one step. */
  public void take(Map<String, String> values, String script) {
    Change change = Change.between(text.get(), script);
    if (!change.isNone() || !values.equals(settings.get())) {
      story.done(settings.get(), Map.copyOf(values), change);
      follow(values, script);
    }
  }

  /** Takes back what was done last, to the script or a dial. */
  public void undo() {
    story.back().ifPresent(this::follow);
  }

  /** Does again what was taken back. */
  public void redo() {
    story.again().ifPresent(this::follow);
  }

  private void follow(Story.Deed step) {
    follow(step.to(), step.change().in(text.get()));
  }

  private void follow(Map<String, String> values, String script) {
    following = true;
    settings.set(Map.copyOf(values));
    text.set(script);
    following = false;
    ask();
  }

  private void changed(String old, String now) {
    if (following) {
      return;
    }
    if (writing.isEmpty()) {
      story.close();
    }
    Change change =
        writing.filter(w -> w.makes(old, now)).orElseGet(() -> Change.between(old, now));
    story.wrote(old, now, change, settings.get());
    if (writing.isEmpty()) {
      story.close();
    }
    ask();
  }

  /** Asks for the design anew. */
  public void ask() {
    changed.set(isUnsaved());
    answers.ask(request(settings.get()), text.get());
  }

  /** What is asked for as the script stands, with these dials. */
  public Request request(Map<String, String> dials) {
    return new Request(fileName(), files.get().whole(text.get()), dials);
  }

  /** The files that the script may use. */
  public ObjectProperty<ScriptFiles> files() {
    return files;
  }

  /** Script and dials as they stand. */
  public Work work() {
    return new Work(text.get(), settings.get());
  }

  /** Script and dials as they were last laid down or saved. */
  public Work saved() {
    return saved;
  }

  /** Whether something would be lost if the program ended now. */
  public boolean isUnsaved() {
    return adrift || !saved.equals(work());
  }

  /** What a person calls the script: its file, or that it has none. */
  public String shownName() {
    Path where = file.get();
    return where == null ? "an untitled design" : where.getFileName().toString();
  }

  /** What messages call the script. */
  public String fileName() {
    Path where = file.get();
    return where == null ? UNNAMED : where.getFileName().toString();
  }
}
