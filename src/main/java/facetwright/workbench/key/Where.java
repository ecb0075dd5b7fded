package facetwright.workbench.key;

/** Where in the window a key means something. An inner place goes before the window's own keys. */
public enum Where {
  /** Wherever one is; what they do, the commands say. */
  MENU(""),
  TABLE("On the table"),
  LENS("In the lens"),
  FIELD("In a dial's field"),
  SLIDER("On a dial's slider"),
  ASKING("In a line that asks"),
  TRAY("Under the table"),
  READING("On a page of help"),
  SCRIPT("In the script"),
  OFFERS("While the script offers words"),
  SHELF("On the shelf"),
  PAPERS("With the papers"),
  COPIES("In the number of copies"),
  PAGE("On a page"),
  ANYWHERE("Anywhere");

  private final String title;

  Where(String title) {
    this.title = title;
  }

  /** As a heading says it; empty for the menus, whose own titles stand there. */
  public String title() {
    return title;
  }
}
