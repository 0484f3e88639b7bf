package beltwright.workshop.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.part.Controller;
import beltwright.quantity.Refusal;
import beltwright.ride.Log;
import beltwright.ride.Log.Reading;
import beltwright.workshop.table.ColumnUnit;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Every record here is invented.
class LogFilesTest {
    private static final String GERMAN = """
            Zeit;v;I_mot;T;Akku: Volt, grob
            1000;0;0;21,5;42,1
            1500;7,2;40,0;21,5;41,9
            2000;14,4;38,5;21,75;41,8
            """;
    private static final String MAPPED =
            "time=Zeit:ms,speed=v:km/h,motor current=I_mot:A,winding temperature=T:°C,voltage=Akku: Volt, grob:V";

    private static LogFiles.About about(Controller.CurrentIs currentIs) {
        return new LogFiles.About(
                "run", "short-street", "us", "recorder", LocalDate.of(2026, 11, 20), Log.Belts.ON, currentIs);
    }

    private static Log read(String text, String mapping) {
        return LogFiles.read(
                "run.csv",
                text.getBytes(StandardCharsets.UTF_8),
                Mapping.parse(mapping),
                about(Controller.CurrentIs.DIRECT));
    }

    @Test
    void readsMappedColumnsInTheirUnits() {
        var log = read(GERMAN, MAPPED);
        assertThat(log.of(Reading.TIME)).containsExactly(0.0, 0.5, 1.0);
        assertThat(log.of(Reading.SPEED)).containsExactly(0.0, 2.0, 4.0);
        assertThat(log.of(Reading.WINDING)).containsExactly(21.5, 21.5, 21.75);
        assertThat(log.of(Reading.VOLTAGE)).containsExactly(42.1, 41.9, 41.8);
    }

    @Test
    void aSinePeakIsTakenAsTheDirectCurrentOfEqualTorque() {
        var log = LogFiles.read(
                "run.csv",
                GERMAN.getBytes(StandardCharsets.UTF_8),
                Mapping.parse(MAPPED),
                about(Controller.CurrentIs.SINE_PEAK));
        assertThat(log.of(Reading.MOTOR_CURRENT).get(1)).isCloseTo(40 * Math.sqrt(3) / 2, within(1e-4));
    }

    @Test
    void headingsWithUnitsAreGuessed() {
        var log = read("""
                Time [h:mm:ss],speed (mph),distanceKm,altitude ft,grade / fraction,battery current mA,case temperature [°F]
                9:59:58,0,0,100,0.05,500,212
                9:59:59.5,10,0.01,100,0.06,1500,32
                10:00:00,10,0.02,100,-0.07,-1500,50
                """, "");
        assertThat(log.of(Reading.TIME)).containsExactly(0.0, 1.5, 2.0);
        assertThat(log.of(Reading.SPEED).get(1)).isCloseTo(4.4704, within(1e-9));
        assertThat(log.of(Reading.DISTANCE)).containsExactly(0.0, 10.0, 20.0);
        assertThat(log.of(Reading.ELEVATION).getFirst()).isEqualTo(30.48);
        assertThat(log.of(Reading.GRADE)).containsExactly(5.0, 6.0, -7.0);
        assertThat(log.of(Reading.BATTERY_CURRENT)).containsExactly(0.5, 1.5, -1.5);
        assertThat(log.of(Reading.CASE)).containsExactly(100.0, 0.0, 10.0);
    }

