package outshop.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import outshop.circuit.Link;
import outshop.drawing.Box;
import outshop.drawing.LeadColour;
import outshop.drawing.Live;
import outshop.drawing.Pole;
import outshop.drawing.Route;
import outshop.drawing.WireList;
import outshop.drawing.WiringDrawing;

/** What the drawing shows, in words, for whoever does not see it. */
final class InWords {
  private InWords() {}

  /** The whole drawing. */
  static String of(WiringDrawing drawing, Faults faults, Live live, boolean marksLive) {
    List<String> sentences = new ArrayList<>();
    sentences.add("Contacts are drawn with " + live.state().words() + ".");
    for (Route route : drawing.routes()) {
      sentences.add(capital(route(route, live, marksLive)) + ".");
    }
    for (Box box : drawing.boxes()) {
      if (!box.unused().isEmpty()) {
        sentences.add(unused(box) + ".");
      }
    }
    for (Fault fault : faults.all()) {
      sentences.add(capital(sentence(fault)) + ".");
    }
    return String.join("\n", sentences);
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** One conductor. */
  static String route(Route route, Live live, boolean marksLive) {
    Link link = route.link();
    StringBuilder words = new StringBuilder(what(route));
    words.append(": ").append(link.from()).append(" to ").append(link.to());
    if (!link.closed().in(live.state())) {
      words.append(", open");
    } else if (!(link.closed() instanceof Link.Closed.Always)) {
      words.append(", closed");
    }
    if (marksLive && link.closed().in(live.state())) {
      words.append(live.on(link).isEmpty() ? ", not live" : ", joined to ");
      words.append(live.on(link).stream().map(Pole::words).collect(Collectors.joining(" and ")));
    }
    return words.toString();
  }

  private static String what(Route route) {
    if (route.wire().isPresent()) {
      return wire(route.wire().get());
    }
    return switch (route.link().sort()) {
      case FUSE -> "fuse " + route.link().name();
      case SWITCH -> "switch contact " + route.link().name();
      case BREAK_CONTACT -> route.link().name();
      case CONTACT -> "contact " + route.link().name();
      case BODY -> "joined through metal";
      case WIRE -> throw new IllegalStateException("a wire without a number");
    };
  }

  private static String wire(WireList.Row wire) {
    boolean named = wire.colour() != LeadColour.UNNAMED;
    return "wire "
        + wire.number()
        + ", "
        + (named ? wire.colour().word() : "no colour named")
        + ", gauge "
        + wire.gaugeWords()
        + ", length "
        + wire.lengthWords();
  }

  /** One box, with its full name. */
  static String box(Box box, Faults faults) {
    StringBuilder words = new StringBuilder(box.name());
    if (!box.title().isEmpty()) {
      words.append(": ").append(box.title());
    }
    if (!box.unused().isEmpty()) {
      words.append("; ").append(unused(box));
    }
    faults.at(box.name()).forEach(f -> words.append("; ").append(sentence(f)));
    return words.toString();
  }

  /** The terminals of a box that nothing is wired to. */
  static String unused(Box box) {
    return "not used at " + box.name() + ": " + String.join(", ", box.unused());
  }

  /** A finding with its number and outcome. */
  static String sentence(Fault fault) {
    return fault.word()
        + " "
        + fault.number()
        + " at "
        + fault.finding().at().described()
        + ": "
        + fault.finding().headline();
  }
}
