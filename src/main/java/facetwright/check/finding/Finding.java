package facetwright.check.finding;

import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.List;

/**
 * Something a maker should know before good paper is cut.
 *
 * @param rule short name of the rule, such as "off-sheet"
 * @param severity how bad it is
 * @param what is wrong, where and why, in plain words
 * @param remedy what to do about it
 * @param place where in the net
 * @param site where in the script
 * @param mends changes of the script's text that would put it right
 * @param unit what its reader reads it in
 * @param verdict how the verdict on the form tells of it, in the middle of a sentence; empty where
 *     it does not
 */
public record Finding(
    String rule,
    Severity severity,
    Message what,
    Message remedy,
    Place place,
    Site site,
    List<Mend> mends,
    Unit unit,
    Message verdict)
    implements Serializable {
  public Finding {
    // A mend changes the script's own text, wherever the sheet is named or else at the site.
    mends = mends.stream().filter(m -> !site.isInFile() || m instanceof Mend.Sheet).toList();
  }

  /** One that is read in millimetres. */
  public Finding(
      String rule,
      Severity severity,
      Message what,
      Message remedy,
      Place place,
      Site site,
      List<Mend> mends) {
    this(rule, severity, what, remedy, place, site, mends, Unit.MM, Message.EMPTY);
  }

  /** One that no change of the script's text is known for. */
  public Finding(
      String rule, Severity severity, Message what, Message remedy, Place place, Site site) {
    this(rule, severity, what, remedy, place, site, List.of());
  }

  /** The same for who reads another unit. */
  public Finding in(Unit other) {
    return new Finding(rule, severity, what, remedy, place, site, mends, other, verdict);
  }

  /** The same, standing elsewhere. */
  public Finding at(Place other) {
    return new Finding(rule, severity, what, remedy, other, site, mends, unit, verdict);
  }

  /** The same as the verdict on the form tells of it. */
  public Finding telling(Message words) {
    return new Finding(rule, severity, what, remedy, place, site, mends, unit, words);
  }

  /** What is wrong, to follow on other words. */
  public Message told() {
    return verdict.isEmpty() ? what : verdict;
  }

  /** What is wrong, as its reader reads it. */
  public String message() {
    return what.text(unit);
  }

  /** What to do about it, as its reader reads it. */
  public String fix() {
    return remedy.text(unit);
  }

  /** How bad a finding is. */
  public enum Severity {
    /** The piece can't be made as it stands. */
    ERROR,
    /** It can be made, but may disappoint. */
    WARNING,
    /** Worth knowing. */
    NOTE
  }
}
