package felloe.laminate;

/** How a strip was bent. */
public enum StripMethod {
  /**
   * On two supports, loaded in the middle: strength 3 F L/(2 b h²), modulus L³ m/(4 b h³), strain 6
   * s h/L².
   *
   * <p>Source: ISO 178, ISO 14125, ASTM D790.
   */
  THREE_POINT(1.5, 0.25, 6),
  /**
   * Clamped at one end in a vice, with weights hung at the other, {@code span} away from the jaws:
   * strength 6 F L/(b h²), modulus 4 L³ m/(b h³), strain 3 s h/(2 L²).
   *
   * <p>Source: a cantilever of the textbooks. Jaws give a little, so that it tells the modulus some
   * percent too low.
   */
  BENCH_VICE(6, 4, 1.5);

  private final double stress;
  private final double modulus;
  private final double strain;

  StripMethod(double stress, double modulus, double strain) {
    this.stress = stress;
    this.modulus = modulus;
    this.strain = strain;
  }

  /**
   * Stress of the outer face, MPa, while the strip is nearly straight.
   *
   * @param force N
   * @param span mm
   * @param width mm
   * @param thickness mm
   */
  public double stress(double force, double span, double width, double thickness) {
    return stress * force * span / (width * thickness * thickness);
  }

  /**
   * Modulus, MPa.
   *
   * @param slope force over deflection, N/mm
   * @param span mm
   * @param width mm
   * @param thickness mm
   */
  public double modulus(double slope, double span, double width, double thickness) {
    return modulus * slope * span * span * span / (width * thickness * thickness * thickness);
  }

  /**
   * Strain of the outer face while the strip is nearly straight.
   *
   * @param deflection mm
   * @param span mm
   * @param thickness mm
   */
  public double strain(double deflection, double span, double thickness) {
    return strain * deflection * thickness / (span * span);
  }
}
