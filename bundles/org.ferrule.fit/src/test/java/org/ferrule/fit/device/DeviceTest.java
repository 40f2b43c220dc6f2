/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

import static org.ferrule.fit.device.DeviceKind.DUAL_LUMEN_MICROCATHETER;
import static org.ferrule.fit.device.DeviceKind.MICROCATHETER;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DeviceTest {

    @Test
    void statedLengthWinsOverItsSections() {
        Device device = device("m", MICROCATHETER).length("135 cm").section("a", "0 cm", "140 cm", "1 mm").device();
        assertEquals(Optional.of(length("135 cm")), device.insertableLength());
    }

    @Test
    void lengthThatIsNotStatedIsKnownAsFarAsItsSectionsGo() {
        Device device = device("m", MICROCATHETER).length("long").section("a", "0 cm", "20 cm", "1 mm").device();
        assertEquals(Optional.empty(), device.statedLength());
        assertEquals(Optional.of(length("20 cm")), device.insertableLength());
        assertEquals(Optional.empty(), device("m", MICROCATHETER).device().insertableLength());
    }

    @Test
    void workingLumenIsEnteredByDevicesAndWireLumenByWires() {
        Device dual = rod("d", DUAL_LUMEN_MICROCATHETER, "140 cm", "1 mm").overTheWire("140 cm", "0.4 mm")
                .working("140 cm", "0.5 mm").device();
        assertEquals("lumen", dual.mainLumen().get().name());
        assertEquals("wire", dual.wireLumen().get().name());
    }

    @Test
    void onlyLumenServesForBoth() {
        Device micro = rod("m", MICROCATHETER, "135 cm", "1 mm").overTheWire("135 cm", "0.4 mm").device();
        assertEquals(micro.wireLumen(), micro.mainLumen());
    }

    @Test
    void lumenThatItDoesNotHaveIsNamed() {
        Device bare = device("m", MICROCATHETER).device();
        String message = assertThrows(IllegalArgumentException.class, () -> bare.lumen("side")).getMessage();
        assertTrue(message.contains("\"m\"") && message.contains("\"side\""));
    }

    @Test
    void stationsOutOfOrderAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> device("m", MICROCATHETER).section("a", "2 cm", "1 cm",
                "1 mm"));
        assertThrows(IllegalArgumentException.class, () -> device("m", MICROCATHETER).section("a", "-1 cm", "1 cm",
                "1 mm"));
        assertThrows(IllegalArgumentException.class, () -> device("m", MICROCATHETER).working("1 m", "1 mm").bore(
                "2 cm", "1 cm", "1 mm"));
        assertThrows(IllegalArgumentException.class, () -> device("m", MICROCATHETER).lumen("l", Lumen.Use.WIRE,
                Lumen.Opening.HUB, "2 cm", "1 cm"));
    }

    @Test
    void bundleNeedsAMember() {
        assertThrows(IllegalArgumentException.class, () -> new Contour.Bundle(List.of()));
    }

    @ParameterizedTest
    @EnumSource(DeviceKind.class)
    void kindIsFoundByItsWord(DeviceKind kind) {
        assertEquals(kind, DeviceKind.ofWord(kind.word()));
    }

    @Test
    void wordOfNoKindIsNamed() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> DeviceKind.ofWord("spoon")).getMessage()
                .contains("spoon"));
    }

    @Test
    void sourceSaysRevisionAndPageWhereItHasThem() {
        assertEquals("Labels, rev. 2, p. 7", new SourceRef("Labels", "2", "7").toString());
        assertEquals("Labels, rev. 2, table 3", new SourceRef("Labels", "2", "table 3").toString());
        assertEquals("Labels", new SourceRef("Labels", "", "").toString());
        assertTrue(SourceRef.NONE.isNone());
    }
}
