package facetwright.script;

import facetwright.check.Checks;
import facetwright.check.finding.Finding;
import facetwright.fold.FlatSenses;
import facetwright.fold.Folding;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Senses;
import facetwright.fold.pose.Upright;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.script.api.Session;
import facetwright.script.design.AskedAim;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.CallException;
import facetwright.script.sandbox.Host;
import facetwright.script.sandbox.HostClock;
import facetwright.script.sandbox.Sandbox;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.sandbox.SiteFinder;
import facetwright.script.sandbox.Spot;
import facetwright.script.scope.DialUse;
import facetwright.script.scope.Meant;
import facetwright.script.text.Gathered;
import facetwright.script.text.Name;
import facetwright.script.text.Names;
import facetwright.script.text.Piece;
import facetwright.script.text.Reading;
import facetwright.script.vocabulary.Language;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.stream.Stream;
import org.graalvm.polyglot.proxy.ProxyExecutable;

/** The front door: from a script and its dials to the whole design. */
public final class Facetwright {
  private Facetwright() {}

  /**
   * Evaluates a script. Where it aims at measures, its dials are turned for them, but those that
   * the settings name.
   *
   * @param fileName what messages call the script
   * @param source the script's text
   * @param settings dial values by name, as a person types them
   * @param budget how long and how much it may take; for a script with an aim, each time it runs
   * @throws ScriptException when the script is wrong, with line, column and remedy; where it {@link
   *     ScriptException#isStillRunning()} the caller must end the process
   */
  public static Design evaluate(
      String fileName, String source, Map<String, String> settings, Budget budget)
      throws ScriptException {
    return evaluate(fileName, source, settings, StrayDials.REFUSED, budget);
  }

  /**
   * The same.
   *
   * @param stray what becomes of settings that no dial of the script takes
   */
  public static Design evaluate(
      String fileName, String source, Map<String, String> settings, StrayDials stray, Budget budget)
      throws ScriptException {
    return settle(fileName, source, settings, stray, budget).made().design();
  }

  /** The design, and the dials it takes to get it. */
  static Settled settle(
      String fileName, String source, Map<String, String> settings, StrayDials stray, Budget budget)
      throws ScriptException {
    Made made =
        once(fileName, source, budget, new Run(source, settings, stray, true, Optional.empty()));
    Map<String, String> taken = stray.taken(settings, made.design());
    return made.aim().isPresent()
        ? ScriptAim.follow(fileName, source, taken, budget, made)
        : new Settled(made, taken);
  }

  /**
   * Runs a script a single time, whatever it aims at. Its settings were looked at before: one of a
   * dial that this run does not come to is left out.
   *
   * @param checked whether to look for findings, too; not done for a script with an aim, whose
   *     design is not to stay
   */
  static Made once(
      String fileName, String source, Map<String, String> settings, Budget budget, boolean checked)
      throws ScriptException {
    return once(
        fileName,
        source,
        budget,
        new Run(source, settings, StrayDials.PASSED_OVER, checked, Optional.empty()));
  }

  /** Runs a script a single time with dials turned a little, its form on the branch of another. */
  static Made beside(
      Design other, String fileName, String source, Map<String, String> settings, Budget budget)
      throws ScriptException {
    return once(
        fileName,
        source,
        budget,
        new Run(source, settings, StrayDials.PASSED_OVER, false, Optional.of(other)));
  }

  private static Made once(String fileName, String source, Budget budget, Run run)
      throws ScriptException {
    try {
      return Sandbox.run(fileName, source, budget, run);
    } catch (ScriptException e) {
      throw e.in(run.unit(), run.session.said());
    }
  }

  /**
   * What a single run came to.
   *
   * @param rooms that may be kept free round the net's pieces, the widest first
   * @param aim what the script wants its dials turned for
   */
  record Made(Design design, List<Room> rooms, Optional<AskedAim> aim) {
    /** The same with a look for findings. */
    private Made checked() {
      GlueOrder gluing = design.gluing();
      List<Finding> findings = new ArrayList<>(design.findings());
      Checks.all(design.laid(), gluing).forEach(f -> findings.add(f.in(design.unit())));
      LabelChecks.of(design.net()).forEach(f -> findings.add(f.in(design.unit())));
      return with(design.found(findings).reckoned(gluing));
    }

    Made with(Design other) {
      return new Made(other, rooms, aim);
    }
  }

