package facetwright.workbench.pick;

import facetwright.net.Panel;
import facetwright.papers.facets.FacetLine;
import facetwright.papers.facets.FacetList;
import facetwright.papers.facets.FacetText;
import facetwright.script.design.Design;
import facetwright.words.Sentence;
import facetwright.words.Site;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.key.Key;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** What facets of the design at the desk are called, and the menu that writes it. */
public final class Picking {
  private final Desk desk;
  private Consumer<String> writing = _ -> {};
  private IntConsumer pointing = _ -> {};
  private Runnable leaving = () -> {};
  private Design listed;
  private FacetList list;
  private ContextMenu shown;

  public Picking(Desk desk) {
    this.desk = desk;
  }

  /**
   * Who tells what is under the pointer.
   *
   * @param newPointing told the panel
   * @param newLeaving told that there is none
   */
  public void onPoint(IntConsumer newPointing, Runnable newLeaving) {
    pointing = newPointing;
    leaving = newLeaving;
  }

  /** The pointer is on a panel of the folded form. */
  public void point(int panel) {
    pointing.accept(panel);
  }

  /** It is on none any more. */
  public void leave() {
    leaving.run();
  }

  /** Who writes a word into the script. */
  public void onWrite(Consumer<String> newWriting) {
    writing = newWriting;
  }

  /** The facet that a panel of the design is; empty for a tab that the script has no word for. */
  public Optional<FacetLine> facet(int panel) {
    return list().flatMap(all -> all.ofPanel(panel));
  }

  /** A facet's number and its words, in one line; empty for a tab. */
  public String words(int panel) {
    return facet(panel)
        .map(
            f ->
                "No. "
                    + f.number()
                    + f.spoken()
                        .own()
                        .map(_ -> ", in the script " + Sentence.listed(f.spoken().words(), "or"))
                        .orElse(""))
        .orElse("");
  }

  /** Writes the word of what is selected; false where none is, or the script has no word for it. */
  public boolean write() {
    Optional<String> own =
        desk.selection().get() instanceof Selection.OfPanel(int p)
            ? facet(p).flatMap(f -> f.spoken().own())
            : Optional.empty();
    own.ifPresent(writing);
    return own.isPresent();
  }

  /**
   * Shows what a panel is called, to write it or to go to its line.
   *
   * @param x on the screen
   * @param y on the screen
   */
  public void menu(Node over, int panel, double x, double y) {
    if (shown != null) {
      shown.hide();
    }
    shown = menu(panel);
    shown.show(over, x, y);
  }

  ContextMenu menu(int panel) {
    ContextMenu menu = new ContextMenu();
    Optional<FacetLine> facet = facet(panel);
    Panel itself = desk.design().get().net().panels().get(panel);
    MenuItem head =
        new MenuItem(facet.map(f -> f.number() + "  " + f.name()).orElse(itself.name()));
    head.setDisable(true);
    head.setMnemonicParsing(false);
    head.getStyleClass().add("menu-head");
    menu.getItems().add(head);
    List<String> words = facet.map(f -> f.spoken().words()).orElse(List.of());
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      MenuItem item = new MenuItem("Write " + word + (i == 0 ? "" : several(word)));
      item.setMnemonicParsing(false);
      item.setOnAction(_ -> writing.accept(word));
      if (i == 0) {
        item.setAccelerator(Key.FACET_WORD.first());
      }
      menu.getItems().add(item);
    }
    if (words.isEmpty()) {
      MenuItem none = new MenuItem("The script has no word for it");
      none.setDisable(true);
      menu.getItems().add(none);
    }
    if (itself.site().isKnown()) {
      MenuItem line = new MenuItem("Go to line " + itself.site().line() + ", which made it");
      line.setOnAction(_ -> go(itself.site()));
      menu.getItems().addAll(new SeparatorMenuItem(), line);
    }
    return menu;
  }

  private void go(Site site) {
    desk.pointTo(site);
  }

  /** Which a word means that several answer to, where it is not its own second word. */
  private String several(String word) {
    List<Integer> numbers =
        list().map(all -> all.groups().getOrDefault(word, List.of())).orElse(List.of());
    return numbers.size() < 2 ? "" : ", which is " + FacetText.numbers(numbers);
  }

  @SuppressWarnings("ReferenceEquality") // A list is made once for each design.
  private Optional<FacetList> list() {
    Design design = desk.design().get();
    if (design != listed) {
      listed = design;
      list = design == null ? null : FacetList.of(design.net(), design.folded(), design.spoken());
    }
    return Optional.ofNullable(list);
  }
}
