package beltwright.part;

import beltwright.quantity.Refusal;
import java.util.Map;
import java.util.TreeMap;

/// Data that a workshop may override: materials and cells with their sources. The file is read outside the engine and
/// passed in.
///
/// @param estimating whether estimating rules may stand in for numbers that nobody gave
/// @param sha256 fingerprint of the text it was read from, so that a dossier can say what it rests on
public record Reference(Map<String, Material> materials, Map<String, Cell> cells, boolean estimating, String sha256) {
    public Reference {
        materials = Map.copyOf(materials);
        cells = Map.copyOf(cells);
    }

    /// {@return the same data, with estimating rules turned off}
    public Reference withoutEstimates() {
        return new Reference(materials, cells, false, sha256);
    }

    /// @throws Refusal if the reference file has no such material
    public Material material(String id) {
        return found("material", id, materials);
    }

    /// @throws Refusal if the reference file has no such cell
    public Cell cell(String id) {
        return found("cell", id, cells);
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
