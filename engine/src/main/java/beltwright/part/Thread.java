package beltwright.part;

/// ISO metric coarse threads and what the standards hang on each size.
///
/// - Pitch: ISO 261/262. Pitch and minor diameters follow from it (ISO 724). Stress area: ISO 898-1.
/// - Clearance holes and tap drill: ISO 273 as carried by a general-purpose modelling package.
/// - Hexagon and height of the nut: ISO 4032, from memory; the trials hold them against a general-purpose parts
/// library,
///   which carries the older nuts at some sizes.
public enum Thread {
    M3(3, 0.5, 3.2, 3.4, 3.6, 2.5, 5.5, 2.4),
    M4(4, 0.7, 4.3, 4.5, 4.8, 3.3, 7, 3.2),
    M5(5, 0.8, 5.3, 5.5, 5.8, 4.2, 8, 4.7),
    M6(6, 1, 6.4, 6.6, 7, 5, 10, 5.2),
    M8(8, 1.25, 8.4, 9, 10, 6.8, 13, 6.8),
    M10(10, 1.5, 10.5, 11, 12, 8.5, 16, 8.4),
    M12(12, 1.75, 13, 13.5, 14.5, 10.2, 18, 10.8);

    /// How generously a hole is drilled (ISO 273).
    public enum Series {
        CLOSE,
        MEDIUM,
        COARSE
    }

    private final double majorMm;
    private final double pitchMm;
    private final double closeHoleMm;
    private final double clearanceHoleMm;
    private final double coarseHoleMm;
    private final double tapDrillMm;
    private final double hexagonMm;
    private final double nutHeightMm;

    Thread(
            double majorMm,
            double pitchMm,
            double closeHoleMm,
            double clearanceHoleMm,
            double coarseHoleMm,
            double tapDrillMm,
            double hexagonMm,
            double nutHeightMm) {
        this.majorMm = majorMm;
        this.pitchMm = pitchMm;
        this.closeHoleMm = closeHoleMm;
        this.clearanceHoleMm = clearanceHoleMm;
        this.coarseHoleMm = coarseHoleMm;
        this.tapDrillMm = tapDrillMm;
        this.hexagonMm = hexagonMm;
        this.nutHeightMm = nutHeightMm;
    }

    public double majorMm() {
        return majorMm;
    }

    public double pitchMm() {
        return pitchMm;
    }

    /// {@return medium clearance hole (mm)}
    public double clearanceHoleMm() {
        return clearanceHoleMm;
    }

    /// {@return clearance hole of this series (mm)}
    public double clearanceHoleMm(Series series) {
        return switch (series) {
            case CLOSE -> closeHoleMm;
            case MEDIUM -> clearanceHoleMm;
            case COARSE -> coarseHoleMm;
        };
    }

    public double tapDrillMm() {
        return tapDrillMm;
    }

    /// {@return width across flats of the matching hexagon nut (mm)}
    public double hexagonMm() {
        return hexagonMm;
    }

    /// {@return greatest height of the matching plain hexagon nut, style 1 (mm)}
    public double nutHeightMm() {
        return nutHeightMm;
    }

    /// {@return basic pitch diameter d2 = d − 0.649519·p (mm)}
    public double pitchDiameterMm() {
        return majorMm - 0.649519 * pitchMm;
    }

    /// {@return basic minor diameter of the internal thread D1 = d − 1.082532·p (mm)}
    public double minorDiameterMm() {
        return majorMm - 1.082532 * pitchMm;
    }

    /// {@return stress area π/4·(d − 0.938194·p)² (mm²)}
    public double stressAreaMm2() {
        double d = majorMm - 0.938194 * pitchMm;
        return Math.PI / 4 * d * d;
    }
}
