package felloe.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A page that people read, taken apart so that what it says can be tried.
 *
 * @param file where it lies, from the project's folder
 * @param lines its text
 */
record DocsPage(Path file, List<String> lines) {

  private static final Pattern LINK = Pattern.compile("\\[[^\\]]*\\]\\(([^)\\s]+)\\)");

  static DocsPage of(String file) {
    Path path = Path.of(file);
    try {
      return new DocsPage(path, Files.readAllLines(path));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The pages at the top and in {@code docs/}. */
  static List<DocsPage> all() {
    List<DocsPage> pages = new ArrayList<>(List.of(of("README.md"), of("DEVELOPERS.md")));
    pages.add(of("templates-out/README.md"));
    try (Stream<Path> files = Files.list(Path.of("docs"))) {
      files
          .filter(file -> file.toString().endsWith(".md"))
          .sorted()
          .forEach(file -> pages.add(of(file.toString())));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return pages;
  }

  /** The name by which a test tells of it. */
  @Override
  public String toString() {
    return file.toString();
  }

  /** What its links and pictures point at. */
  List<String> links() {
    List<String> links = new ArrayList<>();
    for (String line : prose()) {
      Matcher link = LINK.matcher(line.replaceAll("`[^`]*`", ""));
      while (link.find()) {
        links.add(link.group(1));
      }
    }
    return links;
  }

  /** The anchors that its headings make: lower case, hyphens for blanks. */
  List<String> anchors() {
    return prose().stream()
        .filter(line -> line.matches("#+ .*"))
        .map(line -> line.replaceFirst("#+ ", "").toLowerCase(java.util.Locale.ROOT))
        .map(line -> line.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
        .toList();
  }

  /** Lines outside fences and indented code. */
  private List<String> prose() {
    List<String> prose = new ArrayList<>();
    boolean code = false;
    for (String line : lines) {
      if (line.startsWith("```")) {
        code = !code;
      } else if (!code && !line.startsWith("    ")) {
        prose.add(line);
      }
    }
    return prose;
  }

  /** Calls of the program that stand on lines of their own: {@code felloe ...}. */
  List<DocsCall> calls() {
    List<DocsCall> calls = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      boolean indented = line.startsWith("    ");
      String call = line.strip().replaceFirst(".*java -jar target/felloe\\.jar ", "felloe ");
      if (indented && call.startsWith("felloe ")) {
        calls.add(DocsCall.of(file + ":" + (i + 1), call));
      }
    }
    return calls;
  }

  /** Fenced blocks of YAML, as they stand. */
  List<String> yamlBlocks() {
    return blocks("yaml");
  }

  /** The block of YAML whose first line is a comment that begins with a file's name. */
  String yamlFile(String name) {
    return yamlBlocks().stream()
        .filter(block -> block.startsWith("# " + name))
        .findFirst()
        .orElseThrow();
  }

  /** Fenced blocks of a language. */
  List<String> blocks(String language) {
    List<String> blocks = new ArrayList<>();
    StringBuilder block = null;
    for (String line : lines) {
      if (block == null && line.equals("```" + language)) {
        block = new StringBuilder();
      } else if (block != null && line.startsWith("```")) {
        blocks.add(block.toString());
        block = null;
      } else if (block != null) {
        block.append(line).append('\n');
      }
    }
    return blocks;
  }
}
