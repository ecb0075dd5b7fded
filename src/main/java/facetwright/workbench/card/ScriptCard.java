package facetwright.workbench.card;

import facetwright.check.finding.Finding;
import facetwright.workbench.card.text.Typing;
import facetwright.workbench.card.text.Wording;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.focus.FocusRing;
import facetwright.workbench.look.Tip;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fxmisc.flowless.VirtualizedScrollPane;
import org.fxmisc.richtext.CodeArea;

/** The script, to be written in. */
public final class ScriptCard extends BorderPane {
  private final Desk desk;
  private final CardText text;
  private final TextMarks marks;
  private final Prompting prompting;
  private final FindBar find;
  private final FaultStrip fault;
  private final SaidStrip said;
  private final TextSize size;
  private final Button opens = new Button("Find");

  public ScriptCard(Desk desk) {
    this.desk = desk;
    getStyleClass().add("card");
    getStylesheets().add(ScriptCard.class.getResource("card.css").toExternalForm());
    text = new CardText(desk);
    marks = new TextMarks(desk, text);
    Painting painting = new Painting(text, marks);
    Margin.attach(text, marks, this::press);
    Linking.attach(desk, text, painting);
    Layer layer = new Layer();
    prompting = new Prompting(text, marks, layer);
    find = new FindBar(text, painting);
    fault = new FaultStrip(desk, text, marks);
    size = new TextSize(text.area());
    NumberDrag numbers = new NumberDrag(text);
    Keys.attach(text, prompting, find, fault, numbers, size);
    text.area().setAccessibleText("Script");
    text.area().widthProperty().addListener((_, _, _) -> Platform.runLater(this::wrapAnew));
    StackPane paper = new StackPane(new VirtualizedScrollPane<>(text.area()), layer);
    paper.getChildren().add(new FocusRing(text.area(), paper));
    VBox top = new VBox(head(), find);
    setTop(top);
    setCenter(paper);
    said = new SaidStrip(desk);
    setBottom(new VBox(said, fault));
  }

  /** Lets each line that shows be as high as it is broken now, not as it was in the old width. */
  private void wrapAnew() {
    text.area().lookupAll(".paragraph-box").forEach(line -> ((Parent) line).requestLayout());
  }

  private HBox head() {
    Label title = new Label("Script");
    title.getStyleClass().add("card-title");
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    ToggleButton wrap = new ToggleButton("Wrap lines");
    wrap.setTooltip(new Tip("Break long lines at the card's edge"));
    wrap.setSelected(true);
    text.area().wrapTextProperty().bind(wrap.selectedProperty());
    HBox head = new HBox(6, title, space, opens, wrap);
    opens.setOnAction(_ -> find.open(false));
    head.setAlignment(Pos.CENTER_LEFT);
    head.getStyleClass().add("card-head");
    return head;
  }

  /** Lets the button that finds tell what it does, and its keys. */
  public void explain(Consumer<Button> telling) {
    telling.accept(opens);
  }

  /** A pin in the margin is pressed: what it is about is pointed out. */
  private void press(TextMark mark) {
    if (mark.isFault()) {
      text.area().moveTo(mark.at().start());
      text.area().requestFollowCaret();
      return;
    }
    Finding finding = desk.design().get().findings().get(mark.number() - 1);
    desk.pointOut(finding);
  }

  /** Opens the bar that finds words in the script, and replaces them. */
  public void find(boolean replacing) {
    find.open(replacing);
  }

  /** Asks for a line to go to. */
  public void goToLine() {
    find.openLine();
  }

  /** Makes the lines selected a comment, or script again. */
  public void comment() {
    text.apply(Typing.comment(text.text(), text.selected()));
  }

  /** Writes a word for a facet where one was writing, and goes on there. */
  public void write(String word) {
    text.apply(Wording.edit(text.reading(), text.own(), word));
    text.area().requestFocus();
  }

  public CodeArea area() {
    return text.area();
  }

  /** Tests watch by it. */
  TextMarks marks() {
    return marks;
  }

  /** Tests watch by it. */
  Prompting prompting() {
    return prompting;
  }

  /** Tests watch by it. */
  FindBar find() {
    return find;
  }

  /** Tests watch by it. */
  FaultStrip fault() {
    return fault;
  }

  /** Tests watch by it. */
  TextSize size() {
    return size;
  }
}
