package beltwright.pairs;

import beltwright.kit.KitDraft;
import beltwright.kit.Role;
import beltwright.part.Part;
import java.util.List;
import java.util.stream.Collectors;

/// What a row or a column of a matrix stands for: a part in its place, several parts together, or a whole kit.
public sealed interface Thing {
    String id();

    String name();

    /// A part where it would sit.
    record InPlace(Role role, Part part) implements Thing {
        @Override
        public String id() {
            return part.id();
        }

        @Override
        public String name() {
            return part.name();
        }
    }

    /// Parts that only say something together: both pulleys of a belt.
    record Together(List<InPlace> parts) implements Thing {
        public Together {
            parts = List.copyOf(parts);
        }

        @Override
        public String id() {
            return parts.stream().map(InPlace::id).collect(Collectors.joining("+"));
        }

        @Override
        public String name() {
            return parts.stream().map(InPlace::name).collect(Collectors.joining(" + "));
        }
    }

    /// A kit, one seat of which is filled anew.
    record OfKit(KitDraft draft) implements Thing {
        @Override
        public String id() {
            return draft.id();
        }

        @Override
        public String name() {
            return draft.name();
        }
    }
}
