package felloe.plate;

/** What is measured of a driver, mm. Heights are above the seat that he presses down. */
public enum BodyMeasure {
  EYE_HEIGHT("eyes above the seat"),
  HEAD_LENGTH("brow to back of the head"),
  SHOULDER_HEIGHT("shoulders above the seat"),
  SHOULDERS("from shoulder to shoulder"),
  BREADTH("across the upper arms"),
  CHEST_DEPTH("depth of the chest"),
  ELBOW_HEIGHT("elbows above the seat"),
  ARM("shoulder to grip"),
  FOREARM("width of a forearm"),
  HIPS("breadth of the hips"),
  THIGH("height of a thigh"),
  BUTTOCK_KNEE("back to front of the knee"),
  KNEE_HEIGHT("sole to top of the knee"),
  SHOE("sole of a shoe"),
  HAND("breadth of a hand"),
  THUMB("length of a thumb"),
  FINGER("length of an index finger"),
  GLOVE("what a glove takes off a reach");

  private final String words;

  BodyMeasure(String words) {
    this.words = words;
  }

  /** What it is, in words. */
  public String words() {
    return words;
  }
}
