package facetwright.workbench.goal;

import facetwright.adjust.DialChange;
import facetwright.adjust.Remark;
import facetwright.adjust.propose.Proposal;
import facetwright.adjust.propose.Question;
import facetwright.adjust.propose.Suggestion;
import facetwright.measure.Unbroken;
import facetwright.script.text.Gathered;
import facetwright.words.Sentence;
import facetwright.words.Site;
import facetwright.workbench.desk.Asking;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import facetwright.worker.Reply;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What came of a question to the design, while it is sought and when it can be taken. */
final class Offer extends VBox {
  private final Desk desk;
  private final Supplier<? extends Asking> hire;
  private final Executor ui;
  private final Runnable taken;
  private final Runnable stay;
  private final Label said = new Label();
  private final Button stop = new Button("Stop");
  private final HBox found = new HBox(26);
  private final ChoiceBox<String> way = new ChoiceBox<>();
  private final Button take = new Button("Take it");
  private final FlowPane taking;
  private Asking asking;
  private Proposal proposal;
  private String words = "";
  private long asks;

  /**
   * @param hire who answers; asked for when it is needed first
   * @param ui runs work on the window's thread
   * @param leave puts the bar away
   * @param taken told when it is taken
   * @param stay gives the focus a place beside it, where the button goes that had it
   */
  Offer(
      Desk desk,
      Supplier<? extends Asking> hire,
      Executor ui,
      Runnable leave,
      Runnable taken,
      Runnable stay) {
    super(6);
    this.desk = desk;
    this.hire = hire;
    this.ui = ui;
    this.taken = taken;
    this.stay = stay;
    getStyleClass().add("offer");
    said.setWrapText(true);
    stop.setTooltip(new Tip("Stop looking; nothing changes"));
    stop.setOnAction(_ -> stop());
    HBox.setHgrow(said, Priority.SOMETIMES);
    HBox saying = new HBox(10, said, stop);
    saying.setAlignment(Pos.CENTER_LEFT);
    saying.managedProperty().bind(said.textProperty().isNotEmpty());
    way.setAccessibleText("How to take it");
    way.setTooltip(new Tip("What changes: the dials, or the script"));
    take.setTooltip(new Tip("Change it so, in one step; " + Key.UNDO.text() + " takes it back"));
    take.setOnAction(_ -> take());
    Button back = new Button("Leave it");
    back.getStyleClass().add("plain");
    back.setTooltip(new Tip(Key.AWAY.tip("Put this away; nothing changes")));
    back.setOnAction(_ -> leave.run());
    // What is pressed stands first: it stays where it is, however long the words about it are.
    taking = new FlowPane(8, 4, take, back, way);
    taking.setAlignment(Pos.CENTER_LEFT);
    taking.managedProperty().bind(taking.visibleProperty());
    found.managedProperty().bind(found.visibleProperty());
    stop.managedProperty().bind(stop.visibleProperty());
    // The buttons first: they are in sight, however much there is to be read.
    getChildren().addAll(saying, taking, found);
    desk.text().addListener((_, _, _) -> forget());
    desk.settings().addListener((_, _, _) -> forget());
    tell("");
  }

  /** Asks the design as it stands, its script as it is typed. */
  void ask(Question question) {
    if (asking == null) {
      asking = hire.get();
    }
    long number = ++asks;
    tell("Trying settings …");
    stop.setVisible(true);
    var _ =
        asking
            .ask(
                desk.request(desk.settings().get()).asking(question),
                count -> ui.execute(() -> tried(number, count)))
            .thenAccept(reply -> ui.execute(() -> heard(number, reply)));
  }

  private void tried(long number, int count) {
    if (number == asks && stop.isVisible()) {
      said.setText("Trying settings … " + count);
      words = said.getText();
    }
  }

  private void heard(long number, Reply reply) {
    if (number != asks) {
      return;
    }
    switch (reply) {
      case Reply.Proposed(Proposal came) -> show(came);
      case Reply.Failed failed -> {
        String where = failed.line() > 0 ? "Line " + failed.line() + ": " : "";
        String what = failed.line() > 0 ? "The script has a fault. " + where : "";
        tell("✕ " + what + capital(failed.message(), what) + help(failed));
        if (failed.line() > 0) {
          found.getChildren().setAll(goTo(failed.site()));
          found.setVisible(true);
        }
      }
      case Reply.Done _, Reply.Stopped _ -> tell("Stopped; nothing is changed.");
    }
  }

