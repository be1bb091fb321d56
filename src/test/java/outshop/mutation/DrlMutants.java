package outshop.mutation;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import outshop.figures.Standing;
import outshop.mutation.DrlText.Call;
import outshop.mutation.DrlText.Fact;
import outshop.mutation.DrlText.Span;
import outshop.rules.RuleText;
import outshop.units.Amount;
import outshop.units.Said;

/** The faults that are put into the rule itself. */
final class DrlMutants {
  private static final Pattern COMPARED =
      Pattern.compile("(?s)([^=!<>]*?)(==|!=|<=|>=|<|>)(?!=)\\s*(.*)");
  private static final Pattern VALUE = Pattern.compile("\\$\\w+\\.\\w+\\(\\)");
  private static final Set<Class<?>> JUDGED = Set.of(Amount.class, Said.class, Standing.class);
  private static final Pattern BINDING = Pattern.compile("(?s)\\$\\w+\\s*:\\s*[\\w.]+");

  private final RuleText page;
  private final DrlText drl;
  private final List<Mutant> mutants = new ArrayList<>();

  private DrlMutants(RuleText page, String drl) {
    this.page = page;
    this.drl = new DrlText(drl);
  }

  static List<Mutant> of(RuleText page, String drl) {
    DrlMutants mutants = new DrlMutants(page, drl);
    mutants.drl.facts().forEach(mutants::fact);
    mutants.comparisons("atMost", "atLeast");
    mutants.comparisons("atLeast", "atMost");
    mutants.situations();
    mutants.words();
    mutants.values();
    mutants.add(Fault.RULE_REMOVED, page.name(), "");
    return mutants.mutants;
  }

  private void fact(Fact fact) {
    String whole = drl.text(fact.whole());
    for (int i = 0; i < fact.conditions().size(); i++) {
      condition(fact.conditions(), i);
    }
    if (fact.variable().map(v -> !drl.uses(v, fact.whole())).orElse(true)) {
      add(Fault.PATTERN_DROPPED, whole, drl.with(fact.whole(), ""));
    }
    fact.prefix()
        .ifPresent(
            prefix -> {
              String other = drl.text(prefix).equals("not") ? "exists" : "not";
              add(Fault.PATTERN_TURNED, whole, drl.with(prefix, other));
            });
  }

  private void condition(List<Span> all, int index) {
    Span condition = all.get(index);
    String text = drl.text(condition);
    if (BINDING.matcher(text).matches()) {
      return;
    }
    add(Fault.CONDITION_DROPPED, text, drl.with(withComma(all, index), ""));
    for (String joint : List.of("&&", "||")) {
      List<Span> operands = drl.split(condition, joint);
      for (Span operand : operands.size() > 1 ? operands : List.<Span>of()) {
        String only = drl.text(operand);
        add(Fault.CONDITION_DROPPED, text + " -> " + only, drl.with(condition, only));
      }
    }
    String negated = negated(text);
    add(Fault.CONDITION_NEGATED, text + " -> " + negated, drl.with(condition, negated));
  }

  /** The condition with the comma that parts it from its neighbour. */
  private static Span withComma(List<Span> all, int index) {
    if (index > 0) {
      return new Span(all.get(index - 1).to(), all.get(index).to());
    }
    return all.size() == 1
        ? all.get(index)
        : new Span(all.get(index).from(), all.get(index + 1).from());
  }

  private static String negated(String condition) {
    Matcher matcher = COMPARED.matcher(condition);
    boolean single = !condition.contains("&&") && !condition.contains("||");
    if (!single || !matcher.matches()) {
      return "!(" + condition + ")";
    }
    String right = matcher.group(3);
    if (right.equals("true") || right.equals("false")) {
      return matcher.group(1) + matcher.group(2) + " " + !Boolean.parseBoolean(right);
    }
    String opposite =
        switch (matcher.group(2)) {
          case "==" -> "!=";
          case "!=" -> "==";
          case "<" -> ">=";
          case ">=" -> "<";
          case ">" -> "<=";
          default -> ">";
        };
    return matcher.group(1) + opposite + " " + right;
  }

