package felloe.bringin;

/**
 * What a photo gave.
 *
 * @param plate the part's outline, openings and holes
 * @param told how well they were measured
 * @param picture the photo laid flat, in the plate's own millimetres
 */
public record PhotoMeasured(PlateOutline plate, PhotoTold told, PhotoPicture picture) {}
