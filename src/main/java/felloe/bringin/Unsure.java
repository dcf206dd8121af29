package felloe.bringin;

/**
 * How far figures may be off.
 *
 * @param places and sizes that were measured, mm; 0 for what was drawn
 * @param diameters by which holes that are one size may differ from each other, mm; 0 likewise
 */
record Unsure(double places, double diameters) {
  static final Unsure NOT = new Unsure(0, 0);
}
