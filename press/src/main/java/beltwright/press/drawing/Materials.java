package beltwright.press.drawing;

import beltwright.part.Reference;

/// Which hatch a part's material has; a material that the reference file does not know stays without one.
record Materials(Reference reference) {
    Fill hatch(String material) {
        var known = reference.materials().get(material);
        return known == null ? Fill.TINT : Fill.of(known.hatch());
    }
}
