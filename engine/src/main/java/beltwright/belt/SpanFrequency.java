package beltwright.belt;

/// From a pluck to a tension, for a belt that is stiff: what weights hung on it teach.
///
///     string: T = k·f²               k = 4·m′·L²
///     stiff:  T = k·f² − T0          T0 = π²·E·I/L²          f/f_string = √(1 + T0/T)
///     ripple: ΔT = ±EA·TIR/L         limit of the force method: δ ≤ L/50
///
/// Two or more pairs of hung weight and frequency, on one belt and pulley pair, give k and T0 by least squares.
///
/// - Source: the string as in `SpanTension`; a beam under tension that rests on its ends, as in texts on vibration,
///   from memory. That it fits a short toothed span is common practice, no source; the fit is the span's own measure.
/// - Valid: between the least and the greatest tension that were hung; no further.
/// - Neglects: ends that are held by teeth, which the fitted T0 takes in; damping; the weight of the hung tackle.
public final class SpanFrequency {
    private SpanFrequency() {}

    /// What weights taught of one span.
    ///
    /// @param factor k (N/Hz²)
    /// @param offsetN T0, by how much the string alone would read high (N)
    /// @param leastN least tension that was hung (N)
    /// @param mostN greatest tension that was hung (N)
    public record Hung(double factor, double offsetN, double leastN, double mostN) {
        /// {@return tension (N) of a span that sounds at this frequency; NaN outside what was hung}
        public double tensionN(double frequencyHz) {
            double tension = factor * frequencyHz * frequencyHz - offsetN;
            return tension >= leastN && tension <= mostN ? tension : Double.NaN;
        }

        /// {@return frequency (Hz) to tune the span to for this tension; NaN outside what was hung}
        public double frequencyHz(double tensionN) {
            return tensionN >= leastN && tensionN <= mostN ? Math.sqrt((tensionN + offsetN) / factor) : Double.NaN;
        }

        /// {@return E·I of bending (N·mm²) that this offset stands for}
        public double bendingNmm2(double spanMm) {
            return offsetN * spanMm * spanMm / (Math.PI * Math.PI);
        }
    }

    /// {@return k of a string (N/Hz²)}
    public static double factor(double massKgM, double spanMm) {
        return SpanTension.tensionN(1, massKgM, spanMm);
    }

    /// {@return frequency (Hz) of a span that is stiff in bending, resting on its ends}
    ///
    /// @param bendingNmm2 E·I (N·mm²)
    public static double stiffHz(double tensionN, double massKgM, double spanMm, double bendingNmm2) {
        double offset = Math.PI * Math.PI * bendingNmm2 / (spanMm * spanMm);
        return SpanTension.frequencyHz(tensionN + offset, massKgM, spanMm);
    }

    /// {@return k and T0 that fit these pairs best; NaN where two different frequencies are lacking}
    public static Hung fit(double[] tensionsN, double[] frequenciesHz) {
        int n = tensionsN.length;
        double meanT = 0;
        double meanS = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            meanT += tensionsN[i] / n;
            meanS += frequenciesHz[i] * frequenciesHz[i] / n;
            least = Math.min(least, tensionsN[i]);
            most = Math.max(most, tensionsN[i]);
        }
        double both = 0;
        double square = 0;
        for (int i = 0; i < n; i++) {
            double s = frequenciesHz[i] * frequenciesHz[i] - meanS;
            both += s * (tensionsN[i] - meanT);
            square += s * s;
        }
        double factor = both / square;
        return new Hung(factor, factor * meanS - meanT, least, most);
    }

    /// {@return half of the swing of tension (N) by a pulley out of round}
    ///
    /// @param stiffnessN EA, pull of the belt for a strain of 1 (N)
    /// @param runOutMm total indicated run-out (mm)
    public static double rippleN(double stiffnessN, double runOutMm, double spanMm) {
        return stiffnessN * runOutMm / spanMm;
    }

    /// {@return deflection (mm) up to which force and deflection of a span keep step}
    public static double mostDeflectionMm(double spanMm) {
        return spanMm / 50;
    }
}
