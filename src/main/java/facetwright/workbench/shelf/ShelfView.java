package facetwright.workbench.shelf;

import facetwright.workbench.file.Filing;
import facetwright.workbench.file.State;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import facetwright.workbench.picture.Pictures;
import facetwright.worker.Request;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The shelf. Arrows go from card to card, Enter takes one, Ctrl+F searches. */
public final class ShelfView extends BorderPane {
  private final Filing filing;
  private final State state;
  private final Path library;
  private final Pictures.Wall pictures;
  private final Executor aside;
  private final Executor ui;
  private final Runnable leave;
  private final TextField search = new TextField();
  private final FlowPane tags = new FlowPane(6, 6);
  private final FlowPane recent = new FlowPane(8, 4);
  private final FlowPane own = new FlowPane(16, 16);
  private final FlowPane shared = new FlowPane(16, 16);
  private final Label ownTold = new Label();
  private final Label sharedTold = new Label();
  private final ScrollPane scroll = new ScrollPane();
  private final HBox top = new HBox();
  private final Set<String> wanted = new TreeSet<>();
  private List<DesignCard> cards = List.of();

  /**
   * @param aside runs work beside the window
   * @param ui runs work on the window's thread
   * @param leave goes to the table
   */
  public ShelfView(
      Filing filing,
      State state,
      Path library,
      Pictures.Wall pictures,
      Executor aside,
      Executor ui,
      Runnable leave) {
    this.filing = filing;
    this.state = state;
    this.library = library;
    this.pictures = pictures;
    this.aside = aside;
    this.ui = ui;
    this.leave = leave;
    getStylesheets().add(ShelfView.class.getResource("shelf.css").toExternalForm());
    getStyleClass().add("shelf");
    search.setPromptText("Search: words of a title, tags, notes");
    search.setAccessibleText("Search the shelf");
    search.setTooltip(new Tip(Key.SEARCH.tip("Find designs")));
    search.setPrefColumnCount(19);
    search.textProperty().addListener((_, _, _) -> sift());
    search.setOnAction(_ -> firstShown());
    top.getChildren().addAll(search, tags);
    top.setSpacing(14);
    HBox.setHgrow(tags, Priority.ALWAYS);
    tags.prefWrapLengthProperty()
        .bind(widthProperty().subtract(search.widthProperty()).subtract(80));
    search.setMinWidth(Region.USE_PREF_SIZE);
    top.setAlignment(Pos.TOP_LEFT);
    top.getStyleClass().add("shelf-top");
    Button choose = new Button("Choose folder …");
    choose.setTooltip(new Tip("Which folder your own designs are in"));
    choose.setOnAction(
        _ -> {
          if (filing.folders().chooseOwn()) {
            refresh();
          }
        });
    HBox ownHead = head("Your designs", ownTold);
    ownHead.getChildren().add(choose);
    VBox all = new VBox(10, recent, ownHead, own, head("Library", sharedTold), shared);
    all.getStyleClass().add("shelf-all");
    scroll.setContent(all);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    setTop(top);
    setCenter(scroll);
    visibleProperty()
        .addListener(
            (_, _, on) -> {
              if (on) {
                refresh();
              } else {
                pictures.forget();
              }
            });
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
  }

  private static HBox head(String name, Label told) {
    Label title = new Label(name);
    title.getStyleClass().add("shelf-head");
    told.getStyleClass().add("quiet");
    HBox head = new HBox(12, title, told);
    head.setAlignment(Pos.BASELINE_LEFT);
    return head;
  }

  /** Where one types what one looks for. */
  public TextField search() {
    return search;
  }

  /** The parts one leaps to, in the order in which one reads them. */
  public Stream<Node> parts() {
    return Stream.of(top, scroll);
  }

  private void refresh() {
    Path folder = filing.folders().own();
    aside.execute(
        () -> {
          List<Entry> mine = Stock.in(folder, true, library);
          List<Entry> lent = Stock.in(library, false, library);
          ui.execute(() -> show(folder, mine, lent));
        });
  }

  /** Whether every design has its picture. Tests watch by it. */
  public boolean isAtRest() {
    return !cards.isEmpty() && pictures.isAtRest();
  }

