package outshop.render.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import outshop.circuit.State;
import outshop.drawing.Lettering;
import outshop.drawing.Live;
import outshop.drawing.WiringDrawing;
import outshop.findings.Finding;
import outshop.input.Shown;

/**
 * The wiring drawing as one SVG file.
 *
 * <p>Every link of the circuit is one path with {@code data-link}, {@code data-from} and {@code
 * data-to}, a wire also with {@code data-wire}, its number; every port one circle with {@code
 * data-terminal}. So the drawing can be read back and held against the circuit.
 */
public final class WiringSvg {
  private static final int HEAD = 40;
  private static final int NARROWEST = 860;
  private static final String CSS = css();

  private WiringSvg() {}

  /**
   * The drawing as wired: contacts as they stand while the locomotive runs, nothing marked live.
   *
   * @param findings of the same plan's report; violations and warnings are marked where they hang
   */
  public static String asWired(WiringDrawing drawing, List<Finding> findings) {
    return text(drawing, Optional.empty(), findings, CSS);
  }

  /**
   * As {@link #asWired}, without wire list and style: for a page that has a list of its own and
   * {@link #style} in its style.
   */
  public static String within(WiringDrawing drawing, List<Finding> findings) {
    return text(drawing, Optional.empty(), findings, "");
  }

  /** The style of every drawing; all of it is below the class {@code wiring}. */
  public static String style() {
    return CSS;
  }

  /** The drawing in one state, with what is live marked; otherwise as {@link #asWired}. */
  public static String in(State state, WiringDrawing drawing, List<Finding> findings) {
    return text(drawing, Optional.of(state), findings, CSS);
  }

  private static String text(
      WiringDrawing drawing, Optional<State> state, List<Finding> findings, String style) {
    Faults faults = new Faults(drawing, findings);
    State drawn = state.orElse(drawing.circuit().running());
    Live live = Live.of(drawing.circuit(), drawn);
    int width = Math.max(NARROWEST, drawing.width());
    Below below = new Below(drawing, faults, state.map(s -> live), width, !style.isEmpty());
    int height = HEAD + drawing.height() + below.height();
    Svg svg = new Svg();
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "wiring",
        "role",
        "img",
        "viewBox",
        "0 0 " + width + " " + height,
        "width",
        width,
        "height",
        height,
        "data-state",
        state.map(State::words).orElse("as wired"));
    String caption = caption(state, drawn);
    String title = Shown.text(drawing.title());
    svg.text("title", "Wiring of " + title + ", " + caption);
    svg.text("desc", InWords.of(drawing, faults, live, state.isPresent()));
    if (!style.isEmpty()) {
      svg.style(style);
    }
    svg.empty("rect", "class", "w-paper", "x", 0, "y", 0, "width", width, "height", height);
    svg.text("text", Lettering.shortened(title, 70), "class", "w-title", "x", 14, "y", 20);
    svg.text("text", caption, "class", "w-under", "x", 14, "y", 35);
    svg.open("g", "transform", "translate(" + (width - drawing.width()) / 2 + " " + HEAD + ")");
    new Figure(drawing, live, state.isPresent(), faults).draw(svg);
    svg.close();
    svg.open("g", "transform", "translate(0 " + (HEAD + drawing.height()) + ")");
    below.draw(svg);
    svg.close();
    return svg.close().toString();
  }

  private static String caption(Optional<State> state, State drawn) {
    return state
        .map(s -> "in this state: " + s.words() + "; what is live is marked")
        .orElse("as wired; contacts as they stand with " + drawn.words());
  }

  private static String css() {
    try (InputStream in = WiringSvg.class.getResourceAsStream("wiring.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
