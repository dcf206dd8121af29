package felloe.joints;

import felloe.geometry.Numbers;
import felloe.hub.ClearanceSeries;
import felloe.hub.ScrewThread;

/** Lengths in words, and whether a screw enters. */
final class JointWords {

  private JointWords() {}

  static String mm(double length) {
    return Numbers.brief(length, 2) + " mm";
  }

  static String ratio(double value) {
    return Numbers.brief(value, 2);
  }

  static boolean enters(ScrewThread thread, double hole) {
    return ClearanceSeries.of(thread, hole) != ClearanceSeries.TOO_SMALL;
  }
}
