package outshop.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.core.JsonParser;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.dataformat.csv.CsvFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;

/** The yardstick of a cold start: a program that parses the same files and does nothing else. */
public final class ParseOnly {
  private ParseOnly() {}

  public static void main(String[] arguments) throws IOException {
    long read = tokens(new YAMLFactory(), Path.of(arguments[0]));
    List<Path> tables;
    try (Stream<Path> files = Files.list(Path.of(arguments[1]))) {
      tables = files.sorted().toList();
    }
    CsvFactory csv = new CsvFactory();
    for (Path table : tables) {
      read += tokens(csv, table);
    }
    System.out.println(read + " values");
  }

  private static long tokens(TokenStreamFactory factory, Path file) throws IOException {
    long read = 0;
    try (JsonParser parser =
        factory.createParser(tools.jackson.core.ObjectReadContext.empty(), file.toFile())) {
      while (parser.nextToken() != null) {
        String text = parser.getString();
        read += text == null ? 0 : 1;
      }
    }
    return read;
  }
}
