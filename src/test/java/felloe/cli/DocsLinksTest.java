package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No page points at nothing. */
class DocsLinksTest {

  static List<DocsPage> pages() {
    return DocsPage.all();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void everyRelativeLinkLeadsSomewhere(DocsPage page) {
    for (String link : page.links()) {
      if (link.startsWith("https://")) {
        continue;
      }
      String[] parts = link.split("#", 2);
      Path target = page.file();
      if (!parts[0].isEmpty()) {
        target = Path.of(page.file().toString() + "/../" + parts[0]).normalize();
        assertTrue(Files.exists(target), page + " points at " + link);
      }
      if (parts.length == 2) {
        List<String> anchors = DocsPage.of(target.toString()).anchors();
        assertTrue(anchors.contains(parts[1]), page + " points at " + link + " of " + anchors);
      }
    }
  }

  @Test
  void everyPageOfTheDocsIsNamedInTheReadme() {
    List<String> links = DocsPage.of("README.md").links();
    for (DocsPage page : DocsPage.all()) {
      if (page.file().startsWith("docs")) {
        assertTrue(links.contains(page.file().toString()), page + " is not named");
      }
    }
  }

  @Test
  void headingsBecomeAnchorsTheWayTheyAreShown() {
    DocsPage page = new DocsPage(Path.of("x.md"), List.of("# What `it` does: 1. Prove", "a #b"));
    assertEquals(List.of("what-it-does-1-prove"), page.anchors());
  }
}
