package beltwright.workshop.document;

import beltwright.kit.Joint;
import beltwright.kit.KitDraft;
import beltwright.kit.KitDraft.Filling;
import beltwright.kit.Placement;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.kit.Task;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/// A kit as a document: what fills its seats, how they are joined, where the motors sit, what it is asked to do.
final class KitForm {
    private static final List<String> HEAD =
            List.of("schema", "kit", "name", "invented", "note", "seats", "joints", "placements", "task");
    private static final String FILLING_ALLOWED =
            "the id of a part, '4 x part-id', or '{part: part-id, count: 4, from: rider}'";
    private static final Pattern COUNTED = Pattern.compile("([0-9]{1,3})\\s*[x×]\\s+(\\S.*)");
    static final FieldForm NAME = new FieldForm("name", String.class, "what people call this kit", 0, 0);
    static final FieldForm NOTE = new FieldForm("note", String.class, "what else there is to say", 0, 0);
    private static final FieldForm INVENTED =
            new FieldForm("invented", boolean.class, "whether the kit is a made-up example", 0, 0);
    private static final FieldForm COUNT = new FieldForm("count", int.class, "number of pieces", 1, 999);

    /// Before the path of a number of the task.
    static final String TASK = "task.";

    private KitForm() {}

    static @Nullable KitDraft read(Scope at, Node.Fields typed) {
        at.refuseOthers(typed, HEAD);
        var name = head(at, typed, NAME, null);
        var invented = head(at, typed, INVENTED, false);
        var note = head(at, typed, NOTE, "");
        var seats = seats(at, typed);
        var joints = joints(at, typed, named(typed));
        var placements = placements(at, typed);
        var taskNode = at.required(typed, "task", "what the kit is asked to do");
        var task = taskNode == null ? null : (Task) sourced(at.in("task"), taskNode, Task.class);
        if (name == null || invented == null || note == null || task == null) {
            return null;
        }
        return new KitDraft(
                at.document(), (String) name, (Boolean) invented, (String) note, seats, joints, placements, task);
    }

    static @Nullable Object head(Scope at, Node.Fields typed, FieldForm form, @Nullable Object absent) {
        if (absent != null && !typed.fields().containsKey(form.name())) {
            return absent;
        }
        var node = at.required(typed, form.name(), form.allowed());
        return node == null ? null : form.read(at.in(form.name()), node, Documents.NO_SOURCE);
    }

    /// {@return what can be measured on a kit as a whole, by path: the numbers of its task}
    static SequencedMap<String, FieldForm> dimensions() {
        var dimensions = new LinkedHashMap<String, FieldForm>();
        RecordForm.of(Task.class).paths().forEach((path, field) -> {
            if (field.dimension()) {
                dimensions.put(TASK + path, field);
            }
        });
        return dimensions;
    }

    private static SortedMap<SeatName, Filling> seats(Scope at, Node.Fields typed) {
        var seats = new TreeMap<SeatName, Filling>();
        var node = at.required(typed, "seats", "the parts of this kit, each under the name of its seat");
        var inside = at.in("seats");
        var fields = node == null ? null : inside.fields(node, "one line for each seat, '<seat>: <part id>'");
        if (fields != null) {
            fields.fields().forEach((words, value) -> {
                var name = seatName(inside.in(words), words, value.line());
                var filling = filling(inside.in(words), value);
                if (name != null && filling != null) {
                    inside.in(words)
                            .uses(value.line(), filling.part(), name.role().type());
                    seats.put(name, filling);
                }
            });
        }
        return Collections.unmodifiableSortedMap(seats);
    }

    /// {@return the seats that are named at all}, so that a bad filling is not told again by every joint
    private static SortedSet<SeatName> named(Node.Fields typed) {
        var named = new TreeSet<SeatName>();
        if (typed.fields().get("seats") instanceof Node.Fields seats) {
            var unheard = Scope.file("");
            seats.fields().forEach((words, node) -> {
                var name = seatName(unheard, words, node.line());
                if (name != null) {
                    named.add(name);
                }
            });
        }
        return named;
    }

