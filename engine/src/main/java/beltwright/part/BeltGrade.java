package beltwright.part;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/// How a toothed belt is built, and the power that one of this build carries for its whole life: a table by the teeth
/// and the speed of the smaller pulley, printed for one width.
///
/// @param pitchMm pitch that the table is for (mm)
/// @param widthMm width that the table is printed for (mm)
/// @param teeth columns, rising
/// @param rpm rows, rising
/// @param watts power (W) by row and column
/// @param source where the table was read
public record BeltGrade(
        String id,
        String name,
        double pitchMm,
        double widthMm,
        List<Double> teeth,
        List<Double> rpm,
        List<List<Double>> watts,
        String source) {
    private static final String MANUAL = "a belt maker's technical manual for rubber timing belt drives, ";

    public static final BeltGrade STANDARD = new BeltGrade(
            "standard",
            "standard rubber",
            5,
            9,
            List.of(14., 16., 18., 20., 24., 28., 32., 36., 40.),
            List.of(100., 500., 1000., 2000., 2850., 4000., 5000., 6000., 8000., 10000.),
            List.of(
                    List.of(21.9, 25.9, 30.0, 34.9, 44.1, 53.9, 64.0, 74.9, 87.0),
                    List.of(91., 106., 122., 139., 174., 211., 251., 292., 336.),
                    List.of(154., 180., 206., 234., 291., 352., 416., 483., 552.),
                    List.of(262., 305., 349., 394., 488., 586., 688., 794., 902.),
                    List.of(338., 393., 449., 506., 625., 748., 874., 1004., 1137.),
                    List.of(443., 513., 585., 658., 808., 961., 1116., 1274., 1431.),
                    List.of(523., 605., 688., 772., 943., 1115., 1288., 1459., 1628.),
                    List.of(598., 690., 783., 877., 1064., 1250., 1433., 1610., 1778.),
                    List.of(735., 843., 950., 1057., 1264., 1459., 1637., 1794., 1927.),
                    List.of(854., 972., 1088., 1199., 1403., 1577., 1714., 1804., 1842.)),
            MANUAL + "table 22");

    public static final BeltGrade REINFORCED = new BeltGrade(
            "reinforced",
            "reinforced rubber",
            5,
            9,
            List.of(14., 16., 20., 24., 36., 40.),
            List.of(1000., 2850., 4000., 6000., 10000.),
            List.of(
                    List.of(470., 590., 820., 1040., 1690., 1910.),
                    List.of(1040., 1320., 1830., 2320., 3710., 4150.),
                    List.of(1300., 1670., 2320., 2920., 4590., 5080.),
                    List.of(1670., 2160., 2990., 3730., 5540., 6010.),
                    List.of(2150., 2790., 3780., 4570., 5730., 5720.)),
            MANUAL + "table 17");

    /// The grades that a maker's manual prints, by id.
    public static final Map<String, BeltGrade> PUBLISHED =
            new TreeMap<>(Map.of(STANDARD.id(), STANDARD, REINFORCED.id(), REINFORCED));

    public BeltGrade {
        teeth = List.copyOf(teeth);
        rpm = List.copyOf(rpm);
        watts = watts.stream().map(List::copyOf).toList();
        rising("teeth", teeth);
        rising("speeds", rpm);
        int columns = teeth.size();
        if (watts.size() != rpm.size() || watts.stream().anyMatch(row -> row.size() != columns)) {
            throw new Refusal(
                    "watts",
                    "the table is not full",
                    "a row for each speed, a power for each number of teeth",
                    "fill it, or leave a row or a column out");
        }
    }

    private static void rising(String what, List<Double> steps) {
        for (int i = 1; i < steps.size(); i++) {
            if (!(steps.get(i) > steps.get(i - 1))) {
                throw new Refusal(
                        what, Numbers.plain(steps.get(i)) + " is out of order", "rising numbers", "sort them");
            }
        }
        if (steps.size() < 2) {
            throw new Refusal(what, "fewer than two", "two or more", "add another");
        }
    }
}
