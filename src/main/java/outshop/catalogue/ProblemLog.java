package outshop.catalogue;

import java.util.ArrayList;
import java.util.List;
import outshop.input.Place;
import outshop.input.Problem;

/** The problems of one file, in the order of their places. */
final class ProblemLog {
  /** A file that is wrong all over is told so often and no more. */
  static final int MOST = 1000;

  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private int dropped;
  private Problem.Severity worstDropped = Problem.Severity.NOTE;

  ProblemLog(String file) {
    this.file = file;
  }

  private static int byPlace(Problem one, Problem other) {
    int byLine = Integer.compare(one.place().line(), other.place().line());
    return byLine != 0 ? byLine : Integer.compare(one.place().column(), other.place().column());
  }

  boolean isOf(String otherFile) {
    return file.equals(otherFile);
  }

  void add(Problem problem) {
    if (problems.size() < MOST) {
      problems.add(problem);
      return;
    }
    dropped++;
    if (problem.severity().compareTo(worstDropped) < 0) {
      worstDropped = problem.severity();
    }
  }

  void addAll(List<Problem> more) {
    for (Problem problem : more) {
      add(problem);
    }
  }

  /** Adds what another log of the same file holds. */
  void addAll(ProblemLog other) {
    addAll(other.problems);
    dropped += other.dropped;
    if (other.worstDropped.compareTo(worstDropped) < 0) {
      worstDropped = other.worstDropped;
    }
  }

  List<Problem> inOrder() {
    List<Problem> all = new ArrayList<>(problems);
    if (all.size() > 1) {
      all.sort(ProblemLog::byPlace);
    }
    if (dropped > 0) {
      String what = dropped + (dropped == 1 ? " more problem" : " more problems") + " in this file";
      all.add(new Problem(worstDropped, Place.whole(file), "", what, ""));
    }
    return all;
  }
}
