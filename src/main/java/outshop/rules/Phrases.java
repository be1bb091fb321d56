package outshop.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import outshop.circuit.At;
import outshop.findings.Finding;
import outshop.findings.Wording;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Want;

/**
 * The sentences of one finding, filled from its values when somebody reads them. It may be read
 * from several threads: each would make the same sentences.
 */
final class Phrases extends Wording {
  private static final String SOLVED = "circuit solved, ";

  private final RuleText rule;
  private final At at;

  /** Names of gaps and what fills them, in turn: an amount, a stated word or a word. */
  private final List<Object> fillings = new ArrayList<>(6);

  private final List<Amount.Known> shown = new ArrayList<>(4);
  private Origin sureness = Origin.STANDARD;
  private Amount.Known demand;
  private Amount.Known limit;
  private String sentence = "";
  private boolean hasGaps;
  private boolean hasCures;
  private List<Want> wants = List.of();

  private String headline;
  private List<Finding.Step> working;
  private List<String> cures;
  private List<String> assumed;

  Phrases(RuleText rule, At at) {
    this.rule = rule;
    this.at = at;
  }

  /** Fills a gap with an amount, which enters the working as well. */
  void add(String name, Amount amount) {
    fill(name, amount);
    if (amount instanceof Amount.Known known) {
      show(known);
    }
  }

  void add(String name, String word) {
    fill(name, word);
  }

  void add(String name, Said said) {
    fill(name, said);
  }

  private void fill(String name, Object filling) {
    fillings.add(name);
    fillings.add(filling);
  }

  private void show(Amount.Known known) {
    shown.add(known);
    sureness = sureness.and(known.origin());
  }

  /** What stands against what. */
  void compared(Amount.Known ofDemand, Amount.Known ofLimit) {
    demand = ofDemand;
    limit = ofLimit;
    show(ofDemand);
    show(ofLimit);
  }

  /**
   * The sentence it comes to.
   *
   * @param withCures whether the rule's cures belong to it
   */
  void say(String words, boolean withCures) {
    sentence = words;
    hasGaps = true;
    hasCures = withCures;
  }

  /** That it cannot be told. */
  void cannotTell(List<Want> missing) {
    wants = missing;
  }

  /** The least sure origin among the values. */
  Origin sureness() {
    return sureness;
  }

  @Override
  public String headline() {
    if (headline == null) {
      headline = hasGaps ? Texts.fill(rule.name(), sentence, texts()) + whatToDo() : untold();
    }
    return headline;
  }

  /** The first cure, so that whoever reads no further knows what to do. */
  private String whatToDo() {
    return cures().isEmpty() ? "" : "; " + inside(cures().get(0));
  }

  /** A sentence as it goes on inside another; a word of capitals (LED) stays as it is. */
  private static String inside(String sentence) {
    boolean word = sentence.length() > 1 && Character.isLowerCase(sentence.charAt(1));
    return word
        ? sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1)
        : sentence;
  }

  private String untold() {
    List<String> names = new ArrayList<>();
    for (Want want : wants) {
      names.add(want.name());
    }
    return "Cannot tell about " + at.described() + ": wanted is " + String.join(", ", names);
  }

  @Override
  public List<Finding.Step> working() {
    if (working == null) {
      working = List.copyOf(Workings.of(shown));
    }
    return working;
  }

  @Override
  public List<String> cures() {
    if (cures == null) {
      List<String> filled = new ArrayList<>();
      if (hasCures) {
        Map<String, String> texts = texts();
        for (String cure : rule.cures()) {
          filled.add(Texts.fill(rule.name(), cure, texts));
        }
      }
      cures = List.copyOf(filled);
    }
    return cures;
  }

  @Override
  public List<String> assumed() {
    if (assumed == null) {
      List<String> texts = new ArrayList<>();
      for (Amount.Known amount : shown) {
        for (Amount.Known leaf : amount.assumptions()) {
          String text = leaf.label() + " " + AmountText.text(leaf);
          if (!texts.contains(text)) {
            texts.add(text);
          }
        }
      }
      assumed = List.copyOf(texts);
    }
    return assumed;
  }

  private Map<String, String> texts() {
    Map<String, String> texts = new HashMap<>();
    texts.put("at", at.described());
    texts.put("name", at.called());
    for (int i = 0; i < fillings.size(); i += 2) {
      texts.put((String) fillings.get(i), text(fillings.get(i + 1)));
    }
    if (demand != null) {
      String[] pair = AmountText.pair(demand, limit);
      double share = limit.value() == 0 ? 0 : demand.value() / limit.value();
      texts.put("demand", pair[0]);
      texts.put("limit", pair[1]);
      texts.put("when", when(demand));
      texts.put("by", AmountText.text(Math.abs(demand.value() - limit.value()), demand.unit()));
      texts.put("percent", AmountText.percent(share));
    }
    return texts;
  }

  private static String text(Object filling) {
    if (filling instanceof Amount.Known known) {
      return AmountText.text(known);
    }
    if (filling instanceof Amount amount) {
      return amount.isAbsent() ? "none" : "not stated";
    }
    return filling instanceof Said said ? said.or("not stated") : (String) filling;
  }

  /** What case a solved figure belongs to, in words; nothing for other values. */
  private static String when(Amount.Known demand) {
    return demand.how().startsWith(SOLVED) ? demand.how().substring(SOLVED.length()) : "";
  }
}
