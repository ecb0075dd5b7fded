package facetwright.workbench;

import facetwright.workbench.Places.Place;
import facetwright.workbench.card.ScriptCard;
import facetwright.workbench.command.AboutPage;
import facetwright.workbench.command.Command;
import facetwright.workbench.command.CommandBar;
import facetwright.workbench.command.Commands;
import facetwright.workbench.command.KeysPage;
import facetwright.workbench.doc.DocPage;
import facetwright.workbench.file.Filing;
import facetwright.workbench.table.TableView;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** The table of commands: what the window can be told to do. */
final class HouseCommands {
  private static final String WRITING = "writing-a-design.md";
  private static final String REFERENCE = "script-reference.md";
  private static final String PAPERS = "papers.md";
  private static final String CHANGES = "changes.md";

  /** The documents and what the menu calls them. */
  static final Map<String, String> DOCS =
      Map.of(
          WRITING, "Writing a design",
          REFERENCE, "Words of the script",
          PAPERS, "The papers",
          CHANGES, "Changes");

  private final House house;
  private final Commands commands = new Commands();

  private HouseCommands(House house) {
    this.house = house;
  }

  static Commands of(House house) {
    HouseCommands table = new HouseCommands(house);
    table.file();
    table.edit();
    table.view();
    table.help();
    return table.commands;
  }

  private void file() {
    Filing filing = house.filing();
    commands
        .in(Command.In.FILE)
        .act("new", "New", "Shortcut+N", "Begin a new design", at(filing::fresh))
        .act(
            CommandBar.OPEN,
            "Open …",
            "Shortcut+O",
            "Open a design; or drag its file into the window",
            at(filing::open))
        .line()
        .act("save", "Save", "Shortcut+S", "Save the script", filing::save)
        .act(
            "save-as",
            "Save as …",
            "Shortcut+Shift+S",
            "Save the script under another name",
            filing::saveAs)
        .act(
            "bring-back",
            "Bring back",
            "",
            "Bring back what you did not save, or what was replaced in a file; the latest first",
            house.keeping()::bringBack)
        .line()
        .act(
            "make",
            "Make papers …",
            "Shortcut+P",
            "Go to the papers, to save or print them",
            () -> house.places().now().set(Place.PAPERS))
        .line()
        .act("quit", "Quit", "Shortcut+Q", "Close the window", house::quit);
  }

  private void edit() {
    ScriptCard card = house.room().card();
    Undoing undoing = Undoing.in(house);
    commands
        .in(Command.In.EDIT)
        .act(
            "undo",
            "Undo",
            Undoing.UNDO,
            "Take back what was done last, to the script or a dial",
            undoing::undo)
        .act("redo", "Redo", Undoing.REDO, "Do again what was taken back", undoing::redo)
        .line()
        .act("find", "Find …", "Shortcut+F", "Find in the script", script(() -> card.find(false)))
        .act(
            "replace",
            "Replace …",
            "Shortcut+H",
            "Find in the script, and replace",
            script(() -> card.find(true)))
        .act("line", "Go to line …", "Shortcut+L", "", script(card::goToLine))
        .act(
            "comment",
            "Comment",
            "Shortcut+SLASH",
            "Make the lines selected a comment, or script again",
            script(card::comment))
        .line()
        .act(
            "aim",
            "Aim …",
            "Shortcut+T",
            "Find dials that give it a height, a volume, a sheet to fit",
            at(house.goals()::open))
        .act(
            "round",
            "Round to a ruler …",
            "Shortcut+R",
            "Find dials that put its measures on a ruler's marks, inches or millimetres",
            at(house.rounding()::open))
        .act(
            "fit-sheet",
            "Fit to a sheet …",
            "Shortcut+Shift+R",
            "Make it as large as your sheet takes, one or several",
            at(house.fitting()::open));
  }

