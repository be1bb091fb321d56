package outshop.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;
import outshop.rules.Words;

/** The rules speak so that somebody who knows no electronics can follow. */
final class WordsTest {
  private static final RuleBook BOOK = RuleBook.load();

  /** Raw, with its gaps; filled it becomes somewhat longer. */
  private static final int LONGEST_HEADLINE = 140;

  /** A word of the trade that a headline uses is explained. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "aerial",
        "alternating",
        "amplifier",
        "anode",
        "balance",
        "band",
        "barrel plug",
        "bay",
        "blocked",
        "blow",
        "bore",
        "break contact",
        "bulb",
        "capacitor",
        "cell",
        "changeover",
        "charger",
        "common",
        "connector",
        "contact",
        "continuity",
        "coreless",
        "cruising",
        "cut-off",
        "cut-out",
        "cuts off",
        "cuts out",
        "DCC",
        "decoder",
        "direct voltage",
        "drop-out",
        "filament",
        "forward voltage",
        "frame",
        "frequency",
        "function output",
        "fuse",
        "gauge",
        "grommet",
        "handset",
        "impedance",
        "insulation",
        "jack",
        "keyed",
        "LED",
        "link",
        "linear",
        "lithium",
        "load",
        "mains",
        "nickel",
        "nominal",
        "output",
        "pack",
        "parallel",
        "peak current",
        "pickup",
        "pin",
        "plain supply",
        "plug",
        "programming",
        "protection circuit",
        "rated",
        "rating",
        "receiver",
        "regulator",
        "relay",
        "resistor",
        "sensor",
        "series",
        "short circuit",
        "slipping",
        "smoke heater",
        "stranded",
        "string",
        "suppression parts",
        "switch",
        "throttle",
        "transistor",
        "trip",
        "vent",
        "volts",
        "winding"
      })
  void aTradeWordThatARuleUsesIsExplained(String word) {
    int flags = Character.isUpperCase(word.charAt(0)) ? 0 : Pattern.CASE_INSENSITIVE;
    Pattern whole = Pattern.compile("(?<![\\w-])" + Pattern.quote(word) + "(?![\\w-])", flags);
    List<String> using =
        BOOK.all().stream()
            .flatMap(rule -> rule.sentences().stream())
            .filter(sentence -> whole.matcher(sentence).find())
            .toList();

    assertThat(using).as("rules that use it; else take it off this list").isNotEmpty();
    assertThat(using)
        .allSatisfy(
            sentence ->
                assertThat(Words.usedIn(List.of(sentence)))
                    .as("words explained of: %s", sentence)
                    .anyMatch(w -> w.forms().stream().anyMatch(f -> word.equalsIgnoreCase(f))));
  }

  /** These say nothing to a beginner, and there is a plain word for each. */
  @Test
  void noHeadlineUsesAWordForWhichThereIsAPlainOne() {
    Pattern unplain =
        Pattern.compile(
            "\\b([ad]\\.c\\.|AC\\b|DC\\b|inrush|ampacity|resistive|inductive|back-EMF|derating|quiescent|ripple)");
    for (RuleText rule : BOOK.all()) {
      assertThat(headlines(rule))
          .as(rule.name())
          .noneMatch(sentence -> unplain.matcher(withoutGaps(sentence)).find());
    }
  }

  @Test
  void everyHeadlineIsOneShortSentenceWithoutAFullStop() {
    for (RuleText rule : BOOK.all()) {
      assertThat(headlines(rule))
          .as(rule.name())
          .isNotEmpty()
          .allMatch(sentence -> sentence.length() <= LONGEST_HEADLINE)
          .noneMatch(sentence -> sentence.endsWith(".") || sentence.endsWith("!"))
          .noneMatch(sentence -> sentence.contains(". "));
    }
  }

  @Test
  void theWordsStandInOrderEachOnceWithAMeaning() {
    List<Words.Word> words = Words.all();
    List<String> terms = words.stream().map(w -> w.term().toLowerCase(Locale.ROOT)).toList();
    List<String> forms = words.stream().flatMap(w -> w.forms().stream()).toList();

    assertThat(words).hasSizeGreaterThan(80);
    assertThat(terms).isSorted();
    assertThat(forms).doesNotHaveDuplicates();
    assertThat(words)
        .allSatisfy(
            w ->
                assertThat(w.meaning())
                    .hasSizeBetween(10, 180)
                    .doesNotEndWith(".")
                    .doesNotContainPattern("\\b(safe|safely|simply|just|obviously)\\b"));
  }

  private static String withoutGaps(String sentence) {
    return sentence.replaceAll("\\{[^}]*\\}", "");
  }

  private static List<String> headlines(RuleText rule) {
    List<String> headlines = new ArrayList<>();
    rule.bounds().forEach(bound -> headlines.add(rule.headline(bound)));
    rule.situations().values().forEach(situation -> headlines.add(situation.headline()));
    return headlines;
  }
}