    static @Nullable SeatName seatName(Scope at, String words, int line) {
        try {
            return SeatName.parse(words);
        } catch (Refusal r) {
            at.refused(line, r);
            return null;
        }
    }

    static @Nullable Filling filling(Scope at, Node node) {
        at.seen(node);
        if (node instanceof Node.Fields fields) {
            at.refuseOthers(fields, List.of("part", "count", "from"));
            var part = at.required(fields, "part", "the id of a part");
            var id = part == null ? null : Documents.id(at.in("part"), part);
            var count = head(at, fields, COUNT, 1);
            var from = fields.fields().get("from");
            var rider = from == null ? Boolean.FALSE : fromRider(at.in("from"), from);
            return id == null || count == null || rider == null ? null : new Filling(id, (Integer) count, rider);
        }
        var text = at.text(node, FILLING_ALLOWED);
        if (text == null) {
            return null;
        }
        var counted = COUNTED.matcher(text.strip());
        boolean many = counted.matches();
        var id = Documents.id(at, new Node.Text(many ? counted.group(2) : text.strip(), node.line()));
        var count = many ? COUNT.read(at, new Node.Text(counted.group(1), node.line()), Documents.NO_SOURCE) : 1;
        return id == null || count == null ? null : new Filling(id, (Integer) count, false);
    }

    private static @Nullable Boolean fromRider(Scope at, Node node) {
        var choices = List.of("rider", "box");
        var text = at.text(node, "one of rider, box");
        if (text != null && !choices.contains(text)) {
            at.mistake(
                    node.line(), "'" + text + "' is not known", "one of rider, box", Scope.Nearest.mend(text, choices));
            return null;
        }
        return text == null ? null : Boolean.valueOf(text.equals("rider"));
    }

    private static SortedMap<String, Joint> joints(Scope at, Node.Fields typed, Collection<SeatName> seats) {
        var joints = new TreeMap<String, Joint>();
        var node = at.required(typed, "joints", "how the seats are held together, each joint under a name");
        var inside = at.in("joints");
        var fields =
                node == null ? null : inside.fields(node, "one line for each joint, '<name>: {by: ..., of: [...]}'");
        if (fields != null) {
            fields.fields().forEach((name, value) -> {
                var joint = joint(inside.in(name), name, value, seats);
                if (joint != null) {
                    joints.put(name, joint);
                }
            });
        }
        return Collections.unmodifiableSortedMap(joints);
    }

    static @Nullable Joint joint(Scope at, String name, Node node, Collection<SeatName> seats) {
        at.seen(node);
        var fields = at.fields(node, "{by: <way>, of: [<seats>], with: [<fastener seats>]}");
        if (fields == null) {
            return null;
        }
        at.refuseOthers(fields, List.of("by", "of", "with"));
        var by = new FieldForm("by", Joint.Way.class, "how they are held", 0, 0);
        var way = head(at, fields, by, null);
        var of = at.required(fields, "of", "the seats that are held together, two or more");
        var held = of == null ? null : seatNames(at.in("of"), of, seats);
        if (of != null && held != null && held.size() < 2) {
            at.in("of").mistake(of.line(), "names fewer than two seats", "two or more seats", "name what meets here");
            return null;
        }
        var with = fields.fields().getOrDefault("with", new Node.Items(List.of(), fields.line()));
        var fasteners = seatNames(at.in("with"), with, seats);
        return way == null || held == null || fasteners == null
                ? null
                : new Joint(name, (Joint.Way) way, held, fasteners);
    }

    private static @Nullable List<SeatName> seatNames(Scope at, Node node, Collection<SeatName> seats) {
        var items = at.items(node, "names of seats");
        if (items == null) {
            return null;
        }
        var names = new ArrayList<@Nullable SeatName>();
        for (var item : items) {
            var words = at.text(item, "the name of a seat");
            var name = words == null ? null : seatName(at, words, item.line());
            if (name != null && !seats.isEmpty() && !seats.contains(name)) { // without any seat, that alone is told
                var filled = seats.stream().map(SeatName::toString).toList();
                at.mistake(
                        item.line(),
                        "'" + name + "' is not a filled seat of this kit",
                        String.join(", ", filled),
                        Scope.Nearest.mend(name.toString(), filled));
                name = null;
            }
            names.add(name);
        }
        return names.contains(null) ? null : List.copyOf(names);
    }

