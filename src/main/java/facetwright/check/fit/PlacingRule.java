package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.message.Message;
import facetwright.net.Parts.Placing;
import java.util.List;

/** Parts that can't go where the script says they go. They stay where they stand. */
public final class PlacingRule implements Rule {
  static final String NAME = "placing";

  @Override
  public List<Finding> find(Subject subject) {
    return subject.folded().together().refused().stream()
        .map(
            r -> {
              Placing placing = subject.net().parts().placings().get(r.placing());
              int panel = subject.net().parts().all().get(placing.part()).panels().getFirst();
              return new Finding(
                      NAME,
                      Finding.Severity.ERROR,
                      Message.of("%s.", r.why().capital()),
                      r.remedy(),
                      new Place.AtPanel(panel),
                      placing.site())
                  .telling(r.why());
            })
        .toList();
  }
}
