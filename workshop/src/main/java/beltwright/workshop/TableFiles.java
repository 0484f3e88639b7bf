package beltwright.workshop;

import beltwright.part.Kinds;
import beltwright.part.Part;
import beltwright.quantity.Refusal;
import beltwright.workshop.table.Table;
import beltwright.workshop.table.Tables;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/// Tables of parts as CSV files.
final class TableFiles {
    /// Without it a spreadsheet takes the file for an older character set, and spoils every `±`.
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private TableFiles() {}

    /// @throws Refusal if there is no such file, or it holds no table
    static Table read(Path file) {
        try (var in = Files.newInputStream(file)) {
            var bytes = in.readNBytes(4 * Table.LARGEST + 1); // at most four bytes to a character
            var text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return Table.parse(file.toString(), text.toString());
        } catch (CharacterCodingException e) {
            throw new Refusal(
                    file.toString(), "is not UTF-8 text", "CSV in UTF-8", "let the spreadsheet save it as 'CSV UTF-8'");
        } catch (IOException e) {
            throw new Refusal(
                    file.toString(), "cannot be read: " + e.getMessage(), "a CSV file you may read", "check its name");
        }
    }

    /// Writes one table for each kind of part that there is.
    ///
    /// @return the files
    /// @throws Refusal if the folder is there and not empty, or cannot be written
    static List<Path> write(Path folder, List<Part> parts) {
        var files = new ArrayList<Path>();
        try {
            Folder.makeEmpty(folder);
            for (var kind : Kinds.values()) {
                var ofKind = parts.stream().filter(kind.type()::isInstance).toList();
                if (!ofKind.isEmpty()) {
                    var file = folder.resolve(kind.words().replace(' ', '-') + ".csv");
                    files.add(Files.writeString(file, BYTE_ORDER_MARK + Tables.csv(kind, ofKind)));
                }
            }
        } catch (IOException e) {
            throw Folder.unwritable(folder, e);
        }
        return files;
    }
}
