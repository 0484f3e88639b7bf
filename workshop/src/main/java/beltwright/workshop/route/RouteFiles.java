package beltwright.workshop.route;

import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.ride.Route;
import beltwright.workshop.document.Codec;
import beltwright.workshop.document.Document;
import beltwright.workshop.table.LongTable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/// Routes from files: a recorded track (GPX), a table of points or legs (CSV), or a route file of this program (YAML).
///
/// What a file holds is told by its first character where that is `<`, by a field `schema` at the start of a line, and
/// by the end of its name. Distances and elevations are kept to a millimetre.
public final class RouteFiles {
    public static final int LARGEST_BYTES = LongTable.LARGEST_BYTES;
    private static final int LONGEST_ID = 60;
    private static final int LOOKED_AT = 64 * 1024;
    private static final Pattern SCHEMA = Pattern.compile("^schema\\s*:", Pattern.MULTILINE);

    private RouteFiles() {}

    /// What a track or a table does not say of itself.
    ///
    /// @param note what stands before the remarks of the reader; may be empty
    /// @param source `measured, ...` or another, as in a part file
    public record About(String id, String name, boolean invented, String note, String source) {
        /// @throws Refusal if the source names none
        public About {
            source = Provenance.parse(source.strip()).words();
            if (name.isBlank()) {
                throw new Refusal("name", "is empty", "what people call the route", "give it a name");
            }
        }

        /// {@return what the name of a file says}; a track counts as measured, a table as an estimate
        public static About file(String name) {
            var last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
            int dot = last.lastIndexOf('.');
            var stem = LongTable.shown(dot > 0 ? last.substring(0, dot) : last);
            var plain =
                    stem.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
            var id = plain.substring(0, Math.min(plain.length(), LONGEST_ID)).replaceAll("-$", "");
            boolean track = last.toLowerCase(Locale.ROOT).endsWith(".gpx");
            return new About(
                    id.isEmpty() ? "route" : id,
                    stem.isBlank() ? "Route" : stem,
                    false,
                    "",
                    (track ? "measured, track " : "estimate, table ") + LongTable.shown(last));
        }
    }

    /// {@return the route in this file, named after it}
    ///
    /// @throws Refusal if there is no such file, or it holds no route
    public static Route read(Path file) {
        var path = file.toString();
        return read(path, bytes(file), About.file(path));
    }

    private static byte[] bytes(Path file) {
        try (var in = Files.newInputStream(file)) {
            return in.readNBytes(LARGEST_BYTES + 1);
        } catch (IOException e) {
            throw new Refusal(
                    file.toString(), "cannot be read: " + e.getMessage(), "a file you may read", "check its name");
        }
    }

    /// {@return the route in these bytes}; a route file of this program says itself what it is called
    ///
    /// @param name of the file, in messages
    /// @throws Refusal naming the first mistake
    public static Route read(String name, byte[] bytes, About about) {
        if (bytes.length > LARGEST_BYTES) {
            throw new Refusal(name, "is larger than 64 MB", "files up to 64 MB", "cut it into several files");
        }
        var start = new String(bytes, 0, Math.min(bytes.length, LOOKED_AT), StandardCharsets.UTF_8)
                .replaceFirst("^\uFEFF", "");
        var end = name.toLowerCase(Locale.ROOT);
        if (start.isBlank() && bytes.length <= LOOKED_AT) {
            throw new Refusal(name, "is empty", "a GPX, CSV or route file", "give another file");
        }
        var road = new Road(name);
        if (start.stripLeading().startsWith("<") || end.endsWith(".gpx")) {
            var trail = new Trail(name, road);
            GpxTrack.read(name, bytes, trail);
            trail.end();
            return road.route(about, List.of());
        }
        if (SCHEMA.matcher(start).find() || end.endsWith(".yaml") || end.endsWith(".yml")) {
            return written(name, bytes);
        }
        var table = new RouteTable(LongTable.of(name, bytes));
        table.read(road);
        return road.route(about, table.remarks());
    }

    private static Route written(String name, byte[] bytes) {
        var documents = Codec.read(name, bytes).orRefuse();
        if (documents.size() == 1 && documents.getFirst() instanceof Document.OfRoute(var route)) {
            return route;
        }
        throw new Refusal(
                name,
                documents.size() == 1
                        ? "holds a " + documents.getFirst().type()
                        : "holds " + documents.size() + " documents",
                "one route",
                "read other documents with the import");
    }
}
