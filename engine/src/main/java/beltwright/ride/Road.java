package beltwright.ride;

import beltwright.power.RoadLoad;

/// Board, rider, road and weather as plain numbers.
///
///     F = m·g·(sin β + c·cos β) + ½·ρ·A·w·|w| + F_b        w = v + head wind
///     m_e = m + Σ J/r² over the wheels + Σ J_m·(i/r)² over the motors
///     grip:  |F| ≤ μ·share·m·g·cos β
///     rigid rider, upright, centre of mass at height h above a wheelbase l, driven axle at the rear:
///     driving  F ≤ μ·m·g·cos β·½/(1 − μ·h/l)      braking  F ≤ μ·m·g·cos β·½/(1 + μ·h/l)      tips over at a = g·½·l/h
///
/// - Source: road load as in the cycling power model of Martin et al., _J. Appl. Biomech._ 14 (1998) 276; weight
///   transfer by moments about the axles.
/// - Valid: straight ahead.
/// - Neglects: bends, side wind, that a rider moves.
///
/// @param massKg board, rider and load
/// @param inertiaKg what turning parts add to the mass (kg)
/// @param rollingShare c (1)
/// @param dragAreaM2 A, drag coefficient times frontal area (m²)
/// @param airKgM3 ρ
/// @param bearingN F_b (N)
/// @param headWindMps wind against the board (m/s)
/// @param gripShare μ (1)
/// @param drivenShare share of the weight on the driven axle, driving (1)
/// @param drivenBrakingShare the same, braking (1)
/// @param massHeightM h (m)
/// @param wheelbaseM l (m)
public record Road(
        double massKg,
        double inertiaKg,
        double rollingShare,
        double dragAreaM2,
        double airKgM3,
        double bearingN,
        double headWindMps,
        double gripShare,
        double drivenShare,
        double drivenBrakingShare,
        double massHeightM,
        double wheelbaseM) {

    /// {@return mass that has to be sped up, turning parts included (kg)}
    public double inertialKg() {
        return massKg + inertiaKg;
    }

    /// {@return rolling resistance (N)}
    public double rollingN(double sine) {
        return massKg * RoadLoad.G * rollingShare * Math.sqrt(1 - sine * sine);
    }

    /// {@return push of the air against the board (N)}
    public double airN(double speedMps) {
        double wind = speedMps + headWindMps;
        return RoadLoad.dragN(airKgM3, dragAreaM2, wind) * Math.signum(wind);
    }

    /// {@return weight along the slope (N)}
    public double slopeN(double sine) {
        return massKg * RoadLoad.G * sine;
    }

    /// {@return everything that holds a board back that rolls forward (N)}
    public double loadN(double speedMps, double sine) {
        return slopeN(sine) + rollingN(sine) + airN(speedMps) + bearingN;
    }

    /// {@return most push that the treads hold (N)}
    public double gripN(double sine, boolean braking) {
        double share = braking ? drivenBrakingShare : drivenShare;
        return gripShare * share * massKg * RoadLoad.G * Math.sqrt(1 - sine * sine);
    }

    /// {@return most push (N) of a rider who stands stiff and upright between the axles, on level ground}
    public double rigidGripN(boolean braking) {
        double transfer = gripShare * massHeightM / wheelbaseM;
        double weight = gripShare * massKg * RoadLoad.G / 2;
        return braking ? weight / (1 + transfer) : transfer >= 1 ? Double.POSITIVE_INFINITY : weight / (1 - transfer);
    }

    /// The same road under a rider who stands stiff and upright while the board brakes.
    ///
    ///     share = ½/(1 + μ·h/l), never more than what was typed
    ///
    /// - Source: moments about the axles; the wheels slide long before such a rider tips over, because
    ///   `μ/(1 + μ·h/l) < l/h` for every grip.
    /// - Valid: driven axle at the rear, weight in the middle at rest.
    public Road upright() {
        double share = 0.5 / (1 + gripShare * massHeightM / wheelbaseM);
        return shared(drivenShare, Math.min(drivenBrakingShare, share));
    }

    /// {@return the same road where so many wheels of the driven axle have a motor: each carries half of that axle}
    public Road onWheels(int motors) {
        double part = Math.min(1, motors / 2.0);
        return shared(part * drivenShare, part * drivenBrakingShare);
    }

    private Road shared(double driving, double braking) {
        return new Road(
                massKg,
                inertiaKg,
                rollingShare,
                dragAreaM2,
                airKgM3,
                bearingN,
                headWindMps,
                gripShare,
                driving,
                braking,
                massHeightM,
                wheelbaseM);
    }

    /// Steepest slope down which a board that rolls slowly does not gain speed under this brake.
    ///
    ///     m·g·(sin β − c·cos β) = F + F_b      β = asin((F + F_b)·cos φ/(m·g)) + φ,   tan φ = c
    ///
    /// - Source: statics.
    /// - Valid: a brake that holds this force down to walking pace.
    /// - Neglects: air, which helps, and the drag of the motors.
    ///
    /// @param brakeN at the treads (N)
    /// @return slope (%)
    public double heldPercent(double brakeN) {
        double rolls = Math.atan(rollingShare);
        double sine = (brakeN + bearingN) * Math.cos(rolls) / (massKg * RoadLoad.G);
        return sine >= 1 ? Double.POSITIVE_INFINITY : 100 * Math.tan(Math.asin(sine) + rolls);
    }

    /// {@return speeding up or slowing down (m/s²) at which a stiff upright rider tips over}
    public double tipsAtMps2() {
        return RoadLoad.G * wheelbaseM / (2 * massHeightM);
    }

    /// {@return sine of a slope from rise over run}
    public static double sine(double gradePercent) {
        return Math.sin(Math.atan(gradePercent / 100));
    }
}
