package felloe.kit;

import felloe.out.Json;
import felloe.plate.Finding;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.List;
import java.util.Locale;

/** What answers as JSON share. */
final class AnswerJson {

  private AnswerJson() {}

  /** Name, title and revision, the same in every answer about a plate. */
  static Json.Members plate(Plate plate) {
    return Json.object()
        .with("name", plate.name())
        .with("title", plate.title())
        .with("revision", plate.revision());
  }

  static String word(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT);
  }

  /** The same findings with the folders taken off the shape file's name. */
  static List<Finding> withoutFolders(List<Finding> findings) {
    return findings.stream()
        .map(
            f ->
                new Finding(
                    f.rule(),
                    f.why(),
                    f.verdict(),
                    f.subject(),
                    f.figure(),
                    f.limit(),
                    f.at(),
                    withoutFolders(f.place()),
                    f.advice()))
        .toList();
  }

  static Place withoutFolders(Place place) {
    String file = place.file();
    int cut = place.isOption() ? 0 : Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1;
    return new Place(file.substring(cut), place.line(), place.column());
  }
}
