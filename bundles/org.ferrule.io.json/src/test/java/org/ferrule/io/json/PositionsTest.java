/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.junit.jupiter.api.Test;

class PositionsTest {

    private final ReadResult result = Samples.library(Samples.LIBRARY);
    private final Positions positions = result.positions();
    private final DeviceLibrary library = (DeviceLibrary) result.document().orElseThrow();
    private final Device device = library.getDevices().get(0);

    @Test
    void knowsObjectsKeysAndValues() {
        assertEquals("{", text(positions.object(library).orElseThrow()).substring(0, 1));
        assertEquals("\"effectiveLength\"", text(positions.key(device, Literals.DEVICE_PARTS__EFFECTIVE_LENGTH)
                .orElseThrow()));
        assertEquals("\"100 cm\"", text(positions.value(device, Literals.DEVICE_PARTS__EFFECTIVE_LENGTH)
                .orElseThrow()));
        assertEquals("true", text(positions.value(device.getSections().get(0), Literals.SHAFT_SECTION__RIGID)
                .orElseThrow()));
        assertEquals("\"guidewire\"", text(positions.value(device.getClaims().get(0), Literals.CLAIM__KINDS, 1)
                .orElseThrow()));
        assertEquals("[1.00, 1e5, -0]", text(positions.object(device.getExtras().get(1)).orElseThrow()));
    }

    @Test
    void countsLinesAndColumnsFromOne() {
        assertEquals(new TextRegion(1, 1, 0, Samples.LIBRARY.length() - 1), positions.object(library).orElseThrow());
        TextRegion value = positions.value(library, Literals.DOCUMENT__VERSION).orElseThrow();
        assertEquals("3:14", value.line() + ":" + value.column());
    }

    @Test
    void countsEveryLineEnd() {
        ReadResult mixed = Samples.libraryWith("\r\"title\":\"a\",\r\n\n\"revision\":\"b\"");
        assertEquals(2, mixed.positions().value(mixed.document().orElseThrow(), Literals.DOCUMENT__TITLE).orElseThrow()
                .line());
        assertEquals(4, mixed.positions().value(mixed.document().orElseThrow(), Literals.DOCUMENT__REVISION)
                .orElseThrow().line());
    }

    @Test
    void fallsBackToWhatIsClosest() {
        assertEquals("\"Alder 6 Fr\"", text(positions.closest(device, Literals.DEVICE_PARTS__NAME)));
        assertEquals(positions.object(device).orElseThrow().offset(),
                positions.closest(device, Literals.DEVICE_PARTS__BALLOON).offset());
        Device later = ModelFactory.eINSTANCE.createDevice();
        library.getDevices().add(later);
        assertTrue(positions.object(later).isEmpty());
        assertEquals(positions.key(library, Literals.DEVICE_LIBRARY__DEVICES).orElseThrow(),
                positions.closest(later, null));
        assertEquals(new TextRegion(1, 1, 0, 0), positions.closest(ModelFactory.eINSTANCE.createDevice(), null));
    }

    private static String text(TextRegion region) {
        return Samples.LIBRARY.substring(region.offset(), region.offset() + region.length());
    }
}
