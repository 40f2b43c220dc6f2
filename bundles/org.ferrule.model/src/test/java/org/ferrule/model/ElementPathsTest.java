/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;

/** Paths of many objects: those that {@link ElementPath} finds again. */
class ElementPathsTest {

    private static final ModelFactory FACTORY = ModelFactory.eINSTANCE;

    private final DeviceLibrary library = (DeviceLibrary) DocumentKind.DEVICES.create();

    private Device add(String id) {
        Device device = FACTORY.createDevice();
        device.setId(id);
        ShaftSection section = FACTORY.createShaftSection();
        section.setName("tip");
        device.getSections().add(section);
        library.getDevices().add(device);
        return device;
    }

    @Test
    void devicesAreNamedByTheirIdsUnlessThoseAreNotTheirsAlone() {
        Device alone = add("gx-6f");
        Device twin = add("twin");
        add("twin");
        Device number = add("17");
        Device nameless = add(null);
        alone.setBalloon(FACTORY.createBalloon());
        ElementPaths paths = new ElementPaths();
        assertEquals("", paths.of(library));
        assertEquals("devices[gx-6f]/sections[tip]", paths.of(alone.getSections().get(0)));
        assertEquals("devices[gx-6f]/balloon", paths.of(alone.getBalloon()));
        assertEquals("devices[1]", paths.of(twin));
        assertEquals("devices[3]", paths.of(number));
        assertEquals("devices[4]/sections[tip]", paths.of(nameless.getSections().get(0)));
    }

    @Test
    void everyPathLeadsBack() {
        List.of("a", "b", "b", "3", "x/y", "[").forEach(this::add);
        add(null);
        List<EObject> all = new ArrayList<>();
        library.eAllContents().forEachRemaining(all::add);
        ElementPaths paths = new ElementPaths();
        all.forEach(object -> assertSame(object, ElementPath.resolve(library, paths.of(object)).orElseThrow()));
        all.forEach(object -> assertEquals(ElementPath.of(object), paths.of(object)));
    }
}
