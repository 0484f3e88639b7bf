package beltwright.press.caliper;

import beltwright.part.Kinds;
import beltwright.press.drawing.Drawing;
import java.util.SequencedMap;

/// Where to put the caliper: a schematic of one kind of part, not to its size, with a letter on every length and angle.
public final class CaliperFigure {
    private CaliperFigure() {}

    /// {@return the figure of this kind; each dimension carries the path of its field as its tag}
    public static Drawing of(Kinds kind) {
        var figure = new Figure(kind);
        switch (kind) {
            case HANGER -> HangerFigure.draw(figure);
            case MOTOR -> MotorFigure.draw(figure);
            case DRIVE_PULLEY -> PulleyFigures.drive(figure);
            case WHEEL_PULLEY -> PulleyFigures.wheel(figure);
            case BELT -> PulleyFigures.belt(figure);
            case IDLER -> PulleyFigures.idler(figure);
            case WHEEL -> WheelFigure.draw(figure);
            case BATTERY_PACK -> ElectricFigures.pack(figure);
            case CONTROLLER -> ElectricFigures.controller(figure);
            case MOUNT -> MountFigure.draw(figure);
            case BEARING -> HardwareFigures.bearing(figure);
            case SLEEVE -> HardwareFigures.sleeve(figure);
            case SCREW -> HardwareFigures.screw(figure);
            case NUT -> HardwareFigures.nut(figure);
            case WASHER -> HardwareFigures.washer(figure);
            case CONSUMABLE -> BoardFigures.consumable(figure);
            case COVER -> BoardFigures.cover(figure);
            case DECK -> BoardFigures.deck(figure);
            case RISER -> BoardFigures.riser(figure);
        }
        return figure.drawing();
    }

    /// {@return the letter of each field that has a place on the figure, by its path, in the order of the record}
    public static SequencedMap<String, String> letters(Kinds kind) {
        return new Fields(kind).letters();
    }
}
