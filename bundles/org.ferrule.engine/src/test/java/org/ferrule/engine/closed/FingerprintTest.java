/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.ferrule.model.Closing;
import org.junit.jupiter.api.Test;

class FingerprintTest {
    /** The SHA-256 of the three bytes "abc": FIPS 180-4, example of one block. */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private static final Closing CLOSING = new ClosedCases().restingOn("same.devices.json", ABC)
            .restingOn("capitals.devices.json", ABC.toUpperCase(Locale.ROOT))
            .restingOn("other.rules.json", ABC).restingOn("gone.shelf.json", ABC)
            .restingOn("locked.techniques.json", ABC).file().getClosing();

    private static Optional<byte[]> today(String path) throws IOException {
        if (path.startsWith("locked")) {
            throw new IOException("no right to read");
        }
        return Optional.ofNullable(Map.of("same.devices.json", "abc", "capitals.devices.json", "abc",
                "other.rules.json", "abd").get(path)).map(text -> text.getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void eachDocumentIsComparedWithTheFileOfToday() {
        List<Fingerprint> compared = Fingerprint.of(CLOSING, FingerprintTest::today);
        assertEquals(List.of(Standing.UNCHANGED, Standing.UNCHANGED, Standing.CHANGED, Standing.NOT_FOUND,
                Standing.NOT_READABLE), compared.stream().map(Fingerprint::standing).toList());
    }
}
