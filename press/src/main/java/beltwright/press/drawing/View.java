package beltwright.press.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/// One projection on a sheet.
///
/// @param placing real mm to mm on the sheet, from its lower left corner
/// @param window the part of it that is shown (real mm); null for all
public record View(
        String name,
        List<Entity> entities,
        Placing placing,
        @Nullable Bounds window) {
    public View {
        entities = List.copyOf(entities);
    }
}
