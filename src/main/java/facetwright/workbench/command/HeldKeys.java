package facetwright.workbench.command;

import java.util.List;

/**
 * Keys that mean something only in one part of the window.
 *
 * @param where the part
 * @param keys as printed on them
 * @param does what they do
 */
record HeldKeys(String where, String keys, String does) {
  static final List<HeldKeys> ALL =
      List.of(
          new HeldKeys("On the table", "Arrows", "Move the sheet"),
          new HeldKeys("On the table", "Page down, Page up", "Select the next panel or the former"),
          new HeldKeys(
              "On the table",
              "Shift+Page down, Shift+Page up",
              "Select the next score or the former"),
          new HeldKeys("On the table", "Enter", "Go to the line that made what is selected"),
          new HeldKeys(
              "On the table", "Arrows, Enter", "While measuring: go to a corner, and take it"),
          new HeldKeys("On the table", "+ and -", "Nearer and farther"),
          new HeldKeys("On the table", "F or Home", "Show the sheet whole"),
          new HeldKeys("On the table", "Esc", "Let go of what is selected; end measuring"),
          new HeldKeys("In the lens", "Arrows", "Turn the form"),
          new HeldKeys("In the lens", "+ and -", "Nearer and farther"),
          new HeldKeys("In the lens", "Page up, Page down", "Fold and unfold a step"),
          new HeldKeys("In the lens", "Space", "Fold it from flat to made"),
          new HeldKeys("In the lens", "Home", "Look at it as at first"),
          new HeldKeys("In a dial's field", "Up, Down", "Turn the dial a step"),
          new HeldKeys("In a dial's field", "Enter", "Take the value typed"),
          new HeldKeys("In a dial's field", "Esc", "Leave the value as it was"),
          new HeldKeys("Under the table", "Page up, Page down", "Read on in dials and findings"),
          new HeldKeys("In the script", "Ctrl+Space", "Offer what fits here"),
          new HeldKeys("In the script", "Ctrl+Shift+Space", "Say what this call takes"),
          new HeldKeys("In the script", "Alt+Enter", "Mend what is wrong, where a mend is known"),
          new HeldKeys("In the script", "Alt+Up, Alt+Down", "Move the lines selected"),
          new HeldKeys(
              "In the script", "Ctrl+Alt+Up, Ctrl+Alt+Down", "Turn the number at the caret"),
          new HeldKeys("In the script", "Ctrl+Shift+D", "Write the lines selected twice"),
          new HeldKeys("In the script", "Alt and drag a number", "Turn it; finer with Shift"),
          new HeldKeys("In the script", "Tab, Shift+Tab", "Move the lines selected in or out"),
          new HeldKeys(
              "In the script",
              "Ctrl+Tab, Ctrl+Shift+Tab",
              "Leave the script for the next control or the former; F6 leaves it, too"),
          new HeldKeys(
              "In the script",
              "Home, End",
              "Go to the line's first word, and again to its beginning; to its end"),
          new HeldKeys("In the script", "F3, Shift+F3", "Find the next or the one before"),
          new HeldKeys(
              "In the script", "Ctrl+=, Ctrl+-, Ctrl+0", "Write it larger, smaller, as usual"),
          new HeldKeys("On the shelf", "Arrows", "Go from card to card"),
          new HeldKeys("On the shelf", "Enter", "Open the design, or start from it"),
          new HeldKeys("With the papers", "Page up, Page down", "Turn the pages"),
          new HeldKeys("On a page", "Arrows", "Move the page"),
          new HeldKeys("On a page", "+ and -", "Nearer and farther"),
          new HeldKeys("On a page", "Home", "Show the page whole"),
          new HeldKeys(
              "Anywhere",
              "Alt+F, Alt+E, Alt+V, Alt+H",
              "Open a menu by its first letter; so do Alt and then the letter"),
          new HeldKeys("Anywhere", "Ctrl+Y", "Do again what was taken back"),
          new HeldKeys("Anywhere", "Tab, Shift+Tab", "Go to the next or former control"),
          new HeldKeys("Anywhere", "Esc", "Put away what came up, or come back to the table"));
}
