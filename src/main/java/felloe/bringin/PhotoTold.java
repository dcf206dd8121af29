package felloe.bringin;

import java.util.OptionalDouble;

/**
 * How well a photo measured a part.
 *
 * @param marks that were found
 * @param sheets that they lie on
 * @param perMm pixels to a millimetre on the part, the fewest
 * @param residual what is left across the sides of the marks when camera and sheets are fitted,
 *     standard deviation, pixels
 * @param oblique how far the camera looked from straight down, degrees
 * @param height of the camera over the paper, mm, as the marks tell it
 * @param heightBound its 95 % bound, mm
 * @param thickness of the part, mm, as the maker said
 * @param width the part's width across, as it stands, mm
 * @param widthBound its 95 % bound, mm
 * @param scale 95 % bound of the scale, share: by the paper's bar, the thickness and the camera
 * @param holeBound the greatest 95 % bound of a round hole's diameter, mm; empty without holes
 */
public record PhotoTold(
    int marks,
    int sheets,
    double perMm,
    double residual,
    double oblique,
    double height,
    double heightBound,
    double thickness,
    double width,
    double widthBound,
    double scale,
    OptionalDouble holeBound) {}
