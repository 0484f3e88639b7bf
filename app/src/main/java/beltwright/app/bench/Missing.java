package beltwright.app.bench;

import beltwright.workshop.Shelf;
import java.util.List;

/// A number that is missing, in words, and where it is entered.
///
/// @param says `length deviation of Belt 265`, or as the working names it where it is no field
/// @param href its field on a form or a sheet; empty where there is none, such as the strength of a material
public record Missing(String says, String href) {
    /// {@return each of the numbers that a finding needs}
    public static List<Missing> of(Shelf shelf, List<String> needs) {
        return needs.stream().map(need -> of(shelf, need)).toList();
    }

    private static Missing of(Shelf shelf, String need) {
        int dot = need.indexOf('.');
        var id = dot < 0 ? "" : need.substring(0, dot);
        boolean kit = shelf.drafts().containsKey(id);
        if (!kit && !shelf.parts().containsKey(id)
                || shelf.editable(id).stream().noneMatch(f -> f.path().equals(need.substring(dot + 1)))) {
            return new Missing(need, "");
        }
        var path = need.substring(dot + 1);
        return kit
                ? new Missing(
                        Sheet.label(path) + " of " + shelf.draft(id).name(), "/kits/" + id + "#f-" + Bench.coded(need))
                : new Missing(
                        Sheet.label(path) + " of " + shelf.part(id).name(), "/parts/" + id + "#p-" + Bench.coded(path));
    }
}
