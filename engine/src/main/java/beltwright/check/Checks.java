package beltwright.check;

import java.util.List;
import java.util.stream.Stream;

/// Every check there is, in the order a builder meets them. The one place where a check is registered.
public final class Checks {
    public static final List<Check> ALL = Stream.of(
                    BeltChecks.all(),
                    ShaftChecks.all(),
                    SetScrewChecks.all(),
                    MountChecks.all(),
                    FixingChecks.all(),
                    DowelChecks.all(),
                    ScrewChecks.all(),
                    MotorChecks.all(),
                    ClearanceChecks.all(),
                    GroundChecks.all(),
                    LugChecks.all(),
                    BearingChecks.all(),
                    AxleChecks.all(),
                    IdlerChecks.all(),
                    IdlerPlaceChecks.all(),
                    IdlerScrewChecks.all(),
                    CoverChecks.all(),
                    CoverClearances.all(),
                    DeckChecks.all(),
                    ElectricalChecks.all(),
                    RideChecks.all(),
                    BeltStrengthChecks.all(),
                    SlotStrengthChecks.all(),
                    HangerJointChecks.all(),
                    ShaftJointChecks.all(),
                    ClampHubChecks.all(),
                    PlateChecks.all(),
                    AxleStrengthChecks.all(),
                    BearingLoadChecks.all(),
                    PulleyStrengthChecks.all(),
                    PulleyGripChecks.all(),
                    List.<Check>of(new AxleNutCheck(), new MotorShaftCheck(), new BrakingCheck(), new HardwareCheck()))
            .flatMap(List::stream)
            .toList();

    private Checks() {}
}
