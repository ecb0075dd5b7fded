package facetwright.script.api;

import facetwright.check.finding.Finding;
import facetwright.measure.Quantity;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.panel.PanelBuild;
import facetwright.net.sheet.CommonSheets;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.Stock;
import facetwright.script.design.AskedAim;
import facetwright.script.design.Dial;
import facetwright.script.sandbox.CallException;
import facetwright.script.sandbox.HostClock;
import facetwright.script.sandbox.SiteFinder;
import facetwright.words.SaidTwice;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** What one run of a script has said so far. */
public final class Session {
  private final Map<String, String> settings;
  private final boolean yielding;
  private final Map<String, Quantity> used;
  private SiteFinder sites = () -> Site.NONE;
  private HostClock clock;
  private String title;
  private Unit unit;
  private Stock stock;
  private OptionalDouble margin = OptionalDouble.empty();
  private final Map<String, Dial> dials = new LinkedHashMap<>();
  private final List<Source> sources = new ArrayList<>();
  private final List<PartDraft> parts = new ArrayList<>();
  private final List<FittingDraft> fittings = new ArrayList<>();
  private int placings;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Unmet> unmet = new ArrayList<>();
  private final Map<Site, Made> made = new LinkedHashMap<>();
  private PanelBuild panels;
  private OptionalDouble caliperTaken = OptionalDouble.empty();
  private AskedAim aim;
  private String reading = "";
  private final Said said = new Said();
  private final SaidTwice twice = new SaidTwice();

  /**
   * @param settings dial values given from outside, by dial name, as a person types them
   * @param yielding whether one that its dial can't take gives way to the nearest that it can
   * @param used what the script uses dials as, by name, as far as that is known
   */
  public Session(Map<String, String> settings, boolean yielding, Map<String, Quantity> used) {
    this.settings = Map.copyOf(settings);
    this.yielding = yielding;
    this.used = Map.copyOf(used);
  }

  /** A file that the script uses is being read; empty for none. */
  public void reads(String file) {
    reading = file;
  }

  public void connect(SiteFinder finder, HostClock hostClock) {
    sites = finder;
    clock = hostClock;
  }

  HostClock clock() {
    return clock;
  }

  Site here() {
    return sites.here();
  }

  /** The unit of plain numbers: the design's, millimetres until it is named. */
  public Unit unit() {
    return unit == null ? Unit.MM : unit;
  }

  public void name(String newTitle, Unit newUnit) {
    if (!dials.isEmpty() || !sources.isEmpty() || stock != null) {
      throw new CallException(
          "design() comes after other functions", "Put it first: it says what plain numbers mean.");
    }
    title = newTitle;
    unit = newUnit;
  }

  /** What the design is called; empty until it is named. */
  public String title() {
    return title == null ? "" : title;
  }

  Map<String, String> settings() {
    return settings;
  }

  /** Whether a setting that its dial can't take gives way to the nearest that it can. */
  boolean yielding() {
    return yielding;
  }

  Quantity used(String dial) {
    return used.getOrDefault(dial, Quantity.NUMBER);
  }

  void dial(Dial dial) {
    Dial first = dials.putIfAbsent(dial.name(), dial);
    if (first != null) {
      throw new CallException(
          "two dials are called \"" + dial.name() + "\", the first in " + first.site().text(),
          "Give each dial a name of its own.");
    }
  }

  public List<Dial> dials() {
    return List.copyOf(dials.values());
  }

  public void aim(AskedAim asked) {
    aim = asked;
  }

  /** What the script wants its dials turned for. */
  public Optional<AskedAim> aim() {
    return Optional.ofNullable(aim);
  }

  /** How far what slides over another is set off; its own card's caliper, NaN for the design's. */
  public double slidesOver(double own) {
    caliperTaken = OptionalDouble.of(caliper());
    return Stock.slidesOver(Double.isNaN(own) ? caliper() : own, caliper());
  }

  /** How thick the design's card is, in mm, as far as is said now. */
  public double caliper() {
    return stock == null ? Stock.usualCaliper(Stock.USUAL_WEIGHT) : stock.caliper();
  }

  /** The margin is what the script says is kept free along its edges, in mm. */
  public void stock(Stock newStock, OptionalDouble newMargin) {
    if (caliperTaken.isPresent() && caliperTaken.getAsDouble() != newStock.caliper()) {
      throw new CallException(
          "the card is named after an outline was set off by it",
          "Put sheet above the line that says offset(\"card\").");
    }
    stock = newStock;
    margin = newMargin;
  }

