package outshop.render;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A drawing read back: as XML, its axes and its signs, and what their places say. */
public final class ReadDrawing {
  private static final Pattern MOVED = Pattern.compile("translate\\((\\S+) (\\S+)\\)");

  private final Document document;

  private ReadDrawing(Document document) {
    this.document = document;
  }

  /** Errors: {@link IllegalStateException} if it is not well-formed. */
  public static ReadDrawing of(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return new ReadDrawing(
          factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg))));
    } catch (Exception e) {
      throw new IllegalStateException("not well-formed: " + svg, e);
    }
  }

  /** An axis as the drawing declares it; reckoned here once more. */
  public record Axis(double low, double high, double from, double to, boolean logarithmic) {
    /** Where a value must stand. */
    public double at(double value) {
      double share =
          logarithmic
              ? (Math.log10(value) - Math.log10(low)) / (Math.log10(high) - Math.log10(low))
              : (value - low) / (high - low);
      return from + share * (to - from);
    }

    /** What stands at a place. */
    public double value(double place) {
      double share = (place - from) / (to - from);
      return logarithmic
          ? Math.pow(10, Math.log10(low) * (1 - share) + Math.log10(high) * share)
          : low * (1 - share) + high * share;
    }
  }

  /** The outermost element. */
  public Element root() {
    return document.getDocumentElement();
  }

  /** Every text in it, also of titles. */
  public String text() {
    return root().getTextContent();
  }

  /** One drawn value. */
  public record Read(Element element, String row, String meaning, String charge, double value) {
    public Optional<Double> along() {
      String along = element.getAttribute("data-along");
      return along.isEmpty() ? Optional.empty() : Optional.of(Double.parseDouble(along));
    }
  }

  /** Every drawn value that names its row. */
  public List<Read> values() {
    List<Read> read = new ArrayList<>();
    for (Element element : all("*")) {
      if (element.hasAttribute("data-row")) {
        read.add(
            new Read(
                element,
                element.getAttribute("data-row"),
                element.getAttribute("data-meaning"),
                element.getAttribute("data-charge"),
                Double.parseDouble(element.getAttribute("data-value"))));
      }
    }
    return read;
  }

  public List<Element> all(String name) {
    NodeList nodes = document.getElementsByTagNameNS("*", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  public Optional<Axis> axis(String name) {
    return all("g").stream()
        .filter(g -> g.getAttribute("data-axis").equals(name))
        .map(
            g ->
                new Axis(
                    number(g, "data-low"),
                    number(g, "data-high"),
                    number(g, "data-from"),
                    number(g, "data-to"),
                    g.getAttribute("data-scale").equals("logarithmic")))
        .findFirst();
  }

  public static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  /** Where a sign is drawn: moved there, or the path's first point, or a bar's right end. */
  public static double[] place(Element element) {
    Matcher moved = MOVED.matcher(element.getAttribute("transform"));
    if (moved.matches()) {
      return new double[] {Double.parseDouble(moved.group(1)), Double.parseDouble(moved.group(2))};
    }
    if (element.getLocalName().equals("rect")) {
      return new double[] {number(element, "x") + number(element, "width"), number(element, "y")};
    }
    return points(element.getAttribute("d")).get(0);
  }

  /** The points of a path made of moves and lines to places. */
  public static List<double[]> points(String path) {
    List<double[]> points = new ArrayList<>();
    Matcher matcher = Pattern.compile("[ML](-?[0-9.]+) (-?[0-9.]+)").matcher(path);
    while (matcher.find()) {
      points.add(
          new double[] {
            Double.parseDouble(matcher.group(1)), Double.parseDouble(matcher.group(2))
          });
    }
    return points;
  }
}
