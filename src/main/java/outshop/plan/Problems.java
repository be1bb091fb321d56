package outshop.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.input.Tree;

/** Collects what is wrong with a plan. */
final class Problems {
  private final String file;
  private final List<Problem> found = new ArrayList<>();

  Problems(String file) {
    this.file = file;
  }

  void add(Problem problem) {
    found.add(problem);
  }

  void addAll(List<Problem> problems) {
    found.addAll(problems);
  }

  /** An error about a key, where the key stands. */
  void error(Tree.Entry at, String path, String text, String what, String expected) {
    add(Problem.error(place(at, path), text, what, expected));
  }

  /** An error about a value, where the value stands. */
  void error(Tree.Node at, String path, String text, String what, String expected) {
    add(Problem.error(place(at, path), text, what, expected));
  }

  void note(Tree.Node at, String path, String what, String expected) {
    add(new Problem(Problem.Severity.NOTE, place(at, path), "", what, expected));
  }

  Place place(Tree.Entry entry, String path) {
    return new Place(file, entry.line(), entry.column(), path);
  }

  Place place(Tree.Node node, String path) {
    return new Place(file, node.line(), node.column(), path);
  }

  String file() {
    return file;
  }

  /** All of them, in the order of the file. */
  List<Problem> sorted() {
    return found.stream()
        .sorted(
            Comparator.comparingInt((Problem p) -> p.place().line())
                .thenComparingInt(p -> p.place().column()))
        .toList();
  }
}
