package beltwright.workshop.document;

import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.events.StreamEndEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/// Reads YAML text into trees, one per document.
///
/// Each document is read on its own, so that one that cannot be read does not hide the mistakes of the next. Anchors,
/// aliases, tags and deep nesting are refused: no file of a workshop needs them, and they are how a small file grows
/// large in memory.
final class YamlReader {
    private static final int DEEPEST = 8;
    private static final int LONGEST_NAME = 200; // YAML itself stops at 1024
    private static final Pattern DOCUMENT_START = Pattern.compile("^---(?=\\s|$)", Pattern.MULTILINE);

    private final Scope scope;
    private final int lineOffset;
    private int reached;
    private Iterator<Event> events = List.<Event>of().iterator();

    private YamlReader(Scope scope, int lineOffset) {
        this.scope = scope;
        this.lineOffset = lineOffset;
        this.reached = lineOffset + 1;
    }

    /// {@return the documents that could be read}; mistakes go to the scope
    static List<Node> documents(Scope scope, String text) {
        var starts = new ArrayList<Integer>(List.of(0));
        DOCUMENT_START.matcher(text).results().filter(m -> m.start() > 0).forEach(m -> starts.add(m.start()));
        starts.add(text.length());
        var documents = new ArrayList<Node>();
        int line = 0;
        for (int i = 0; i + 1 < starts.size(); i++) {
            var one = text.substring(starts.get(i), starts.get(i + 1));
            new YamlReader(scope, line).read(one, documents);
            line += (int) one.lines().count();
        }
        return documents;
    }

    /// {@return one value as typed: nested where it begins with a bracket, text otherwise}
    static Node value(Scope scope, String typed) {
        var text = typed.strip();
        if (text.isEmpty() || "{[\"'".indexOf(text.charAt(0)) < 0) {
            return new Node.Text(text, 1);
        }
        var nodes = documents(scope, text);
        return nodes.isEmpty() ? new Node.Text("", 1) : nodes.getFirst();
    }

    private void read(String text, List<Node> documents) {
        try {
            events = new Parse(settings(text)).parseString(text).iterator();
            for (var event = next(); !(event instanceof StreamEndEvent); event = next()) {
                if (event instanceof NodeEvent root) {
                    var node = node(root, line(root.getStartMark()), 0);
                    if (!(node instanceof Node.Text empty && empty.text().isEmpty())) {
                        documents.add(node);
                    }
                }
            }
        } catch (MarkedYamlEngineException e) {
            unreadable(line(e.getProblemMark()), e.getProblem());
        } catch (YamlEngineException e) {
            unreadable(lineOffset + 1, String.valueOf(e.getMessage()));
        } catch (Unwanted e) {
            scope.refused(e.line, e.refusal);
        }
    }

    /// One buffer holds the whole text: the parser fails on a pair of surrogates that straddles two.
    private static LoadSettings settings(String text) {
        return LoadSettings.builder()
                .setBufferSize(text.length() + 2)
                .setCodePointLimit(text.length() + 1)
                .build();
    }

    private void unreadable(int line, String problem) {
        scope.mistake(
                line,
                "cannot be read as YAML: "
                        + problem.lines().findFirst().orElse("").strip(),
                "fields as 'name: value', one to a line, nested ones indented by spaces",
                "correct this line or the one above it");
    }

    private Node node(NodeEvent event, int line, int depth) {
        refuseUnwanted(event, line, depth);
        return switch (event) {
            case ScalarEvent scalar ->
                new Node.Text(
                        printable(scalar.getValue(), line),
                        line,
                        scalar.getScalarStyle() == ScalarStyle.LITERAL ? line(scalar.getStartMark()) + 1 : 0);
            case SequenceStartEvent start -> items(line, depth);
            case MappingStartEvent start -> fields(line, depth);
            default -> throw new IllegalStateException("no such node: " + event);
        };
    }

    private Node items(int line, int depth) {
        var items = new ArrayList<Node>();
        while (next() instanceof NodeEvent item) {
            items.add(node(item, line(item.getStartMark()), depth + 1));
        }
        return new Node.Items(items, line);
    }

    private Node fields(int line, int depth) {
        var fields = new LinkedHashMap<String, Node>();
        while (next() instanceof NodeEvent key) {
            int keyLine = line(key.getStartMark());
            if (!(node(key, keyLine, depth + 1) instanceof Node.Text name)
                    || name.text().length() > LONGEST_NAME) {
                throw new Unwanted(keyLine, "the name of a field is not a short text", "name: value", "name the field");
            }
            var value = node((NodeEvent) next(), keyLine, depth + 1);
            if (fields.putIfAbsent(name.text(), value) != null) {
                scope.in(name.text())
                        .mistake(keyLine, "is given twice", "each field once", "take out or rename one of the two");
            }
        }
        return new Node.Fields(fields, line);
    }

    private static void refuseUnwanted(NodeEvent event, int line, int depth) {
        boolean tagged = event instanceof ScalarEvent s && s.getTag().isPresent()
                || event instanceof CollectionStartEvent c && c.getTag().isPresent();
        if (event instanceof AliasEvent || event.getAnchor().isPresent()) {
            throw new Unwanted(line, "uses an anchor (&) or an alias (*)", "values written out", "write the value out");
        }
        if (tagged) {
            throw new Unwanted(line, "uses a tag (!)", "values without a tag", "take the tag out");
        }
        if (depth > DEEPEST) {
            throw new Unwanted(line, "is nested too deeply", "at most " + DEEPEST + " levels", "take a level out");
        }
    }

    private static String printable(String text, int line) {
        if (!Codec.printable(text)) {
            throw new Unwanted(line, "holds a control character", "printable text", "take the character out");
        }
        return text;
    }

    /// {@return the parser's next event}; it lets a `\U` beyond Unicode out as a plain argument error
    private Event next() {
        try {
            var event = events.next();
            reached = line(event.getEndMark());
            return event;
        } catch (IllegalArgumentException e) {
            throw new Unwanted(
                    reached, "holds an escape that is no character", "printable text", "take the escape out");
        }
    }

    private int line(Optional<Mark> mark) {
        return lineOffset + mark.map(m -> m.getLine() + 1).orElse(1);
    }

    /// YAML that is well formed but that no file of a workshop needs.
    private static final class Unwanted extends RuntimeException {
        private final int line;
        private final transient Refusal refusal;

        Unwanted(int line, String wrong, String allowed, String mend) {
            super(wrong);
            this.line = line;
            this.refusal = new Refusal("", wrong, allowed, mend);
        }
    }
}
