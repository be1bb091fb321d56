package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The archive of Java's classes that the launcher keeps, with a {@code java} that writes one when
 * it is told to and says what it was called with.
 */
final class LauncherArchiveTest {
  private static final String JAR = "outshop-" + Main.VERSION + ".jar";
  private static final Duration LONGEST = Duration.ofSeconds(60);
  private static final String OBEYS =
      "for a in \"$@\"; do case $a in"
          + " -XX:ArchiveClassesAtExit=*|-XX:AOTCacheOutput=*) echo \"$0\" >\"${a#*=}\";; esac; done;"
          + " echo \"java $*\"; exit 1";

  @TempDir Path root;
  private Path home;
  private Path java;

  @BeforeEach
  void layOut() throws IOException {
    assumeThat(Path.of("/bin/sh")).as("a POSIX shell").exists();
    home = Files.createDirectories(root.resolve("a $shed"));
    Files.createDirectories(home.resolve("target/lib"));
    Files.copy(Path.of("outshop"), home.resolve("outshop"));
    Files.writeString(home.resolve("target").resolve(JAR), "");
    java = jdk("jdk one", "17.0.1", OBEYS);
  }

  /** What was begun in the background would write into the folder while it is taken away. */
  @AfterEach
  void nothingRunsOn() throws Exception {
    await(
        () ->
            ProcessHandle.allProcesses()
                .noneMatch(
                    p ->
                        p.info().commandLine().orElse("").contains(root.getFileName().toString())));
  }

  @Test
  void theFirstCommandHasItMadeAndTheNextUsesIt() throws Exception {
    Run first = launch("check", "a plan.yaml");
    assertThat(first.out()).doesNotContain("Archive").endsWith(JAR + " check a plan.yaml\n");
    assertThat(first.code()).isEqualTo(1);
    assertThat(first.err()).isEmpty();
    Path archive = awaitOne(".jsa");
    Run second = launch("check", "a plan.yaml");
    assertThat(second.out())
        .contains("-XX:SharedArchiveFile=" + archive.toRealPath() + " -jar ")
        .endsWith(JAR + " check a plan.yaml\n");
    assertThat(second.code()).isEqualTo(1);
    assertThat(second.err()).isEmpty();
    assertThat(files()).as("nothing else is left behind").containsExactly(archive);
  }

  @Test
  void aJavaWithTheNewerKindOfArchiveGetsThat() throws Exception {
    java = jdk("jdk two", "25.0.3", OBEYS);
    launch("rules");
    Path archive = awaitOne(".aot");
    assertThat(launch("rules").out()).contains("-XX:AOTCache=" + archive.toRealPath() + " -jar ");
  }

  @Test
  void whatWasBuiltAnewNeverMeetsTheOldArchive() throws Exception {
    launch("rules");
    Path archive = awaitOne(".jsa");
    FileTime made = Files.getLastModifiedTime(archive);
    Path jar = home.resolve("target").resolve(JAR);
    Files.writeString(jar, "other");
    // Even where the new file says that it is old.
    Files.setLastModifiedTime(jar, FileTime.from(Instant.parse("2020-01-01T00:00:00Z")));
    assertThat(launch("rules").out()).doesNotContain("SharedArchiveFile");
    await(() -> Files.getLastModifiedTime(archive).compareTo(made) > 0);
    assertThat(launch("rules").out()).contains("SharedArchiveFile");
  }

  @Test
  void anotherJavaInTheSamePlaceNeverMeetsTheOldArchive() throws Exception {
    launch("rules");
    awaitOne(".jsa");
    Files.writeString(root.resolve("jdk one/lib/modules"), "other");
    assertThat(launch("rules").out()).doesNotContain("SharedArchiveFile");
  }

  @Test
  void eachJavaHasItsOwnAndTheOldOnesGoWhenTheProgramIsBuiltAnew() throws Exception {
    launch("rules");
    Path one = awaitOne(".jsa");
    java = jdk("jdk two", "17.0.2", OBEYS);
    launch("rules");
    await(() -> files().size() == 2);
    assertThat(one).exists();
    Files.setLastModifiedTime(
        home.resolve("target").resolve(JAR), FileTime.from(Instant.now().plusSeconds(1)));
    Thread.sleep(1100);
    launch("rules");
    await(() -> !Files.exists(one));
  }

