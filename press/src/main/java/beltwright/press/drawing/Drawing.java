package beltwright.press.drawing;

import java.util.List;
import java.util.stream.Stream;

/// A sheet with its views. Writers of SVG, PDF and DXF all start from this.
///
/// @param id made of the kit and the view, stable
/// @param tells what it shows, in sentences, for a reader who cannot see it
/// @param scale mm on the sheet for one real mm
public record Drawing(
        String id, String title, String tells, double widthMm, double heightMm, double scale, List<View> views) {
    public Drawing {
        views = List.copyOf(views);
    }

    /// {@return a scale as a drawing states it: `1 : 2`}
    public static String words(double scale) {
        return scale >= 1 ? Math.round(scale) + " : 1" : "1 : " + Math.round(1 / scale);
    }

    /// {@return every dimension on the sheet}
    public List<Entity.Dimension> dimensions() {
        return views.stream()
                .flatMap(v -> v.entities().stream())
                .flatMap(e -> e instanceof Entity.Dimension d ? Stream.of(d) : Stream.empty())
                .toList();
    }

    /// {@return what every text covers on the sheet}
    public List<TextBox> texts() {
        return views.stream()
                .flatMap(v -> v.entities().stream().flatMap(e -> switch (e) {
                    case Entity.Text t -> Stream.of(t.box(v.placing()));
                    case Entity.Dimension d -> Stream.of(d.text().box(v.placing()));
                    default -> Stream.empty();
                }))
                .toList();
    }
}