    @Test
    void thePreviewSaysWhatEachColumnIsReadAs() {
        var bytes = "time s,speed,pulse\n0,5,90\n1,6,91\n2,7,92\n".getBytes(StandardCharsets.UTF_8);
        var preview = LogFiles.preview("run.csv", bytes, Mapping.NONE);
        assertThat(preview.rows()).isEqualTo(3);
        assertThat(preview.columns().get(0).unit()).contains(ColumnUnit.SECONDS);
        assertThat(preview.columns().get(1).reading()).contains(Reading.SPEED);
        assertThat(preview.columns().get(1).unit()).isEmpty();
        assertThat(preview.columns().get(2))
                .isEqualTo(
                        new LogPreview.Column("pulse", Optional.empty(), Optional.empty(), List.of("90", "91", "92")));
        assertThat(preview.doubts()).singleElement().asString().contains("in which unit the speed is");
        assertThat(LogFiles.preview("run.csv", bytes, Mapping.parse("speed=speed:km/h"))
                        .doubts())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            time s,speed m/s/0,50/1,95/2,30 | speed=speed m/s | speed reaches 95 m/s when read in m/s | is this column in km/h?
            time s,speed m/s/0,1/0,2/2,3    | ``              | run.csv:3: time s: time 0 is that of the row before | sort the rows
            time s,speed m/s/5,1/4,2/6,3    | ``              | run.csv:3: time s: time 4 is before    | take this row out
            time s,speed m/s/0,1/1,/2,3     | ``              | run.csv:3: speed m/s: the cell is empty | take the row out
            time s,speed m/s/0,1/1,x/2,3    | ``              | run.csv:3: speed m/s: 'x' is no number | a number in m/s
            time s,speed m/s/0,1/1,2        | ``              | holds 2 rows                     | 3 rows or more
            time s,speed m/s/0,1/1,2/2,3    | speed=v:km/h    | no column is headed 'v'          | time s, speed m/s
            time s,v/0,1/1,2/2,3            | speed=v         | in which unit the speed is       | speed=v:m/s
            time s,v/0,1/1,2/2,3            | speed=v:A       | 'A' is no unit of it             | m/s, km/h, mph
            time s,v/0,1/1,2/2,3            | speed=v:knots   | 'knots' is not a unit            | m/s, km/h, mph
            time s,v/0,1/1,2/2,3            | pace=v:m/s      | does not begin with a reading    | motor current
            time s,v/0,1/1,2/2,3            | ``              | nothing but a time               | map the columns
            x,speed m/s/0,1/1,2/2,3         | ``              | no time is found among x, speed m/s | map the columns
            time [h:mm:ss],v/0:00:00,1/1:00,1 | speed=v:m/s   | run.csv:3: time [h:mm:ss]: '1:00' is no time | in s or ms
            time s,v/0,1/5e6,1/6e6,1        | speed=v:m/s     | time reaches 6000000 s           | is this column in ms?
            """)
    void aTableThatCannotBeIsRefused(String rows, String mapping, String wrong, String mend) {
        var text = rows.replaceAll("/(?!s|h)", "\n");
        assertThatThrownBy(() -> read(text, mapping))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(wrong)
                .hasMessageContaining(mend);
    }

    @Test
    void tooManyRowsAreRefusedWithTheirCount() {
        var text = new StringBuilder("time s,speed m/s\n");
        for (int i = 0; i <= Log.MOST_ROWS; i++) {
            text.append(i).append(",1\n");
        }
        assertThatThrownBy(() -> read(text.toString(), ""))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("has 100001 rows");
    }

    @Test
    void whatLooksLikeAnotherUnitIsDoubted() {
        var text = "time s,speed m/s,grade %\n0,25,0.01\n100,26,0.02\n200,25,0.05\n";
        assertThat(LogFiles.preview("run.csv", text.getBytes(StandardCharsets.UTF_8), Mapping.NONE)
                        .doubts())
                .hasSize(3)
                .allSatisfy(d -> assertThat(d).contains("is this column"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void whateverIsDoneToAFileItIsALogOrARefusal(long seed) {
        var random = new Random(seed);
        int refused = 0;
        for (int i = 0; i < 2000; i++) {
            var bytes = GERMAN.getBytes(StandardCharsets.UTF_8);
            for (int n = 1 + random.nextInt(3); n > 0; n--) {
                bytes[random.nextInt(bytes.length)] = (byte)
                        (random.nextBoolean() ? random.nextInt(256) : "0159;,.\n\"- ".charAt(random.nextInt(11)));
            }
            try {
                var log = LogFiles.read("run", bytes, Mapping.parse(MAPPED), about(Controller.CurrentIs.DIRECT));
                assertThat(log.rows()).isGreaterThan(2);
            } catch (Refusal r) {
                refused++;
            }
        }
        assertThat(refused).isBetween(300, 1999);
    }
}
