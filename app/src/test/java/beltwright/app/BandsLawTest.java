package beltwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.kit.Kit;
import beltwright.ride.Bands;
import beltwright.ride.Board;
import beltwright.ride.Road;
import beltwright.ride.Steady;
import java.util.HashMap;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// The worst case of an answer encloses what comes of a kit whose numbers lie anywhere within their limits.
///
/// It moves one number at a time. Where two limits decide at once neither moves the answer alone, and the band
/// comes out a little short: seen once in 800 draws, for the speed on a hill, by 4 % of the band.
@Tag("law")
class BandsLawTest {
    private static final int DRAWS = 200;
    private static final double SHORT = 0.05; // of the band
    private static final int SELDOM = 2; // of the draws of a kit

    private static double[] answers(Board board) {
        var steady = new Steady(board);
        return new double[] {
            steady.fastest(0, board.charge(), board.airC()).speedMps(),
            steady.fastest(Road.sine(8), board.charge(), board.airC()).speedMps(),
            steady.steepestStart().percent(),
            steady.stop(5, board.charge()).wayM(),
            steady.range(4).km()
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"steep-street", "market-hill-single", "harbour-mile", "quarry-road-load"})
    void encloseEveryDraw(String id) {
        Kit kit = DemoKits.SHELF.kit(id);
        var bands = Bands.of(kit, BandsLawTest::answers);
        var random = new SplittableRandom(1);
        var outside = new int[bands.length];
        for (int draw = 0; draw < DRAWS; draw++) {
            var drawn = new HashMap<String, Double>();
            var got = answers(Board.of(
                    kit,
                    d -> drawn.computeIfAbsent(
                            d.of(), of -> d.lower() + random.nextDouble() * (d.upper() - d.lower()))));
            for (int i = 0; i < got.length; i++) {
                double low = bands[i].low();
                double high = bands[i].high();
                outside[i] += got[i] < low || got[i] > high ? 1 : 0;
                double more = SHORT * (high - low);
                assertThat(got[i]).as("answer %d of draw %d", i, draw).isBetween(low - more, high + more);
            }
        }
        for (int i = 0; i < bands.length; i++) {
            assertThat(bands[i].low()).isLessThan(bands[i].high());
            assertThat(outside[i]).as("answer %d", i).isLessThanOrEqualTo(SELDOM);
        }
    }
}