  @Test
  void whereNoneCanBeMadeItIsNotTriedAgainUntilSomethingChanges() throws Exception {
    java = jdk("jdk three", "17.0.3", "echo call >>\"$0.calls\"; echo \"java $*\"");
    launch("rules");
    Path none = awaitOne(".none");
    launch("rules");
    launch("rules");
    assertThat(Files.readAllLines(Path.of(java + ".calls")))
        .as("three commands and one try")
        .hasSize(4);
    assertThat(files()).containsExactly(none);
  }

  @Test
  void whereTheFolderCannotBeMadeEverythingElseWorks() throws Exception {
    Files.writeString(home.resolve("target/archive"), "a file");
    Run run = launch("version");
    assertThat(run.out()).endsWith(JAR + " version\n");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void aFolderThatMayOnlyBeReadHasItsArchiveInTheUsersCache() throws Exception {
    Path target = home.resolve("target");
    Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("r-xr-xr-x"));
    try {
      assumeThat(Files.isWritable(target)).as("whoever may write everywhere").isFalse();
      launch("rules");
      Path cache = root.resolve("cache/outshop");
      await(() -> Files.isDirectory(cache) && listed(cache, ".jsa").size() == 1);
      assertThat(launch("rules").out()).contains("SharedArchiveFile=" + cache.toRealPath());
    } finally {
      Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  @Test
  void severalFirstCommandsAtOnceDoNotClash() throws Exception {
    List<Process> all = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      all.add(builder(List.of("check", "plan-" + i)).start());
    }
    for (int i = 0; i < 4; i++) {
      Process process = all.get(i);
      String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(process.waitFor()).isEqualTo(1);
      assertThat(out).endsWith(JAR + " check plan-" + i + "\n");
    }
    Path archive = awaitOne(".jsa");
    assertThat(Files.readString(archive)).as("whole").isEqualTo(java + "\n");
    await(() -> files().equals(List.of(archive)));
  }

  @Test
  void itCanBeSwitchedOff() throws Exception {
    ProcessBuilder builder = builder(List.of("rules"));
    builder.environment().put("OUTSHOP_ARCHIVE", "no");
    assertThat(builder.start().waitFor()).isEqualTo(1);
    Thread.sleep(300);
    assertThat(home.resolve("target/archive")).doesNotExist();
  }

  private Run launch(String... arguments) throws IOException, InterruptedException {
    Process process = builder(List.of(arguments)).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Run(process.waitFor(), out, err);
  }

  private ProcessBuilder builder(List<String> arguments) {
    List<String> command = new ArrayList<>(List.of("/bin/sh", home.resolve("outshop").toString()));
    command.addAll(arguments);
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("JAVA_HOME", java.getParent().getParent().toString());
    builder.environment().put("OUTSHOP_ARCHIVE_WAIT", "0");
    builder.environment().put("XDG_CACHE_HOME", root.resolve("cache").toString());
    return builder;
  }

  /** A Java of that version whose {@code java} is a script. */
  private Path jdk(String name, String version, String body) throws IOException {
    Path folder = root.resolve(name);
    Files.createDirectories(folder.resolve("lib"));
    Files.writeString(folder.resolve("lib/modules"), "");
    Files.writeString(folder.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
    Path script = Files.createDirectories(folder.resolve("bin")).resolve("java");
    Files.writeString(script, "#!/bin/sh\n" + body + "\n");
    Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwxr-xr-x"));
    return script;
  }

  private List<Path> files() throws IOException {
    Path folder = home.resolve("target/archive");
    return Files.isDirectory(folder) ? listed(folder, "") : List.of();
  }

  private static List<Path> listed(Path folder, String ending) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.filter(p -> p.toString().endsWith(ending)).sorted().toList();
    }
  }

  /** The archive, once nothing else is in its folder. */
  private Path awaitOne(String ending) throws Exception {
    await(() -> files().size() == 1 && files().get(0).toString().endsWith(ending));
    return files().get(0);
  }

  private interface Condition {
    boolean holds() throws IOException;
  }

  private static void await(Condition condition) throws Exception {
    Instant end = Instant.now().plus(LONGEST);
    while (!condition.holds()) {
      assertThat(Instant.now()).as("waited long enough").isBefore(end);
      Thread.sleep(20);
    }
  }
}
