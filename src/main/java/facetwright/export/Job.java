package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.GlueMarks;
import facetwright.draw.page.Template;
import facetwright.draw.page.TemplatePages;
import facetwright.draw.page.TiledPages;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.measure.Unit;
import facetwright.net.sheet.Laid;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.copies.CopyPlan;
import facetwright.papers.facets.FacetList;
import facetwright.papers.handout.Judgement;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Named;
import facetwright.papers.order.Order;
import facetwright.words.Spoken;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;

/**
 * A finished design to be written. What several papers show is drawn and reckoned once, when the
 * first of them asks for it: papers of one job are made one after another, never at a time.
 */
public final class Job {
  private final String title;
  private final String author;
  private final Laid laid;
  private final GlueOrder making;
  private final Order order;
  private final Judgement judgement;
  private final List<Spoken> spoken;

  private final Once<List<Drawing>> templates = new Once<>();
  private final Once<List<Drawing>> tiles = new Once<>();
  private final Once<GlueMarks> gluing = new Once<>();
  private final Once<CopyPlan> copies = new Once<>();
  private final Once<Works> works = new Once<>();
  private final Once<ScoreChart> chart = new Once<>();
  private final Once<HandoutContent> handout = new Once<>();
  private final Once<FacetList> facets = new Once<>();
  private final Map<List<Integer>, FoldedMesh> meshes = new HashMap<>();

  /** What is made at the first asking. */
  private static final class Once<T> {
    private T made;

    T get(Supplier<T> make) {
      if (made == null) {
        made = make.get();
      }
      return made;
    }
  }

  /**
   * @param title of the design
   * @param author who made it, blank where not said
   * @param laid the net on its sheets
   * @param making how the same net, folded, is made up
   * @param order what the papers are for
   * @param judgement the verdict on it, the same on every paper
   * @throws IllegalArgumentException when the form is not one of this net
   */
  public Job(
      String title, String author, Laid laid, GlueOrder making, Order order, Judgement judgement) {
    this(title, author, laid, making, order, judgement, List.of());
  }

  private Job(
      String title,
      String author,
      Laid laid,
      GlueOrder making,
      Order order,
      Judgement judgement,
      List<Spoken> spoken) {
    this.judgement = judgement;
    this.spoken = List.copyOf(spoken);
    this.title = Objects.requireNonNull(title);
    this.author = Objects.requireNonNull(author);
    this.order = Objects.requireNonNull(order);
    this.laid = laid;
    this.making = making;
    if (isSolved() && form().poses().size() != laid.net().panels().size()) {
      throw new IllegalArgumentException(
          "the folded form has %d panels, the net %d"
              .formatted(form().poses().size(), laid.net().panels().size()));
    }
  }

  /**
   * The same of a net that a script made.
   *
   * @param how for each panel of the net how the script speaks of it
   */
  public Job spoken(List<Spoken> how) {
    return new Job(title, author, laid, making, order, judgement, how);
  }

  public String title() {
    return title;
  }

  /** What its files are called. */
  public Named named() {
    return new Named(title);
  }

  String author() {
    return author;
  }

  Unit unit() {
    return order.unit();
  }

  Laid laid() {
    return laid;
  }

  FoldedForm form() {
    return making.form();
  }

  /** In which order it is made up. */
  GlueOrder making() {
    return making;
  }

  public Order order() {
    return order;
  }

  /** Whether it is known where each panel ends up. */
  boolean isSolved() {
    return form().closure() != Closure.NOT_SOLVED;
  }

  /** Whether the sheet is larger than the printer's page. */
  boolean isTiled() {
    return TiledPages.isLarger(laid, order.page());
  }

  /** The verdict on it, the same on every paper. */
  Judgement judgement() {
    return judgement;
  }

  /** What a template tells of gluing. */
  GlueMarks gluing() {
    return gluing.get(() -> GlueMarks.of(making));
  }

  /** The template, a page a sheet. */
  List<Drawing> templates() {
    return templates.get(
        () -> TemplatePages.of(title, order.telling(), laid, Template.outside(gluing())));
  }

  /** The template as it is printed on the inside, over the printer's pages where need be. */
  List<Drawing> insides() {
    Template inside = Template.inside(gluing());
    return isTiled() ? tiled(inside) : TemplatePages.of(title, order.telling(), laid, inside);
  }

  private List<Drawing> tiled(Template template) {
    return TiledPages.few(title, order.telling(), laid, order.page(), template);
  }

  /** The template over the printer's pages. */
  List<Drawing> tiles() {
    return tiles.get(() -> tiled(Template.outside(gluing())));
  }

  /** As many copies as one sheet gives. */
  CopyPlan copies() {
    return copies.get(() -> CopyPlan.of(laid));
  }

  /**
   * Everything reckoned for the order, on the usual sheets of layer paper.
   *
   * @throws IllegalArgumentException when a layer finds no room on them
   */
  Works works() {
    return works.get(() -> Works.of(laid, making, unit(), List.of(), order.copies()));
  }

  /** What is scored and cut by measures, for the ruler of the order. */
  ScoreChart chart() {
    return chart.get(() -> ScoreChart.of(laid.net(), order.ruler()));
  }

  HandoutContent handout() {
    return handout.get(() -> HandoutContent.of(this));
  }

  /** All facets and the words they answer to; none where no script speaks of them. */
  FacetList facets() {
    return facets.get(
        () ->
            spoken.isEmpty() ? new FacetList(List.of()) : FacetList.of(laid.net(), form(), spoken));
  }

  /** These panels of the folded form as triangles. */
  FoldedMesh mesh(List<Integer> panels) {
    FoldedMesh mesh = meshes.get(panels);
    if (mesh == null) {
      mesh = new FoldedMesh(this, panels);
      meshes.put(panels, mesh);
    }
    return mesh;
  }

  /** Whether it asks for the same papers of the same design. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Job j
        && title.equals(j.title)
        && author.equals(j.author)
        && laid.equals(j.laid)
        && form().equals(j.form())
        && order.equals(j.order)
        && spoken.equals(j.spoken);
  }

  @Override
  public int hashCode() {
    return Objects.hash(title, author, laid, form(), order, spoken);
  }
}