    private static SortedMap<Side, Placement> placements(Scope at, Node.Fields typed) {
        var placements = new TreeMap<Side, Placement>();
        var node = at.required(typed, "placements", "where each motor sits");
        var inside = at.in("placements");
        var fields = node == null ? null : inside.fields(node, "'left' and 'right', for each side that has a motor");
        if (fields != null) {
            inside.refuseOthers(
                    fields, Stream.of(Side.values()).map(Side::toString).toList());
            for (var side : Side.values()) {
                var one = fields.fields().get(side.toString());
                var placement = one == null ? null : sourced(inside.in(side.toString()), one, Placement.class);
                if (placement != null) {
                    placements.put(side, (Placement) placement);
                }
            }
        }
        return Collections.unmodifiableSortedMap(placements);
    }

    /// Reads a record whose first field is the usual source of its dimensions.
    private static @Nullable Object sourced(Scope at, Node node, Class<?> type) {
        at.seen(node);
        var form = RecordForm.of(type);
        var fields = at.fields(node, "the fields source, " + String.join(", ", form.names()));
        if (fields == null) {
            return null;
        }
        var source = at.required(fields, "source", "where these numbers were read, for example 'measured, caliper'");
        var usual = source == null ? null : FieldForm.provenance(at.in("source"), source);
        var others = new LinkedHashMap<>(fields.fields());
        others.remove("source");
        var made = form.read(
                at, new Node.Fields(others, fields.line()), usual == null ? Documents.NO_SOURCE : usual, Map.of());
        return usual == null ? null : made;
    }

    static SequencedMap<String, Node> write(KitDraft kit) {
        var typed = Documents.head(Document.Type.KIT, kit.id());
        typed.put("name", new Node.Text(kit.name()));
        typed.put("invented", new Node.Text(String.valueOf(kit.invented())));
        if (!kit.note().isEmpty()) {
            typed.put("note", new Node.Text(kit.note()));
        }
        var seats = new LinkedHashMap<String, Node>();
        new TreeMap<>(kit.seats()).forEach((name, filling) -> seats.put(name.toString(), written(filling)));
        typed.put("seats", new Node.Fields(seats, 0));
        var joints = new LinkedHashMap<String, Node>();
        new TreeMap<>(kit.joints()).forEach((name, joint) -> joints.put(name, written(joint)));
        typed.put("joints", new Node.Fields(joints, 0));
        var placements = new LinkedHashMap<String, Node>();
        new TreeMap<>(kit.placements()).forEach((side, one) -> placements.put(side.toString(), sourced(one)));
        typed.put("placements", new Node.Fields(placements, 0));
        typed.put("task", sourced(kit.task()));
        return typed;
    }

    static Node written(Filling filling) {
        if (!filling.fromRider()) {
            return new Node.Text(filling.count() == 1 ? filling.part() : filling.count() + " x " + filling.part());
        }
        var typed = new LinkedHashMap<String, Node>();
        typed.put("part", new Node.Text(filling.part()));
        if (filling.count() != 1) {
            typed.put("count", new Node.Text(String.valueOf(filling.count())));
        }
        typed.put("from", new Node.Text("rider"));
        return new Node.Fields(typed, 0);
    }

    static Node written(Joint joint) {
        var typed = new LinkedHashMap<String, Node>();
        typed.put("by", new Node.Text(joint.by().toString()));
        typed.put("of", names(joint.of()));
        if (!joint.with().isEmpty()) {
            typed.put("with", names(joint.with()));
        }
        return new Node.Fields(typed, 0);
    }

    private static Node names(List<SeatName> seats) {
        return new Node.Items(
                seats.stream().<Node>map(s -> new Node.Text(s.toString())).toList(), 0);
    }

    private static Node sourced(Object made) {
        var form = RecordForm.of(made.getClass());
        var usual = form.usual(made);
        var typed = new LinkedHashMap<String, Node>();
        typed.put("source", new Node.Text(usual.words()));
        typed.putAll(form.write(made, usual));
        return new Node.Fields(typed, 0);
    }
}
