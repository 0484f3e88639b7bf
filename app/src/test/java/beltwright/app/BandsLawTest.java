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
@Tag("law")
class BandsLawTest {
    private static final int DRAWS = 200;

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
        for (int draw = 0; draw < DRAWS; draw++) {
            var drawn = new HashMap<String, Double>();
            var got = answers(Board.of(
                    kit,
                    d -> drawn.computeIfAbsent(
                            d.of(), of -> d.lower() + random.nextDouble() * (d.upper() - d.lower()))));
            for (int i = 0; i < got.length; i++) {
                assertThat(got[i]).as("answer %d of draw %d", i, draw).isBetween(bands[i].low(), bands[i].high());
            }
        }
        for (var band : bands) {
            assertThat(band.low()).isLessThan(band.high());
        }
    }
}
