package beltwright.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import beltwright.Seeds.Draw;
import beltwright.part.Controller;
import beltwright.part.Motor;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("law")
class MotorLawTest {
    @ParameterizedTest // a balance of energy cannot catch this slip: both ends of it would move together
    @MethodSource("beltwright.Seeds#draws")
    void equalTorqueIsEqualLossInBothConventions(Draw draw) {
        double phaseOhm = draw.between(0.01, 0.1);
        double peakA = draw.between(5, 80);
        double threePhaseLoss = 3 * (peakA / Math.sqrt(2)) * (peakA / Math.sqrt(2)) * phaseOhm;

        double direct = MotorModel.directCurrentA(peakA, Controller.CurrentIs.SINE_PEAK);
        double lead = MotorModel.leadResistanceOhm(phaseOhm, Motor.Winding.PHASE);
        assertThat(MotorModel.copperLossW(direct, lead)).isCloseTo(threePhaseLoss, within(1e-9));

        double asDirect = MotorModel.directCurrentA(direct, Controller.CurrentIs.DIRECT);
        double asLine = MotorModel.leadResistanceOhm(2 * phaseOhm, Motor.Winding.LINE_TO_LINE);
        assertThat(MotorModel.copperLossW(asDirect, asLine)).isCloseTo(threePhaseLoss, within(1e-9));
    }

    @ParameterizedTest // torque times speed is back-EMF times current
    @MethodSource("beltwright.Seeds#draws")
    void theShaftGetsWhatTheBackEmfTakes(Draw draw) {
        double kv = draw.between(50, 400);
        double rpm = draw.between(100, 10_000);
        double current = draw.between(1, 100);
        double shaft = MotorModel.torqueConstantNmA(kv) * current * rpm * Math.PI / 30;
        assertThat(shaft).isCloseTo(rpm / kv * current, within(1e-9 * shaft));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void atTopSpeedAllPowerIsAccountedFor(Draw draw) {
        var speed = board(draw, draw.between(0.3, 1.0));
        double v = speed.loadedMps();
        assertThat(v).isPositive().isLessThan(speed.withoutLoadMps());

        double current = speed.currentA(v);
        double perPackA = speed.drives() * speed.dutyShare() * current;
        double fromCells = perPackA * speed.packV();
        double packHeat = perPackA * perPackA * speed.packOhm();
        double copper = speed.drives() * MotorModel.copperLossW(current, speed.leadOhm());
        double backEmf = v * 60_000 / (Math.PI * speed.wheelDiameterMm()) * speed.ratio() / speed.kvRpmPerV();
        double idle = speed.drives() * backEmf * speed.noLoadA();
        double road = (RoadLoad.climbN(speed.massKg(), 0, speed.rollingPercent())
                        + RoadLoad.dragN(speed.airDensityKgM3(), speed.dragAreaM2(), v))
                * v;
        double belt = road / speed.efficiency() - road;
        assertThat(packHeat + copper + idle + belt + road).isCloseTo(fromCells, within(1e-6 * fromCells));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void moreDragIsLessSpeed(Draw draw) {
        double area = draw.between(0.3, 1.0);
        long seed = draw.seed();
        var here = board(new Draw(seed, new java.util.SplittableRandom(seed)), area);
        var broader = board(new Draw(seed, new java.util.SplittableRandom(seed)), area * 1.2);
        assertThat(broader.loadedMps()).isLessThan(here.loadedMps());
    }

    private static TopSpeed board(Draw draw, double dragAreaM2) {
        return new TopSpeed(
                draw.between(30, 50),
                draw.between(0.02, 0.1),
                draw.between(0.9, 1),
                draw.between(120, 250),
                draw.between(0.02, 0.08),
                draw.between(0.5, 2),
                draw.between(2, 4),
                draw.between(80, 180),
                draw.whole(1, 2),
                draw.between(60, 120),
                draw.between(1, 2),
                draw.between(1.0, 1.3),
                dragAreaM2,
                draw.between(0.9, 0.98));
    }

    @ParameterizedTest
    @MethodSource("beltwright.Seeds#draws")
    void brakingTorqueToDecelerationToTorque(Draw draw) {
        double mass = draw.between(60, 200);
        double wheel = draw.between(80, 200);
        int drives = draw.whole(1, 2);
        double asked = draw.between(0.5, 5);
        double torque = Pulls.brakingWheelNm(mass, asked, wheel, drives);
        assertThat(Pulls.decelerationMps2(torque, mass, wheel, drives)).isCloseTo(asked, within(1e-9));
    }

    @ParameterizedTest // one belt, one pull: torque at either pulley over its own radius
    @MethodSource("beltwright.Seeds#draws")
    void bothPulleysSeeOnePull(Draw draw) {
        double drive = draw.between(20, 40);
        double wheel = draw.between(50, 120);
        double torque = draw.between(0.5, 8);
        assertThat(Pulls.effectiveN(torque * wheel / drive, wheel))
                .isCloseTo(Pulls.effectiveN(torque, drive), within(1e-6));
    }
}
