package beltwright.workshop.log;

import beltwright.quantity.Numbers;
import beltwright.ride.Log.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/// What is possible but looks as if a column were in another unit. The limits are habit.
final class Doubts {
    private static final double FAST_MPS = 20;
    private static final double SLOW_STEP_S = 30;
    private static final double QUICK_STEP_S = 0.002;
    private static final double FEW_PERCENT = 0.5;

    private Doubts() {}

    static List<String> of(Map<Reading, List<Double>> readings) {
        var doubts = new ArrayList<String>();
        var time = readings.getOrDefault(Reading.TIME, List.of());
        double step = time.getLast() / (time.size() - 1);
        if (step > SLOW_STEP_S) {
            doubts.add("time rises by " + Numbers.significant(step, 3) + " s from row to row: is this column ms?");
        }
        if (step < QUICK_STEP_S) {
            doubts.add("time rises by " + Numbers.significant(step, 3) + " s from row to row: is this column s?");
        }
        double speed = greatest(readings, Reading.SPEED);
        if (speed > FAST_MPS) {
            doubts.add("speed reaches " + Numbers.significant(speed, 3) + " m/s, " + Numbers.significant(speed * 3.6, 3)
                    + " km/h: is this column in another unit?");
        }
        double grade = greatest(readings, Reading.GRADE);
        if (grade > 0 && grade < FEW_PERCENT) {
            doubts.add("grade stays within " + Numbers.significant(grade, 3) + " %: is this column a fraction?");
        }
        return doubts;
    }

    private static double greatest(Map<Reading, List<Double>> readings, Reading what) {
        return readings.getOrDefault(what, List.of()).stream()
                .mapToDouble(Math::abs)
                .max()
                .orElse(0);
    }
}
