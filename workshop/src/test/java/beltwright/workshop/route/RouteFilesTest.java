package beltwright.workshop.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import beltwright.quantity.Refusal;
import beltwright.ride.GreatCircle;
import beltwright.ride.Route;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Every track and table here is invented.
class RouteFilesTest {
    private static final RouteFiles.About ABOUT =
            new RouteFiles.About("hill", "Hill", true, "", "measured, pocket receiver");

    private static final String GPX = """
            <?xml version="1.0" encoding="UTF-8"?>
            <gpx version="1.1" creator="invented" xmlns="http://www.topografix.com/GPX/1/1">
            <trk><name>Hill</name><trkseg>
            <trkpt lat="50.0000" lon="8.0000"><ele>100</ele><time>2026-11-20T10:00:00Z</time></trkpt>
            <trkpt lat="50.0010" lon="8.0000"><ele>105</ele><time>2026-11-20T10:00:20Z</time></trkpt>
            <trkpt lat="50.0010" lon="8.0000"><ele>105.3</ele><time>2026-11-20T10:00:30Z</time></trkpt>
            </trkseg><trkseg>
            <trkpt lat="50.0020" lon="8.0000"><ele>102</ele><time>2026-11-20T10:00:50Z</time></trkpt>
            </trkseg></trk></gpx>
            """;

    private static Route read(String name, String text) {
        return RouteFiles.read(name, text.getBytes(StandardCharsets.UTF_8), ABOUT);
    }

    private static void refused(String name, String text, String... said) {
        assertThatThrownBy(() -> read(name, text)).isInstanceOfSatisfying(Refusal.class, r -> {
            assertThat(r.getMessage()).startsWith(name).contains(said);
            assertThat(r.allowed()).isNotBlank();
            assertThat(r.mend()).isNotBlank();
        });
    }

