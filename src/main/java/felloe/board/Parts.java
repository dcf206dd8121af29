package felloe.board;

import felloe.yaml.BuiltIn;
import java.util.List;

/** The pages, scripts and style sheets that are part of the program. */
final class Parts {

  /** All that a browser may ask for by name. */
  static final List<String> NAMES =
      List.of("board.css", "board.js", "start.js", "solid.js", "calliper.js");

  private Parts() {}

  static String text(String name) {
    return BuiltIn.text("/felloe/board/" + name);
  }
}
