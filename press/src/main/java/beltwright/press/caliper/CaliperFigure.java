package beltwright.press.caliper;

import beltwright.part.Kinds;
import beltwright.press.drawing.Drawing;
import java.util.SequencedMap;
import java.util.function.Consumer;

/// Where to put the caliper: a schematic of one kind of part, not to its size, with a letter on every length and angle.
public final class CaliperFigure {
    private CaliperFigure() {}

    /// {@return the figure of this kind; each dimension carries the path of its field as its tag}
    public static Drawing of(Kinds kind) {
        return figure(kind).drawing();
    }

    /// {@return the same with its views one under the other, for where there is no room beside}
    public static Drawing stacked(Kinds kind) {
        return figure(kind).stacked().drawing();
    }

    private static Figure figure(Kinds kind) {
        var figure = new Figure(kind);
        Consumer<Figure> draw = switch (kind) {
            case HANGER -> HangerFigure::draw;
            case MOTOR -> MotorFigure::draw;
            case DRIVE_PULLEY -> PulleyFigures::drive;
            case WHEEL_PULLEY -> PulleyFigures::wheel;
            case BELT -> PulleyFigures::belt;
            case IDLER -> PulleyFigures::idler;
            case WHEEL -> WheelFigure::draw;
            case BATTERY_PACK -> ElectricFigures::pack;
            case CONTROLLER -> ElectricFigures::controller;
            case MOUNT -> MountFigure::draw;
            case BEARING -> HardwareFigures::bearing;
            case SLEEVE -> HardwareFigures::sleeve;
            case SCREW -> HardwareFigures::screw;
            case NUT -> HardwareFigures::nut;
            case WASHER -> HardwareFigures::washer;
            case DOWEL_PIN -> HardwareFigures::dowelPin;
            case CONSUMABLE -> BoardFigures::consumable;
            case COVER -> BoardFigures::cover;
            case DECK -> BoardFigures::deck;
            case RISER -> BoardFigures::riser;
        };
        draw.accept(figure);
        return figure;
    }

    /// {@return the letter of each field that has a place on the figure, by its path, in the order of the record}
    public static SequencedMap<String, String> letters(Kinds kind) {
        return new Fields(kind).letters();
    }
}
