package beltwright.workshop.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.quantity.Refusal;
import beltwright.ride.Log;
import beltwright.ride.Route;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Routes and logs as documents, all invented.
class RidesTest {
    static final String ROUTE = """
            schema: 1
            route: short-hill
            name: Short hill
            invented: true
            source: estimate, drawn
            points: |
              0 12
              100 12.5 25
              250.5 18 0 20
              251 18 -
              400 10
            """;
    static final String LOG = """
            schema: 1
            log: hill-run
            kit: short-street
            by: workshop
            with: recorder of the controller
            when: 2026-11-20
            belts: on
            columns: time, speed, motor current, winding temperature
            readings: |
              0 0 0 21.5
              0.5 1.2 35 21.5
              1 2.5 34.2 21.6
            """;

    @Test
    void readsARoute() {
        var route = ((Document.OfRoute) Codec.readOne("route", ROUTE)).route();
        assertThat(route.points().get(1)).isEqualTo(new Route.Point(100, 12.5, 25, 0));
        assertThat(route.points().get(2)).isEqualTo(new Route.Point(250.5, 18, 0, 20));
        assertThat(route.points().get(3).speedKmh()).isNaN();
        assertThat(Codec.write(new Document.OfRoute(route))).isEqualTo(ROUTE.replace("251 18 -", "251 18"));
    }

    @Test
    void readsALog() {
        var log = ((Document.OfLog) Codec.readOne("log", LOG)).log();
        assertThat(log.of(Log.Reading.MOTOR_CURRENT)).containsExactly(0.0, 35.0, 34.2);
        assertThat(log.when()).isEqualTo(LocalDate.of(2026, 11, 20));
        assertThat(log.has(Log.Reading.VOLTAGE)).isFalse();
        assertThat(Codec.write(new Document.OfLog(log))).isEqualTo(LOG);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            0 12           | 3 12           | 7  | the first distance is 3 m        | 0 m
            100 12.5       | 0 12.5         | 8  | no further than 0 m before it    | rise from line to line
            100 12.5 25    | 100            | 8  | has 1 number;                    | distance (m)
            100 12.5 25    | 100 12.5 x     | 8  | speed (km/h) is 'x'              | 0 to 120
            100 12.5 25    | 100 12,5 25    | 8  | elevation (m) is '12,5'          | decimal point
            100 12.5 25    | 100 NaN 25     | 8  | elevation (m) is 'NaN'           | -500 to 9000
            100 12.5 25    | 100 9500 25    | 8  | elevation (m) is 9500            | -500 to 9000
            100 12.5 25    | 100 12.5 250   | 8  | speed (km/h) is 250              | 0 to 120
            100 12.5 25    | 100 12.5 25 5  | 8  | waits 5 s without a stop         | write 0 as the speed
            250.5 18 0 20  | 250.5 18 0 -5  | 9  | wait (s) is -5                   | 0 to 86400
            400 10         | 4e300 10       | 11 | distance (m) is 4e300            | 0 to 1000000
            points: PIPE   | points: >      | 6  | is no block of rows              | write 'PIPE' behind
            estimate, drawn| drawn          | 5  | 'drawn' names no source          | measured
            name: Short    | nome: Short    | 3  | is not a field here              | did you mean 'name'
            """)
    void everyMistakeOfARouteHasItsLine(String text, String instead, int line, String wrong, String allowed) {
        refused(ROUTE, text, instead, line, wrong, allowed);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            0.5 1.2        | 0 1.2          | 11 | time 0 s does not come after 0 s | sort the rows
            35 21.5        | 35             | 11 | has 3 numbers                    | motor current (A)
            35 21.5        | 3500 21.5      | 11 | motor current (A) is 3500        | -500 to 500
            when: 2026     | when: 26       | 6  | is not a day                     | 2026-10-02
            belts: on      | belts: yes     | 7  | 'yes' is not known               | on, off
            time, speed    | thyme, speed   | 8  | 'thyme' is not a reading         | did you mean 'time'
            time, speed    | voltage, speed | 8  | names no time                    | add the column 'time'
            speed, motor   | time, motor    | 8  | 'time' is named twice            | take one
            kit: short-street | kit: Street | 3  | 'Street' is not an id            | lower-case
            """)
    void everyMistakeOfALogHasItsLine(String text, String instead, int line, String wrong, String allowed) {
        refused(LOG, text, instead, line, wrong, allowed);
    }

