package felloe.out;

/**
 * The colour of a tone of a map, sRGB (IEC 61966-2-1), 0 to 255.
 *
 * <p>From the lightest tone to the darkest the lightness of the colour space OKLab falls in even
 * steps, so that equal steps of tone look equal, and a copy in grey still shows them in order. The
 * hue turns evenly from straw over rust to plum, and the chroma is largest in the middle; neither
 * is needed to tell tones apart. Even the darkest tone lets a black line be seen.
 *
 * <p>Source: OKLab, B. Ottosson, 2020, with its published matrices.
 *
 * @param red share of red
 * @param green share of green
 * @param blue share of blue
 */
record ToneColour(int red, int green, int blue) {

  private static final double LIGHTEST = 0.965;
  private static final double DARKEST = 0.46;
  private static final double FIRST_HUE = Math.toRadians(102);
  private static final double LAST_HUE = Math.toRadians(-22);
  private static final double LEAST_CHROMA = 0.045;
  private static final double MORE_CHROMA = 0.36;

  /**
   * The colour of a tone.
   *
   * @param tone 0 for the lightest to 1 for the darkest
   */
  static ToneColour of(double tone) {
    double lightness = LIGHTEST + tone * (DARKEST - LIGHTEST);
    double hue = FIRST_HUE + tone * (LAST_HUE - FIRST_HUE);
    double chroma = LEAST_CHROMA + MORE_CHROMA * tone * (1 - tone) + 0.06 * tone;
    return of(lightness, chroma * Math.cos(hue), chroma * Math.sin(hue));
  }

  /** The colour of lightness and both opponents in OKLab. */
  private static ToneColour of(double lightness, double a, double b) {
    double l = cube(lightness + 0.3963377774 * a + 0.2158037573 * b);
    double m = cube(lightness - 0.1055613458 * a - 0.0638541728 * b);
    double s = cube(lightness - 0.0894841775 * a - 1.2914855480 * b);
    return new ToneColour(
        level(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
        level(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
        level(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s));
  }

  private static double cube(double x) {
    return x * x * x;
  }

  /** Linear light as a level, by the curve of sRGB. */
  private static int level(double light) {
    double coded = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * Math.max(0, Math.min(1, coded)));
  }

  /** As {@code #rrggbb}. */
  String hex() {
    return "#" + two(red) + two(green) + two(blue);
  }

  private static String two(int level) {
    String hex = Integer.toHexString(level);
    return hex.length() == 1 ? "0" + hex : hex;
  }
}
