package felloe.board;

import static felloe.render.HtmlRenderer.escaped;

/** Pages into which scripts put what the server draws. */
final class Shell {

  private Shell() {}

  static String board(String name) {
    return Parts.text("board.html").replace("{{name}}", escaped(name));
  }
}
