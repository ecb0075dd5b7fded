package facetwright.workbench.papers;

import facetwright.draw.Drawing;
import facetwright.export.Job;
import facetwright.script.design.Design;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import facetwright.workbench.notice.Notices;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import javafx.event.Event;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The papers: a list of them, one page at a time, and buttons to save and to print. */
public final class PapersView extends BorderPane {
  /** So much of the width the list takes at most. */
  private static final double LIST = 0.34;

  private final Saving saving;
  private final IntoFolder intoFolder;
  private final PaperWork work;
  private final Executor ui;
  private final Going going;
  private final Button again = new Button("Draw again");
  private final ListView<Paper> list = new ListView<>();
  private final PageView page = new PageView();
  private final Label which = new Label();
  private final Label told = new Label();
  private final Button back = new Button("Previous");
  private final Button on = new Button("Next");
  private final Button print = new Button("Print …");
  private final PrintOrder order = new PrintOrder(this::refresh);
  private final Map<String, List<Drawing>> drawn = new HashMap<>();
  private final FlowPane strip = new FlowPane(10, 4);
  private final Desk desk;
  private final Standing standing;
  private int at;
  private Job made;

  /**
   * @param aside runs the work on papers, in its order, on a thread of its own
   * @param ui runs work on the window's thread
   */
  public PapersView(Desk desk, Notices notices, Saving saving, Executor aside, Executor ui) {
    this.desk = desk;
    this.standing = new Standing(desk);
    this.saving = saving;
    this.work = new PaperWork(aside, ui, this::failed);
    this.intoFolder = new IntoFolder(desk, notices, saving, work, ui, told::setText);
    this.ui = ui;
    this.going = new Going(work, ui);
    getStyleClass().add("papers");
    list.setCellFactory(_ -> new PaperCell());
    list.setAccessibleText("Papers");
    list.setTooltip(
        new Tip("The papers of this design; " + Key.TURN_PAGES.one() + " turns the pages"));
    // The list has no use for Esc, but takes it.
    list.addEventFilter(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (Key.AWAY.is(e)) {
            e.consume();
            Event.fireEvent(this, e.copyFor(this, this));
          }
        });
    list.getSelectionModel().selectedItemProperty().addListener((_, _, _) -> choose());
    desk.design().addListener((_, _, _) -> refresh());
    desk.fault()
        .addListener(
            (_, _, _) -> {
              // What hindered a saving may do so no more.
              told.setText("");
              refresh();
            });
    visibleProperty().addListener((_, _, _) -> refresh());
    back.setOnAction(_ -> turn(at - 1));
    on.setOnAction(_ -> turn(at + 1));
    back.setTooltip(new Tip("Previous page (" + Key.TURN_PAGES.other() + ")"));
    on.setTooltip(new Tip(Key.TURN_PAGES.tipOne("Next page")));
    Button save = new Button("Save this …");
    save.setOnAction(_ -> save(false));
    save.setTooltip(new Tip("Save the paper that shows into a folder"));
    Button all = new Button("Save all …");
    all.setOnAction(_ -> save(true));
    all.setTooltip(new Tip("Save every paper into a folder"));
    print.setOnAction(_ -> told.setText(printed()));
    print.setTooltip(new Tip("Print these pages at true size"));
    again.setOnAction(_ -> draw());
    again.setTooltip(new Tip("Draw this paper once more"));
    again.setVisible(false);
    again.managedProperty().bind(again.visibleProperty());
    strip.getChildren().addAll(back, which, on, order, print, save, all, again);
    strip.setMinHeight(USE_PREF_SIZE);
    strip.setAlignment(Pos.CENTER_LEFT);
    strip.getStyleClass().add("strip");
    which.getStyleClass().add("which");
    told.getStyleClass().add("told");
    told.setMaxWidth(Double.MAX_VALUE);
    list.maxWidthProperty().bind(widthProperty().multiply(LIST));
    setLeft(list);
    VBox middle = new VBox(standing, strip, page, going, told);
    VBox.setVgrow(page, Priority.ALWAYS);
    setCenter(middle);
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (Key.TURN_PAGES.is(e)) {
            turn(at + Key.TURN_PAGES.sense(e));
            e.consume();
          }
        });
  }

  /** The parts one leaps to, in the order in which one reads them. */
  public Stream<Node> parts() {
    return Stream.of(list, strip, page);
  }

  /** What has the focus to begin with. */
  public Node first() {
    return list;
  }

  /** What the pages are painted on. */
  public PageView page() {
    return page;
  }

  /** For whom the papers are. */
  public PrintOrder order() {
    return order;
  }

  /** The words under the page: what was saved, or what went wrong. Tests watch by it. */
  public String told() {
    return told.getText();
  }

  private void refresh() {
    Design design = desk.design().get();
    if (!isVisible()) {
      return;
    }
    if (design == null) {
      empty();
      return;
    }
    Job job = Paper.job(design, order.order(design.unit()));
    if (job.equals(made)) {
      return;
    }
    made = job;
    // What was saved was another.
    told.setText("");
    work.pass();
    work.show(
        () -> {
          List<Paper> papers = Paper.of(job);
          ui.execute(() -> list(job, papers));
        });
  }

  /** Says why there are no papers. */
  private void empty() {
    made = null;
    work.pass();
    drawn.clear();
    list.getItems().clear();
    told.setText("");
    page.show(null, "No papers yet");
  }

  private void list(Job job, List<Paper> papers) {
    if (!job.equals(made)) {
      return;
    }
    Paper before = list.getSelectionModel().getSelectedItem();
    String format = before == null ? "" : before.exporter().format();
    int page = at;
    drawn.clear();
    list.getItems().setAll(papers);
    Paper next =
        papers.stream()
            .filter(p -> p.exporter().format().equals(format))
            .findFirst()
            .orElse(papers.getFirst());
    int kept = format.equals(next.exporter().format()) ? page : 0;
    list.getSelectionModel().select(next);
    at = kept;
    draw();
  }

  private void choose() {
    at = 0;
    order.show(list.getSelectionModel().getSelectedItem());
    draw();
  }

  /** Draws the pages of the paper that is chosen, beside the window. */
  private void draw() {
    Paper paper = list.getSelectionModel().getSelectedItem();
    if (paper == null || drawn.containsKey(paper.exporter().format())) {
      turn(at);
      return;
    }
    Job job = made;
    page.show(null, "Drawing …");
    which.setText("");
    again.setVisible(false);
    work.pass();
    work.show(
        () -> {
          List<Drawing> pages = paper.exporter().pages(job);
          ui.execute(
              () -> {
                if (job.equals(made)) {
                  drawn.put(paper.exporter().format(), pages);
                  turn(at);
                }
              });
        });
  }

  /** Says why there is nothing to see, or nothing was saved. */
  private void failed(String why) {
    Paper paper = list.getSelectionModel().getSelectedItem();
    boolean isToSee = paper != null && drawn.containsKey(paper.exporter().format());
    told.setText("✕ " + why);
    if (!isToSee) {
      page.show(null, why);
      again.setVisible(paper != null);
    }
  }

  /** What is being done to papers, which can be stopped. Tests watch by it. */
  public PaperWork work() {
    return work;
  }

  private List<Drawing> pages() {
    Paper paper = list.getSelectionModel().getSelectedItem();
    return paper == null ? List.of() : drawn.getOrDefault(paper.exporter().format(), List.of());
  }

  private void turn(int to) {
    List<Drawing> pages = pages();
    Paper paper = list.getSelectionModel().getSelectedItem();
    if (paper != null && !drawn.containsKey(paper.exporter().format())) {
      return;
    }
    at = Math.clamp(to, 0, Math.max(0, pages.size() - 1));
    page.show(pages.isEmpty() ? null : pages.get(at), paper == null ? "" : paper.what());
    which.setText(pages.isEmpty() ? "No pages" : "Page " + (at + 1) + " of " + pages.size());
    back.setDisable(at == 0);
    on.setDisable(at + 1 >= pages.size());
  }

  private String printed() {
    String hindrance = standing.hindrance();
    if (!hindrance.isEmpty()) {
      return "✕ Nothing was printed. " + hindrance;
    }
    if (pages().isEmpty()) {
      return "✕ There is no page to print here.";
    }
    if (!saving.canPrint()) {
      return "✕ This system knows no printer. Save the paper, and print its PDF at true size"
          + " (100 %).";
    }
    return saving.print(made.title(), pages()) ? "Sent to the printer." : "Nothing was printed.";
  }

  private void save(boolean all) {
    Paper chosen = list.getSelectionModel().getSelectedItem();
    String hindrance = standing.hindrance();
    if (!hindrance.isEmpty()) {
      told.setText("✕ Nothing was saved. " + hindrance);
    } else if (made != null && chosen != null) {
      intoFolder.save(made, all ? List.copyOf(list.getItems()) : List.of(chosen));
    }
  }
}
