package outshop.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Times whole processes in turn, A B C A B C, by GNU time. Prints a line a run: name, wall seconds,
 * processor seconds, peak memory in MB.
 *
 * <p>Arguments: rounds, then in turn a name and a command for the shell.
 */
public final class Processes {
  private Processes() {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    int rounds = Integer.parseInt(arguments[0]);
    Map<String, String> commands = new LinkedHashMap<>();
    for (int i = 1; i < arguments.length; i += 2) {
      commands.put(arguments[i], arguments[i + 1]);
    }
    // The first round fills the file cache and does not count.
    for (int round = -1; round < rounds; round++) {
      for (Map.Entry<String, String> command : commands.entrySet()) {
        String figures = run(command.getValue());
        if (round >= 0) {
          System.out.println(command.getKey() + "\t" + figures);
        }
      }
    }
  }

  private static String run(String command) throws IOException, InterruptedException {
    Path times = Files.createTempFile("times", ".txt");
    try {
      List<String> words = new ArrayList<>(List.of("/usr/bin/time", "-f", "%U %S %M"));
      words.addAll(List.of("-o", times.toString(), "sh", "-c", "exec " + command));
      long began = System.nanoTime();
      Process process =
          new ProcessBuilder(words)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      int code = process.waitFor();
      double wall = (System.nanoTime() - began) / 1e9;
      if (code > 1) {
        throw new IllegalStateException(command + " ended with " + code);
      }
      List<String> lines = Files.readAllLines(times);
      String[] figures = lines.get(lines.size() - 1).split(" ");
      double cpu = Double.parseDouble(figures[0]) + Double.parseDouble(figures[1]);
      return wall + "\t" + cpu + "\t" + Double.parseDouble(figures[2]) / 1024;
    } finally {
      Files.delete(times);
    }
  }
}
