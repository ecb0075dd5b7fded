package facetwright.workbench.card;

import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.text.Reading;
import facetwright.script.text.Stretch;
import facetwright.workbench.card.text.Repair;
import facetwright.workbench.card.text.Repairs;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Fault;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The fault and the findings as marks in the text. They move along while one writes, until the desk
 * knows better.
 */
final class TextMarks {
  private final Desk desk;
  private final CardText text;
  private final ReadOnlyObjectWrapper<List<TextMark>> all = new ReadOnlyObjectWrapper<>(List.of());
  private final Map<Integer, Repair> mends = new HashMap<>();
  private List<Repair> repairs = List.of();

  TextMarks(Desk desk, CardText text) {
    this.desk = desk;
    this.text = text;
    text.area()
        .plainTextChanges()
        .subscribe(c -> move(c.getPosition(), c.getRemoved().length(), c.getInserted().length()));
    desk.heard().addListener((_, _, _) -> find());
    find();
  }

  ReadOnlyObjectProperty<List<TextMark>> all() {
    return all.getReadOnlyProperty();
  }

  /** Changes of the text that would put the fault right; none once the text has changed. */
  List<Repair> repairs() {
    return repairs;
  }

  /** A change of the text that would put a finding marked in this line right. */
  Optional<Repair> mendIn(int line) {
    return all.get().stream()
        .filter(m -> !m.isFault() && text.reading().line(m.at().start()) == line)
        .flatMap(m -> Optional.ofNullable(mends.get(m.number())).stream())
        .findFirst();
  }

  /** The mark at an offset, the fault before any finding. */
  Optional<TextMark> at(int offset) {
    return all.get().stream().filter(m -> m.at().holds(offset)).findFirst();
  }

  private void move(int at, int removed, int added) {
    repairs = List.of();
    mends.clear();
    if (!all.get().isEmpty()) {
      all.set(all.get().stream().map(m -> m.movedTo(m.at().moved(at, removed, added))).toList());
    }
  }

  private void find() {
    List<TextMark> found = new ArrayList<>();
    Fault fault = desk.fault().get();
    repairs = List.of();
    mends.clear();
    if (fault != null) {
      repairs =
          fault.isOf(text.text())
              ? Repairs.of(text.scope().get(), fault.site(), fault.mends())
              : List.of();
      faultAt(fault)
          .map(at -> new TextMark(at, 0, "fault", fault.message(), fault.remedy()))
          .ifPresent(found::add);
    }
    Design design = desk.design().get();
    if (design != null && fault == null) {
      boolean isOfText = desk.made().equals(text.text());
      for (int i = 0; i < design.findings().size(); i++) {
        Finding finding = design.findings().get(i);
        int number = i + 1;
        if (isOfText) {
          Repairs.of(text.scope().get(), finding.site(), finding.mends()).stream()
              .findFirst()
              .ifPresent(r -> mends.put(number, r));
        }
        text.reading()
            .stretch(finding.site().line(), finding.site().column())
            .ifPresent(at -> found.add(TextMark.of(at, number, finding)));
      }
    } else if (design != null) {
      all.get().stream().filter(m -> !m.isFault()).forEach(found::add);
    }
    all.set(List.copyOf(found));
  }

  /** What the fault is about: what a repair would change, else the word at its place. */
  private Optional<Stretch> faultAt(Fault fault) {
    Reading reading = text.reading();
    return repairs.isEmpty()
        ? reading.stretch(fault.site().line(), fault.site().column())
        : Optional.of(repairs.getFirst().at());
  }
}
