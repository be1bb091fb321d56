package outshop.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;

/** What the words mean that the rules use, for somebody who has never wired anything. */
public final class Words {
  private static final String FILE = "words.txt";

  private Words() {}

  /**
   * One word.
   *
   * @param term as it is listed
   * @param forms the term and its other forms
   * @param meaning one sentence without a full stop
   */
  public record Word(String term, List<String> forms, String meaning) {
    public Word {
      forms = List.copyOf(forms);
    }

    /** Whether a text uses it. A form that begins with a capital is looked for as it stands. */
    boolean isIn(String text) {
      return forms.stream().anyMatch(form -> pattern(form).matcher(text).find());
    }

    private static Pattern pattern(String form) {
      int flags = Character.isUpperCase(form.charAt(0)) ? 0 : Pattern.CASE_INSENSITIVE;
      return Pattern.compile("(?<![\\w-])" + Pattern.quote(form) + "(?![\\w-])", flags);
    }
  }

  /** Every word, in order of the alphabet. */
  public static List<Word> all() {
    List<Word> words = new ArrayList<>();
    for (String line : RuleBook.resource(FILE)) {
      if (!line.startsWith("#")) {
        words.add(word(line));
      }
    }
    return words;
  }

  private static Word word(String line) {
    String[] cells = line.split("\\s*\\|\\s*", 2);
    List<String> forms = List.of(cells[0].split("\\s*;\\s*"));
    if (cells.length != 2) {
      throw new RuleBookException(FILE, "no meaning: " + line);
    }
    return new Word(forms.get(0), forms, cells[1].strip());
  }

  /** The words that some of these texts use, in order of the alphabet. */
  public static List<Word> usedIn(Collection<String> texts) {
    String all = String.join("\n", texts);
    return all().stream().filter(word -> word.isIn(all)).toList();
  }
}
