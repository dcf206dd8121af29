package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

  @ParameterizedTest
  @MethodSource("felloe.service.NewShape#families")
  void theReadmeAndThePageOfCommandsNameEachFamily(String family) throws IOException {
    for (String page : List.of("README.md", "docs/commands.md")) {
      assertTrue(Files.readString(Path.of(page)).contains("`" + family + "`"), page);
    }
  }

  /** What a shape file to start from says of the manual is there. */
  @ParameterizedTest
  @MethodSource("felloe.service.NewShape#families")
  void everyPageThatANewShapeNamesIsThere(String family) throws IOException {
    String text = Files.readString(Path.of("src/main/resources/felloe/new", family + ".yaml"));
    Matcher page = Pattern.compile("(docs/[a-z-]+\\.md)(?:#([a-z_-]+))?").matcher(text);
    Set<String> named = new TreeSet<>();
    while (page.find()) {
      named.add(page.group(1));
      assertTrue(Files.exists(Path.of(page.group(1))), page.group());
      List<String> anchors = DocsPage.of(page.group(1)).anchors();
      assertTrue(page.group(2) == null || anchors.contains(page.group(2)), page.group());
    }
    assertTrue(text.contains("docs/shape-file.md#" + family.replace('-', '_')), family);
    for (String wanted : List.of("shape-file", "rules", "hubs", "layup", "cutting", "drilling")) {
      assertTrue(named.contains("docs/" + wanted + ".md"), family + " does not name " + wanted);
    }
    assertTrue(text.lines().allMatch(line -> line.length() <= 104), family);
  }
}
