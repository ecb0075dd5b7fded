package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The documents under Help, read in the window. */
class HelpPagesTest {
  private static final String CARD =
      "design(\"Card\");\nprism({ sides: 4, side: 20, height: 20 }).unfold();\n";

  @TempDir Path folder;

  @Test
  void everyDocumentIsReadInTheWindowAndPutAwayByEsc() throws Exception {
    Visit visit = Visit.at(folder, "card.js", CARD);
    try {
      for (String id : new String[] {"writing", "words", "paper-words", "changes"}) {
        Fx.run(() -> visit.house.commands().named(id).run());
        Fx.pulse();
        assertThat(Fx.get(() -> visit.house.pages().isVisible())).as(id).isTrue();
        assertThat(Fx.get(() -> visit.house.pages().lookupAll(".doc-words").size()))
            .as(id)
            .isGreaterThan(10);
        Fx.run(() -> new Robot().keyType(KeyCode.ESCAPE));
        Fx.pulse();
        assertThat(Fx.get(() -> visit.house.pages().isVisible())).as(id).isFalse();
      }
    } finally {
      visit.close();
    }
  }

  @Test
  void aLinkLeadsToItsHeadingAndToAnotherDocument() throws Exception {
    Visit visit = Visit.at(folder, "card.js", CARD);
    try {
      Fx.run(() -> visit.house.commands().named("words").run());
      Fx.pulse();
      Fx.run(() -> link(visit, "On a panel").fire());
      ScrollPane pane = (ScrollPane) Fx.get(() -> visit.house.pages().lookup(".scroll-pane"));
      assertThat(Fx.get(pane::getVvalue)).isBetween(0.3, 0.99);
      Fx.run(() -> link(visit, "writing-a-design.md").fire());
      Fx.pulse();
      assertThat(Fx.get(() -> Fx.says(visit.house.pages(), "Writing a design"))).isTrue();
    } finally {
      visit.close();
    }
  }

  /** Page down goes on by what is seen, less a line; Page up comes back. */
  @Test
  void aPageIsReadOnLessALine() throws Exception {
    Visit visit = Visit.at(folder, "card.js", CARD);
    try {
      Fx.run(() -> visit.house.commands().named("words").run());
      Fx.pulse();
      ScrollPane pane = (ScrollPane) Fx.get(() -> visit.house.pages().lookup(".scroll-pane"));
      double high = Fx.get(() -> pane.getViewportBounds().getHeight());
      double hidden = Fx.get(() -> pane.getContent().getLayoutBounds().getHeight()) - high;
      assertThat(hidden).isGreaterThan(high);
      Fx.run(() -> Fx.press(pane, "Page Down"));
      assertThat(Fx.get(pane::getVvalue) * hidden).isBetween(high - 40, high - 10);
      Fx.run(() -> Fx.press(pane, "Page Up"));
      assertThat(Fx.get(pane::getVvalue)).isZero();
    } finally {
      visit.close();
    }
  }

  private static Hyperlink link(Visit visit, String words) {
    for (Node node : visit.house.pages().lookupAll(".hyperlink")) {
      if (node instanceof Hyperlink link && link.getText().equals(words)) {
        return link;
      }
    }
    throw new AssertionError("no link says " + words);
  }
}
