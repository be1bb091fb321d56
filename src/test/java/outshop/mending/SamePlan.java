package outshop.mending;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import outshop.catalogue.Part;
import outshop.plan.Fitted;
import outshop.plan.Plan;

/** Everything a plan says, without where it stands: what two plans that are the same agree in. */
final class SamePlan {
  private SamePlan() {}

  static List<String> said(Plan plan) {
    List<String> said = new ArrayList<>();
    new TreeMap<>(plan.stated())
        .forEach((path, at) -> said.add(path + " = " + at.texts() + " " + at.value()));
    parts(plan.parts(), said);
    parts(plan.materials(), said);
    plan.wires()
        .forEach(w -> said.add(w.from() + " - " + w.to() + " " + said(w.wire()) + w.length()));
    plan.accepted().forEach(a -> said.add(a.rule() + " at " + a.where() + " " + a.reason()));
    return said;
  }

  private static void parts(Collection<Fitted> parts, List<String> said) {
    parts.forEach(f -> said.add(f.name() + ": " + said(f.part())));
  }

  private static String said(Part part) {
    return part.kind()
        + " "
        + part.id()
        + " "
        + new TreeMap<>(part.numbers())
        + new TreeMap<>(part.words())
        + part.origin();
  }
}
