package outshop.mutation;

/** The kinds of deliberate faults, in the order in which they are reported. */
enum Fault {
  BOUND_OUTWARD("bound moved outward by 1 %"),
  BOUND_INWARD("bound moved inward by 1 %"),
  BOUND_TURNED("bound turned: over, under"),
  CALL_TURNED("call turned: at most, at least"),
  COMPARISON_TURNED("call and bounds turned"),
  SIDES_SWAPPED("demand and limit swapped"),
  BOUND_REMOVED("bound removed"),
  SITUATION_REMOVED("situation removed"),
  OUTCOME_CHANGED("outcome changed"),
  CONSEQUENCE_CHANGED("consequence changed"),
  PROTECTION_FLIPPED("protects-people flipped"),
  PROTECTION_WITHOUT_VIOLATION("protects-people flipped, no bound to a violation"),
  SITUATION_REPLACED("another situation reported"),
  WORD_REPLACED("another word expected"),
  VALUE_REPLACED("another value of the fact judged"),
  CONDITION_DROPPED("condition dropped"),
  CONDITION_NEGATED("condition negated"),
  PATTERN_DROPPED("pattern dropped"),
  PATTERN_TURNED("pattern turned: not, exists"),
  RULE_REMOVED("rule removed");

  private final String words;

  Fault(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
