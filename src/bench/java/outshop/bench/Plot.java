package outshop.bench;

import java.util.List;
import java.util.Locale;

/** A drawing of points on two logarithmic scales, with a line that grows in proportion beside it. */
final class Plot {
  private static final int WIDE = 560;
  private static final int HIGH = 320;
  private static final int MARGIN = 60;

  private final double lowX;
  private final double highX;
  private final double lowY;
  private final double highY;

  private Plot(List<double[]> points) {
    lowX = Math.floor(Math.log10(points.get(0)[0]));
    highX = Math.ceil(Math.log10(points.get(points.size() - 1)[0]));
    double least = points.stream().mapToDouble(p -> p[1]).min().orElseThrow();
    double most = points.stream().mapToDouble(p -> p[1]).max().orElseThrow();
    lowY = Math.floor(Math.log10(least));
    highY = Math.max(lowY + 1, Math.ceil(Math.log10(most)));
  }

  static String of(String name, List<double[]> points) {
    return new Plot(points).draw(name, points);
  }

  private String draw(String name, List<double[]> points) {
    StringBuilder svg = new StringBuilder();
    add(svg, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\""
        + " aria-label=\"milliseconds by number of %s\" font-family=\"sans-serif\" font-size=\"12\">",
        WIDE, HIGH, name);
    add(svg, "<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>", WIDE, HIGH);
    for (int power = (int) lowX; power <= highX; power++) {
      add(svg, "<line x1=\"%1$.1f\" y1=\"%2$.1f\" x2=\"%1$.1f\" y2=\"%3$.1f\" stroke=\"#cccccc\"/>",
          x(Math.pow(10, power)), y(Math.pow(10, lowY)), y(Math.pow(10, highY)));
      add(svg, "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%,.0f</text>",
          x(Math.pow(10, power)), HIGH - MARGIN + 18, Math.pow(10, power));
    }
    for (int power = (int) lowY; power <= highY; power++) {
      add(svg, "<line x1=\"%1$.1f\" y1=\"%3$.1f\" x2=\"%2$.1f\" y2=\"%3$.1f\" stroke=\"#cccccc\"/>",
          x(Math.pow(10, lowX)), x(Math.pow(10, highX)), y(Math.pow(10, power)));
      add(svg, "<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s ms</text>",
          MARGIN - 6, y(Math.pow(10, power)) + 4, power < 0 ? "0.1" : String.format(Locale.ROOT, "%,.0f", Math.pow(10, power)));
    }
    double[] last = points.get(points.size() - 1);
    double startY = Math.max(last[1] * points.get(0)[0] / last[0], Math.pow(10, lowY));
    add(svg, "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#888888\" stroke-dasharray=\"4 4\"/>",
        x(startY * last[0] / last[1]), y(startY), x(last[0]), y(last[1]));
    StringBuilder way = new StringBuilder();
    for (double[] p : points) {
      way.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(p[0]), y(p[1])));
      add(svg, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"#1f4e79\"/>", x(p[0]), y(p[1]));
    }
    add(svg, "<polyline points=\"%s\" fill=\"none\" stroke=\"#1f4e79\" stroke-width=\"2\"/>", way.toString().trim());
    add(svg, "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">number of %s; dashed: in proportion</text>",
        WIDE / 2, HIGH - 14, name);
    return svg.append("</svg>\n").toString();
  }

  private static void add(StringBuilder svg, String form, Object... values) {
    svg.append(String.format(Locale.ROOT, form, values)).append('\n');
  }

  private double x(double value) {
    return MARGIN + (Math.log10(value) - lowX) / (highX - lowX) * (WIDE - MARGIN - 30);
  }

  private double y(double value) {
    return HIGH - MARGIN - (Math.log10(value) - lowY) / (highY - lowY) * (HIGH - MARGIN - 20);
  }
}
