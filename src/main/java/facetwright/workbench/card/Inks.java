package facetwright.workbench.card;

import facetwright.script.scope.Known;
import facetwright.script.text.Reading;
import facetwright.script.text.Stretch;
import facetwright.script.text.Token;
import facetwright.script.vocabulary.Language;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.fxmisc.richtext.model.StyleSpans;
import org.fxmisc.richtext.model.StyleSpansBuilder;

/** Which ink each piece of the text is written in, and what is laid over it. */
final class Inks {
  private static final Collection<String> PLAIN = List.of();
  private static final Collection<String> COMMENT = List.of("ink-comment");
  private static final Collection<String> TEXT = List.of("ink-text");
  private static final Collection<String> NUMBER = List.of("ink-number");
  private static final Collection<String> KEYWORD = List.of("ink-keyword");
  private static final Collection<String> KNOWN = List.of("ink-known");
  private static final Collection<String> MARK = List.of("ink-mark");

  private Inks() {}

  /** A style over a stretch. */
  record Over(Stretch at, String style) {}

  /** The styles of a whole text that is not empty. */
  static StyleSpans<Collection<String>> of(Reading reading, List<Over> over) {
    StyleSpans<Collection<String>> base = base(reading);
    int length = reading.text().length();
    List<Over> within =
        over.stream()
            .map(o -> new Over(within(o.at(), length), o.style()))
            .filter(o -> !o.at().isEmpty())
            .toList();
    return within.isEmpty() ? base : base.overlay(layer(within, length), Inks::joined);
  }

  private static Stretch within(Stretch at, int length) {
    return new Stretch(Math.min(at.start(), length), Math.min(at.end(), length));
  }

  private static StyleSpans<Collection<String>> base(Reading reading) {
    List<Token> tokens = reading.tokens();
    StyleSpansBuilder<Collection<String>> spans = new StyleSpansBuilder<>(2 * tokens.size() + 1);
    int at = 0;
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      spans.add(PLAIN, token.start() - at);
      spans.add(ink(reading, i), token.length());
      at = token.end();
    }
    spans.add(PLAIN, reading.text().length() - at);
    return spans.create();
  }

  private static Collection<String> ink(Reading reading, int i) {
    return switch (reading.token(i).kind()) {
      case COMMENT -> COMMENT;
      case TEXT, PATTERN -> TEXT;
      case NUMBER -> NUMBER;
      case KEYWORD -> KEYWORD;
      case MARK -> MARK;
      case NAME -> isKnown(reading, i) ? KNOWN : PLAIN;
    };
  }

  private static boolean isKnown(Reading reading, int i) {
    if (!reading.is(reading.forth(i), '(')) {
      return false;
    }
    String word = reading.word(i);
    return reading.isDot(reading.back(i))
        ? !Known.members(word).isEmpty()
        : Known.function(Language.TOP, word).isPresent();
  }

  private static StyleSpans<Collection<String>> layer(List<Over> over, int length) {
    TreeSet<Integer> bounds = new TreeSet<>(List.of(0, length));
    for (Over each : over) {
      bounds.add(each.at().start());
      bounds.add(each.at().end());
    }
    StyleSpansBuilder<Collection<String>> spans = new StyleSpansBuilder<>();
    int from = 0;
    for (int to : bounds) {
      if (to > from) {
        int start = from;
        spans.add(
            over.stream().filter(o -> o.at().holds(start)).map(Over::style).distinct().toList(),
            to - from);
        from = to;
      }
    }
    return spans.create();
  }

  private static Collection<String> joined(Collection<String> base, Collection<String> over) {
    if (over.isEmpty()) {
      return base;
    }
    List<String> all = new ArrayList<>(base);
    all.addAll(over);
    return all;
  }
}
