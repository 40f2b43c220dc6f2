/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

class SheetExceptionTest {

    @Test
    void saysAllThatIsWrongInOneSentence() {
        List<SheetFault> faults = List.of(new SheetFault(3, "quantity", "two", "a whole number"),
                new SheetFault(7, "", "", "an item"));
        SheetException refused = new SheetException(faults);
        assertEquals(faults, refused.faults());
        assertEquals("row 3, column \"quantity\": \"two\", expected a whole number; row 7: \"\", expected an item",
                refused.getMessage());
    }
}
