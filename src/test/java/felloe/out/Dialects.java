package felloe.out;

import felloe.cutting.Dialect;
import felloe.cutting.DialectCatalogue;
import felloe.plate.Place;
import java.nio.file.Path;
import java.util.List;

/** The dialects that the program knows, and what the interpreter must know for each. */
final class Dialects {

  private Dialects() {}

  static List<Dialect> all() {
    return DialectCatalogue.names().stream().map(Dialects::named).toList();
  }

  static Dialect plain() {
    return named("plain-rs274");
  }

  static Dialect named(String name) {
    return DialectCatalogue.named(name, Path.of(""), Place.BUILT_IN);
  }

  static Rs274Beyond beyond(Dialect dialect) {
    return new Rs274Beyond(
        dialect.lines().comments() == Dialect.Comments.SEMICOLON,
        dialect.start().contains("G91.1"),
        dialect.dwellMilliseconds());
  }
}