  /** The message as a sentence, with a capital where nothing stands before it. */
  private static String capital(String message, String before) {
    return ended(before.isEmpty() ? Sentence.capital(message) : message);
  }

  private static String help(Reply.Failed failed) {
    return failed.remedy().isEmpty() ? "" : " " + ended(failed.remedy());
  }

  private static String ended(String text) {
    return text.matches("(?s).*[.?!…]") ? text : text + ".";
  }

  private Button goTo(Site site) {
    Button go = new Button("Go to line " + site.line());
    go.setMinWidth(USE_PREF_SIZE);
    go.setOnAction(_ -> desk.pointTo(site));
    return go;
  }

  private void show(Proposal came) {
    tell("");
    proposal = came;
    words =
        came.dials().stream()
                .map(d -> d.name() + ": " + d.now() + " → " + d.becomes() + "\n")
                .collect(Collectors.joining())
            + came.remarks().stream().map(Remark::words).collect(Collectors.joining("\n"));
    VBox remarks = new VBox(3);
    for (int i = 0; i < came.remarks().size(); i++) {
      remarks.getChildren().add(remark(came.remarks().get(i), i == 0 && !came.isMet()));
    }
    HBox.setHgrow(remarks, Priority.ALWAYS);
    boolean turns = came.dials().stream().anyMatch(d -> !d.becomes().equals(DialChange.STAYS));
    List<Node> parts = !turns ? List.of(remarks) : List.of(new DialTable(came.dials()), remarks);
    found.getChildren().setAll(parts);
    found.setVisible(true);
    way.getItems().setAll(came.ways().stream().map(Suggestion::name).toList());
    if (!came.ways().isEmpty()) {
      way.setValue(way.getItems().getFirst());
      taking.setVisible(true);
      Node focused = getScene() == null ? null : getScene().getFocusOwner();
      if (focused != null && isIn(getParent(), focused)) {
        take.requestFocus();
      }
    }
  }

  @SuppressWarnings("ReferenceEquality") // A node is no other.
  private static boolean isIn(Node bar, Node node) {
    return node == bar || (node.getParent() != null && isIn(bar, node.getParent()));
  }

  /** A sentence; one about a place of the script goes there by a click. */
  private Node remark(Remark remark, boolean isAmiss) {
    Label label = new Label((isAmiss ? "✕ " : "") + remark.words());
    label.setWrapText(true);
    if (!remark.site().isKnown()) {
      return label;
    }
    label.getStyleClass().add("remark-place");
    HBox line = new HBox(8, label, goTo(remark.site()));
    HBox.setHgrow(label, Priority.ALWAYS);
    label.setMaxWidth(Double.MAX_VALUE);
    line.setAlignment(Pos.CENTER_LEFT);
    return line;
  }

  /** Says something in place of an offer. */
  void tell(String what) {
    proposal = null;
    words = what;
    said.setText(Unbroken.measures(what));
    stop.setVisible(false);
    found.setVisible(false);
    taking.setVisible(false);
  }

  /** Stops looking for an answer; nothing changes. */
  void stop() {
    if (stop.isVisible()) {
      asks++;
      asking.stop();
      tell("Stopped; nothing is changed.");
    }
  }

  /** What was found is for a script and dials that are no more. */
  void forget() {
    if (stop.isVisible()) {
      asking.stop();
    }
    asks++;
    tell("");
  }

  private void take() {
    if (proposal != null && way.getSelectionModel().getSelectedIndex() >= 0) {
      Suggestion chosen = proposal.ways().get(way.getSelectionModel().getSelectedIndex());
      if (taking.isFocusWithin()) {
        stay.run();
      }
      taken.run();
      desk.take(chosen.settings(), Gathered.own(chosen.source()));
      tell("Taken. " + Key.UNDO.text() + " takes it back in one step.");
    }
  }

  /** Everything it says now. Tests watch by it. */
  String words() {
    return words;
  }

  /** Chooses one of the ways. Tests choose by it. */
  void choose(String name) {
    way.setValue(name);
  }
}
