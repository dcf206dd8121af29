package felloe.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * A real browser without a screen (Debian: chromium, chromium-driver). Where none is installed,
 * tests skip with a visible line; with {@code CI=true} it is mandatory.
 */
final class Browser implements AutoCloseable {

  private static final Path SHOTS = Path.of("target", "board");

  final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  static Browser open() throws Exception {
    Optional<Path> program = found("chromium", "chromium-browser", "google-chrome");
    Optional<Path> pilot = found("chromedriver");
    boolean there = program.isPresent() && pilot.isPresent();
    assertTrue(
        there || !"true".equals(System.getenv("CI")),
        "chromium and chromedriver must be on the PATH where CI=true");
    assumeTrue(there, "skipped: no browser is installed (Debian: chromium, chromium-driver)");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(program.get().toString());
    options.addArguments(
        "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage");
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(new File(pilot.get().toString()))
            .build();
    Files.createDirectories(SHOTS);
    ChromeDriver driver = new ChromeDriver(service, options);
    driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(120));
    return new Browser(driver);
  }

  private static Optional<Path> found(String... names) {
    return Stream.of(names)
        .flatMap(
            name ->
                Stream.of(System.getenv("PATH").split(File.pathSeparator))
                    .map(folder -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** The size of what is seen, CSS pixels; also below what a window may be. */
  void size(int width, int height) {
    driver.manage().window().setSize(new Dimension(Math.max(width, 500), height));
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  void dark(boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(
                Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"),
                Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
  }

  WebElement find(String selector) {
    await(() -> !driver.findElements(By.cssSelector(selector)).isEmpty(), selector);
    return driver.findElement(By.cssSelector(selector));
  }

  /** A field of the form by the way to its value. */
  WebElement field(String path) {
    WebElement field = find("#form [id][data-path='" + path + "']");
    run(
        "for (let u = arguments[0].closest('details'); u; u = u.parentElement.closest('details'))"
            + " u.open = true; arguments[0].scrollIntoView({block: 'center'})",
        field);
    return field;
  }

  /** What stands in a part of a row. */
  String value(WebElement row, String part) {
    return row.findElement(By.cssSelector("[data-part=" + part + "]")).getDomProperty("value");
  }

  Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  String text(String selector) {
    return find(selector).getText();
  }

  /** Waits until something is so. */
  void await(Supplier<Boolean> so, String what) {
    long end = System.nanoTime() + Duration.ofSeconds(90).toNanos();
    while (true) {
      try {
        if (so.get()) {
          return;
        }
      } catch (org.openqa.selenium.StaleElementReferenceException drawnAnew) {
        // The next look finds it.
      }
      assertTrue(System.nanoTime() < end, "waited in vain for " + what);
      try {
        Thread.sleep(40);
      } catch (InterruptedException stopped) {
        throw new IllegalStateException(stopped);
      }
    }
  }

  void shoot(String name) throws Exception {
    Files.write(SHOTS.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
  }

  /** What bars people from the page, by axe-core; nothing serious may be found. */
  void barriers(String where) throws Exception {
    try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
      run(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    Object found =
        driver.executeAsyncScript(
            "const done = arguments[arguments.length - 1];axe.run(document, {runOnly: ['wcag2a',"
                + " 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']}).then(r =>"
                + " done(r.violations.filter(v => v.impact === 'serious' || v.impact ==="
                + " 'critical').map(v => v.id + ': ' + v.nodes.map(n => n.target + ' ' +"
                + " n.failureSummary).slice(0, 4).join(' | ')).join('\\n"
                + "')), e => done(String(e)))");
    assertEquals("", found, where);
  }

  @Override
  public void close() {
    driver.quit();
  }
}
