package beltwright.check;

import java.util.List;
import org.jspecify.annotations.Nullable;

/// What a check found: how much is needed, how much there is, how sure, why, and what would put it right.
///
/// @param key `check.subject`, the same for the same question in every revision of a kit
/// @param demand what is needed, nominal, in `unit`
/// @param capacity what there is, nominal
/// @param capacityWorst what there is at the worst limits
/// @param demandWorst what is needed at the worst limits
/// @param capacityBest what there is at the best limits
/// @param demandBest what is needed at the best limits
/// @param margin capacity over demand minus one; null for a yes-or-no question and where a number is missing
/// @param subjects the seats it is about
/// @param needs dimensions that are unknown and decide
/// @param estimates dimensions that are estimates and were used
/// @param says the answer in one sentence
/// @param remedy what would put it right, empty where nothing needs to
public record Finding(
        String key,
        String check,
        Verdict verdict,
        double demand,
        double capacity,
        double demandWorst,
        double capacityWorst,
        double demandBest,
        double capacityBest,
        String unit,
        @Nullable Double margin,
        @Nullable Double marginWorst,
        @Nullable Double marginBest,
        List<String> subjects,
        List<String> needs,
        List<String> estimates,
        String says,
        String remedy,
        String source,
        List<Line> working) {
    public Finding {
        subjects = List.copyOf(subjects);
        needs = List.copyOf(needs);
        estimates = List.copyOf(estimates);
        working = List.copyOf(working);
    }

    /// {@return the side this is about, or an empty text where it is about the whole kit}
    public String side() {
        int dot = key.lastIndexOf('.');
        return dot < 0 ? "" : key.substring(dot + 1);
    }
}
