/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;

/** Shared by the tests of codes. */
final class CodeTests {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 26);
    static final String GS = "\u001d";

    private CodeTests() {
    }

    static ProductCode read(String text) {
        try {
            return CodeReader.read(text, TODAY);
        } catch (CodeException e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    /** Asserts that a text is refused with a fault at an index. */
    static CodeException assertFault(CodeFault fault, int position, String text) {
        CodeException e = assertThrows(CodeException.class, () -> CodeReader.read(text, TODAY), text);
        assertEquals(fault + " at " + position, e.fault() + " at " + e.position(), e.getMessage());
        assertEquals(text, e.text());
        return e;
    }
}
