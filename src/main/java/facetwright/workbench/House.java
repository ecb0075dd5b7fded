package facetwright.workbench;

import facetwright.script.beside.Shipped;
import facetwright.workbench.Places.Place;
import facetwright.workbench.command.CommandBar;
import facetwright.workbench.command.Commands;
import facetwright.workbench.command.Pages;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Helpers;
import facetwright.workbench.file.Filing;
import facetwright.workbench.file.SafeKeeping;
import facetwright.workbench.goal.Bar;
import facetwright.workbench.goal.FitBar;
import facetwright.workbench.goal.GoalBar;
import facetwright.workbench.goal.RoundBar;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.NoticePane;
import facetwright.workbench.notice.Notices;
import facetwright.workbench.notice.Unkept;
import facetwright.workbench.papers.PapersView;
import facetwright.workbench.picture.Pictures;
import facetwright.workbench.shelf.ShelfView;
import facetwright.workbench.sweep.SweepView;
import facetwright.workbench.tour.TourView;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** All that is in the window: the menu bar, the places, and what is laid over them for a while. */
final class House extends StackPane {
  private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");

  private final Tools tools;
  private final Desk desk;
  private final Room room;
  private final Places places;
  private final Notices notices = new Notices();
  private final Filing filing;
  private final SafeKeeping keeping;
  private final Pictures pictures;
  private final GoalBar goals;
  private final RoundBar rounding;
  private final FitBar fitting;
  private Helpers solvers;
  private final ShelfView shelf;
  private final PapersView papers;
  private final Pages pages = new Pages(this::rest);
  private final TextSize textSize = new TextSize();
  private final TourView tour;
  private final Commands commands;
  private final ToggleButton toPapers;
  private final HouseKeys keys;

  House(Tools tools) {
    this.tools = tools;
    desk = new Desk(tools.designs(), tools.ui());
    room = new Room(desk, tools.aside(), tools.ui());
    filing = new Filing(desk, tools.choosing(), notices, tools.state(), tools.library());
    filing.showBothWith(new BothScripts(pages));
    Unkept unkept = new Unkept(filing::saveAs);
    keeping =
        new SafeKeeping(
            desk,
            filing,
            notices,
            tools.state().folder(),
            tools.keeper(),
            trouble -> tools.ui().execute(() -> unkept.show(trouble)));
    unkept.tryAgainBy(keeping::now);
    pictures =
        new Pictures(
            tools.state().folder().resolve("pictures"), tools.hire(), tools.slow(), tools.ui());
    SweepView sweep = new SweepView(desk, pictures.wall());
    sweep.onLost(this::rest);
    room.sweepWith(sweep);
    goals = new GoalBar(desk, this::solvers, tools.ui());
    rounding = new RoundBar(desk, this::solvers, tools.ui());
    fitting = new FitBar(desk, this::solvers, tools.ui());
    for (Bar bar : List.of(goals, rounding, fitting)) {
      bar.onLost(this::rest);
    }
    room.askWith(goals, rounding, fitting);
    shelf =
        new ShelfView(
            filing,
            tools.state(),
            tools.library(),
            pictures.wall(),
            tools.slow(),
            tools.ui(),
            () -> places().now().set(Place.TABLE));
    papers = new PapersView(desk, notices, tools.saving(), tools.papers(), tools.ui());
    rounding.onRounded(papers.order()::ruler);
    places = new Places(shelf, room, papers, place -> HouseKeys.first(this, place));
    tour = new TourView(() -> tools.state().remember("tour.seen", true), this::rest);
    commands = HouseCommands.of(this);
    getStylesheets().add(House.class.getResource("room.css").toExternalForm());
    getStylesheets().add(House.class.getResource("house.css").toExternalForm());
    getStyleClass().add("room");
    room.dark().addListener((_, _, on) -> pseudoClassStateChanged(DARK, on));
    papers.page().shade().bind(room.shade());
    textSize.pixels().addListener((_, _, _) -> letter());
    styleProperty()
        .bind(Bindings.concat("-fx-font-size: ", textSize.pixels().asString("%.1f"), "px;"));
    room.styleProperty().bind(styleProperty());
    CommandBar menus = new CommandBar(commands, tools.state()::recent, this::open);
    HBox.setHgrow(menus, Priority.ALWAYS);
    toPapers = tab("Papers", Place.PAPERS, "papers");
    HBox top =
        new HBox(
            menus,
            tab("Shelf", Place.SHELF, "shelf"),
            tab("Table", Place.TABLE, "table"),
            toPapers);
    top.setAlignment(Pos.CENTER_LEFT);
    top.getStyleClass().add("house-top");
    BorderPane all = new BorderPane();
    // Tab goes through them in this order.
    NoticePane note = new NoticePane(notices, this::rest);
    VBox above = new VBox(top);
    all.setTop(above);
    all.setCenter(places);
    places.showNotices(above, room.notices(), List.of(unkept, note));
    getChildren().addAll(all, tour, pages);
    desk.laid().addListener((_, _, _) -> rest());
    keys = new HouseKeys(this, top, note, unkept);
    commands.explain(room.fold().sliver(), "fold-script");
    room.explain(commands);
    Dropping.into(this);
  }

