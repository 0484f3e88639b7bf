package beltwright.part;

import beltwright.quantity.Refusal;
import java.util.Map;
import java.util.TreeMap;

/// Data that a workshop may override: materials, cells and belt grades with their sources. The file is read outside the
/// engine and
/// passed in.
///
/// @param grades belt grades of the workshop's own, beside those that are published
/// @param estimating whether estimating rules may stand in for numbers that nobody gave
/// @param sha256 fingerprint of the text it was read from, so that a dossier can say what it rests on
public record Reference(
        Map<String, Material> materials,
        Map<String, Cell> cells,
        Map<String, BeltGrade> grades,
        boolean estimating,
        String sha256) {
    public Reference {
        materials = Map.copyOf(materials);
        cells = Map.copyOf(cells);
        var all = new TreeMap<>(BeltGrade.PUBLISHED);
        all.putAll(grades);
        grades = Map.copyOf(all);
    }

    /// {@return the same data, with estimating rules turned off}
    public Reference withoutEstimates() {
        return new Reference(materials, cells, grades, false, sha256);
    }

    /// @throws Refusal if the reference file has no such material
    public Material material(String id) {
        return found("material", id, materials);
    }

    /// @throws Refusal if the reference file has no such cell
    public Cell cell(String id) {
        return found("cell", id, cells);
    }

    /// @throws Refusal if neither a maker's manual nor the reference file has such a belt grade
    public BeltGrade grade(String id) {
        return found("belt grade", id, grades);
    }

    private static <T> T found(String what, String id, Map<String, T> among) {
        var found = among.get(id);
        if (found == null) {
            throw new Refusal(
                    what,
                    "'" + id + "' is not in the reference file",
                    String.join(", ", new TreeMap<>(among).keySet()),
                    "use one of these, or add the " + what + " with its source");
        }
        return found;
    }
}
