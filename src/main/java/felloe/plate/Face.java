package felloe.plate;

/** A face of the plate. */
public enum Face {
  /** The one the driver sees. */
  FRONT,
  /** The one toward the hub; a template for it is mirrored. */
  BACK
}