  /** What is painted has lettering as large as the words about it. */
  private void letter() {
    double times = textSize.pixels().get() / TextSize.USUAL;
    room.shade().set(room.shade().get().lettered(times));
  }

  private Helpers solvers() {
    solvers = solvers == null ? tools.hire().get() : solvers;
    return solvers;
  }

  private ToggleButton tab(String name, Place place, String command) {
    ToggleButton tab = new ToggleButton(name);
    tab.getStyleClass().add("tab-button");
    tab.setSelected(places.now().get() == place);
    tab.setOnAction(
        _ -> {
          places.now().set(place);
          tab.setSelected(true);
        });
    places.now().addListener((_, _, now) -> tab.setSelected(now == place));
    commands.explain(tab, command);
    return tab;
  }

  /** The focus goes to where one works, when there is no better place for it. */
  private void rest() {
    places.rest();
  }

  /** Goes to the next part of the window, or the one before. */
  void leap(boolean onward) {
    keys.leap(onward);
  }

  /** Opens a script and goes to the table. */
  void open(Path file) {
    places.now().set(Place.TABLE);
    filing.open(file);
  }

  /** Takes files that were let go over the window. */
  void dropped(List<File> files) {
    places.now().set(Place.TABLE);
    filing.dropped(files.stream().map(File::toPath).toList());
  }

  /** Asks what is to become of unsaved changes, then ends the program. */
  void quit() {
    filing.guard("closing the window", tools.quit());
  }

  /** What a start offers: what was left by a crash; the tour, the first time. */
  void begin() {
    room.card().area().requestFocus();
    keeping.offer();
    if (!tools.state().isOn("tour.seen") && tools.state().recent().isEmpty()) {
      notices.show(
          new Notice(
              "tour",
              "Welcome",
              "Would you like to be shown round? Five small things to try, on the lantern on the"
                  + " table. You find the tour under Help at any time.",
              List.of(
                  new Notice.Choice("Take the tour", this::tour),
                  new Notice.Choice("Not now", () -> tools.state().remember("tour.seen", true)))));
    }
  }

  /** Ends in order: nothing is kept. */
  void close() {
    pictures.close();
    if (solvers != null) {
      solvers.close();
    }
    keeping.close();
  }

  /** Begins the tour, on a copy of the demo. */
  void tour() {
    filing.startFrom(
        tools.library().resolve(Shipped.DEMO),
        () -> {
          places.now().set(Place.TABLE);
          pages.close();
          room.fold().away().set(false);
          tour.start(TourSteps.of(this));
        });
  }

  Tools tools() {
    return tools;
  }

  Desk desk() {
    return desk;
  }

  Room room() {
    return room;
  }

  Places places() {
    return places;
  }

  Notices notices() {
    return notices;
  }

  Filing filing() {
    return filing;
  }

  SafeKeeping keeping() {
    return keeping;
  }

  ShelfView shelf() {
    return shelf;
  }

  PapersView papers() {
    return papers;
  }

  GoalBar goals() {
    return goals;
  }

  RoundBar rounding() {
    return rounding;
  }

  FitBar fitting() {
    return fitting;
  }

  Pages pages() {
    return pages;
  }

  TextSize textSize() {
    return textSize;
  }

  TourView tourView() {
    return tour;
  }

  Commands commands() {
    return commands;
  }

  ToggleButton toPapers() {
    return toPapers;
  }
}
