package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import felloe.plate.BadInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Shape files changed by chance give a plate or a list of problems, and nothing else. */
class ShapeFuzzTest {

  private static final Pattern TOKEN =
      Pattern.compile("[A-Za-z][A-Za-z-]*|[-+]?[0-9]+(?:\\.[0-9]+)?|[\\[\\]{}:,]|\\n *");
  private static final List<String> FIGURES =
      List.of(
          "0", "-1", "1", "1e-9", "1e9", "9999", "1e308", ".nan", ".inf", "0.1", "12", "360",
          "2 in", "1/0 in", "7,5", "''", "~", "[]", "{}", "true");

  private record Token(int from, int to, String text) {}

  private static List<Token> tokens(String text) {
    List<Token> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(text);
    while (matcher.find()) {
      tokens.add(new Token(matcher.start(), matcher.end(), matcher.group()));
    }
    return tokens;
  }

  private static boolean isFigure(Token token) {
    return Character.isDigit(token.text.charAt(token.text.length() - 1));
  }

  private static String replaced(String text, Token token, String by) {
    return text.substring(0, token.from) + by + text.substring(token.to);
  }

  private static String changed(String text, Random random) {
    List<Token> tokens = tokens(text);
    Token one = tokens.get(random.nextInt(tokens.size()));
    Token other = tokens.get(random.nextInt(tokens.size()));
    return switch (random.nextInt(6)) {
      case 0 -> replaced(text, one, "");
      case 1 -> replaced(text, one, other.text);
      case 2 -> replaced(text, one, one.text + " " + other.text);
      case 3 -> swapped(text, one, other);
      default -> figureChanged(text, tokens, random);
    };
  }

  private static String swapped(String text, Token a, Token b) {
    Token first = a.from <= b.from ? a : b;
    Token second = first == a ? b : a;
    return replaced(replaced(text, second, first.text), first, second.text);
  }

  private static String figureChanged(String text, List<Token> tokens, Random random) {
    List<Token> figures = tokens.stream().filter(ShapeFuzzTest::isFigure).toList();
    if (figures.isEmpty()) {
      return text;
    }
    Token figure = figures.get(random.nextInt(figures.size()));
    if (random.nextBoolean()) {
      return replaced(text, figure, FIGURES.get(random.nextInt(FIGURES.size())));
    }
    double factor = Math.exp(random.nextGaussian() / 2);
    long thousandths = Math.round(Double.parseDouble(figure.text) * factor * 1000);
    return replaced(text, figure, java.math.BigDecimal.valueOf(thousandths, 3).toPlainString());
  }

  /** Reads a text; true when it made a plate. */
  private static boolean read(String text, String seed) {
    try {
      Corpus.read(text);
      return true;
    } catch (BadInput bad) {
      assertTrue(bad.lines().stream().noneMatch(String::isBlank), seed);
      return false;
    } catch (RuntimeException | StackOverflowError bug) {
      return fail(seed + "\n" + text, bug);
    }
  }

  @Test
  void changedFilesGiveAPlateOrAListOfProblems() {
    List<String> files = new ArrayList<>();
    Corpus.demos().forEach(file -> files.add(Corpus.text(file)));
    Corpus.files("good").forEach(file -> files.add(Corpus.text(file)));
    Corpus.files("odd").forEach(file -> files.add(Corpus.text(file)));
    int rounds = Integer.getInteger("felloe.rounds", 2_000);
    long first = Long.getLong("felloe.seed", 20_240_511L);
    int plates = 0;
    for (int i = 0; i < rounds; i++) {
      Random random = new Random(first + i);
      String text = files.get(random.nextInt(files.size()));
      for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
        text = changed(text, random);
      }
      plates += read(text, "seed " + (first + i)) ? 1 : 0;
    }
    assertTrue(plates > rounds / 50, plates + " plates: the changes are too wild to test much");
    assertTrue(plates < rounds, "every change was harmless");
  }
}
