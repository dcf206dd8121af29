package felloe.hub;

/** Labels of holes in the order a maker counts them: H2 before H10. */
final class LabelOrder {

  private LabelOrder() {}

  static int compare(String a, String b) {
    return a.length() == b.length() ? a.compareTo(b) : Integer.compare(a.length(), b.length());
  }
}