  /** A design that was made already, looked at for findings within the budget. */
  static Made checked(String fileName, Budget budget, Made made) throws ScriptException {
    return Sandbox.run(fileName, "", budget, new Look(made));
  }

  /** Work for the sandbox that takes no script. */
  private record Look(Made made) implements Host<Made> {
    @Override
    public SequencedMap<String, ProxyExecutable> globals(SiteFinder sites, HostClock clock) {
      return new LinkedHashMap<>();
    }

    @Override
    public List<String> names() {
      return List.of();
    }

    @Override
    public Made finish() {
      return made.checked();
    }
  }

  /**
   * What the dials were turned to for a design.
   *
   * @param settings every dial that is not at its usual value, as a person types it
   */
  record Settled(Made made, Map<String, String> settings) {}

  /** One run: the session the script talks to, then the design it comes to. */
  private static final class Run implements Host<Made> {
    private final String source;
    private final Map<String, String> settings;
    private final Session session;
    private final StrayDials stray;
    private final boolean checked;
    private final Optional<Design> beside;

    /**
     * @param beside a design that differs little, on whose branch the form is to stay
     */
    Run(
        String source,
        Map<String, String> settings,
        StrayDials stray,
        boolean checked,
        Optional<Design> beside) {
      this.stray = stray;
      this.beside = beside;
      this.source = source;
      this.settings = settings;
      this.checked = checked;
      this.session = new Session(settings, stray == StrayDials.YIELDING, DialUse.of(source));
    }

    Unit unit() {
      return session.unit();
    }

    @Override
    public SequencedMap<String, ProxyExecutable> globals(SiteFinder sites, HostClock clock) {
      return Language.globals(session, sites, clock);
    }

    @Override
    public List<String> names() {
      List<String> names = new ArrayList<>(Language.names());
      Gathered all = Gathered.of(source);
      Stream.concat(Stream.of(all.main()), all.pieces().stream().map(Piece::text))
          .flatMap(text -> Names.of(Reading.of(text)).all().stream())
          .map(Name::word)
          .forEach(names::add);
      return names;
    }

    @Override
    public List<String> meant(String unknown, Site site) {
      return Meant.at(Spot.of(source, site), unknown);
    }

    @Override
    public void reads(String file) {
      session.reads(file);
    }

    @Override
    public boolean isFunction(String name) {
      return Language.TOP.function(name).isPresent();
    }

    @Override
    public Map<String, List<String>> functions() {
      return Language.functions();
    }

    @Override
    public Made finish() {
      stray.check(settings.keySet(), session.dials());
      if (session.title().isEmpty()) {
        throw new CallException(
            "the script does not name its design",
            "Start it with design(\"Title\", { units: \"mm\" });");
      }
      List<Finding> unused = Unused.in(source, session.made());
      if (session.sources().isEmpty()) {
        unused.stream().findFirst().ifPresent(Run::refuse);
        throw new CallException(
            "the script makes no net",
            "Make a wrap, a panel or a blank, or unfold a form: prism({ sides: 6, side: 30, height:"
                + " 50 }).unfold();");
      }
      PartsTold.Told told = PartsTold.of(session);
      Laid laid = Laying.of(session, FlatSenses.in(told.net()), told.drafts());
      FoldedForm folded = folded(laid);
      laid = laid.with(Upright.labelled(Senses.asFolded(laid.net(), folded), folded));
      Design design =
          new Design(
              session.title(),
              session.unit(),
              ScriptHeader.read(source),
              session.dials(),
              laid,
              folded,
              Stream.of(
                      unused,
                      OwnChecks.in(source, session.unmet()),
                      Repeated.in(source, session.twice()),
                      told.found())
                  .flatMap(List::stream)
                  .map(f -> f.in(session.unit()))
                  .toList(),
              List.of(),
              session.said(),
              Declared.in(source, told.net(), told.spoken()));
      Made made = new Made(design, session.rooms(), session.aim());
      return checked && made.aim().isEmpty() ? made.checked() : made;
    }

    /** Nothing is left of the design but what is found here. */
    private static void refuse(Finding found) {
      throw new CallException(
          Message.of("the script makes no net: %s", found.what()),
          found.remedy(),
          found.site(),
          found.mends());
    }

    private FoldedForm folded(Laid laid) {
      return beside.isPresent()
          ? Folding.beside(laid, beside.get().net(), beside.get().folded())
          : Folding.fold(laid);
    }
  }
}
