package beltwright.press.drawing;

import beltwright.part.Material;

/// What an outline is filled with: nothing, the paper (it hides what is behind), a tint, or a section hatch.
public enum Fill {
    OPEN,
    PAPER,
    TINT,
    INK,
    STEEL,
    LIGHT_METAL,
    PLASTIC,
    RUBBER;

    public static Fill of(Material.Hatch hatch) {
        return switch (hatch) {
            case STEEL -> STEEL;
            case LIGHT_METAL -> LIGHT_METAL;
            case PLASTIC -> PLASTIC;
            case RUBBER -> RUBBER;
        };
    }

    public boolean hatched() {
        return compareTo(STEEL) >= 0;
    }

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
