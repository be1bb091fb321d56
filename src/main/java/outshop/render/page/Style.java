package outshop.render.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * The style of all pages, and what one wants beside it. It stands in the page itself; the page's
 * content security policy allows this text and no other, by its hash.
 */
final class Style {
  private static final String TEXT = read();

  private Style() {}

  /**
   * As it must stand in the page, to the byte.
   *
   * @param more what this page wants beside it
   */
  static String text(String more) {
    return more.isEmpty() ? TEXT : TEXT + more.replace("\r\n", "\n");
  }

  /** As a content security policy names it: {@code sha256-...}. */
  static String hash(String more) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] hash = digest.digest(text(more).getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** A browser counts a line end as one character, whichever it was. */
  private static String read() {
    try (InputStream in = Style.class.getResourceAsStream("page.css")) {
      if (in == null) {
        throw new IllegalStateException("page.css is not in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
