package beltwright.power;

/// One moment of a drive, filled by `Powertrain`; all motors do the same. Kept and refilled, so a ride allocates
/// nothing to speak of.
public final class Operating {
    /// Direct current of one motor (A), below zero braking.
    public double currentA;

    /// Push at the treads, all wheels (N), below zero braking.
    public double pushN;

    /// Torque at one motor's shaft (N·m).
    public double shaftNm;

    /// Motor speed (rad/s).
    public double radPerS;

    /// Current out of the pack (A), below zero charging.
    public double packA;

    /// Voltage of the pack under load (V), and at rest (V).
    public double packV;

    public double openV;

    /// Loss in copper, and in iron, bearings and air, of one motor (W).
    public double copperW;

    public double ironW;

    /// Loss in all belts (W).
    public double beltW;

    public Governs governs = Governs.WISH;

    /// How far the wish is beyond what governs, in amperes of one motor; 0 where the wish is met.
    public double beyondA;
}
