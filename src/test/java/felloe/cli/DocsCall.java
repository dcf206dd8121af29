package felloe.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A call of the program that a page shows.
 *
 * @param where page and line
 * @param words behind {@code felloe}, without what a shell does with the answer
 * @param code the exit code that the page tells in a comment; 0 without one
 */
record DocsCall(String where, List<String> words, int code) {

  private static final String CODE = "# exit code ";

  /** As a shell splits: spaces in quotes do not part a word. */
  private static final Pattern WORD = Pattern.compile("(?:'[^']*'|[^\\s'])+");

  static DocsCall of(String where, String line) {
    int comment = line.indexOf(CODE);
    int code = comment < 0 ? 0 : Integer.parseInt(line.substring(comment + CODE.length()).strip());
    String call = line.replaceFirst(" +#.*", "").replaceFirst(" +[>|].*", "");
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(call);
    while (word.find()) {
      words.add(word.group().replace("'", ""));
    }
    words.remove(0);
    return new DocsCall(where, List.copyOf(words), code);
  }

  /** A word that a shell would not hand on as it stands. */
  @Override
  public String toString() {
    return where + " felloe " + String.join(" ", words);
  }

  /** Runs it as if the folder were the current one. */
  Run runIn(Path folder) throws IOException {
    List<String> args = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      boolean out = i > 0 && words.get(i - 1).equals("--out");
      boolean file = word.matches("[^-].*\\.(yaml|svg|dxf|jpg)");
      if (word.contains("*")) {
        args.addAll(files(folder, word));
      } else {
        args.add(out || file ? folder.resolve(word).toString() : word);
      }
    }
    if (words.get(0).equals("board")) {
      args.add("--no-browser");
      return Stopped.after(() -> Run.of(folder, false, args.toArray(String[]::new)));
    }
    boolean writes = List.of("make", "template", "cut", "card").contains(words.get(0));
    if (writes && !words.contains("--out")) {
      args.addAll(List.of("--out", folder.resolve("templates-out").toString()));
    }
    if (words.contains("--scale") && words.get(0).equals("new")) {
      args.add(folder.resolve("friend.yaml").toString());
    }
    if (words.equals(List.of("new", "round"))) {
      args.add(folder.resolve("round.yaml").toString());
    }
    return Run.of(folder, false, args.toArray(String[]::new));
  }

  private static List<String> files(Path folder, String pattern) throws IOException {
    Path wanted = folder.resolve(pattern.substring(0, pattern.indexOf('*')));
    try (Stream<Path> files = Files.list(wanted)) {
      return files.map(Path::toString).filter(name -> name.endsWith(".yaml")).sorted().toList();
    }
  }
}
