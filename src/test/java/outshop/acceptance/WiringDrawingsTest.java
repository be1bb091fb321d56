package outshop.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Node;
import outshop.circuit.Circuit;
import outshop.circuit.CircuitBuilder;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.State;
import outshop.circuit.Station;
import outshop.drawing.WireList;
import outshop.drawing.WiringDrawing;
import outshop.findings.Consequence;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.plan.Plan;
import outshop.render.FindingBuilder;
import outshop.render.drawing.WiringSvg;

/** Reads every drawing back from its SVG and holds it against the circuit. */
final class WiringDrawingsTest {
  /** A plan with what the drawing is made of. */
  record Subject(String name, Plan plan, Circuit circuit, List<Finding> findings) {
    static Subject of(String name, Plan plan) {
      Circuit circuit = CircuitBuilder.build(plan);
      return new Subject(name, plan, circuit, Sample.report(plan).findings());
    }

    WiringDrawing drawing() {
      return WiringDrawing.of(circuit, plan);
    }

    @Override
    public String toString() {
      return name;
    }
  }

  private static final Map<String, Subject> SUBJECTS = subjects();

  private static Map<String, Subject> subjects() {
    Map<String, Subject> subjects = new LinkedHashMap<>();
    for (var path : Sample.plans()) {
      String name = path.getFileName().toString();
      subjects.put(name, Subject.of(name, Sample.plan(path)));
    }
    OddPlans.all().forEach((name, plan) -> subjects.put(name, Subject.of(name, plan)));
    return subjects;
  }

  static Stream<Subject> plans() {
    return SUBJECTS.values().stream();
  }

  private static final Map<String, List<Drawn>> DRAWN = new HashMap<>();

  /** The drawing as wired, then one for each state. */
  private static void everyDrawing(Subject subject, Consumer<Drawn> check) {
    DRAWN.computeIfAbsent(subject.name(), n -> drawn(subject)).forEach(check);
  }

  private static List<Drawn> drawn(Subject subject) {
    WiringDrawing drawing = subject.drawing();
    List<Drawn> all = new ArrayList<>();
    String asWired = WiringSvg.asWired(drawing, subject.findings());
    all.add(new Drawn(subject, subject.circuit().running(), false, ReadBack.of(asWired)));
    for (State state : subject.circuit().states()) {
      String svg = WiringSvg.in(state, drawing, subject.findings());
      all.add(new Drawn(subject, state, true, ReadBack.of(svg)));
    }
    return all;
  }

