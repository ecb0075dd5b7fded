package facetwright.workbench.card;

import facetwright.workbench.desk.Desk;
import javafx.scene.layout.BorderPane;
import org.fxmisc.flowless.VirtualizedScrollPane;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.LineNumberFactory;

/** The script, to be written in. */
public final class ScriptCard extends BorderPane {
  private final CodeArea area = new CodeArea();

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
                area.replaceText(text);
                area.getUndoManager().forgetHistory();
                area.moveTo(0);
              }
            });
    setCenter(new VirtualizedScrollPane<>(area));
  }

  public CodeArea area() {
    return area;
  }
}
