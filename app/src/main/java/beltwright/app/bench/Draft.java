package beltwright.app.bench;

import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/// A kit with edits that are not kept anywhere but in the address: shareable, and the back button is undo.
///
/// @param edits each field at most once, in the order they were made
record Draft(String kit, List<Edit> edits) {
    private static final int MOST_EDITS = 200;

    Draft {
        if (edits.size() > MOST_EDITS) {
            throw new Refusal(
                    "set", edits.size() + " edits in one address", "at most " + MOST_EDITS, "keep some of them first");
        }
        edits = List.copyOf(edits);
    }

    static Draft parse(String kit, List<String> typed) {
        return new Draft(kit, typed.stream().map(Edit::parse).toList());
    }

    Shelf over(Shelf shelf) {
        return shelf.with(edits);
    }

    /// {@return this draft with one more edit; one of the same field gives way}
    Draft with(Edit edit) {
        var more = new ArrayList<>(without(edit).edits);
        more.add(edit);
        return new Draft(kit, more);
    }

    Draft without(Edit edit) {
        return new Draft(kit, edits.stream().filter(e -> !sameField(e, edit)).toList());
    }

    private static boolean sameField(Edit a, Edit b) {
        return a.document().equals(b.document()) && a.path().equals(b.path());
    }

    /// {@return the address of a page of this kit with this draft}
    ///
    /// @param page what follows the kit's id: empty, `/guide`, `.json`
    String address(String page) {
        var address = new StringBuilder("/kits/").append(kit).append(page);
        char joint = '?';
        for (var edit : edits) {
            address.append(joint).append("set=").append(URLEncoder.encode(edit.toString(), StandardCharsets.UTF_8));
            joint = '&';
        }
        return address.toString();
    }

    /// {@return how a drawing or a page calls this state of the kit}
    String revision() {
        return edits.isEmpty()
                ? "draft"
                : "draft, " + edits.size() + (edits.size() == 1 ? " edit" : " edits") + " not kept";
    }

    /// {@return the address of the sheet with this seat's part open for editing}
    String at(String seat) {
        var address = address("");
        return address + (address.indexOf('?') < 0 ? '?' : '&') + "seat="
                + URLEncoder.encode(seat, StandardCharsets.UTF_8);
    }
}
