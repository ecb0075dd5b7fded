package facetwright.papers.chart;

import java.util.List;

/**
 * What is said of a step.
 *
 * @param text one or more sentences; what is a list stands in lines of its own
 * @param signs the short ways of telling that it uses, each as it is met first
 */
public record StepWords(String text, List<Sign> signs) {
  public StepWords {
    signs = List.copyOf(signs);
  }

  /** The same with more words after it. */
  public StepWords with(String more) {
    return more.isEmpty() ? this : new StepWords(text + more, signs);
  }

  /** The texts alone. */
  public static List<String> texts(List<StepWords> words) {
    return words.stream().map(StepWords::text).toList();
  }
}
