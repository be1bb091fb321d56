package outshop.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import outshop.drawing.Box;
import outshop.drawing.LeadColour;
import outshop.drawing.Lettering;
import outshop.drawing.Live;
import outshop.drawing.Pole;
import outshop.drawing.Sign;
import outshop.drawing.WireList;
import outshop.drawing.WiringDrawing;

/** What stands below the drawing: findings, wire list, key, cautions. */
final class Below {
  private static final int LEFT = 14;
  private static final int LINE = 13;
  private static final int SIZE = 9;
  private static final int NAME_LETTERS = 20;
  private static final int[] COLUMNS = {0, 22, 140, 258, 310, 368};
  private static final int SAMPLE = 30;
  private static final int MOST_LINES = 6;

  private static final List<String> CAUTIONS =
      List.of(
          "Unplug the charger and take the pack's connector apart before you cut or solder anything;"
              + " a charged pack stays live at its terminals.",
          "The drawing shows what the plan says, rightly or wrongly. Makers' instructions and local"
              + " codes come first; what plugs into the mains is for qualified people.");

  private final WiringDrawing drawing;
  private final Faults faults;
  private final Optional<Live> live;
  private final int width;
  private final Svg svg = new Svg();
  private int y = 6;

  /**
   * @param listed whether the wire list belongs below it; a page has its own
   */
  Below(WiringDrawing drawing, Faults faults, Optional<Live> live, int width, boolean listed) {
    this.drawing = drawing;
    this.faults = faults;
    this.live = live;
    this.width = width;
    findings();
    if (listed) {
      wires();
    }
    otherColours();
    key();
    CAUTIONS.forEach(c -> paragraph("! ", c));
  }

  int height() {
    return y + 10;
  }

  void draw(Svg into) {
    into.append(svg);
  }

  private void findings() {
    for (Fault fault : faults.all()) {
      Arms.draw(svg, fault.aspect(), LEFT, y + 2);
      paragraph("    ", InWords.sentence(fault));
    }
    if (faults.elsewhere() > 0) {
      paragraph("", faults.elsewhere() + " more in the report, at nothing that is drawn here");
    }
  }

  private void paragraph(String lead, String text) {
    int start = LEFT + (lead.isBlank() && !lead.isEmpty() ? Arms.WIDTH + 4 : 0);
    int letters = (int) ((width - start - LEFT) / (SIZE * 0.6));
    String first = lead.isBlank() ? "" : lead;
    for (String line : Lettering.wrapped(first + text, letters, MOST_LINES)) {
      y += LINE;
      svg.text("text", line, "class", "w-note", "x", start, "y", y);
    }
  }

  private void wires() {
    List<WireList.Row> rows = drawing.wires().rows();
    int half = (rows.size() + 1) / 2;
    int top = y + 6;
    for (int i = 0; i < rows.size(); i++) {
      int x = LEFT + (i < half ? 0 : (width - 2 * LEFT) / 2 + 6);
      if (i == 0 || i == half) {
        row(x, top + LINE, "w-note w-strong", "no.", "from", "to", "gauge", "length", "colour");
      }
      WireList.Row w = rows.get(i);
      row(
          x,
          top + LINE * (2 + i - (i < half ? 0 : half)),
          "w-note",
          Integer.toString(w.number()),
          Lettering.shortened(w.from(), NAME_LETTERS),
          Lettering.shortened(w.to(), NAME_LETTERS),
          w.gaugeWords(),
          w.lengthWords(),
          w.colourWords());
    }
    y = top + (rows.isEmpty() ? 0 : LINE * (1 + half)) + 4;
  }

  /** Wires chosen in another colour than their lead ought to have. */
  private void otherColours() {
    List<String> numbers = new ArrayList<>();
    for (WireList.Row row : drawing.wires().rows()) {
      if (row.chosenColour().filter(c -> !c.equals(row.colour().word())).isPresent()) {
        numbers.add(Integer.toString(row.number()));
      }
    }
    if (!numbers.isEmpty()) {
      paragraph(
          "",
          "Chosen in another colour, so mark both ends in the colour listed: "
              + String.join(", ", numbers)
              + ".");
    }
  }

  private void row(int x, int at, String style, String... cells) {
    for (int i = 0; i < cells.length; i++) {
      svg.text("text", cells[i], "class", style, "x", x + COLUMNS[i], "y", at);
    }
  }

  private void key() {
    int x = LEFT;
    y += LINE + 4;
    for (LeadColour colour : colours().values()) {
      String words = colour.code() + " " + colour.word() + leads(colour);
      int room = SAMPLE + 6 + Lettering.width(words, SIZE, false) + 14;
      if (x + room > width - LEFT && x > LEFT) {
        x = LEFT;
        y += LINE;
      }
      sample(colour, x);
      svg.text("text", words, "class", "w-note", "x", x + SAMPLE + 6, "y", y);
      x += room;
    }
    paragraph("", kinds());
    live.ifPresent(l -> paragraph("", poles(l)));
  }

  private void sample(LeadColour colour, int x) {
    String d = "M" + x + " " + (y - 3) + " h" + SAMPLE;
    String code = Figure.code(colour);
    if (code.equals("wh") || code.equals("ye") || code.equals("bk")) {
      svg.empty("path", "class", "w-edge" + (code.equals("bk") ? " w-edge-bk" : ""), "d", d);
    }
    svg.empty("path", "class", "w-wire w-" + code, "d", d);
  }

  /** The colours that occur, each word once, in their order. */
  private TreeMap<LeadColour, LeadColour> colours() {
    TreeMap<LeadColour, LeadColour> used = new TreeMap<>();
    for (WireList.Row row : drawing.wires().rows()) {
      boolean known = used.keySet().stream().anyMatch(c -> c.code().equals(row.colour().code()));
      if (!known) {
        used.put(row.colour(), row.colour());
      }
    }
    return used;
  }

  private String leads(LeadColour colour) {
    List<String> leads = new ArrayList<>();
    for (WireList.Row row : drawing.wires().rows()) {
      boolean same = row.colour().code().equals(colour.code());
      if (same && !leads.contains(row.colour().lead())) {
        leads.add(row.colour().lead());
      }
    }
    return ": " + String.join("; ", leads);
  }

  private String kinds() {
    StringBuilder kinds =
        new StringBuilder(
            "Colours of decoder, motor and lamp leads: NMRA RP-9.1.1; red and black of the pack:"
                + " common practice.");
    if (drawing.boxes().stream().anyMatch(b -> b.sign() == Sign.CHARGER)) {
      kinds.append(" Dotted box: stays off the locomotive.");
    }
    if (drawing.boxes().stream().anyMatch(b -> b.sign() == Sign.CABLE)) {
      kinds.append(" Dashed box: cable between vehicles.");
    }
    kinds.append(
        " Dot: wires joined, or in one terminal; where lines cross without a dot they do not meet.");
    for (Box box : drawing.boxes()) {
      if (!box.unused().isEmpty()) {
        kinds.append(" N").append(InWords.unused(box).substring(1)).append('.');
      }
    }
    return kinds.toString();
  }

  private static String poles(Live live) {
    StringBuilder words = new StringBuilder("Live:");
    for (Pole pole : Pole.values()) {
      if (pole != Pole.RAILS || live.state().onLiveRails()) {
        words
            .append(' ')
            .append(pole.mark())
            .append(" joined to ")
            .append(pole.words())
            .append(',');
      }
    }
    return words
        .append(" heavy line plus or rails, middle line minus only, thin line neither.")
        .toString();
  }
}
