package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs the launcher with a {@code java} and a {@code mvn} that only say that they were called. */
final class LauncherTest {
  private static final Instant LONG_AGO = Instant.parse("2020-01-01T00:00:00Z");

  @TempDir Path home;

  @BeforeEach
  void layOut() throws IOException {
    assumeThat(Path.of("/bin/sh")).as("a POSIX shell").exists();
    Files.createDirectories(home.resolve("src/main"));
    Files.createDirectories(home.resolve("rules"));
    Files.createDirectories(home.resolve("target"));
    Files.copy(Path.of("outshop"), home.resolve("outshop"));
    file("pom.xml");
    file("src/main/A.java");
    file("rules/a.drl");
    script("java", "echo \"java $*\"; exit 1");
    script("mvn", "echo building; : > target/" + JAR);
    for (String old :
        new String[] {"pom.xml", "src/main/A.java", "src/main", "rules/a.drl", "rules"}) {
      Files.setLastModifiedTime(home.resolve(old), FileTime.from(LONG_AGO));
    }
  }

  private static final String JAR = "outshop-" + Main.VERSION + ".jar";

  @Test
  void whatIsNotBuiltIsBuiltOnceThenRun() throws IOException, InterruptedException {
    Run first = launch("check", "a plan.yaml");
    assertThat(first.err()).contains("building");
    assertThat(first.out()).contains("java ").endsWith(JAR + " check a plan.yaml\n");
    assertThat(first.code()).as("the program's own code").isEqualTo(1);
    assertThat(launch("rules").err()).isEmpty();
  }

  @Test
  void aChangedRuleIsBuiltAgain() throws IOException, InterruptedException {
    launch("rules");
    Files.setLastModifiedTime(
        home.resolve("rules/a.drl"), FileTime.from(Instant.now().plusSeconds(60)));
    assertThat(launch("rules").err()).contains("building");
  }

  @Test
  void aBuildThatFailsRunsNothing() throws IOException, InterruptedException {
    script("mvn", "exit 1");
    Run run = launch("rules");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("the build failed");
  }

  @Test
  void itIsFoundThroughALink() throws IOException, InterruptedException {
    Path elsewhere = Files.createDirectories(home.resolve("else where"));
    Files.createSymbolicLink(elsewhere.resolve("o"), Path.of("../outshop"));
    Run run = launch(elsewhere.resolve("o"), "version");
    assertThat(run.out())
        .contains("-jar " + home.toRealPath().resolve("target").resolve(JAR) + " version");
  }

  private Run launch(String... arguments) throws IOException, InterruptedException {
    return launch(home.resolve("outshop"), arguments);
  }

  private Run launch(Path launcher, String... arguments) throws IOException, InterruptedException {
    java.util.List<String> command =
        new java.util.ArrayList<>(java.util.List.of("/bin/sh", launcher.toString()));
    command.addAll(java.util.List.of(arguments));
    Path out = home.resolve("out.txt");
    Path err = home.resolve("err.txt");
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("PATH", home.resolve("bin") + ":" + System.getenv("PATH"));
    builder.environment().remove("JAVA_HOME");
    int code = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start().waitFor();
    return new Run(
        code,
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  private void file(String name) throws IOException {
    Files.writeString(home.resolve(name), "");
  }

  private void script(String name, String body) throws IOException {
    Path bin = Files.createDirectories(home.resolve("bin"));
    Path script = bin.resolve(name);
    Files.writeString(script, "#!/bin/sh\n" + body + "\n");
    Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwxr-xr-x"));
  }
}