  /** The sheets it may be cut from: the one that is named, or the common ones, smallest first. */
  public List<Stock> sizes() {
    return stock != null ? List.of(stock) : CommonSheets.cards(unit());
  }

  /** The rooms that may be kept free round what lies on a sheet, the widest first. */
  public List<Room> rooms() {
    return margin.isPresent() ? Room.within(margin.getAsDouble(), unit()) : Room.orLess(unit());
  }

  /** Adds a net to the design. */
  public void add(Object of, Supplier<Net> net, Speaking speaking) {
    if (!reading.isEmpty()) {
      throw new CallException(
          reading + " makes a part of the design as it is read",
          "Put what makes it into a function, and call that in the script.");
    }
    sources.add(new Source.Own(of, net, speaking));
  }

  /** Adds the mirror image of a part to the design, as a part of its own. */
  public PartDraft mirror(PartDraft like, String name, PartCard card, Site site) {
    Object image = new Object();
    sources.add(new Source.Image(image, like));
    return part(image, name, card, site);
  }

  /** All nets of the design, in the order of the script. */
  public List<Source> sources() {
    return List.copyOf(sources);
  }

  /**
   * Tells a part of the design apart.
   *
   * @param of what it is a part of
   * @param name what it is called; empty where it is not
   * @param card what it is cut from
   */
  @SuppressWarnings("ReferenceEquality") // One thing is no other, however alike.
  public PartDraft part(Object of, String name, PartCard card, Site site) {
    for (PartDraft part : parts) {
      if (part.of() == of) {
        throw new CallException(
            "this is the part \"" + part.name() + "\" already, by " + part.site().text(),
            "Call .part once, and keep what it gives: const lid = body.part(\"lid\");");
      }
      // What a loop makes under one name is one part made several times.
      if (!name.isEmpty() && part.name().equals(name) && !part.site().equals(site)) {
        throw new CallException(
            "two parts are called \"" + name + "\", the first in " + part.site().text(),
            "Give each part a name of its own; for several alike make one with count: 2.");
      }
    }
    PartDraft part = new PartDraft(of, name, card, site);
    parts.add(part);
    return part;
  }

  /** All parts told apart, in the order of the script. */
  public List<PartDraft> parts() {
    return List.copyOf(parts);
  }

  /** A part goes to another, after those that were placed before. */
  public void place(PartDraft part, PartDraft.Goes where) {
    part.go(where.numbered(placings++));
  }

  /** Something goes in or on what the script made. */
  public void fit(FittingDraft fitting) {
    fittings.add(fitting);
  }

  /** All that goes in and on, in the order of the script. */
  public List<FittingDraft> fittings() {
    return List.copyOf(fittings);
  }

  /** A check of the maker's own that fails. */
  public void unmet(Unmet check) {
    if (!unmet.contains(check) && unmet.size() < Said.MOST) {
      unmet.add(check);
    }
  }

  /** The maker's own checks that fail, each once, in order. */
  public List<Unmet> unmet() {
    return List.copyOf(unmet);
  }

  /** What is said twice of the same. */
  public SaidTwice twice() {
    return twice;
  }

  /** Adds something the maker should know that came up while a part was made. */
  public void find(Finding finding) {
    findings.add(finding);
  }

  public List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** A form or cells of a call, told when used; what a file makes as it is read need not be. */
  Made made(Thing<?> thing, String function, Site site) {
    Made one = made.computeIfAbsent(site, _ -> new Made(thing, function, site));
    if (!reading.isEmpty()) {
      one.use();
    }
    return one;
  }

  /**
   * What the calls of the script made that does nothing by itself, in the order of their making.
   */
  public List<Made> made() {
    return List.copyOf(made.values());
  }

  /** The one build all panels of the script belong to; a part of the design once it is used. */
  public PanelBuild panels() {
    if (panels == null) {
      panels = new PanelBuild();
      add(panels, twice.with(panels.twice(), panels::build), Speaking.BY_NAME);
    }
    return panels;
  }

  public void say(String text) {
    said.add(text);
  }

  /** What the script said, in order; of more than a thousand lines the last tells how many more. */
  public List<String> said() {
    return said.all();
  }
}