    private static void refused(String whole, String text, String instead, int line, String wrong, String allowed) {
        var changed = whole.replace(text.replace("PIPE", "|"), instead);
        assertThat(changed).isNotEqualTo(whole);
        var reading = Codec.read("ride.yaml", changed);
        assertThat(reading.documents()).isEmpty();
        assertThat(reading.mistakes())
                .anySatisfy(m -> assertThat(m.toString())
                        .contains("ride.yaml:" + line + ": ", wrong)
                        .contains(allowed.replace("PIPE", "|")));
    }

    @Test
    void allMistakesAreListedTogether() {
        var reading = Codec.read("ride.yaml", ROUTE.replace("12.5 25", "x y").replace("400 10", "90"));
        assertThat(reading.mistakes()).extracting(Mistake::line).containsExactly(8, 8, 11);
    }

    @Test
    void aLogNeedsItsKit() {
        var reading = Codec.read("log.yaml", LOG);
        assertThat(Agreement.mistakes(reading, Map.of(), ReferenceFile.bundled()))
                .singleElement()
                .satisfies(m -> assertThat(m.toString())
                        .contains("log.yaml:3: hill-run.kit: no kit has the id 'short-street'"));
    }

    @Test
    void theLargestRouteAndLogAreKept() {
        var points = new ArrayList<Route.Point>();
        for (int i = 0; i < Route.MOST_POINTS; i++) {
            points.add(new Route.Point(i * 19.123, 1000 + i % 999 * 0.001, i % 2 == 0 ? 22.5 : Double.NaN, 0));
        }
        var route = new Document.OfRoute(new Route("long", "Long", true, "", "estimate", points));
        assertThat(Codec.readOne("long", Codec.write(route))).isEqualTo(route);

        var readings = new EnumMap<Log.Reading, List<Double>>(Log.Reading.class);
        for (var what :
                List.of(Log.Reading.SPEED, Log.Reading.MOTOR_CURRENT, Log.Reading.VOLTAGE, Log.Reading.WINDING)) {
            readings.put(what, Collections.nCopies(Log.MOST_ROWS, 23.456));
        }
        var times = new ArrayList<Double>();
        for (int i = 0; i < Log.MOST_ROWS; i++) {
            times.add(i / 20.0);
        }
        readings.put(Log.Reading.TIME, times);
        var when = LocalDate.of(2026, 11, 20);
        var log = new Document.OfLog(new Log("run", "kit", "us", "recorder", when, Log.Belts.ON, readings));
        assertThat(Codec.readOne("run", Codec.write(log))).isEqualTo(log);
    }

    @Test
    void whatCouldNotBeReadBackIsNotWritten() {
        var readings = new EnumMap<Log.Reading, List<Double>>(Log.Reading.class);
        for (var what : Log.Reading.values()) {
            readings.put(what, Collections.nCopies(Log.MOST_ROWS, 23 + 1 / 3.0));
        }
        var times = new ArrayList<Double>();
        for (int i = 0; i < Log.MOST_ROWS; i++) {
            times.add(i / 3.0);
        }
        readings.put(Log.Reading.TIME, times);
        var log = new Document.OfLog(
                new Log("run", "kit", "us", "recorder", LocalDate.of(2026, 11, 20), Log.Belts.ON, readings));
        assertThatThrownBy(() -> Codec.write(log)).isInstanceOf(Refusal.class).hasMessageContaining("up to 8 MB");
    }
}
