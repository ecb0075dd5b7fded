package facetwright.workbench.card;

import facetwright.workbench.desk.Desk;
import javafx.scene.layout.BorderPane;
import org.fxmisc.flowless.VirtualizedScrollPane;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.LineNumberFactory;

/** The script, to be written in. */
public final class ScriptCard extends BorderPane {
  private final CodeArea area = new CodeArea();
  private long laid;

  public ScriptCard(Desk desk) {
    getStyleClass().add("card");
    area.setParagraphGraphicFactory(LineNumberFactory.get(area));
    area.replaceText(desk.text().get());
    area.getUndoManager().forgetHistory();
    area.textProperty().addListener((_, _, text) -> desk.text().set(text));
    desk.text()
        .addListener(
            (_, _, text) -> {
              if (!text.equals(area.getText())) {
                replace(text);
              }
              if (desk.laid() != laid) {
                laid = desk.laid();
                area.getUndoManager().forgetHistory();
                area.moveTo(0);
                area.requestFollowCaret();
              }
            });
    setCenter(new VirtualizedScrollPane<>(area));
  }

  /** Puts in only what differs, so that it can be undone and the place is kept. */
  private void replace(String text) {
    String old = area.getText();
    int least = Math.min(old.length(), text.length());
    int same = 0;
    while (same < least && old.charAt(same) == text.charAt(same)) {
      same++;
    }
    int end = 0;
    while (end < least - same
        && old.charAt(old.length() - 1 - end) == text.charAt(text.length() - 1 - end)) {
      end++;
    }
    area.replaceText(same, old.length() - end, text.substring(same, text.length() - end));
  }

  public CodeArea area() {
    return area;
  }
}