  /** One drawing, read back. */
  record Drawn(Subject subject, State state, boolean marksLive, ReadBack back) {
    String about(Object what) {
      return subject.name() + ", " + (marksLive ? state.words() : "as wired") + ": " + what;
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyLinkIsDrawnOnceBetweenThePortsOfItsTerminals(Subject subject) {
    everyDrawing(
        subject,
        drawn -> {
          List<String> expected = new ArrayList<>();
          for (Link link : subject.circuit().links()) {
            expected.add(link.name() + ": " + link.from() + " > " + link.to());
          }
          List<String> read = new ArrayList<>();
          for (ReadBack.Line line : drawn.back().lines) {
            read.add(line.link() + ": " + line.from() + " > " + line.to());
            onPort(drawn, line, line.from(), line.first());
            onPort(drawn, line, line.to(), line.last());
          }
          assertThat(read).as(drawn.about("links")).containsExactlyInAnyOrderElementsOf(expected);
        });
  }

  private static void onPort(Drawn drawn, ReadBack.Line line, String terminal, int[] end) {
    assertThat(drawn.back().ports.getOrDefault(terminal, List.of()))
        .as(drawn.about(line.link() + " at " + terminal))
        .anySatisfy(port -> assertThat(port).containsExactly(end));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void theWireListReadBackIsThatOfThePlan(Subject subject) {
    List<String> expected = new ArrayList<>();
    for (WireList.Row row : WireList.of(subject.circuit()).rows()) {
      expected.add(row.number() + " " + row.from() + " " + row.to() + " " + row.colour().code());
    }
    everyDrawing(
        subject,
        drawn -> {
          Map<Integer, String> read = new TreeMap<>();
          for (ReadBack.Line line : drawn.back().lines) {
            if (!line.wire().isEmpty()) {
              int number = Integer.parseInt(line.wire());
              String code = code(line.style());
              assertThat(
                      read.put(number, number + " " + line.from() + " " + line.to() + " " + code))
                  .as(drawn.about("wire " + number + " once"))
                  .isNull();
              assertThat(labels(drawn, line.link()))
                  .as(drawn.about("the label of wire " + number))
                  .contains(code.equals("--") ? "" + number : number + " " + code);
            }
          }
          assertThat(read.values()).as(drawn.about("wires")).containsExactlyElementsOf(expected);
        });
  }

  private static List<String> labels(Drawn drawn, String link) {
    return drawn.back().words.getOrDefault(link, List.of());
  }

  /** The colour's code from the style of a wire. */
  private static String code(String style) {
    assertThat(style).startsWith("w-wire w-");
    String word = style.split(" ")[1].substring(2);
    return word.equals("any") ? "--" : word.toUpperCase(Locale.ROOT);
  }

  @ParameterizedTest
  @MethodSource("plans")
  void linesAreLevelOrUprightAndKeepOutOfBoxes(Subject subject) {
    everyDrawing(
        subject,
        drawn -> {
          List<String> faults = new ArrayList<>();
          for (ReadBack.Line line : drawn.back().lines) {
            for (int[] p : line.pieces()) {
              if (p[0] != p[2] && p[1] != p[3]) {
                faults.add(line.link() + " slants");
              }
              for (ReadBack.Area box : drawn.back().boxes) {
                if (!isInsideOwn(line, box) && passes(p, box)) {
                  faults.add(line.link() + " through " + box.name());
                }
              }
            }
          }
          assertThat(faults).as(drawn.about("lines")).isEmpty();
        });
  }

  /** A contact, a fuse and the like belong into their box; a wire does not, even into its own. */
  private static boolean isInsideOwn(ReadBack.Line line, ReadBack.Area box) {
    return line.wire().isEmpty()
        && line.from().startsWith(box.name() + ".")
        && line.to().startsWith(box.name() + ".");
  }

  /** Whether a piece has a point within a box, its edge not counted. */
  private static boolean passes(int[] p, ReadBack.Area box) {
    return Math.min(p[0], p[2]) < box.right()
        && Math.max(p[0], p[2]) > box.left()
        && Math.min(p[1], p[3]) < box.bottom()
        && Math.max(p[1], p[3]) > box.top();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void boxesAndLabelsKeepClearOfEachOther(Subject subject) {
    everyDrawing(
        subject,
        drawn -> {
          List<ReadBack.Area> areas = new ArrayList<>(drawn.back().boxes);
          drawn.back().labels.forEach(l -> areas.add(l.area()));
          List<String> faults = new ArrayList<>();
          for (int i = 0; i < areas.size(); i++) {
            for (int j = i + 1; j < areas.size(); j++) {
              if (areas.get(i).overlaps(areas.get(j))) {
                faults.add(areas.get(i) + " over " + areas.get(j));
              }
            }
          }
          assertThat(faults).as(drawn.about("boxes and labels")).isEmpty();
        });
  }

  @ParameterizedTest
  @MethodSource("plans")
  void whatIsDrawnOpenIsWhatDoesNotConduct(Subject subject) {
    everyDrawing(
        subject,
        drawn -> {
          Map<String, Link> links = new LinkedHashMap<>();
          subject.circuit().links().forEach(l -> links.put(l.name(), l));
          for (ReadBack.Line line : drawn.back().lines) {
            boolean closed = links.get(line.link()).closed().in(drawn.state());
            assertThat(line.closed()).as(drawn.about(line.link())).isEqualTo(closed);
            assertThat(line.strokes()).as(drawn.about(line.link())).hasSize(closed ? 1 : 2);
            boolean between = !labels(drawn, line.link()).isEmpty();
            if (between) {
              boolean says = labels(drawn, line.link()).stream().anyMatch(l -> l.endsWith("open"));
              assertThat(says).as(drawn.about("open at " + line.link())).isEqualTo(!closed);
            }
          }
        });
  }

  @ParameterizedTest
  @MethodSource("plans")
  void whatIsMarkedLiveIsWhatTheCircuitJoins(Subject subject) {
    everyDrawing(
        subject,
        drawn -> {
          Joins joins = new Joins(subject.circuit(), drawn.state());
          for (ReadBack.Line line : drawn.back().lines) {
            Set<String> expected =
                drawn.marksLive() && line.closed()
                    ? poles(subject, drawn.state(), joins, line.from())
                    : Set.of();
            assertThat(line.live()).as(drawn.about(line.link())).isEqualTo(expected);
            weight(drawn, line);
          }
        });
  }

  /** The words, from the circuit alone: every pole that this terminal is joined to. */
  private static Set<String> poles(Subject subject, State state, Joins joins, String terminal) {
    Set<String> poles = new TreeSet<>();
    for (var device : subject.circuit().devices()) {
      String kind =
          switch (device.sort()) {
            case PACK -> "pack";
            case CHARGER -> "charger";
            default -> "";
          };
      for (String pole : kind.isEmpty() ? List.<String>of() : List.of("plus", "minus")) {
        if (joins.joined(device.terminal(pole), terminal)) {
          poles.add(kind + " " + pole);
        }
      }
    }
    if (state.onLiveRails()
        && (joins.joined("left-rail", terminal) || joins.joined("right-rail", terminal))) {
      poles.add("live rails");
    }
    return poles;
  }

  /** Not by colour alone: by the weight of the line and, between boxes, by a label. */
  private static void weight(Drawn drawn, ReadBack.Line line) {
    Optional<String> weight =
        Stream.of("w-plus", "w-minus", "w-dead").filter(line.style()::contains).findFirst();
    if (!drawn.marksLive()) {
      assertThat(weight).isEmpty();
      return;
    }
    boolean minusOnly = line.live().stream().allMatch(p -> p.endsWith("minus"));
    String expected = line.live().isEmpty() ? "w-dead" : minusOnly ? "w-minus" : "w-plus";
    assertThat(weight).as(drawn.about(line.link())).contains(expected);
    List<String> labels = labels(drawn, line.link());
    if (!labels.isEmpty() && !line.live().isEmpty()) {
      List<String> marks = new ArrayList<>();
      Map<String, String> markOf = new LinkedHashMap<>();
      markOf.put("pack plus", "P+");
      markOf.put("pack minus", "P−");
      markOf.put("charger plus", "C+");
      markOf.put("charger minus", "C−");
      markOf.put("live rails", "R");
      markOf.forEach(
          (words, mark) -> marks.addAll(line.live().contains(words) ? List.of(mark) : List.of()));
      String joined = String.join(" ", marks);
      String far = "(" + line.wire() + ") " + joined;
      assertThat(labels)
          .as(drawn.about(line.link()))
          .anySatisfy(l -> assertThat(l).isIn(joined, far));
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everythingWiredHasABoxAndEveryTerminalItsPort(Subject subject) {
    everyDrawing(
        subject,
        drawn -> {
          Set<String> terminals = new TreeSet<>();
          for (Link link : subject.circuit().links()) {
            terminals.add(link.from());
            terminals.add(link.to());
          }
          assertThat(drawn.back().ports.keySet()).as(drawn.about("ports")).containsAll(terminals);
          Set<String> boxes = new TreeSet<>();
          drawn.back().boxes.forEach(b -> boxes.add(b.name()));
          subject
              .circuit()
              .devices()
              .forEach(d -> assertThat(boxes).as(drawn.about("boxes")).contains(d.name()));
        });
  }

  @ParameterizedTest
  @MethodSource("plans")
  void theSamePlanGivesTheSameBytes(Subject subject) {
    State state = subject.circuit().charging();
    String once = WiringSvg.in(state, subject.drawing(), subject.findings());
    String again = WiringSvg.in(state, subject.drawing(), subject.findings());
    assertThat(again).isEqualTo(once);
    assertThat(once).doesNotContain("\r");
  }

  /** Warm, the quickest of some tries: the machine may be busy with other things. */
  @ParameterizedTest
  @MethodSource("plans")
  void aDrawingTakesLessThanThreeTenthsOfASecond(Subject subject) {
    long quickest = Long.MAX_VALUE;
    for (int i = 0; i < 5; i++) {
      long start = System.nanoTime();
      String svg = WiringSvg.asWired(subject.drawing(), subject.findings());
      quickest = Math.min(quickest, System.nanoTime() - start);
      assertThat(svg).endsWith("</svg>\n");
    }
    assertThat(quickest / 1_000_000).isLessThan(300);
  }

  @Test
  void faultsAreMarkedWhereTheyHang() {
    Subject subject = SUBJECTS.get("jack-the-wrong-way.yaml");
    ReadBack back = ReadBack.of(WiringSvg.asWired(subject.drawing(), subject.findings()));
    List<String> shown = back.shown();
    assertThat(shown).contains("violation 1", "violation 2");
    assertThat(String.join("\n", shown))
        .contains("violation 1 at receiver")
        .contains("charger feeds receiver instead of the pack")
        .contains("violation 2 at jack");
    assertThat(back.elements("g").stream().map(g -> g.getAttribute("data-arm")))
        .filteredOn(arm -> !arm.isEmpty())
        .hasSize(4)
        .containsOnly("stop");
    for (String name : List.of("receiver", "jack")) {
      assertThat(back.elements("rect"))
          .filteredOn(r -> r.getAttribute("data-box").equals(name))
          .singleElement()
          .satisfies(r -> assertThat(r.getAttribute("class")).contains("w-faulty"));
    }
    assertThat(back.elements("rect"))
        .filteredOn(r -> r.getAttribute("class").contains("w-faulty"))
        .hasSize(2);
  }

  @Test
  void aFaultOfAWireIsMarkedAtTheWire() {
    Subject subject = SUBJECTS.get("jack-the-wrong-way.yaml");
    Finding atWire =
        FindingBuilder.of("current/wire-overloaded", Outcome.WARNING, Consequence.DEGRADES)
            .at(Station.WIRING, "jack.sleeve - receiver.in-", "wire of the return")
            .says("It is thin")
            .build();
    ReadBack back = ReadBack.of(WiringSvg.asWired(subject.drawing(), List.of(atWire)));
    List<String> labels =
        back.labels.stream()
            .filter(l -> l.link().equals("jack.sleeve - receiver.in-"))
            .map(ReadBack.Text::words)
            .toList();
    assertThat(labels).anySatisfy(l -> assertThat(l).isIn("warning 1", "1"));
    assertThat(back.shown()).contains("warning 1 at wire of the return: It is thin");
    assertThat(back.elements("g").stream().map(g -> g.getAttribute("data-arm")))
        .contains("caution")
        .doesNotContain("stop");
  }

  @Test
  void aSoundPlanBearsNoMark() {
    Subject subject = SUBJECTS.get("sallowmere-tank.yaml");
    String svg = WiringSvg.asWired(subject.drawing(), subject.findings());
    assertThat(svg).doesNotContain("data-arm").doesNotContain("violation");
  }

  @Test
  void wiresThatMeetInOneTerminalPartAtADot() {
    Subject subject = SUBJECTS.get("sallowmere-tank.yaml");
    ReadBack back = ReadBack.of(WiringSvg.asWired(subject.drawing(), List.of()));
    assertThat(back.joints).isNotEmpty();
    for (int[] joint : back.joints) {
      long lines =
          back.lines.stream().filter(l -> l.pieces().stream().anyMatch(p -> on(p, joint))).count();
      assertThat(lines).isGreaterThan(1);
    }
  }

  private static boolean on(int[] p, int[] at) {
    return Math.min(p[0], p[2]) <= at[0]
        && at[0] <= Math.max(p[0], p[2])
        && Math.min(p[1], p[3]) <= at[1]
        && at[1] <= Math.max(p[1], p[3]);
  }

  @Test
  void whoeverDoesNotSeeItHearsEveryWireAndContact() {
    Subject subject = SUBJECTS.get("thistlewick-tender.yaml");
    State state = subject.circuit().charging();
    ReadBack back = ReadBack.of(WiringSvg.in(state, subject.drawing(), subject.findings()));
    assertThat(back.root().getAttribute("role")).isEqualTo("img");
    assertThat(back.root().getFirstChild().getNextSibling().getTextContent())
        .isEqualTo(
            "Wiring of Thistlewick engine and tender, in this state: plug in, switch charge; what is"
                + " live is marked");
    String desc = back.elements("desc").get(0).getTextContent();
    assertThat(desc)
        .contains("Contacts are drawn with plug in, switch charge.")
        .contains(
            "Wire 7, red, gauge 20 AWG, length 100 mm: switch.charge to jack.pin, joined to pack plus and charger plus.")
        .contains("Switch contact switch run: switch.common to switch.run, open.")
        .contains("Switch contact switch charge: switch.common to switch.charge, closed, joined to")
        .contains("not used at decoder: out-2");
    assertThat(desc.lines()).hasSizeGreaterThan(subject.circuit().links().size());
  }

  @Test
  void hostileTextShowsAsText() {
    Subject subject = SUBJECTS.get("hostile");
    String svg = WiringSvg.asWired(subject.drawing(), subject.findings());
    ReadBack back = ReadBack.of(svg);
    assertThat(back.elements("script")).isEmpty();
    assertThat(svg).doesNotContain("<script").doesNotContain("\u202E");
    assertThat(String.join(" ", back.shown())).contains("<script>alert(1)").contains("\\u202e");
    assertThat(back.shown()).allSatisfy(t -> assertThat(t.length()).isLessThan(400));
    assertThat(back.elements("title").stream().map(Node::getTextContent))
        .as("the whole title")
        .anySatisfy(t -> assertThat(t).contains("W".repeat(10_000)))
        .anySatisfy(t -> assertThat(t).startsWith(OddPlans.LONGEST_NAME));
    int width = Integer.parseInt(back.root().getAttribute("width"));
    assertThat(width).isLessThan(1600);
  }

  @Test
  void nothingIsFetchedAndNothingRuns() {
    for (Subject subject : SUBJECTS.values()) {
      String svg = WiringSvg.asWired(subject.drawing(), subject.findings());
      String bare = svg.replace("http://www.w3.org/2000/svg", "");
      assertThat(bare).doesNotContain("http", "url(", "@import", "href", "<image", "onload");
    }
  }

  /** The dash pattern of each colour is its own, so black and white print tells them apart too. */
  @Test
  void everyColourHasAPatternOfItsOwn() {
    String svg = WiringSvg.asWired(SUBJECTS.get("sallowmere-tank.yaml").drawing(), List.of());
    List<String> patterns = new ArrayList<>();
    for (String code : List.of("rd", "bk", "og", "gy", "bu", "wh", "ye", "gn", "vt")) {
      var rule = Pattern.compile("\\.w-" + code + " \\{ stroke: [^;]+;(.*?)\\}").matcher(svg);
      assertThat(rule.find()).as(code).isTrue();
      patterns.add(rule.group(1).strip());
    }
    assertThat(patterns).doesNotHaveDuplicates();
  }
}
