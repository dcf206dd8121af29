package felloe.out;

/**
 * What a file says about itself.
 *
 * @param title what it shows, such as {@code Heron, template}
 * @param revision the plate's revision; no date
 * @param caution the caution that belongs to the act it is used for; may be empty
 */
public record About(String title, String revision, String caution) {

  /** Revision and caution as one line, for formats that have one place for both. */
  public String description() {
    return caution.isEmpty() ? "Revision " + revision : "Revision " + revision + ". " + caution;
  }
}
