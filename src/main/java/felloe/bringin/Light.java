package felloe.bringin;

/**
 * How light each place of a photo is, in proportion to the light that fell there: the encoding of
 * sRGB (IEC 61966-2-1) is undone, since an edge blurred by a lens is even in light alone.
 *
 * @param values 0 to 1, row by row
 */
record Light(int width, int height, float[] values) {

  /** Between the pixels' middles, linearly; the nearest one outside. */
  double at(double x, double y) {
    double cx = Math.min(Math.max(x, 0), width - 1.001);
    double cy = Math.min(Math.max(y, 0), height - 1.001);
    int i = (int) cx;
    int j = (int) cy;
    double fx = cx - i;
    double fy = cy - j;
    int k = j * width + i;
    return (1 - fy) * ((1 - fx) * values[k] + fx * values[k + 1])
        + fy * ((1 - fx) * values[k + width] + fx * values[k + width + 1]);
  }

  boolean holds(double x, double y, double margin) {
    return x >= margin && y >= margin && x <= width - 1 - margin && y <= height - 1 - margin;
  }

  /** The value of sRGB that stands for a light, both 0 to 1. */
  static double encoded(double light) {
    return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
  }

  /** The light that a value of sRGB stands for, both 0 to 1. */
  static double decoded(double value) {
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