    @Test
    void readsATrackAlongItsSlope() {
        var route = read("hill.gpx", GPX);
        double flat = GreatCircle.distanceM(50, 8, 50.001, 8);
        assertThat(route.points()).extracting(Route.Point::elevationM).containsExactly(100.0, 105.0, 102.0);
        assertThat(route.points().get(1).distanceM()).isCloseTo(Math.hypot(flat, 5), within(0.001));
        assertThat(route.points()).allMatch(p -> Double.isNaN(p.speedKmh()));
        assertThat(route.note()).isEqualTo("1 point at the place of the one before merged with it");
        assertThat(route.source()).isEqualTo("measured, pocket receiver");
        assertThat(read("unnamed", GPX)).isEqualTo(route);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            lat="50.0010" | lat="50.0040"              | point 2 | a gap in the record        | gaps up to 300 m
            lat="50.0010" | lat="50.0200"              | point 2 | in 20 s, 111 m/s           | steps up to 60 m/s
            lat="50.0010" | lat="51.0010"              | point 2 | jumps 111 km from point 1  | take this point out
            10:00:30      | 10:00:10                   | point 3 | is before 2026-11-20T10:00:20Z | sort the points
            <ele>105.3</ele> | ``                      | hill.gpx | 1 point has no elevation: point 3 | record it again
            lat="50.0010" | lat="95"                   | hill.gpx | is not a GPX file         | GPX 1.0 or 1.1
            lat="50.0010" | lat="NaN"                  | point 2 | latitude is no number      | 90°
            <ele>105</ele> | <ele>NaN</ele>            | hill.gpx | 1 point has no elevation: point 2 | record it again
            <ele>105</ele> | <ele>99999</ele>          | point 2 | elevation 99999 m          | 9000 m
            <ele>105</ele> | <ele>high</ele>           | hill.gpx | is not a GPX file         | export the track again
            </trkseg><trkseg> | </trkseg></trk><trk><trkseg> | hill.gpx | holds 2 tracks       | one by one
            </gpx>        | ``                         | hill.gpx | is not a GPX file         | export the track again
            """)
    void aTrackThatCannotBeIsRefused(String text, String instead, String where, String wrong, String mend) {
        var changed = GPX.replace(text, instead);
        assertThat(changed).isNotEqualTo(GPX);
        refused("hill.gpx", changed, where, wrong, mend);
    }

    @Test
    void entitiesAreRefused() {
        var entity = "<?xml version=\"1.0\"?><!DOCTYPE gpx [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>";
        refused(
                "hill.gpx",
                GPX.replaceFirst("<\\?xml.*\\?>", entity).replace("<name>Hill", "<name>&e;"),
                "declares a document type or entities");
        var lol = new StringBuilder("<?xml version=\"1.0\"?><!DOCTYPE gpx [<!ENTITY a0 \"lol\">");
        for (int i = 1; i < 30; i++) {
            lol.append("<!ENTITY a")
                    .append(i)
                    .append(" \"")
                    .append(("&a" + (i - 1) + ";").repeat(10))
                    .append("\">");
        }
        refused("hill.gpx", GPX.replaceFirst("<\\?xml.*\\?>", lol + "]>").replace("<name>Hill", "<name>&a29;"), "GPX");
    }

    @Test
    void whatIsNoRouteIsRefused() {
        refused("hill.gpx", "", "is empty");
        refused("hill.gpx", "distance", "is not a GPX file");
        refused("hill.csv", "<html><body>no</body></html>", "is not a GPX file");
        refused("hill.gpx", GPX.replaceAll("(?s)<trk>.*</trk>", ""), "holds no track");
        refused("hill.gpx", GPX.replaceAll("(?s)<trkpt lat=\"50.00[12].*?</trkpt>", ""), "holds 1 point");
        refused("hill.gpx", GPX.replaceAll("lat=\"50.00[012]0\"", "lat=\"50\""), "has no length: its 4 points");
        refused("hill.yaml", "schema: 1\nroute: x\n", "missing");
        assertThatThrownBy(() -> RouteFiles.read("big.csv", new byte[RouteFiles.LARGEST_BYTES + 1], ABOUT))
                .hasMessageContaining("is larger than 64 MB");
        assertThatThrownBy(() -> RouteFiles.read(Path.of("no-such.gpx"))).hasMessageContaining("cannot be read");
    }

    @Test
    void readsPointsByDistance() {
        var route = read("hill.csv", """
                distance [km], elevation (ft), speed mph, wait [s], pulse
                1, 100, 10,, 90
                1.5, 200, 0, 20, 95
                2, 150, , ,
                2.5, 150, 20, 30, 90
                3, 150, , , 90
                """);
        assertThat(route.points())
                .containsExactly(
                        new Route.Point(0, 30.48, 16.09344, 0),
                        new Route.Point(500, 60.96, 0, 20),
                        new Route.Point(1000, 45.72, Double.NaN, 0),
                        new Route.Point(1500, 45.72, 0, 30),
                        new Route.Point(1501, 45.72, 20 * 1.609344, 0),
                        new Route.Point(2000, 45.72, Double.NaN, 0));
        assertThat(route.note()).isEqualTo("columns left out: pulse");
    }

    @Test
    void readsLegsWithDecimalCommas() {
        var route = read("hill.csv", """
                length km;grade %;speed km/h;wait s
                0,1;60;20;
                0,1;-60;;15
                0,05;0;25,5;
                """);
        assertThat(route.points())
                .containsExactly(
                        new Route.Point(0, 0, 20, 0),
                        new Route.Point(100, 51.45, Double.NaN, 0),
                        new Route.Point(200, 0, 0, 15),
                        new Route.Point(201, 0, 25.5, 0),
                        new Route.Point(250, 0, Double.NaN, 0));
        assertThat(route.note()).isEmpty();
    }

    @Test
    void readsPlacesOnTheMap() {
        var route = read("hill.csv", "lat\tlon\televation m\n50\t8\t100\n50,001\t8\t105\n50,001\t8\t105\n");
        assertThat(route.points()).hasSize(2);
        assertThat(route.lengthM())
                .isCloseTo(read("hill.gpx", GPX).points().get(1).distanceM(), within(0.002));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            distance,elevation m/0,1/9,1          | hill.csv:1: distance | names no unit             | distance [m]
            distance yd,elevation m/0,1/9,1       | hill.csv:1: headings | distance yd, elevation m do not | distance [m]
            distance [yd],elevation m/0,1/9,1     | hill.csv:1           | 'yd' is no unit of it     | m, km, ft, mi
            way,up/0,1/9,1                        | hill.csv:1: headings | way, up do not describe   | name the columns
            lat,lon/50,8/50,8                     | hill.csv:1: headings | hold no elevation         | distance and elevation
            distance m,elevation m/0,1            | hill.csv             | holds 1 point             | start and end
            distance m,elevation m                | hill.csv             | holds no point            | start and end
            distance m,elevation m/0,1/0,1        | hill.csv             | has no length             | different places
            distance m,elevation m/0,1/9,         | hill.csv:3: elevation m | the cell is empty      | 9000 m
            distance m,elevation m/0,1/9,NaN      | hill.csv:3: elevation m | 'NaN' is no number     | 9000 m
            distance m,elevation m/0,1/9,1e9      | hill.csv:3: elevation m | cannot be true         | decimal point
            distance m,elevation m/0,1/9,1,5      | hill.csv:3           | has 3 cells               | semicolons
            distance m,elevation m/9,1/8,1        | hill.csv:3: distance m | 8 m is less than 9 m    | sort the rows
            distance m,distance km,elevation m/0,0,0 | hill.csv:1: distance km | second column       | take one
            distance m,elevation m,speed km/h/0,1,500/9,1, | hill.csv:2: speed | cannot be true      | 33.33 m/s
            length m,grade %/0,1/1,1              | hill.csv:2: length m | has a length of 0 m       | take the leg out
            length m,grade %/100,80/1,1           | hill.csv:2: grade %  | cannot be true            | 60 %
            length m,grade %,speed km/h/100,8,0   | hill.csv:2: speed    | ridden at 0 km/h          | said by 'wait'
            lat,lon,elevation m/50,8,/50,8,1      | hill.csv             | 1 point has no elevation: line 2 | let a map
            lat,lon,elevation m/50,8,1/50.1,8,1   | hill.csv: line 3     | jumps 11.1 km from line 2 | cut the route
            """)
    void aTableThatCannotBeIsRefused(String rows, String where, String wrong, String mend) {
        refused("hill.csv", rows.replaceAll("/(?!h)", "\n"), where, wrong, mend);
    }

