package beltwright.workshop;

import beltwright.quantity.Refusal;

/// One field of one document set to a value, as typed: `mount-hill.plateThicknessMm=10`.
///
/// @param path of the field, `rim.faceWidthMm` or `seats.left belt`
/// @param value as it would stand in the document's file
public record Edit(String document, String path, String value) {

    /// Reads `DOCUMENT.FIELD=VALUE`: the id up to the first dot, the path up to the first equals sign.
    ///
    /// @throws Refusal if there is no dot or no equals sign
    public static Edit parse(String typed) {
        int dot = typed.indexOf('.');
        int equals = typed.indexOf('=');
        if (dot <= 0 || equals <= dot + 1) {
            throw new Refusal(
                    "'" + typed + "'",
                    "does not say which field of what becomes which value",
                    "DOCUMENT.FIELD=VALUE",
                    "write for example 'mount-hill.plateThicknessMm=10'");
        }
        return new Edit(
                typed.substring(0, dot).strip(),
                typed.substring(dot + 1, equals).strip(),
                typed.substring(equals + 1).strip());
    }

    @Override
    public String toString() {
        return document + "." + path + "=" + value;
    }
}
