/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import static org.ferrule.shelf.code.CodeTests.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class ProductCodeTest {

    private static ProductCode join(String one, String two) throws CodeException {
        return read(one).join(read(two));
    }

    private static void assertContradict(CodeFault fault, String value, String one, String two) {
        CodeException e = assertThrows(CodeException.class, () -> join(one, two));
        assertEquals(fault, e.fault());
        assertEquals(value, e.text());
    }

    @Test
    void twoCodesOfOneBoxSayWhatOneSays() throws CodeException {
        assertEquals(read("(01)51022222233336(240)x(17)150707(10)A(250)y"),
                join("(01)51022222233336(240)x", "(17)150707(10)A(250)y"));
        assertEquals(read("(01)51022222233336(21)7"), join("(21)7", "(01)51022222233336"));
    }

    @Test
    void theSameIsNoContradiction() throws CodeException {
        ProductCode code = read("(01)51022222233336(240)x(17)150707(10)A");
        assertEquals(code, code.join(code));
    }

    @Test
    void secondaryCodeBelongsToThePrimaryWhoseCheckCharacterItRepeats() throws CodeException {
        ProductCode both = join("+A123BJC5D6E71G", "+$$52001510X3GD");
        ProductCode one = read("+A123BJC5D6E71/$$52001510X3C");
        assertEquals(one.di(), both.di());
        assertEquals(one.lot(), both.lot());
        assertEquals(one.expiry(), both.expiry());
        String other = "+$$52001510X3H" + Mod43.checkCharacter("+$$52001510X3H");
        assertContradict(CodeFault.LINK, "H", "+A123BJC5D6E71G", other);
    }

    @Test
    void codesOfTwoBoxesAreNotJoined() {
        assertContradict(CodeFault.LINK, "HIBC", "(10)A", "+A123BJC5D6E71G");
        assertContradict(CodeFault.LINK, "06291041500213", "(01)51022222233336", "6291041500213");
        assertContradict(CodeFault.DUPLICATE, "B", "(10)A", "(10)B");
        assertContradict(CodeFault.DUPLICATE, "2", "(21)1", "(21)2");
        assertContradict(CodeFault.DUPLICATE, "2", "(30)1", "(30)2");
        assertContradict(CodeFault.DUPLICATE, "2027-01-02", "(17)270101", "(17)270102");
        assertContradict(CodeFault.DUPLICATE, "2025-01-02", "(11)250101", "(11)250102");
        assertContradict(CodeFault.DUPLICATE, "y", "(240)x", "(240)y");
    }
}
