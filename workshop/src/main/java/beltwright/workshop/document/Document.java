package beltwright.workshop.document;

import beltwright.kit.KitDraft;
import beltwright.part.Part;
import beltwright.ride.Log;
import beltwright.ride.Route;

/// One thing that a workshop keeps. Ids are unique over all types, so that `mount-hill.plateThicknessMm` needs no more.
public sealed interface Document {
    String id();

    Type type();

    /// The types of document by the field that names them in a file.
    enum Type {
        PART("part", "parts"),
        KIT("kit", "kits"),
        MEASUREMENT("measurement", "measurements"),
        ROUTE("route", "routes"),
        LOG("log", "logs");

        private final String words;
        private final String folder;

        Type(String words, String folder) {
            this.words = words;
            this.folder = folder;
        }

        /// {@return the folder that export writes documents of this type into}
        public String folder() {
            return folder;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// A part, as typed: what a measurement found later is not in it.
    record OfPart(Part part) implements Document {
        @Override
        public String id() {
            return part.id();
        }

        @Override
        public Type type() {
            return Type.PART;
        }
    }

    /// A kit, as typed.
    record OfKit(KitDraft kit) implements Document {
        @Override
        public String id() {
            return kit.id();
        }

        @Override
        public Type type() {
            return Type.KIT;
        }
    }

    /// A measurement of one part or one kit.
    record OfMeasurement(Measurement measurement) implements Document {
        @Override
        public String id() {
            return measurement.id();
        }

        @Override
        public Type type() {
            return Type.MEASUREMENT;
        }
    }

    /// A way to ride.
    record OfRoute(Route route) implements Document {
        @Override
        public String id() {
            return route.id();
        }

        @Override
        public Type type() {
            return Type.ROUTE;
        }
    }

    /// A measured ride of one kit.
    record OfLog(Log log) implements Document {
        @Override
        public String id() {
            return log.id();
        }

        @Override
        public Type type() {
            return Type.LOG;
        }
    }
}
