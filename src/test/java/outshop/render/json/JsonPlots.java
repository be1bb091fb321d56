package outshop.render.json;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The values of the plots in a report's JSON, one a line. */
public final class JsonPlots {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private JsonPlots() {}

  /** Every known value, in its order. */
  public static List<String> lines(String json) {
    List<String> lines = new ArrayList<>();
    for (JsonNode plot : MAPPER.readTree(json).get("plots")) {
      for (JsonNode row : plot.get("rows")) {
        for (JsonNode mark : row.get("marks")) {
          JsonNode amount = mark.get("amount");
          if (amount.has("value")) {
            lines.add(
                line(
                    plot.get("subject").asString(),
                    row.get("name").asString(),
                    mark.get("meaning").asString(),
                    amount.get("value").asDouble(),
                    amount.get("low").asDouble(),
                    amount.get("high").asDouble()));
          }
        }
      }
    }
    return lines;
  }

  /** One value as a line. */
  public static String line(
      String subject, String row, String meaning, double value, double low, double high) {
    return String.join(
        " | ",
        subject,
        row,
        meaning,
        Double.toString(value + 0.0),
        Double.toString(low + 0.0),
        Double.toString(high + 0.0));
  }
}
