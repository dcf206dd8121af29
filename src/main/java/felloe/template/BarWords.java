package felloe.template;

import felloe.geometry.Numbers;
import felloe.plate.Place;
import java.util.Optional;

/**
 * What is said of the check bars, in one wording for all papers and pages.
 *
 * @param reading what pages are corrected for
 * @param place where a reading is given
 */
record BarWords(Optional<BarReading> reading, Place place) {

  /** Length of the bars, such as {@code 100 mm}. */
  static String length(double bar) {
    return Numbers.brief(bar, 1) + " mm";
  }

  /** How far a bar may be off, such as {@code 0.3 mm}. */
  static String good(double bar) {
    return Numbers.brief(BarReading.good(bar), 1) + " mm";
  }

  /** A reading such as a printer gives, in the form that it is given back. */
  static String example(double bar) {
    return new BarReading(Math.round(10 * bar * 0.996) / 10.0, Math.round(10 * bar * 1.002) / 10.0)
        .text();
  }

  /** On pages of the maker's own printer. */
  String printed(double bar) {
    return reading.map(read -> corrected(bar, read)).orElse(uncorrected(bar));
  }

  private String uncorrected(double bar) {
    return "Measure both check bars between the end ticks with a steel rule or calliper: "
        + length(bar)
        + " across and up. If one is more than "
        + good(bar)
        + " off, give both readings back as "
        + place
        + " ACROSSxUP (such as "
        + example(bar)
        + ") and print again: the pages are then corrected.";
  }

  private String corrected(double bar, BarReading read) {
    return "Corrected for "
        + place
        + " "
        + read.text()
        + ": both check bars must now read "
        + length(bar)
        + ", within "
        + good(bar)
        + ". If they do not, give no reading of these pages: print the check sheet without "
        + place
        + " and measure that.";
  }

  /** On a page that another machine plots, which is never corrected. */
  String plotted(double bar) {
    return "Measure both check bars between the end ticks: "
        + length(bar)
        + " across and up. If one is more than "
        + good(bar)
        + " off, the plot is not at scale: do not use it, have it plotted again at 100 %. It cannot"
        + " be corrected with "
        + place
        + ".";
  }
}
