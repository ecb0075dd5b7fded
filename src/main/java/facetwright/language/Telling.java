package facetwright.language;

import facetwright.measure.Area;
import facetwright.measure.Length;
import facetwright.measure.Mass;
import facetwright.measure.Millilitres;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.words.Decimals;
import java.util.Collection;
import java.util.List;

/**
 * How a reader is told: in a language, in a unit, by a ruler. What is put into a phrase comes from
 * here, so that its numbers are those of the language.
 *
 * @param phrases of the language
 * @param unit what is only read, such as a finished size, is told in it
 * @param ruler what is set is told by its marks
 */
public record Telling(Phrases phrases, Unit unit, Ruler ruler) {

  /** A phrase with its values; see {@link Phrases#say}. */
  public String say(String key, Object... named) {
    return phrases.say(key, named);
  }

  /** As {@link Length#text}: "120.07 mm", in French "120,07 mm". */
  public String length(double mm) {
    return figures(new Length(mm).text(unit));
  }

  /** As {@link Length#read}: "4 3/4 in", "about 4 1/2 in". */
  public String read(double mm) {
    Ruler.Reading reading = Ruler.forSizes(unit).read(new Length(mm));
    String text = figures(reading.text());
    return reading.isAbout() ? say("measure.about", "measure", text) : text;
  }

  /** The nearest mark of the ruler, for what is not set more exactly than that. */
  public String mark(double mm) {
    return figures(ruler.read(new Length(mm)).text());
  }

  /** An area with so many decimals at most; see {@link Area#text}. */
  public String area(double mm2, int places) {
    return figures(new Area(mm2).text(unit, places));
  }

  /** An area of what is bought; see {@link Area#rough}. */
  public String rough(double mm2) {
    return figures(new Area(mm2).rough(unit));
  }

  /** "about 12 g"; see {@link Mass#rounded}. */
  public String about(Mass mass) {
    return say("measure.about", "measure", figures(mass.rounded(unit)));
  }

  /** "about 150 ml"; see {@link Millilitres#rounded}. */
  public String volume(double mm3) {
    return say("measure.about", "measure", figures(Millilitres.rounded(mm3)));
  }

  /** A number with so many decimals at most. */
  public String number(double number, int places) {
    return figures(Decimals.places(number, places));
  }

  /** "30.5°", to a tenth of a degree. */
  public String degrees(double degrees) {
    return figures(Decimals.places(degrees, 1) + "°");
  }

  /** Numbers as the language writes them; see {@link Phrases#figures}. */
  public String figures(String plain) {
    return phrases.figures(plain);
  }

  /** "a", "a and b", "a, b and c". */
  public String listed(Collection<String> words) {
    return phrases.listed(words);
  }

  /** "a; b; c", of what has commas in it. */
  public String apart(Collection<String> words) {
    return phrases.apart(words);
  }

  /** A name from a script in quotes, as it is written there. */
  public String quoted(String name) {
    return say("measure.quoted", "name", name);
  }

  /** "a", "a or b", "a, b or c". */
  public String either(Collection<String> words) {
    return phrases.either(words);
  }

  /** Numbers one after another; see {@link Phrases#numbers}. */
  public String numbers(List<String> numbers) {
    return phrases.numbers(numbers);
  }

  /** A semicolon as it stands after a word. */
  public String semicolon() {
    return phrases.semicolon();
  }

  /** How somebody is told in English, such as at a terminal. */
  public static Telling english(Unit unit, Ruler ruler) {
    return new Telling(Phrases.of(Language.ENGLISH), unit, ruler);
  }
}