  private void view() {
    Room room = house.room();
    TableView table = room.table();
    Room.Strip strip = room.strip();
    commands
        .in(Command.In.VIEW)
        .act("shelf", "Shelf", "Shortcut+1", "Go to the shelf", go(Place.SHELF))
        .act("table", "Table", "Shortcut+2", "Go to the table", go(Place.TABLE))
        .act("papers", "Papers", "Shortcut+3", "Go to the papers", go(Place.PAPERS))
        .act(
            "next-part",
            "Next part",
            "F6",
            "Leap to the next part: menus, notice, strip, net, form, dials, findings, script",
            () -> house.leap(true))
        .act(
            "former-part",
            "Former part",
            "Shift+F6",
            "Leap to the part before",
            () -> house.leap(false))
        .line()
        .tick(
            "inside",
            "Inside up",
            "Shortcut+I",
            "Turn the sheet over: the inside of the card lies up",
            strip.inside())
        .tick("layers", "Layers", "Shortcut+Shift+L", "Show decorative layers", strip.layers())
        .tick("names", "Names", "Shortcut+Shift+N", "Show the panels' names", strip.names())
        .tick("glue", "Glue", "Shortcut+Shift+G", "Show glued areas", strip.glue())
        .tick(
            "measure",
            "Measure",
            "Shortcut+M",
            "Measure between two points; Esc ends it",
            strip.measure())
        .line()
        .act("fit", "Show the sheet whole", "Shortcut+0", "", table::fit)
        .act("nearer", "Nearer", "Shortcut+EQUALS", "", () -> table.zoom(1.25))
        .act("farther", "Farther", "Shortcut+MINUS", "", () -> table.zoom(0.8))
        .tick(
            "swap",
            "Swap net and folded form",
            "Shortcut+Shift+F",
            "Let net and folded form swap places; so does a double click in the lens",
            room.corner().swapped())
        .act(
            "play",
            "Fold it",
            "Shortcut+Shift+P",
            "Fold it from flat to made; so does Space in the lens",
            room.lens()::play)
        .line()
        .tick(
            "fold-script",
            "Fold the script away",
            "Shortcut+E",
            "Fold the script away, or lay it open",
            room.fold().away())
        .tick("dark", "Dark", "Shortcut+D", "Dark room, or light", room.dark())
        .act("larger", "Larger text", "Shortcut+Shift+EQUALS", "", house.textSize()::larger)
        .act("smaller", "Smaller text", "Shortcut+Shift+MINUS", "", house.textSize()::smaller)
        .act("usual-text", "Usual text", "Shortcut+Shift+0", "", house.textSize()::usual);
  }

  private void help() {
    commands
        .in(Command.In.HELP)
        .act("tour", "Tour", "Shift+F1", "Five things to try, one after another", house::tour)
        .act("keys", "Keys", "F1", "Every key and what it does", this::keys)
        .act("writing", DOCS.get(WRITING), "", "Read the guide", () -> doc(WRITING))
        .act(
            "words",
            DOCS.get(REFERENCE),
            "",
            "Read what each function does, with an example",
            () -> doc(REFERENCE))
        .act("paper-words", DOCS.get(PAPERS), "", "Read what each paper is for", () -> doc(PAPERS))
        .act("changes", DOCS.get(CHANGES), "", "Read what is new", () -> doc(CHANGES))
        .line()
        .act(
            "about",
            "About Facetwright",
            "",
            "",
            () -> house.pages().show("Facetwright", new AboutPage()));
  }

  private void keys() {
    house.pages().show("Keys", new KeysPage(commands));
  }

  private void doc(String name) {
    Path file = house.tools().home().resolve("docs").resolve(name);
    String text;
    try {
      text = Files.readString(file);
    } catch (IOException e) {
      text = "This page is read from " + file.toAbsolutePath() + ", and it is not there.";
    }
    house.pages().show(DOCS.getOrDefault(name, name), new DocPage(text, this::doc));
  }

  /** Does something with the script, laid open. */
  private Runnable script(Runnable action) {
    return () -> {
      house.places().now().set(Place.TABLE);
      house.room().fold().away().set(false);
      action.run();
    };
  }

  private Runnable go(Place place) {
    return () -> house.places().now().set(place);
  }

  /** Does something at the table. */
  private Runnable at(Runnable action) {
    return () -> {
      house.places().now().set(Place.TABLE);
      action.run();
    };
  }
}
