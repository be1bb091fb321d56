package outshop.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * The step of the build that writes lambdas down as classes changes nothing that a program does.
 */
final class PlainLambdasTest {
  private static final String SAMPLE =
      """
      import java.util.*;
      import java.util.function.*;

      public final class Sample {
        record Empty() {}
        record Many(
            boolean z, byte b, char c, short s, int i, long j, float f, double d, String text,
            int[] row, Many next) {}

        interface ToLong<T> { long of(T from, int more); }

        private final String own;

        private Sample(String own) { this.own = own; }
        private String join(String other) { return own + other; }
        private static int twice(int n) { return 2 * n; }
        static class Open {
          private String name() { return "open"; }
          Supplier<String> named() { return this::name; }
        }
        static final class Heir extends Open { String name() { return "heir"; } }

        static void note(List<Object> into, Object what) { into.add(String.valueOf(what)); }

        public static List<Object> told() {
          List<Object> told = new ArrayList<>();
          int five = 5;
          long six = 6;
          double half = 0.5;
          String word = "word";
          IntUnaryOperator twice = Sample::twice;
          IntBinaryOperator sum = (a, b) -> a + b + five;
          ToLong<String> longer = (from, more) -> from.length() + more + six;
          Function<String, Sample> made = Sample::new;
          BiFunction<Sample, String, String> joined = Sample::join;
          Supplier<String> kept = new Sample("a")::own;
          Function<Integer, Integer> boxed = Sample::twice;
          ToDoubleFunction<Double> plain = d -> d * half;
          Comparator<String> byLength = Comparator.comparing(String::length);
          Consumer<String> adds = told::add;
          Runnable runs = () -> note(told, word);
          Function<Object, String> text = Object::toString;
          UnaryOperator<String> bridged = String::strip;
          IntFunction<int[]> rows = int[]::new;
          Predicate<Object> is = String.class::isInstance;
          note(told, twice.applyAsInt(4));
          note(told, sum.applyAsInt(1, 2));
          note(told, longer.of("abc", 1));
          note(told, made.apply("x").join("y"));
          note(told, joined.apply(new Sample("p"), "q"));
          note(told, kept.get());
          note(told, boxed.apply(7));
          note(told, plain.applyAsDouble(3.0));
          List<String> words = new ArrayList<>(List.of("ccc", "a", "bb"));
          words.sort(byLength.reversed());
          note(told, words);
          adds.accept("added");
          runs.run();
          note(told, text.apply(12));
          note(told, bridged.apply(" s "));
          note(told, rows.apply(3).length);
          note(told, is.test("s") + " " + is.test(1));
          note(told, new Heir().named().get());
          int[] row = {1};
          Many one = new Many(true, (byte) 1, 'c', (short) 2, 3, 4, 5.5f, -0.0, "t", row, null);
          Many same = new Many(true, (byte) 1, 'c', (short) 2, 3, 4, 5.5f, -0.0, "t", row, null);
          Many zero = new Many(true, (byte) 1, 'c', (short) 2, 3, 4, 5.5f, 0.0, "t", row, null);
          Many nan = new Many(false, (byte) 1, 'c', (short) 2, 3, 4, Float.NaN, 1, null, null, one);
          Many nans = new Many(false, (byte) 1, 'c', (short) 2, 3, 4, Float.NaN, 1, null, null, one);
          for (Many other : new Many[] {one, same, zero, nan, nans, null}) {
            note(told, one.equals(other) + " " + nan.equals(other));
          }
          note(told, one.equals("one"));
          Many rowless =
              new Many(true, (byte) -1, 'c', (short) -2, -3, 1L << 40, 1e-9f, 2.5, "t", null, null);
          note(told, rowless.hashCode());
          note(told, new Many(false, (byte) 0, '0', (short) 0, 0, 0, 0, 0, "", null, rowless));
          note(told, new Empty() + " " + new Empty().hashCode() + " " + new Empty().equals(new Empty()));
          return told;
        }

        private String own() { return own; }
      }
      """;

  @TempDir Path folder;

  @BeforeEach
  void compile() throws IOException {
    Path source = folder.resolve("Sample.java");
    Files.writeString(source, SAMPLE, StandardCharsets.UTF_8);
    int failed =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, System.err, "-d", folder.toString(), source.toString());
    assertThat(failed).isZero();
  }

  @Test
  void theProgramDoesTheSame() throws Exception {
    List<?> before = told();
    long made = dynamic();
    rewrite();

    assertThat(told()).isEqualTo(before);
    assertThat(before).hasSizeGreaterThan(20);
    // What is left: a method that an heir may override, and one that names an array's maker.
    assertThat(made).isGreaterThan(20);
    assertThat(dynamic()).isLessThanOrEqualTo(3);
  }

  @Test
  void whatIsWrittenDownAlreadyIsLeftAsItIs() throws Exception {
    rewrite();
    List<byte[]> once = bytes();
    rewrite();

    assertThat(bytes()).usingElementComparator(Arrays::compare).isEqualTo(once);
  }

  private void rewrite() throws Exception {
    Path asm =
        Path.of(ClassReader.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    Process step =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                asm.toString(),
                "src/build/java/PlainLambdas.java",
                folder.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(step.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(step.waitFor()).as(said).isZero();
  }

  private List<?> told() throws IOException, ReflectiveOperationException {
    try (URLClassLoader loader =
        new URLClassLoader(new URL[] {folder.toUri().toURL()}, getClass().getClassLoader())) {
      return (List<?>) loader.loadClass("Sample").getMethod("told").invoke(null);
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(e.getCause());
    }
  }

  private List<Path> classes() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".class")).sorted().toList();
    }
  }

  private List<byte[]> bytes() throws IOException {
    List<byte[]> all = new ArrayList<>();
    for (Path file : classes()) {
      all.add(Files.readAllBytes(file));
    }
    return all;
  }

  /** How many lambdas and record methods Java would still have to make at run time. */
  private long dynamic() throws IOException {
    long[] count = {0};
    for (byte[] bytes : bytes()) {
      new ClassReader(bytes)
          .accept(
              new ClassVisitor(Opcodes.ASM9) {
                @Override
                public MethodVisitor visitMethod(
                    int access, String name, String type, String signature, String[] thrown) {
                  return new MethodVisitor(Opcodes.ASM9) {
                    @Override
                    public void visitInvokeDynamicInsn(
                        String method, String of, Handle maker, Object... rest) {
                      boolean text =
                          maker.getOwner().equals("java/lang/invoke/StringConcatFactory");
                      count[0] += text ? 0 : 1;
                    }
                  };
                }
              },
              ClassReader.SKIP_DEBUG);
    }
    return count[0];
  }
}
