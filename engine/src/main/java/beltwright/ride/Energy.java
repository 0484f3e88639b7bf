package beltwright.ride;

import java.util.List;

/// Where the energy of a ride went (J). What the cells gave equals the sum of the rest.
///
/// @param cellsJ given by the cells, less what braking gave back
/// @param packJ lost in the resistance of the pack
/// @param copperJ lost in the windings
/// @param ironJ lost in iron, bearings and air of the motors
/// @param beltJ lost in the belts
/// @param rollingJ lost in the treads
/// @param airJ spent on the air
/// @param bearingJ lost in the wheel bearings
/// @param heightJ put into height
/// @param motionJ left in the motion
/// @param haltJ taken by the rider's foot in the last step to a stop
/// @param throughJ all that passed through the cells, out and in, without sign
public record Energy(
        double cellsJ,
        double packJ,
        double copperJ,
        double ironJ,
        double beltJ,
        double rollingJ,
        double airJ,
        double bearingJ,
        double heightJ,
        double motionJ,
        double haltJ,
        double throughJ) {

    /// {@return all that the cells' energy went to (J)}
    public double spentJ() {
        return packJ + copperJ + ironJ + beltJ + rollingJ + airJ + bearingJ + heightJ + motionJ + haltJ;
    }

    /// One place that energy went to.
    public record Part(String words, double joules) {}

    /// {@return where the cells' energy went, place by place; together [#spentJ()]}
    public List<Part> parts() {
        return List.of(
                new Part("lost in the pack", packJ),
                new Part("lost in the windings", copperJ),
                new Part("lost in iron, bearings and air of the motors", ironJ),
                new Part("lost in the belts", beltJ),
                new Part("lost in the treads", rollingJ),
                new Part("spent on the air", airJ),
                new Part("lost in the wheel bearings", bearingJ),
                new Part("put into height", heightJ),
                new Part("left in motion", motionJ),
                new Part("taken by the foot in the last step to a stop", haltJ));
    }

    /// {@return what is missing in the balance, as a share of all that passed through the cells}
    public double openShare() {
        double open = Math.abs(cellsJ - spentJ());
        return throughJ == 0 ? open : open / throughJ;
    }
}