  private void comparisons(String name, String opposite) {
    for (Call call : drl.calls(name)) {
      Span demand = call.arguments().get(0);
      Span limit = call.arguments().get(1);
      String compared = drl.text(demand) + ", " + drl.text(limit);
      String what = name + "(" + compared + ")";
      String swapped = new DrlText(drl.with(limit, drl.text(demand))).with(demand, drl.text(limit));
      String turned = drl.with(call.name(), opposite);
      add(Fault.SIDES_SWAPPED, what, swapped);
      add(Fault.CALL_TURNED, what, turned);
      mutants.add(
          new Mutant(page.name(), Fault.COMPARISON_TURNED, what, PageMutants.turned(page), turned));
    }
  }

  /** Every other situation of the page, and fine, in place of the one that is reported. */
  private void situations() {
    List<Call> calls = new ArrayList<>(drl.calls("found"));
    calls.addAll(drl.calls("settle"));
    for (Call call : calls) {
      Span argument = call.arguments().get(0);
      TreeSet<String> others = new TreeSet<>(page.situations().keySet());
      if (drl.text(call.name()).equals("settle")) {
        others.add("fine");
      }
      for (String other : others) {
        String quoted = "\"" + other + "\"";
        if (!quoted.equals(drl.text(argument))) {
          add(
              Fault.SITUATION_REPLACED,
              drl.text(argument) + " -> " + quoted,
              drl.with(argument, quoted));
        }
      }
    }
  }

  private void words() {
    for (Call call : drl.calls("expect")) {
      Span word = call.arguments().get(1);
      String other = "\"something else\"";
      add(Fault.WORD_REPLACED, drl.text(word) + " -> " + other, drl.with(word, other));
    }
  }

  /** Every other value of the same fact and sort in place of the one that is judged. */
  private void values() {
    for (String name : List.of("atMost", "atLeast", "expect", "settle")) {
      for (Call call : drl.calls(name)) {
        Span all = new Span(call.arguments().get(0).from(), call.arguments().get(1).to());
        String arguments = drl.text(all);
        TreeSet<String> values = new TreeSet<>();
        Matcher matcher = VALUE.matcher(arguments);
        while (matcher.find()) {
          values.add(matcher.group());
        }
        values.forEach(value -> values(all, arguments, value));
      }
    }
  }

  private void values(Span all, String arguments, String value) {
    String variable = value.substring(0, value.indexOf('.'));
    String accessor = value.substring(value.indexOf('.') + 1, value.indexOf('('));
    for (String other : likes(variable, accessor)) {
      String replaced = arguments.replace(value, variable + "." + other + "()");
      add(Fault.VALUE_REPLACED, arguments + " -> " + replaced, drl.with(all, replaced));
    }
  }

  /** The other accessors of a fact that return the same type as one of them. */
  private List<String> likes(String variable, String accessor) {
    for (Fact fact : drl.facts()) {
      if (fact.variable().equals(Optional.of(variable))) {
        Class<?> type = drl.type(fact);
        Class<?> returned = accessors(type).getOrDefault(accessor, void.class);
        return JUDGED.contains(returned)
            ? accessors(type).entrySet().stream()
                .filter(e -> e.getValue().equals(returned) && !e.getKey().equals(accessor))
                .map(Map.Entry::getKey)
                .toList()
            : List.of();
      }
    }
    return List.of();
  }

  private static Map<String, Class<?>> accessors(Class<?> type) {
    Map<String, Class<?>> accessors = new TreeMap<>();
    for (Method method : type.getDeclaredMethods()) {
      boolean accessor =
          Modifier.isPublic(method.getModifiers())
              && !Modifier.isStatic(method.getModifiers())
              && method.getParameterCount() == 0;
      if (accessor) {
        accessors.put(method.getName(), method.getReturnType());
      }
    }
    return accessors;
  }

  private void add(Fault fault, String what, String changed) {
    String line = what.replaceAll("\\s+", " ");
    mutants.add(new Mutant(page.name(), fault, line, page, changed));
  }
}