  private void show(Path folder, List<Entry> mine, List<Entry> lent) {
    List<DesignCard> next = new ArrayList<>();
    Set<String> known = new TreeSet<>();
    pictures.forget();
    for (List<Entry> entries : List.of(mine, lent)) {
      for (Entry entry : entries) {
        Runnable open = entry.own() ? () -> take(() -> filing.open(entry.file())) : null;
        DesignCard card =
            new DesignCard(entry, open, () -> take(() -> filing.startFrom(entry.file(), () -> {})));
        next.add(card);
        known.addAll(entry.header().tags());
        pictures.of(
            new Request(entry.file().getFileName().toString(), entry.script(), Map.of()),
            card::show);
      }
    }
    cards = next;
    wanted.retainAll(known);
    tags.getChildren().clear();
    for (String tag : known) {
      ToggleButton button = new ToggleButton(tag);
      button.getStyleClass().add("tag");
      button.setSelected(wanted.contains(tag));
      button.setTooltip(new Tip("Only designs tagged “" + tag + "”, or all again"));
      button
          .selectedProperty()
          .addListener(
              (_, _, on) -> {
                if (on) {
                  wanted.add(tag);
                } else {
                  wanted.remove(tag);
                }
                sift();
              });
      tags.getChildren().add(button);
    }
    ownTold.setText(mine.isEmpty() ? "None yet in " + folder : folder.toString());
    showRecent();
    sift();
  }

  private void showRecent() {
    recent.getChildren().clear();
    for (Path file : state.recent()) {
      if (Files.isRegularFile(file)) {
        Button button = new Button(file.getFileName().toString());
        button.setMnemonicParsing(false);
        button.setTooltip(new Tip(file.toString()));
        button.setOnAction(_ -> take(() -> filing.open(file)));
        recent.getChildren().add(button);
      }
    }
    if (!recent.getChildren().isEmpty()) {
      Label head = new Label("Recent");
      head.getStyleClass().add("quiet");
      recent.getChildren().addFirst(head);
    }
    recent.setManaged(!recent.getChildren().isEmpty());
  }

  private void take(Runnable opening) {
    leave.run();
    opening.run();
  }

  private void sift() {
    own.getChildren().setAll(found(true));
    shared.getChildren().setAll(found(false));
    sharedTold.setText(shown().isEmpty() ? "Nothing here has all of these words and tags" : "");
  }

  private List<DesignCard> found(boolean mine) {
    return cards.stream()
        .filter(c -> c.entry().own() == mine)
        .filter(c -> c.entry().matches(search.getText().strip(), wanted))
        .toList();
  }

  /** The cards that match, in their order. */
  List<DesignCard> shown() {
    List<DesignCard> all = new ArrayList<>(found(true));
    all.addAll(found(false));
    return all;
  }

  private void firstShown() {
    if (!shown().isEmpty()) {
      go(shown().getFirst());
    }
  }

  @SuppressWarnings("ReferenceEquality") // A node is no other.
  private void key(KeyEvent e) {
    if (Key.SEARCH.is(e)) {
      search.requestFocus();
      search.selectAll();
      e.consume();
    } else if (e.getTarget() instanceof DesignCard from) {
      DesignCard to =
          !Key.CARDS.is(e) ? null : CardWay.next(shown(), from, Key.across(e), Key.down(e));
      if (to != null) {
        go(to);
        e.consume();
      }
    } else if (e.getTarget() == search && Key.down(e) > 0) {
      firstShown();
      e.consume();
    }
  }

  private void go(DesignCard card) {
    card.requestFocus();
    double high = scroll.getContent().getBoundsInLocal().getHeight();
    double seen = scroll.getViewportBounds().getHeight();
    double y =
        scroll.getContent().sceneToLocal(card.localToScene(card.getBoundsInLocal())).getMinY();
    double above = scroll.getVvalue() * Math.max(0, high - seen);
    if (high > seen && (y < above || y + card.getHeight() > above + seen)) {
      scroll.setVvalue(Math.clamp((y - 20) / (high - seen), 0, 1));
    }
  }
}
