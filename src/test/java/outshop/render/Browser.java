package outshop.render;

import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * A real browser for the tests of pages: the Chromium and the driver that are installed, never ones
 * that are fetched. Where they are absent a test is skipped and says so, once; where the
 * environment says {@code CI=true} they have to be there.
 */
public final class Browser implements AutoCloseable {
  private static final List<String> CHROMIUMS = List.of("chromium", "chromium-browser");
  private static final List<String> DRIVERS = List.of("chromedriver");
  private static final AtomicBoolean ABSENCE_PRINTED = new AtomicBoolean();
  private static final Path AXE = Path.of("src/test/resources/axe/axe.min.js");

  private final ChromeDriver driver;
  private final Path profile;

  private Browser(ChromeDriver driver, Path profile) {
    this.driver = driver;
    this.profile = profile;
  }

  /** Starts one, with a profile of its own; skips the calling test where there is none. */
  public static Browser start() {
    Path chromium = find(CHROMIUMS);
    Path chromedriver = find(DRIVERS);
    try {
      Path profile = Files.createTempDirectory("outshop-browser");
      ChromeOptions options = new ChromeOptions();
      options.setBinary(chromium.toFile());
      options.addArguments(
          "--headless=new",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-dev-shm-usage",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-default-apps",
          "--disable-extensions",
          "--disable-sync",
          "--no-first-run",
          "--force-device-scale-factor=1",
          "--hide-scrollbars",
          "--user-data-dir=" + profile);
      LoggingPreferences logs = new LoggingPreferences();
      logs.enable(LogType.BROWSER, Level.ALL);
      logs.enable(LogType.PERFORMANCE, Level.ALL);
      options.setCapability("goog:loggingPrefs", logs);
      ChromeDriverService service =
          new ChromeDriverService.Builder()
              .usingDriverExecutable(chromedriver.toFile())
              .usingAnyFreePort()
              .build();
      return new Browser(new ChromeDriver(service, options), profile);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path find(List<String> names) {
    for (String folder : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
      for (String name : names) {
        Path file = Path.of(folder, name);
        if (Files.isExecutable(file)) {
          return file;
        }
      }
    }
    String absent = names.get(0) + " is not installed";
    if ("true".equals(System.getenv("CI"))) {
      throw new AssertionError("CI=true, but " + absent);
    }
    if (ABSENCE_PRINTED.compareAndSet(false, true)) {
      System.out.println(absent + ": the pages are not looked at in a browser");
    }
    assumeThat(false).as(absent).isTrue();
    throw new IllegalStateException(absent);
  }

  /** The driver itself, for what this class does not do. */
  public ChromeDriver driver() {
    return driver;
  }

  /** Opens a file by its {@code file:} address. What was logged before is forgotten. */
  public void open(Path file) {
    logged(LogType.BROWSER);
    logged(LogType.PERFORMANCE);
    driver.get(file.toUri().toString());
  }

  /**
   * Sets the size of the page that is seen, in CSS pixels, exactly; a window is never narrower than
   * some 500.
   */
  public void size(int width, int height) {
    driver.manage().window().setSize(new Dimension(Math.max(width, 600), height + 200));
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** Sets what the person's system prefers. */
  public void dark(boolean dark) {
    media("", dark);
  }

  /** As it looks on paper, but on the screen. */
  public void asPrinted(boolean printed) {
    media(printed ? "print" : "", false);
  }

  private void media(String media, boolean dark) {
    List<Map<String, String>> features =
        List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"));
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia", Map.of("media", media, "features", features));
  }

  /** What a script in the page gives; pages bring none themselves. */
  public Object ask(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** Whether the page is wider than what is seen of it. */
  public boolean scrollsSideways() {
    return (boolean)
        ask(
            "return document.documentElement.scrollWidth > document.documentElement.clientWidth"
                + " || document.body.scrollWidth > document.documentElement.clientWidth");
  }

  /**
   * What the accessibility rules object to, each in a line with the elements; these rules stand in
   * {@code src/test/resources/axe}.
   */
  @SuppressWarnings("unchecked")
  public List<String> axe() {
    try {
      driver.executeScript(Files.readString(AXE));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, Object> result =
        (Map<String, Object>)
            driver.executeAsyncScript(
                "const done = arguments[arguments.length - 1];"
                    + "axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa',"
                    + " 'best-practice']}).then(r => done({passed: r.passes.length, found:"
                    + " r.violations.map(v => v.id + ': ' + v.help + ' ' + v.nodes.slice(0,"
                    + " 4).map(n => n.target.join(' ') + ' ' + n.failureSummary).join(' | '))}),"
                    + " e => done({passed: 0, found: ['axe failed: ' + e]}));");
    if ((long) result.get("passed") == 0) {
      throw new AssertionError("axe looked at nothing: " + result);
    }
    return (List<String>) result.get("found");
  }

  /** What the browser's console says of the page, worst and all. */
  public List<String> console() {
    return logged(LogType.BROWSER);
  }

  /** Every address the page asked for since it was opened, itself left out. */
  public List<String> requests() {
    String own = driver.getCurrentUrl().replaceAll("#.*", "");
    return logged(LogType.PERFORMANCE).stream()
        .filter(entry -> entry.contains("\"Network.requestWillBeSent\""))
        .map(entry -> entry.replaceAll("(?s).*?\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
        .filter(url -> !url.equals(own) && !url.startsWith("data:"))
        .toList();
  }

  private List<String> logged(String type) {
    return driver.manage().logs().get(type).getAll().stream().map(LogEntry::getMessage).toList();
  }

  /** What is seen, as a PNG. */
  public byte[] picture() {
    return driver.getScreenshotAs(OutputType.BYTES);
  }

  /** The whole page from top to bottom as a PNG, at most so many pixels high. */
  public byte[] wholePicture(int mostHeight) {
    long width = (long) ask("return document.documentElement.clientWidth");
    long height = (long) ask("return document.documentElement.scrollHeight");
    Map<String, Object> clip =
        Map.of("x", 0, "y", 0, "width", width, "height", Math.min(height, mostHeight), "scale", 1);
    Map<String, Object> picture =
        driver.executeCdpCommand(
            "Page.captureScreenshot",
            Map.of("format", "png", "captureBeyondViewport", true, "clip", clip));
    return Base64.getDecoder().decode((String) picture.get("data"));
  }

  /** The page as it is printed on A4, as a PDF. */
  public byte[] printed() {
    Map<String, Object> pdf =
        driver.executeCdpCommand(
            "Page.printToPDF",
            Map.of("paperWidth", 8.27, "paperHeight", 11.69, "preferCSSPageSize", true));
    return Base64.getDecoder().decode((String) pdf.get("data"));
  }

  @Override
  public void close() {
    driver.quit();
    try (Stream<Path> files = Files.walk(profile)) {
      files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
