package outshop.render.json;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The published schemas of what is written as JSON, and what they say of a text. */
public final class ReportSchema {
  public static final Path FILE = Path.of("docs", "report.schema.json");
  public static final Path CHOICE = Path.of("docs", "choose.schema.json");

  private ReportSchema() {}

  /** Everything that is wrong with a report; nothing where it fits. */
  public static List<String> faults(String json) throws IOException {
    return faults(FILE, json);
  }

  /** Everything that is wrong by one of the schemas. */
  public static List<String> faults(Path file, String json) throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(file), InputFormat.JSON);
    return schema.validate(json, InputFormat.JSON).stream().map(Error::toString).toList();
  }
}
