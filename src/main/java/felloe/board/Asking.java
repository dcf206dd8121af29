package felloe.board;

import static felloe.render.HtmlRenderer.escaped;

import felloe.service.NewShape;
import java.util.List;
import java.util.Map;

/** Writes questions as a form, with what was said and what is wrong with it. */
final class Asking {

  private final Map<String, String> said;
  private final Map<String, String> wrong;
  private final StringBuilder html = new StringBuilder();

  Asking(Map<String, String> said, Map<String, String> wrong) {
    this.said = said;
    this.wrong = wrong;
  }

  String html() {
    return html.toString();
  }

  void text(String key, String question, String help) {
    typed(key, question, help, "type=\"text\" autocapitalize=\"off\" spellcheck=\"false\"");
  }

  void figure(String key, String question, String help) {
    typed(key, question, help, "type=\"text\" inputmode=\"decimal\"");
  }

  private void typed(String key, String question, String help, String kind) {
    html.append("<li><label for=\"q-").append(key).append("\">").append(escaped(question));
    html.append("</label>\n<input id=\"q-").append(key).append("\" name=\"").append(key);
    html.append("\" ").append(kind).append(" value=\"").append(escaped(said.get(key)));
    html.append("\"").append(described(key)).append(">\n");
    below(key, help);
    html.append("</li>\n");
  }

  void list(String key, String question, String help, Map<String, String> of) {
    html.append("<li><label for=\"q-").append(key).append("\">").append(escaped(question));
    html.append("</label>\n<select id=\"q-").append(key).append("\" name=\"").append(key);
    html.append("\"").append(described(key)).append(">\n");
    of.forEach(
        (name, words) ->
            html.append("<option value=\"")
                .append(escaped(name))
                .append(name.equals(said.get(key)) ? "\" selected>" : "\">")
                .append(escaped(words))
                .append("</option>\n"));
    html.append("</select>\n");
    below(key, help);
    html.append("</li>\n");
  }

  void choice(String key, String question, String help, Map<String, String> of) {
    html.append("<li><fieldset").append(described(key)).append("><legend>");
    html.append(escaped(question)).append("</legend>\n");
    of.forEach((name, words) -> radio(key, name, escaped(words)));
    below(key, help);
    html.append("</fieldset></li>\n");
  }

  /** Outlines to choose from, each drawn. */
  void pictures(String key, String question, List<String> families, Map<String, String> words) {
    html.append("<li><fieldset class=\"pictures\"").append(described(key)).append("><legend>");
    html.append(escaped(question)).append("</legend>\n<div class=\"cards\">\n");
    for (String family : families) {
      html.append("<div class=\"card\">").append(Beginning.drawing(family, NewShape.text(family)));
      radio(key, family, escaped(words.getOrDefault(family, family)));
      html.append("</div>\n");
    }
    html.append("</div>\n");
    below(key, "");
    html.append("</fieldset></li>\n");
  }

  private void radio(String key, String name, String words) {
    html.append("<label class=\"radio\"><input type=\"radio\" name=\"").append(key);
    html.append("\" value=\"").append(escaped(name)).append("\"");
    html.append(name.equals(said.get(key)) ? " checked> " : "> ");
    html.append("<span>").append(words).append("</span></label>\n");
  }

  private String described(String key) {
    return " aria-describedby=\"q-"
        + key
        + "-help\""
        + (wrong.containsKey(key) ? " aria-invalid=\"true\"" : "");
  }

  private void below(String key, String help) {
    html.append("<p class=\"help\" id=\"q-").append(key).append("-help\">");
    if (wrong.containsKey(key)) {
      html.append("<strong class=\"fault\">This ").append(escaped(wrong.get(key)));
      html.append("</strong> ");
    }
    html.append(escaped(help)).append("</p>\n");
  }
}
