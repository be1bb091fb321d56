package outshop.mend;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Part;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.rules.Bound;
import outshop.rules.RuleBook;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;
import outshop.units.Unit;

/**
 * What a part would have to be like, gathered over every comparison in which one side is a value of
 * its own: the limit or the demand of a finding, whether it stands or is fine.
 */
final class Needs {
  private final Plan plan;
  private final Collection<Finding> findings;
  private final RuleBook book;
  private final Catalogue catalogue;

  Needs(Inspection.Seen seen, RuleBook book, Catalogue catalogue) {
    this.plan = seen.plan();
    this.findings = seen.findings();
    this.book = book;
    this.catalogue = catalogue;
  }

  /** A value that one column of a part must reach, or must not pass. */
  private record Asked(Column column, boolean atLeast, double value, Unit unit, boolean stands) {
    boolean isMetBy(Part part) {
      Double has = part.numbers().get(column.name());
      return has != null
          && !has.isNaN()
          && (atLeast ? !Exact.below(has, value) : !Exact.above(has, value));
    }

    Asked and(Asked other) {
      boolean harder = atLeast ? other.value > value : other.value < value;
      return new Asked(column, atLeast, harder ? other.value : value, unit, stands || other.stands);
    }
  }

  /** What each part would need that a standing finding is about. */
  List<Need> of(Collection<Finding> standing) {
    Map<Fitted, Set<Finding>> inTheWay = new LinkedHashMap<>();
    for (Finding finding : standing) {
      for (Fitted part : about(finding)) {
        inTheWay.computeIfAbsent(part, p -> new LinkedHashSet<>()).add(finding);
      }
    }
    List<Need> needs = new ArrayList<>();
    inTheWay.forEach(
        (part, stand) -> {
          Collection<Asked> asked = asked(part, stand).values();
          if (asked.stream().anyMatch(Asked::stands)) {
            needs.add(need(part, List.copyOf(stand), asked));
          }
        });
    return needs;
  }

  private Need need(Fitted part, List<Finding> stand, Collection<Asked> asked) {
    List<Part> others = catalogue.of(part.kind());
    List<Need.Ask> asks = new ArrayList<>();
    for (Asked ask : asked) {
      asks.add(
          new Need.Ask(
              ask.column().name(),
              ask.column().help(),
              ask.atLeast(),
              AmountText.text(ask.value(), ask.unit()),
              ask.stands(),
              (int) others.stream().filter(ask::isMetBy).count()));
    }
    int meeting =
        (int) others.stream().filter(o -> asked.stream().allMatch(a -> a.isMetBy(o))).count();
    return new Need(part.name(), part.kind().word(), stand, asks, meeting, others.size());
  }

  /** The parts whose own values a finding compares. */
  private List<Fitted> about(Finding finding) {
    List<Fitted> parts = new ArrayList<>();
    finding.demand().flatMap(d -> owner(d.label())).ifPresent(parts::add);
    finding
        .limit()
        .flatMap(l -> owner(l.label()))
        .filter(p -> !parts.contains(p))
        .ifPresent(parts::add);
    return parts;
  }

  private Optional<Fitted> owner(String label) {
    int colon = label.indexOf(": ");
    return colon < 0
        ? Optional.empty()
        : plan.part(label.substring(0, colon)).filter(p -> column(p, label).isPresent());
  }

  private static Optional<Column> column(Fitted part, String label) {
    String words = label.substring(label.indexOf(": ") + 2);
    return Columns.of(part.kind()).stream()
        .filter(c -> c.isNumber() && c.name().replace('_', ' ').equals(words))
        .findFirst();
  }

  /** By column and side, so that a window has both its ends. */
  private Map<String, Asked> asked(Fitted part, Set<Finding> stand) {
    Map<String, Asked> asked = new TreeMap<>();
    for (Finding finding : findings) {
      ask(part, finding, stand.contains(finding))
          .ifPresent(
              a -> asked.merge(a.column().name() + (a.atLeast() ? " from" : " to"), a, Asked::and));
    }
    return asked;
  }

  private Optional<Asked> ask(Fitted part, Finding finding, boolean stands) {
    if (finding.demand().isEmpty() || finding.limit().isEmpty()) {
      return Optional.empty();
    }
    Optional<Bound> bound = bound(finding);
    Amount.Known demand = finding.demand().get();
    Amount.Known limit = finding.limit().get();
    boolean own = owner(limit.label()).filter(part::equals).isPresent();
    boolean demands = owner(demand.label()).filter(part::equals).isPresent();
    if (bound.isEmpty() || own == demands) {
      return Optional.empty();
    }
    boolean over = bound.get().over();
    double factor = bound.get().factor();
    String label = own ? limit.label() : demand.label();
    Column column = column(part, label).orElseThrow();
    double value = own ? demand.value() / factor : limit.value() * factor;
    return Optional.of(new Asked(column, over == own, value, limit.unit(), stands));
  }

  /** The bound of a violation; of a finding that stands, the one it passed. */
  private Optional<Bound> bound(Finding finding) {
    return book.find(finding.rule()).stream()
        .flatMap(r -> r.bounds().stream())
        .filter(
            b ->
                b.outcome() == Outcome.VIOLATION
                    || (finding.outcome() == Outcome.WARNING && b.outcome() == Outcome.WARNING))
        .findFirst();
  }
}
