package facetwright.script;

import facetwright.net.Net;
import facetwright.net.Parts;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetLayout.Share;
import facetwright.net.sheet.Stock;
import facetwright.script.api.PartCard;
import facetwright.script.api.PartDraft;
import facetwright.script.api.Session;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Lays the net of a script on the sheets it names, or on the smallest common ones. */
final class Laying {
  private final Session session;

  private Laying(Session session) {
    this.session = session;
  }

  /**
   * @param drafts for each of the net's parts what the script says of it
   */
  static Laid of(Session session, Net net, List<PartDraft> drafts) {
    Laying laying = new Laying(session);
    return drafts.stream().anyMatch(d -> d.card().isOwn())
        ? laying.byCard(net, drafts)
        : laying.all(net);
  }

  private Laid all(Net net) {
    List<Integer> pieces = IntStream.range(0, net.pieces()).boxed().toList();
    return SheetLayout.lay(net, List.of(new Share(session.sizes(), pieces)), session.rooms());
  }

  /** Each card on sheets of its own, in the order of the first piece that is cut from it. */
  private Laid byCard(Net net, List<PartDraft> drafts) {
    Map<List<Stock>, List<Integer>> pieces = new LinkedHashMap<>();
    int[] piece = net.pieceOfPanel();
    int next = 0;
    for (int p = 0; p < piece.length; p++) {
      if (piece[p] == next) {
        pieces.computeIfAbsent(stock(net.parts(), drafts, p), _ -> new ArrayList<>()).add(next);
        next++;
      }
    }
    List<Share> shares =
        pieces.entrySet().stream().map(e -> new Share(e.getKey(), e.getValue())).toList();
    return SheetLayout.lay(net, shares, session.rooms());
  }

  /** The card that a panel is cut from, in the sizes it may come in. */
  private List<Stock> stock(Parts parts, List<PartDraft> drafts, int panel) {
    List<Stock> usual = session.sizes();
    for (int i = 0; i < drafts.size(); i++) {
      if (parts.all().get(i).panels().contains(panel)) {
        PartCard own = drafts.get(i).card();
        return own.size().isPresent()
            ? List.of(own.on(usual.getFirst()))
            : usual.stream().map(own::on).toList();
      }
    }
    return usual;
  }
}
