package outshop.acceptance;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A wiring drawing as somebody sees it who has only its SVG text: nothing of the program is asked.
 */
final class ReadBack {
  /** A line as drawn: one stroke, or two with a gap between. */
  record Line(
      String link,
      String sort,
      String from,
      String to,
      String wire,
      boolean closed,
      Set<String> live,
      String style,
      List<List<int[]>> strokes) {
    int[] first() {
      return strokes.get(0).get(0);
    }

    int[] last() {
      List<int[]> stroke = strokes.get(strokes.size() - 1);
      return stroke.get(stroke.size() - 1);
    }

    /** Its pieces, x1, y1, x2, y2. */
    List<int[]> pieces() {
      List<int[]> pieces = new ArrayList<>();
      for (List<int[]> stroke : strokes) {
        for (int i = 0; i + 1 < stroke.size(); i++) {
          int[] a = stroke.get(i);
          int[] b = stroke.get(i + 1);
          pieces.add(new int[] {a[0], a[1], b[0], b[1]});
        }
      }
      return pieces;
    }
  }

  /** A rectangle: left, top, right, bottom. */
  record Area(String name, int left, int top, int right, int bottom) {
    boolean overlaps(Area other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
  }

  /** A text beside a conductor. */
  record Text(String link, String words, Area area) {}

  private final Document document;
  final List<Line> lines = new ArrayList<>();
  final Map<String, List<int[]>> ports = new LinkedHashMap<>();
  final List<Area> boxes = new ArrayList<>();
  final List<Text> labels = new ArrayList<>();
  final Map<String, List<String>> words = new LinkedHashMap<>();
  final List<int[]> joints = new ArrayList<>();

  private ReadBack(Document document) {
    this.document = document;
  }

  static ReadBack of(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      ReadBack read =
          new ReadBack(factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg))));
      read.all();
      return read;
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new AssertionError("no well-formed XML: " + e.getMessage(), e);
    }
  }

  List<Element> elements(String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  Element root() {
    return document.getDocumentElement();
  }

  /** Every text that is shown, without titles and style. */
  List<String> shown() {
    return elements("text").stream().map(Element::getTextContent).toList();
  }

  private void all() {
    for (Element path : elements("path")) {
      if (path.hasAttribute("data-link")) {
        lines.add(line(path));
      }
    }
    for (Element circle : elements("circle")) {
      int[] at = {number(circle, "cx"), number(circle, "cy")};
      if (circle.hasAttribute("data-terminal")) {
        ports.computeIfAbsent(circle.getAttribute("data-terminal"), t -> new ArrayList<>()).add(at);
      } else if (circle.getAttribute("class").equals("w-joint-dot")) {
        joints.add(at);
      }
    }
    for (Element box : elements("rect")) {
      if (box.hasAttribute("data-box")) {
        boxes.add(area(box, box.getAttribute("data-box")));
      }
    }
    for (Element text : elements("text")) {
      if (text.hasAttribute("data-label")) {
        labels.add(label(text));
        words
            .computeIfAbsent(text.getAttribute("data-label"), l -> new ArrayList<>())
            .add(text.getTextContent());
      }
    }
  }

  /** Where the letters stand: 10 units high, as wide as in DejaVu Sans, which is a wide face. */
  private static Text label(Element text) {
    String words = text.getTextContent();
    int x = number(text, "x");
    int y = number(text, "y");
    String link = text.getAttribute("data-label");
    return new Text(link, words, new Area(words, x, y - 8, x + width(words), y + 2));
  }

  /** In units, of letters of size 10: advance widths measured in a browser, rounded up by kind. */
  private static int width(String words) {
    double width = 0;
    for (char c : words.toCharArray()) {
      width +=
          switch (c) {
            case ' ' -> 3.2;
            case '(', ')' -> 3.9;
            case '+', '−' -> 8.4;
            case 'i', 'l', 't' -> 3.9;
            case 'm' -> 9.7;
            default -> Character.isUpperCase(c) ? 7.9 : 6.4;
          };
    }
    return (int) Math.ceil(width);
  }

  private static Line line(Element path) {
    Set<String> live = new TreeSet<>(List.of(path.getAttribute("data-live").split(", ")));
    live.remove("");
    return new Line(
        path.getAttribute("data-link"),
        path.getAttribute("data-sort"),
        path.getAttribute("data-from"),
        path.getAttribute("data-to"),
        path.getAttribute("data-wire"),
        path.getAttribute("data-closed").equals("yes"),
        live,
        path.getAttribute("class"),
        strokes(path.getAttribute("d")));
  }

  private static List<List<int[]>> strokes(String d) {
    List<List<int[]>> strokes = new ArrayList<>();
    for (String stroke : d.strip().split("(?=M)")) {
      List<int[]> points = new ArrayList<>();
      for (String point : stroke.substring(1).split("L")) {
        String[] xy = point.strip().split(" ");
        points.add(new int[] {Integer.parseInt(xy[0]), Integer.parseInt(xy[1])});
      }
      strokes.add(points);
    }
    return strokes;
  }

  private static Area area(Element rect, String name) {
    int x = number(rect, "x");
    int y = number(rect, "y");
    return new Area(name, x, y, x + number(rect, "width"), y + number(rect, "height"));
  }

  private static int number(Element element, String attribute) {
    return Integer.parseInt(element.getAttribute(attribute));
  }
}
