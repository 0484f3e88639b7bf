package beltwright.part;

import beltwright.quantity.Dimension;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Numbers;
import beltwright.quantity.Provenance;
import beltwright.quantity.Source;
import java.util.List;

/// Parts that nobody has on the shelf but anyone can buy or turn: the next screw length, belt, spacer or riser.
///
/// - Screw lengths: ISO 888 series, from memory. Belt lengths: [StockLengths]; their tolerance: [BeltTolerance].
/// - Dowel pins: sizes of ISO 8734 and ±0.25 mm to 10 mm of length, ±0.5 mm above, from memory.
/// - Sleeves and risers in the steps that are sold: common practice, no source.
public final class StandardSizes {
    /// Lengths of screws in this range (mm).
    public static final List<Double> SCREW_LENGTHS_MM = List.of(
            4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0, 18.0, 20.0, 22.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 55.0,
            60.0, 65.0, 70.0);

    /// Diameters of hardened dowel pins (mm).
    public static final List<Double> DOWELS_MM = List.of(1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0);

    /// Lengths of dowel pins in this range (mm).
    public static final List<Double> DOWEL_LENGTHS_MM = List.of(
            4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0, 18.0, 20.0, 24.0, 28.0, 30.0, 32.0, 36.0, 40.0, 50.0, 60.0);

    /// Thicknesses of risers (mm).
    public static final List<Double> RISERS_MM = List.of(3.0, 6.0, 9.0, 10.0, 12.0, 15.0, 20.0, 25.0, 30.0);

    /// How much longer a core spacer is to be than the core spacing (mm), least and most: common practice, no source.
    public static final double CORE_SPACER_LEAST_OVER_MM = 0.13;

    public static final double CORE_SPACER_MOST_OVER_MM = 0.25;

    private static final Provenance STANDARD = new Provenance(Source.STANDARD, "standard size, not on the shelf");

    private StandardSizes() {}

    public static Screw screw(Screw like, double lengthMm) {
        var id = like.thread() + "×" + Numbers.plain(lengthMm);
        return new Screw(
                label(id, like.head() + " screw " + id),
                like.thread(),
                like.head(),
                within(id + ".lengthMm", lengthMm, half(like.lengthMm())),
                like.strength());
    }

    /// {@return a hardened dowel pin, m6}
    public static DowelPin dowelPin(double diameterMm, double lengthMm) {
        var id = "dowel pin " + Numbers.plain(diameterMm) + "×" + Numbers.plain(lengthMm);
        return new DowelPin(
                label(id, id),
                DimensionText.parse(id + ".diameterMm", Numbers.plain(diameterMm) + " m6", STANDARD),
                within(id + ".lengthMm", lengthMm, lengthMm <= 10 ? 0.25 : 0.5),
                "steel-dowel");
    }

    /// {@return whether a belt of so many teeth is sold; of other pitches than 5 mm no list is at hand, so any may be}
    public static boolean stocked(BeltProfile profile, int teeth) {
        return profile.pitchMm() != 5 || StockLengths.MM.contains(teeth * 5);
    }

    /// A new belt of which nothing but profile, teeth and width is known.
    public static Belt belt(BeltProfile profile, int teeth, Dimension widthMm) {
        var unknown = Dimension.unknown("", STANDARD);
        return belt(profile, teeth, widthMm, unknown, "", unknown);
    }

    /// A new belt like another, with so many teeth.
    public static Belt belt(Belt like, int teeth) {
        return belt(like.profile(), teeth, like.widthMm(), like.massGPerM(), like.grade(), like.stiffnessN());
    }

    private static Belt belt(
            BeltProfile profile, int teeth, Dimension widthMm, Dimension mass, String grade, Dimension stiffness) {
        double length = teeth * profile.pitchMm();
        var id = "belt of " + teeth + " teeth";
        return new Belt(
                label(id, id + ", " + Numbers.plain(length) + " mm"),
                profile,
                teeth,
                widthMm,
                within(id + ".lengthDeviationMm", 0, BeltTolerance.lengthMm(Math.min(length, 1500))),
                mass.known() ? mass : Dimension.unknown(id + ".massGPerM", STANDARD),
                grade,
                stiffness.known() ? stiffness : Dimension.unknown(id + ".stiffnessN", STANDARD),
                "");
    }

    public static Sleeve sleeve(Sleeve like, double lengthMm) {
        var id = "sleeve of " + Numbers.plain(lengthMm) + " mm";
        return new Sleeve(
                label(id, id),
                like.boreMm(),
                like.outsideMm(),
                within(id + ".lengthMm", lengthMm, half(like.lengthMm())));
    }

    /// {@return the length in the middle of what a core spacer may have in this wheel (mm), to a hundredth}
    public static double coreSpacerMm(Wheel wheel) {
        double over = (CORE_SPACER_LEAST_OVER_MM + CORE_SPACER_MOST_OVER_MM) / 2;
        return Math.round((wheel.coreSpacingMm().nominal() + over) * 100) / 100.0;
    }

    public static Riser riser(Riser like, double thicknessMm) {
        var id = "riser of " + Numbers.plain(thicknessMm) + " mm";
        return new Riser(
                label(id, id),
                within(id + ".thicknessMm", thicknessMm, half(like.thicknessMm())),
                like.wedgeDeg(),
                like.holesLengthMm(),
                like.holesWidthMm(),
                like.holeMm());
    }

    /// {@return a flat riser with the holes of this deck}
    public static Riser riserFor(Deck deck, double thicknessMm) {
        var id = "riser of " + Numbers.plain(thicknessMm) + " mm";
        return new Riser(
                label(id, id),
                within(id + ".thicknessMm", thicknessMm, 0),
                within(id + ".wedgeDeg", 0, 0),
                deck.holesLengthMm(),
                deck.holesWidthMm(),
                deck.holeMm());
    }

    private static double half(Dimension d) {
        return d.known() ? d.upper() - d.nominal() : 0;
    }

    private static Dimension within(String of, double nominal, double half) {
        var text = Numbers.plain(nominal) + (half > 0 ? " ±" + Numbers.plain(half) : "");
        return new Dimension(of, text, nominal, nominal - half, nominal + half, STANDARD);
    }

    private static Label label(String id, String name) {
        return new Label(id, name, "", Dimension.unknown(id + ".massKg", STANDARD), "");
    }
}
