package facetwright.workbench.lens;

import facetwright.draw.FoldedDrawing;
import facetwright.draw.Mark;
import facetwright.draw.Viewpoint;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.script.design.Design;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.focus.FocusRing;
import facetwright.workbench.look.Camera;
import facetwright.workbench.look.Shade;
import facetwright.workbench.pick.Picking;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Executor;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;

/**
 * The folded form in a round glass, or large in its place. Dragging turns it, the wheel zooms, a
 * click selects; the rim, or a rule along the lower edge, is the way from flat to made.
 */
public final class LensView extends Region {
  private final Desk desk;
  private final FrameSource frames;
  private final Canvas canvas = new Canvas();
  private final DoubleProperty made = new SimpleDoubleProperty(1);
  private final BooleanProperty layers = new SimpleBooleanProperty(true);
  private final BooleanProperty round = new SimpleBooleanProperty(true);
  private final DoubleProperty kept = new SimpleDoubleProperty();
  private final BooleanProperty teaching = new SimpleBooleanProperty();
  private final Player player = new Player(made);
  private final ObjectProperty<Shade> shade = new SimpleObjectProperty<>(Shade.LIGHT);
  private Viewpoint from = Viewpoint.USUAL;
  private double zoom = 1;
  private List<Mark.Patch> patches = List.of();
  private Camera camera = new Camera(1, 0, 0);
  private FoldedDrawing drawing;
  private Teaching taught;
  private long paints;

  /**
   * @param desk what is shown
   * @param picking what its facets are called
   * @param aside runs work beside the window
   * @param ui runs work on the window's thread
   */
  public LensView(Desk desk, Picking picking, Executor aside, Executor ui) {
    this.desk = desk;
    this.frames = new FrameSource(aside, ui, this::show);
    getStyleClass().add("lens");
    FocusRing ring = new FocusRing(this);
    getChildren().addAll(canvas, ring);
    ring.getStyleClass().add("round");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    say();
    desk.design().addListener((_, _, design) -> show(design));
    desk.selection().addListener((_, _, _) -> paint());
    teaching.addListener((_, _, _) -> paint());
    focusedProperty().addListener((_, _, _) -> paint());
    made.addListener((_, _, t) -> frames.at(t.doubleValue()));
    made.addListener((_, _, _) -> say());
    layers.addListener((_, _, on) -> frames.layers(on));
    shade.addListener((_, _, _) -> paint());
    round.addListener((_, _, _) -> requestLayout());
    kept.addListener((_, _, _) -> requestLayout());
    round.addListener(
        (_, _, on) -> {
          ring.getStyleClass().remove("round");
          if (on) {
            ring.getStyleClass().add("round");
          }
        });
    new LensHand(this, desk, picking).take();
    setOnKeyPressed(new LensKeys(this)::pressed);
  }

  /** How far it is folded, 0 flat to 1 made. */
  public DoubleProperty made() {
    return made;
  }

  /** Whether decorative layers show. */
  public BooleanProperty layers() {
    return layers;
  }

  /** Whether it is a round glass with a rim, or fills its place. */
  public BooleanProperty round() {
    return round;
  }

  /** How much of the lower edge is taken, from the right, while it fills its place; in pixels. */
  public DoubleProperty kept() {
    return kept;
  }

  /** Whether dihedral angles and angle sums are written at the made form. */
  public BooleanProperty teaching() {
    return teaching;
  }

  /** Opens the form and folds it up again, or stops doing so. */
  public void play() {
    player.toggle();
  }

  /** Whether the picture that was wished for last is shown. Tests watch by it. */
  public boolean isAtRest() {
    return frames.isAtRest();
  }

  /** How often it was painted so far. Tests watch by it. */
  public long paints() {
    return paints;
  }

  public ObjectProperty<Shade> shade() {
    return shade;
  }

  private void show(Design design) {
    if (design == null) {
      frames.forget();
      show((FoldedDrawing) null);
    } else {
      frames.of(design.net(), design.folded(), layers.get(), made.get());
    }
  }

  private void show(FoldedDrawing next) {
    drawing = next;
    taught = null;
    look();
  }