    @Test
    void readsARouteFileOfThisProgramAndNamesOthersAfterTheirFile(@TempDir Path folder) throws Exception {
        var yaml = "schema: 1\nroute: own\nname: Own\nsource: estimate\npoints: |\n  0 1\n  9 1\n";
        assertThat(read("own.yaml", yaml).id()).isEqualTo("own");
        var file = Files.writeString(folder.resolve("Über den Hügel 2.gpx"), GPX);
        var route = RouteFiles.read(file);
        assertThat(route.id()).isEqualTo("ber-den-h-gel-2");
        assertThat(route.name()).isEqualTo("Über den Hügel 2");
        assertThat(route.source()).isEqualTo("measured, track Über den Hügel 2.gpx");
    }

    @Test
    @Timeout(60)
    void aMillionPointsAreThinned() {
        var text = new StringBuilder("distance m,elevation m,speed km/h,wait s\n");
        for (int i = 0; i < 1_000_000; i++) {
            text.append(i * 0.5)
                    .append(',')
                    .append(i == 777_777 ? 400 : 100 + i % 7)
                    .append(',');
            text.append(i == 500_000 ? "0,30" : i < 250_000 ? "20," : "25,").append('\n');
        }
        var route = read("long.csv", text.toString());
        assertThat(route.points()).hasSizeBetween(Route.MOST_POINTS / 2, Route.MOST_POINTS);
        assertThat(route.note()).isEqualTo("thinned from 1000000 points");
        assertThat(route.lengthM()).isEqualTo(499_999.5);
        assertThat(route.points()).contains(new Route.Point(250_000, 100 + 500_000 % 7, 0, 30));
        assertThat(route.points()).anyMatch(p -> p.elevationM() == 400);
        assertThat(route.points().stream()
                        .filter(p -> p.speedKmh() == 25)
                        .findFirst()
                        .orElseThrow()
                        .distanceM())
                .isEqualTo(125_000);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whateverIsDoneToAFileItIsARouteOrARefusal(long seed) {
        var random = new Random(seed);
        var csv = "distance m;elevation m;speed km/h;wait s\n0;1,5;20;\n90;2;0;5\n120;2,5;;\n";
        var yaml = "schema: 1\nroute: own\nname: Own\nsource: estimate\npoints: |\n  0 1 20\n  9 1 0 5\n  99 2\n";
        var map = "lat,lon,elevation m\n50,8,1\n50.001,8,2\n";
        var began = System.nanoTime();
        int refused = 0;
        for (int i = 0; i < 3000; i++) {
            var text = switch (i % 4) {
                case 0 -> GPX;
                case 1 -> csv;
                case 2 -> yaml;
                default -> map;
            };
            var bytes = mutated(text.getBytes(StandardCharsets.UTF_8), random);
            var name = "mutated" + (i % 3 == 0 ? "" : new String[] {".gpx", ".csv", ".yaml", ".csv"}[i % 4]);
            try {
                assertThat(RouteFiles.read(name, bytes, ABOUT).points()).hasSizeGreaterThan(1);
            } catch (Refusal r) {
                refused++;
                assertThat(r.getMessage()).isNotBlank();
            }
        }
        assertThat(refused).isBetween(500, 2999);
        assertThat(Duration.ofNanos(System.nanoTime() - began)).isLessThan(Duration.ofSeconds(60));
    }

    private static byte[] mutated(byte[] bytes, Random random) {
        var changed = bytes.clone();
        for (int n = 1 + random.nextInt(4); n > 0; n--) {
            int at = random.nextInt(changed.length);
            switch (random.nextInt(4)) {
                case 0 -> changed[at] = (byte) random.nextInt(256);
                case 1 -> changed[at] = (byte) " \n;,.<>&\"'-0159eE:|".charAt(random.nextInt(19));
                case 2 -> {
                    int to = random.nextInt(changed.length);
                    int length = random.nextInt(Math.min(40, changed.length - Math.max(at, to)));
                    System.arraycopy(bytes, at % bytes.length, changed, to, Math.min(length, bytes.length - at));
                }
                default -> changed = Arrays.copyOf(changed, Math.max(1, at));
            }
        }
        return changed;
    }
}
