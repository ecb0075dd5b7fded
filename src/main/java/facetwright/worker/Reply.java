package facetwright.worker;

import facetwright.adjust.propose.Proposal;
import facetwright.script.design.Design;
import facetwright.script.sandbox.ScriptException;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.List;

/** What an ask came to. */
public sealed interface Reply extends Serializable {

  /** It came to a design. */
  record Done(Design design) implements Reply {}

  /** A question to a design came to this. */
  record Proposed(Proposal proposal) implements Reply {}

  /**
   * It came to nothing.
   *
   * @param kind what sort of thing went wrong
   * @param message what is wrong, in a maker's words
   * @param site where in the script; {@link Site#NONE} when that is not known
   * @param remedy what to do about it, or empty
   * @param mends changes of the script's text that would put it right
   * @param said what the script said before
   */
  record Failed(
      ScriptException.Kind kind,
      String message,
      Site site,
      String remedy,
      List<Mend> mends,
      List<String> said)
      implements Reply {
    public Failed {
      mends = List.copyOf(mends);
      said = List.copyOf(said);
    }

    /** One that no change of the script's text is known for. */
    public Failed(ScriptException.Kind kind, String message, Site site, String remedy) {
      this(kind, message, site, remedy, List.of(), List.of());
    }

    static Failed of(ScriptException e) {
      return new Failed(e.kind(), e.getMessage(), e.site(), e.remedy(), e.mends(), e.said());
    }

    static Failed ofProgram(String message) {
      return new Failed(
          ScriptException.Kind.INTERNAL, message, Site.NONE, "Try again; save the script first");
    }

    /** From 1; 0 when unknown. */
    public int line() {
      return site.line();
    }
  }

  /** It was told to stop, or a newer ask took its place. */
  record Stopped() implements Reply {}
}
