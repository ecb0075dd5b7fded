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
import facetwright.workbench.key.Key;
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
        .act("new", "New", Key.NEW, "Begin a new design", at(filing::fresh))
        .act(
            CommandBar.OPEN,
            "Open …",
            Key.OPEN,
            "Open a design; or drag its file into the window",
            at(filing::open))
        .line()
        .act("save", "Save", Key.SAVE, "Save the script", filing::save)
        .act(
            "save-as",
            "Save as …",
            Key.SAVE_AS,
            "Save the script under another name",
            filing::saveAs)
        .act(
            "save-whole",
            "Save as one file …",
            null,
            "Save the script and all files that it uses as one, to hand it on",
            filing::saveWhole)
        .act(
            "bring-back",
            "Bring back",
            null,
            "Bring back what you did not save, or what was replaced in a file; the latest first",
            house.keeping()::bringBack)
        .line()
        .act(
            "make",
            "Make papers …",
            Key.MAKE,
            "Go to the papers, to save or print them",
            () -> house.places().now().set(Place.PAPERS))
        .line()
        .act("quit", "Quit", Key.QUIT, "Close the window", house::quit);
  }

  private void edit() {
    ScriptCard card = house.room().card();
    Undoing undoing = Undoing.in(house);
    commands
        .in(Command.In.EDIT)
        .act(
            "undo",
            "Undo",
            Key.UNDO,
            "Take back what was done last, to the script or a dial",
            undoing::undo)
        .act("redo", "Redo", Key.REDO, "Do again what was taken back", undoing::redo)
        .line()
        .act("find", "Find …", Key.FIND, "Find in the script", script(() -> card.find(false)))
        .act(
            "replace",
            "Replace …",
            Key.REPLACE,
            "Find in the script, and replace",
            script(() -> card.find(true)))
        .act("line", "Go to line …", Key.LINE, "", script(card::goToLine))
        .act(
            "comment",
            "Comment",
            Key.COMMENT,
            "Make the lines selected a comment, or script again",
            script(card::comment))
        .act(
            "facet-word",
            "Write the facet's word",
            Key.FACET_WORD,
            "Write into the script what the facet that is selected is called there",
            at(house.room()::writeFacet))
        .line()
        .act(
            "aim",
            "Aim …",
            Key.AIM,
            "Find dials that give it a height, a volume, a sheet to fit",
            at(house.goals()::open))
        .act(
            "round",
            "Round to a ruler …",
            Key.ROUND,
            "Find dials that put its measures on a ruler's marks, inches or millimetres",
            at(house.rounding()::open))
        .act(
            "fit-sheet",
            "Fit to a sheet …",
            Key.FIT_SHEET,
            "Make it as large as your sheet takes, one or several",
            at(house.fitting()::open));
  }

  private void view() {
    Room room = house.room();
    TableView table = room.table();
    Room.Strip strip = room.strip();
    commands
        .in(Command.In.VIEW)
        .act("shelf", "Shelf", Key.TO_SHELF, "Go to the shelf", go(Place.SHELF))
        .act("table", "Table", Key.TO_TABLE, "Go to the table", go(Place.TABLE))
        .act("papers", "Papers", Key.TO_PAPERS, "Go to the papers", go(Place.PAPERS))
        .act(
            "next-part",
            "Next part",
            Key.NEXT_PART,
            "Leap to the next part: menus, notice, strip, net, form, dials, findings, script",
            () -> house.leap(true))
        .act(
            "former-part",
            "Former part",
            Key.FORMER_PART,
            "Leap to the part before",
            () -> house.leap(false))
        .line()
        .tick(
            "inside",
            "Inside up",
            Key.INSIDE,
            "Turn the sheet over: the inside of the card lies up",
            strip.inside())
        .tick("layers", "Layers", Key.LAYERS, "Show decorative layers", strip.layers())
        .tick("names", "Names", Key.NAMES, "Show the panels' names", strip.names())
        .tick("glue", "Glue", Key.GLUE, "Show glued areas", strip.glue())
        .tick(
            "measure",
            "Measure",
            Key.MEASURE,
            "Measure between two points; " + Key.TABLE_LET_GO.text() + " ends it",
            strip.measure())
        .line()
        .act("fit", "Show the sheet whole", Key.WHOLE, "", table::fit)
        .act("nearer", "Nearer", Key.NEARER, "", () -> table.zoom(1.25))
        .act("farther", "Farther", Key.FARTHER, "", () -> table.zoom(0.8))
        .tick(
            "swap",
            "Swap net and folded form",
            Key.SWAP,
            "Let net and folded form swap places; so does a double click in the lens",
            room.corner().swapped())
        .act(
            "play",
            "Fold it",
            Key.PLAY,
            "Fold it from flat to made; so does Space in the lens",
            room.lens()::play)
        .line()
        .tick(
            "fold-script",
            "Fold the script away",
            Key.FOLD_SCRIPT,
            "Fold the script away, or lay it open",
            room.fold().away())
        .tick("dark", "Dark", Key.DARK, "Dark room, or light", room.dark())
        .act("larger", "Larger text", Key.LARGER, "", house.textSize()::larger)
        .act("smaller", "Smaller text", Key.SMALLER, "", house.textSize()::smaller)
        .act("usual-text", "Usual text", Key.USUAL_TEXT, "", house.textSize()::usual);
  }

  private void help() {
    commands
        .in(Command.In.HELP)
        .act("tour", "Tour", Key.TOUR, "Five things to try, one after another", house::tour)
        .act("keys", "Keys", Key.KEYS, "Every key and what it does", this::keys)
        .act("writing", DOCS.get(WRITING), null, "Read the guide", () -> doc(WRITING))
        .act(
            "words",
            DOCS.get(REFERENCE),
            null,
            "Read what each function does, with an example",
            () -> doc(REFERENCE))
        .act(
            "paper-words", DOCS.get(PAPERS), null, "Read what each paper is for", () -> doc(PAPERS))
        .act("changes", DOCS.get(CHANGES), null, "Read what is new", () -> doc(CHANGES))
        .line()
        .act(
            "about",
            "About Facetwright",
            null,
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