  /** Turns the form about its height and tilts it, in radians. */
  void turn(double by, double tilt) {
    from = from.moved(by, tilt);
    look();
  }

  /** As it is seen at first. */
  void usual() {
    from = Viewpoint.USUAL;
    zoom = 1;
    look();
  }

  /** Nearer or farther. */
  void nearer(double factor) {
    zoom = Math.clamp(zoom * factor, 0.3, 12);
    place();
    paint();
  }

  /** Stays as far open as it is. */
  void stop() {
    player.stop();
  }

  /** Selects the panel seen at a point of this view, or nothing. */
  void select(double x, double y) {
    OptionalInt panel = panel(x, y);
    desk.selection()
        .set(panel.isPresent() ? new Selection.OfPanel(panel.getAsInt()) : Selection.nothing());
  }

  /** The panel seen at a point of this view. */
  OptionalInt panel(double x, double y) {
    Vec2 place = camera.plane(x, y);
    return patches.reversed().stream()
        .filter(
            patch -> patch.rings().stream().filter(ring -> ring.contains(place)).count() % 2 == 1)
        .mapToInt(Mark.Patch::part)
        .findFirst();
  }

  private void look() {
    patches = drawing == null ? List.of() : drawing.seen(from);
    place();
    paint();
  }

  private void place() {
    if (drawing == null || getWidth() < 1) {
      return;
    }
    double wide = getWidth() - (round.get() ? 0 : kept.get());
    double margin = round.get() ? Math.min(wide, getHeight()) * 0.16 : 40;
    Box2 box = drawing.bounds(from);
    Camera fit = Camera.showing(box, wide, getHeight(), margin);
    // While it turns it keeps its size: the scale comes of its longest extent.
    double reach = drawing.reach();
    double scale =
        Math.max(1, Math.min(wide, getHeight()) - 2 * margin)
            / Math.max(reach, LengthTolerance.FINE.mm());
    double s = Math.max(scale, Math.min(fit.scale(), scale * 1.6)) * zoom;
    camera = new Camera(s, wide / 2 - box.centre().x() * s, getHeight() / 2 + box.centre().y() * s);
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    place();
    paint();
  }

  private Rim rim() {
    return new Rim(getWidth(), getHeight());
  }

  /** Where one slides from flat to made. */
  FoldSlider way() {
    return round.get() ? rim() : new Rule(getWidth() - kept.get(), getHeight(), shade.get().type());
  }

  private void paint() {
    GraphicsContext on = canvas.getGraphicsContext2D();
    on.clearRect(0, 0, getWidth(), getHeight());
    if (getWidth() < 2 * Rim.BROAD + 2) {
      return;
    }
    LensPainter painter =
        new LensPainter(on, camera, shade.get(), from, getWidth(), getHeight(), round.get());
    painter.glass(rim().radius(), Rim.BROAD, patches);
    painter.form(patches, drawing, desk.selection().get());
    if (teaching.get() && drawing != null && made.get() == 1) {
      painter.angles(drawing, teachingOf());
    }
    painter.clear();
    painter.way(way(), made.get(), isFocused(), gathers());
    paints++;
  }

  private Teaching teachingOf() {
    if (taught == null) {
      taught = Teaching.of(drawing.net(), desk.design().get().folded());
    }
    return taught;
  }

  /** Whether parts come together at the end of the way. */
  private boolean gathers() {
    Design design = desk.design().get();
    return design != null && design.folded().together().isSome();
  }

  /** For those who hear the window read. */
  private void say() {
    double far = made.get();
    String form = "The folded form, ";
    setAccessibleText(
        gathers() && far >= FoldPath.APART
            ? form
                + (far == FoldPath.APART
                    ? "its parts made, apart"
                    : far == 1
                        ? "its parts together"
                        : "its parts %.0f %% of the way from apart to together"
                            .formatted(100 * (far - FoldPath.APART) / (1 - FoldPath.APART)))
            : form
                + "%.0f %% of the way from flat to made"
                    .formatted(100 * (gathers() ? far / FoldPath.APART : far)));
  }
}
