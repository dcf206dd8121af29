package felloe.report;

import felloe.document.Phrase;

/**
 * Where more stands about an act.
 *
 * @param file its name
 * @param page its page, from 1; 0 for a file without pages
 */
public record CardLead(String file, int page) {

  /**
   * In words, without what all names of a shape's files begin with.
   *
   * @param stem that beginning
   */
  String words(String stem) {
    String name = file.startsWith(stem + "-") ? file.substring(stem.length() + 1) : file;
    String bare = name.endsWith(".pdf") ? name.substring(0, name.length() - 4) : name;
    return page == 0 ? bare : Phrase.of("{} p.\u00a0{}", bare, page);
  }
}
