package felloe.geometry;

/** x */
public record Point(double x, double y) {}
