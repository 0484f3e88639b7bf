package beltwright.part;

import beltwright.quantity.Refusal;
import java.util.Map;
import java.util.TreeMap;

/// Data that a workshop may override: materials with their sources. The file is read outside the engine and passed in.
///
/// @param sha256 fingerprint of the text it was read from, so that a dossier can say what it rests on
public record Reference(Map<String, Material> materials, String sha256) {
    public Reference {
        materials = Map.copyOf(materials);
    }

    /// @throws Refusal if the reference file has no such material
    public Material material(String id) {
        var found = materials.get(id);
        if (found == null) {
            throw new Refusal(
                    "material",
                    "'" + id + "' is not in the reference file",
                    String.join(", ", new TreeMap<>(materials).keySet()),
                    "use one of these, or add the material with its source");
        }
        return found;
    }
}
