package beltwright.assembly;

import beltwright.kit.Joint;
import beltwright.kit.Kit;
import beltwright.kit.Role;
import beltwright.part.Nut;
import beltwright.part.Screw;
import beltwright.part.ScrewHead;
import beltwright.part.Thread;
import beltwright.quantity.Numbers;
import beltwright.strength.Tightening;
import java.util.Map;
import java.util.Optional;

/// The tightening torque of a joint and what it rests on.
final class Torques {
    /// Cup-point set screws, class 45H (N·m). From memory of suppliers' tables; common practice, no source.
    private static final Map<Thread, Double> SET_SCREW = Map.of(
            Thread.M3, 0.9,
            Thread.M4, 2.0,
            Thread.M5, 4.0,
            Thread.M6, 7.0,
            Thread.M8, 15.0);

    private Torques() {}

    static Optional<Step.Torque> of(Kit kit, Joint joint) {
        var added = joint.of().getFirst().role();
        if (added == Role.MOTOR || added == Role.DRIVE_PULLEY) { // theirs comes when the belt is aligned and taut
            return Optional.empty();
        }
        if (StepWords.plastic(kit, joint)) { // what a head may press on plastic is not known
            return Optional.empty();
        }
        return joint.with().stream()
                .map(s -> kit.seat(s).part())
                .<Optional<Step.Torque>>map(part -> switch (part) {
                    case Screw s -> Optional.ofNullable(screw(s));
                    case Nut n -> nut(n);
                    default -> Optional.empty();
                })
                .flatMap(Optional::stream)
                .findFirst();
    }

    static Step.@org.jspecify.annotations.Nullable Torque screw(Screw s) {
        if (s.head() == ScrewHead.SET) {
            var torque = SET_SCREW.get(s.thread());
            return torque == null
                    ? null
                    : new Step.Torque(torque, "cup-point set screw " + s.thread() + ", common practice");
        }
        double preload = Tightening.preloadN(s.thread(), s.strength());
        double torque = Tightening.torqueNm(
                s.thread(), preload, Tightening.FRICTION, Tightening.headFrictionMm(s.thread(), s.head()));
        return new Step.Torque(
                Math.round(torque * 10) / 10.0,
                "60 % of proof strength of class " + s.strength() + ", preload " + Numbers.significant(preload, 2)
                        + " N at friction " + Numbers.plain(Tightening.FRICTION));
    }

    private static Optional<Step.Torque> nut(Nut n) {
        return Optional.of(Tightening.axleNutNm(n.thread()))
                .filter(t -> !t.isNaN())
                .map(t -> new Step.Torque(t, "axle nut " + n.thread() + " against a full stack, common practice"));
    }
}
