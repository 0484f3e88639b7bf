package beltwright.workshop.document;

import beltwright.quantity.Refusal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/// Documents to text and back: the one codec of files and store.
///
/// `write` gives canonical text: fields in the record's order, typed text kept to the letter, the commonest source
/// named
/// once, line feeds only. Reading it back gives an equal document, and writing that gives the same bytes.
public final class Codec {
    public static final int SCHEMA = 1;
    private static final int LARGEST_MB = 8; // a log of 100,000 rows and six columns
    public static final int LARGEST_BYTES = LARGEST_MB * 1024 * 1024;

    private Codec() {}

    /// Reads every document of one file and every mistake in it.
    ///
    /// @param file its name in messages
    public static Reading read(String file, byte[] bytes) {
        var scope = Scope.file(file);
        if (bytes.length > LARGEST_BYTES) {
            return refused(
                    scope,
                    "is larger than " + LARGEST_BYTES + " bytes",
                    "files up to " + LARGEST_MB + " MB",
                    "split the file");
        }
        try {
            var text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return read(file, text.toString());
        } catch (CharacterCodingException e) {
            return refused(scope, "is not UTF-8 text", "YAML in UTF-8", "save the file as UTF-8");
        }
    }

    /// As above, from text that is already decoded.
    public static Reading read(String file, String text) {
        var scope = Scope.file(file);
        if (text.length() > LARGEST_BYTES) {
            return refused(
                    scope,
                    "is larger than " + LARGEST_BYTES + " characters",
                    "up to " + LARGEST_MB + " MB",
                    "split the file");
        }
        var documents = new ArrayList<Reading.Typed>();
        var unsound = new HashSet<String>();
        for (var node : YamlReader.documents(scope, text.startsWith("\uFEFF") ? text.substring(1) : text)) {
            var typed = Documents.read(scope, node);
            if (typed != null) {
                documents.add(typed);
            } else {
                Documents.idOf(node).ifPresent(unsound::add);
            }
        }
        return new Reading(documents, unsound, scope.uses(), scope.mistakes());
    }

    private static Reading refused(Scope scope, String wrong, String allowed, String mend) {
        scope.mistake(1, wrong, allowed, mend);
        return new Reading(List.of(), Set.of(), List.of(), scope.mistakes());
    }

    /// Reads text that holds exactly one document, as a store does.
    ///
    /// @throws Refusal naming the first mistake
    public static Document readOne(String name, String text) {
        var documents = read(name, text).orRefuse();
        if (documents.size() != 1) {
            throw new Refusal(name, "holds " + documents.size() + " documents", "one document", "split the text");
        }
        return documents.getFirst();
    }

    /// {@return whether this text can be kept: no control character but line feed and tab, no half
    /// of a surrogate pair}
    public static boolean printable(String text) {
        return text.codePoints()
                .noneMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\t'
                        || Character.getType(c) == Character.SURROGATE);
    }

    /// @throws Refusal if the text would be larger than can be read back
    public static String write(Document document) {
        var text = YamlWriter.write(new Node.Fields(
                switch (document) {
                    case Document.OfPart(var part) -> PartForm.write(part);
                    case Document.OfKit(var kit) -> KitForm.write(kit);
                    case Document.OfMeasurement(var measurement) -> MeasurementForm.write(measurement);
                    case Document.OfRoute(var route) -> RouteForm.write(route);
                    case Document.OfLog(var log) -> LogForm.write(log);
                },
                0));
        if (text.length() > LARGEST_BYTES) {
            throw new Refusal(
                    document.id(),
                    "is " + text.length() + " characters of text",
                    "up to " + LARGEST_MB + " MB",
                    "take out rows or columns that nobody needs");
        }
        return text;
    }
}
